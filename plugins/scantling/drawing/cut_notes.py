"""The lines below a cut diagram: what letters mean, the saw's settings, what is to be heeded."""

from __future__ import annotations

from scantling.drawing.arrow import numbered
from scantling.drawing.board_picture import BoardPicture, PiecePicture
from scantling.drawing.cut_frame import Frame
from scantling.drawing.cut_measures import KEY, LEFT, SMALL
from scantling.drawing.cut_order import steps_told
from scantling.drawing.cut_wood import says_size
from scantling.drawing.shape import Shape, Text
from scantling.measure import local_marks
from scantling.words import say


def notes_below(
    board: BoardPicture, frame: Frame, unnamed: list[PiecePicture], y: float
) -> tuple[list[Shape], float]:
    """Return the lines below the board: what letters mean, the saw's settings, the scale."""
    keys: dict[tuple[str, str, str], int] = {}
    for piece in unnamed:
        key = (piece.letter, piece.name, piece.size)
        keys[key] = keys.get(key, 0) + 1
    entries = [
        (letter, f"{name}, {size}" + (f" (×{count})" if count > 1 else ""))
        for (letter, name, size), count in keys.items()
    ]
    shapes, y = _columns(entries, y, frame, circled=False)
    unsaid = [offcut for offcut in board.offcuts if not says_size(offcut, frame)]
    sizes = ", ".join(dict.fromkeys(offcut.size for offcut in unsaid))
    if unsaid:
        y += KEY + 4
        lines = frame.lines(say("keep (dotted): {sizes}", sizes=sizes))
        shapes += [Text(LEFT, y + i * 13, line, KEY) for i, line in enumerate(lines)]
        y += (len(lines) - 1) * 13
    steps, y = _columns(steps_told(board.cuts), y + 2, frame, circled=True)
    heeded, y = _stacked(cautions_of(board), y, frame, 20.0, circled=False)
    shapes += [*steps, *heeded]
    if frame.upscale > frame.scale * 1.01:
        y += SMALL + 5
        times = local_marks(f"{frame.upscale / frame.scale:.1f}".removesuffix(".0"))
        words = say("The width is drawn {times} times as large as the length.", times=times)
        shapes.append(Text(LEFT, y, words, SMALL, look="soft"))
    return shapes, y


def cautions_of(board: BoardPicture) -> list[tuple[str, str]]:
    """Return what is to be heeded: pieces smaller than asked, cuts that are not safe as they are."""
    short = {(piece.letter, f"{piece.name} {piece.short}") for piece in board.pieces if piece.short}
    unsafe: dict[str, list[str]] = {}
    for cut in board.cuts:
        if cut.warning:
            unsafe.setdefault(cut.warning, []).append(str(cut.number))
    cautions = [
        ("!", say("Cut {numbers}: {warning}", numbers=", ".join(numbers), warning=say(warning)))
        for warning, numbers in unsafe.items()
    ]
    return [*sorted(short), *cautions]


def _columns(
    entries: list[tuple[str, str]], y: float, frame: Frame, *, circled: bool
) -> tuple[list[Shape], float]:
    """Return marks with their words in as many columns as there is room for, read down."""
    if not entries:
        return [], y
    indent = max(20.0, *(frame.wide(mark, KEY, bold=True) + 6 for mark, _ in entries))
    widest = max(frame.wide(words, KEY) for _, words in entries) + indent + 8
    columns = max(1, min(len(entries), int((frame.width - 2 * LEFT + 8) // widest)))
    rows = -(-len(entries) // columns)
    room = (frame.width - 2 * LEFT) / columns
    shapes: list[Shape] = []
    if columns == 1:
        return _stacked(entries, y, frame, indent, circled=circled)
    for i, (mark, words) in enumerate(entries):
        x, row = LEFT + (i // rows) * room, y + (i % rows + 1) * 17
        shapes += [_mark(mark, x, row, circled=circled), Text(x + indent, row, words, KEY)]
    return shapes, y + rows * 17


def _stacked(
    entries: list[tuple[str, str]], y: float, frame: Frame, indent: float, *, circled: bool
) -> tuple[list[Shape], float]:
    shapes: list[Shape] = []
    for mark, words in entries:
        y += 17
        shapes.append(_mark(mark, LEFT, y, circled=circled))
        for i, line in enumerate(frame.lines(words, indent)):
            y += 13 if i else 0
            shapes.append(Text(LEFT + indent, y, line, KEY))
    return shapes, y


def _mark(mark: str, x: float, y: float, *, circled: bool) -> Shape:
    if circled and "–" not in mark:
        return numbered(x + 8, y - 4, mark, size=9)
    return Text(x, y, mark, KEY, look="red strong" if circled else "ink strong")
