"""Cut diagrams: where each part lies on a board or sheet, and the cuts that free it, in order.

A board is drawn to scale along its length. Where it would come out too thin to be read, its width is
drawn at a larger scale, and the drawing says so.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.drawing.arrow import arrow, numbered
from scantling.drawing.board_picture import BoardPicture, CutPicture, OffcutPicture, PiecePicture
from scantling.drawing.cut_order import steps_told
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.grain import clip_level, level_grain
from scantling.drawing.lettering import text_width, wrap
from scantling.drawing.shape import Group, Line, Point, Rectangle, Scene, Shape, Strokes, Text
from scantling.measure import local_marks
from scantling.words import say

_TITLE, _LABEL, _SMALL, _KEY = 14.0, 11.5, 10.0, 11.0
_LEFT, _RIGHT = 10.0, 26.0
_LOWEST_STRIP, _HIGHEST = 26.0, 150.0
"""A strip gets at least so much height, if the whole board then stays below the other."""
_HEADING = 15.0
"""What a second line of the heading takes."""
_NUMBER = 7.5
"""How far a number in its circle reaches on the wood; words keep off it."""
_CIRCLE = 17.0
"""Room between the middles of two numbers in circles."""


@dataclass(frozen=True, slots=True)
class _Frame:
    """The board's place on the page."""

    left: float
    top: float
    scale: float
    """Page units for each unit of the board's length."""
    upscale: float
    """Page units for each unit of its width."""
    width: float
    """How wide the page is."""
    face: float
    """How wide letters run, as a share of the widest face in common use."""

    def wide(self, words: str, size: float, *, bold: bool = False) -> float:
        """Return about how wide words of a size are."""
        return text_width(words, size, bold=bold) * self.face

    def x(self, value: float) -> float:
        return self.left + value * self.scale

    def y(self, value: float) -> float:
        return self.top + value * self.upscale

    def lines(self, words: str, indent: float = 0.0) -> list[str]:
        """Return the lines in which words stand below the board."""
        return wrap(words, _KEY * self.face, self.width - 2 * _LEFT - indent)

    def box(self, thing: PiecePicture | OffcutPicture) -> tuple[float, float, float, float]:
        return self.x(thing.x), self.y(thing.y), thing.length * self.scale, thing.width * self.upscale


def cut_diagram(board: BoardPicture, *, width: float = 440.0, face: float = 1.0) -> Scene:
    """Return the diagram of one board or sheet, `width` page units wide.

    Args:
        face: how wide letters run, as a share of the widest face in common use.
    """
    frame = _frame(board, width, face)
    board_height = board.width * frame.upscale
    bottom = frame.top + board_height
    shapes = [*_heading(board, frame, width), *_wood(board, frame), *_cuts(board, frame)]
    spots = [_spot(cut, frame) for cut in _inner_cuts(board)]
    unnamed: list[PiecePicture] = []
    for piece in board.pieces:
        label, whole = _label(piece, frame, spots)
        shapes.append(label)
        if not whole:
            unnamed.append(piece)
    led, y = _leaders([piece for piece in unnamed if not _letter_fits(piece, frame)], frame, bottom, width)
    shapes += led
    if board.length_shown:
        y += 16
        shapes.append(across(frame.x(0), frame.x(board.length), y, board.length_shown, to=bottom))
    if _width_fits(board, frame.upscale):
        shapes.append(upright(frame.top, bottom, width - 12, board.width_shown, to=frame.x(board.length)))
    notes, y = _notes(board, frame, unnamed, y + 12)
    return Scene(width, y + 7, (*shapes, *notes), f"{board.name}, {board.size}", told(board))


def told(board: BoardPicture) -> str:
    """Return what a diagram shows, in words."""
    pieces = "; ".join(f"{piece.letter} {piece.name}, {piece.size}" for piece in board.pieces)
    kept = "; ".join(say("kept offcut, {size}", size=offcut.size) for offcut in board.offcuts)
    cuts = "; ".join(
        say("cut {number}: {setting}", number=number, setting=setting)
        for number, setting in steps_told(board.cuts)
    )
    cautions = "; ".join(f"{mark} {words}" for mark, words in _cautions(board))
    first = say("From {board}, {size}: {pieces}", board=board.name, size=board.size, pieces=pieces)
    sentences = [first, kept, cuts, cautions]
    return ". ".join(sentence for sentence in sentences if sentence) + "."


def _frame(board: BoardPicture, width: float, face: float) -> _Frame:
    rips = any(cut.y1 == cut.y2 for cut in board.cuts)
    left = _LEFT + (14.0 if rips else 0.0)
    right = _RIGHT if board.width_shown else _LEFT
    scale = (width - left - right) / board.length
    thinnest = min([board.width, *(piece.width for piece in board.pieces)])
    wanted = min(_LOWEST_STRIP / thinnest, _HIGHEST / board.width)
    crossed = any(cut.x1 == cut.x2 for cut in board.cuts)
    upscale = max(scale, wanted)
    folded = _HEADING if _is_folded(board, upscale, width) else 0.0
    return _Frame(left, 26.0 + folded + (_CIRCLE + 6 if crossed else 0), scale, upscale, width, face)


def _says_size(offcut: OffcutPicture, frame: _Frame) -> bool:
    """Return whether an offcut is drawn large enough to hold its size."""
    return any(any(letter.isdigit() for letter in line) for line in _offcut_words(offcut, frame))


def _width_fits(board: BoardPicture, upscale: float) -> bool:
    """Return whether the board is drawn wide enough for a dimension line with words."""
    room = board.width * upscale
    return bool(board.width_shown) and text_width(board.width_shown, 11) + 6 <= room


def _name(board: BoardPicture) -> str:
    like = say(" ({count} boards cut alike)", count=board.like_this) if board.like_this > 1 else ""
    return board.name + like


def _size(board: BoardPicture, upscale: float) -> str:
    """Return the board's size, with its width where no dimension line has room for it."""
    if board.width_shown and not _width_fits(board, upscale) and board.width_shown not in board.size:
        return f"{board.size} × {board.width_shown}"
    return board.size


def _after_name(board: BoardPicture) -> float:
    return _LEFT + text_width(_name(board), _TITLE, bold=True) + 10


def _is_folded(board: BoardPicture, upscale: float, width: float) -> bool:
    """Return whether the size stands below the name: beside it, it would run into the word for the grain."""
    grain = text_width(say("grain"), _SMALL) + 72 if board.has_grain else 0.0
    return _after_name(board) + text_width(_size(board, upscale), _LABEL) + grain > width - _LEFT


def _heading(board: BoardPicture, frame: _Frame, width: float) -> list[Shape]:
    folded = _is_folded(board, frame.upscale, width)
    x, y = (_LEFT, 15 + _HEADING) if folded else (_after_name(board), 15.0)
    shapes: list[Shape] = [
        Text(_LEFT, 15, _name(board), _TITLE, look="ink strong"),
        Text(x, y, _size(board, frame.upscale), _LABEL, look="soft"),
    ]
    if board.has_grain:
        level = y - 4
        shapes += [
            Text(width - 62, y, say("grain"), _SMALL, "end", "soft"),
            arrow(width - 40, level, width - 10, level, head=6, look="edge"),
            arrow(width - 28, level, width - 58, level, head=6, look="edge"),
        ]
    return shapes


def _wood(board: BoardPicture, frame: _Frame) -> list[Shape]:
    wide, high = board.length * frame.scale, board.width * frame.upscale
    shapes: list[Shape] = [Rectangle(frame.left, frame.top, wide, high, "edge", "waste")]
    grain = level_grain(board.name, frame.left, frame.top, wide, high) if board.has_grain else []
    shapes += [_offcut(offcut, frame) for offcut in board.offcuts]
    for piece in board.pieces:
        x, y, length, height = frame.box(piece)
        lines = tuple(clip_level(grain, x + 1, y + 1, x + length - 1, y + height - 1))
        wood = (Rectangle(x, y, length, height), Strokes(lines))
        shapes.append(Group(wood, title=f"{piece.letter} {piece.name}, {piece.size}", part=piece.part))
    return shapes


def _offcut(offcut: OffcutPicture, frame: _Frame) -> Group:
    x, y, length, height = frame.box(offcut)
    box = Rectangle(x, y, length, height, "edge", "offcut")
    middle, words = x + length / 2, _offcut_words(offcut, frame)
    first = y + height / 2 + 3.5 - (len(words) - 1) * 6
    label = [Text(middle, first + i * 12, line, _SMALL, "middle", "ink halo") for i, line in enumerate(words)]
    return Group((box, *label), title=say("kept offcut, {size}", size=offcut.size))


def _offcut_words(offcut: OffcutPicture, frame: _Frame) -> list[str]:
    """Return "keep" and the size, on one line or more, as full as there is room for."""
    _, _, length, height = frame.box(offcut)
    along, _, over = offcut.size.partition(" × ")
    keep, whole = say("keep"), say("keep: {size}", size=offcut.size)
    folded = [keep, along, *([f"× {over}"] if over else [])]
    for lines in ([whole], [keep, offcut.size], folded, [offcut.size], [keep]):
        widest = max(frame.wide(line, _SMALL) for line in lines)
        if widest + 6 <= length and height >= len(lines) * 12 + 2:
            return lines
    return []


def _letter_fits(piece: PiecePicture, frame: _Frame) -> bool:
    _, _, length, height = frame.box(piece)
    return length >= frame.wide(piece.letter, _LABEL, bold=True) + 3 and height >= _LABEL


def _label(piece: PiecePicture, frame: _Frame, spots: Sequence[Point]) -> tuple[Shape, bool]:
    """Return the piece's label, as full as there is room for, and whether it says everything.

    Args:
        spots: the middles of numbers that stand on the wood.
    """
    x, y, length, height = frame.box(piece)
    name = f"{piece.letter} {piece.name}"
    one = f"{name}  {piece.size}"
    middle_x, middle_y = x + length / 2, y + height / 2

    def fits(wide: float, high: float) -> bool:
        free = (
            abs(at_x - middle_x) >= wide / 2 + _NUMBER or abs(at_y - middle_y) >= high / 2 + _NUMBER
            for at_x, at_y in spots
        )
        return wide + 4 <= length and high + 2 <= height and all(free)

    long_name, long_one = (frame.wide(words, _LABEL, bold=True) for words in (name, one))
    long_size = frame.wide(piece.size, _SMALL)
    if fits(max(long_name, long_size), 2 * _LABEL + 1):
        return _lines(piece, middle_x, middle_y), True
    if fits(long_one + 2, _LABEL):
        return _line(one, middle_x, middle_y), True
    if long_one > length and height > length:
        if fits(2 * _LABEL, long_name + 4):
            whole = fits(2 * _LABEL, long_size + 2)
            return _turned(piece, middle_x, middle_y, whole=whole), whole
        if fits(_LABEL, long_one + 4):
            return Text(middle_x + 4, middle_y, one, _LABEL, "middle", "ink strong board", -90), True
    if not _letter_fits(piece, frame):
        return Group(()), False
    shorter = (f"{piece.letter} {piece.size}", name)
    words = (more for more in shorter if fits(frame.wide(more, _LABEL, bold=True), _LABEL))
    return _line(next(words, piece.letter), middle_x, middle_y), False


def _lines(piece: PiecePicture, x: float, y: float) -> Group:
    return Group(
        (
            Text(x, y - 2, f"{piece.letter} {piece.name}", _LABEL, "middle", "ink strong board"),
            Text(x, y + _SMALL, piece.size, _SMALL, "middle", "ink board"),
        )
    )


def _line(words: str, x: float, y: float) -> Text:
    return Text(x, y + _LABEL * 0.36, words, _LABEL, "middle", "ink strong board")


def _turned(piece: PiecePicture, x: float, y: float, *, whole: bool) -> Group:
    """Return the label read from the right, for a piece that stands high and narrow.

    Args:
        whole: whether there is room for its size.
    """
    name = Text(
        x - 3 if whole else x + 4,
        y,
        f"{piece.letter} {piece.name}",
        _LABEL,
        "middle",
        "ink strong board",
        -90,
    )
    size = Text(x + _SMALL, y, piece.size, _SMALL, "middle", "ink board", -90)
    return Group((name, size) if whole else (name,))


def spread(wanted: list[float], apart: float, least: float, most: float) -> list[float]:
    """Return places near the wanted ones (which rise), at least `apart`, between two ends if they fit."""
    placed: list[float] = []
    for at in wanted:
        placed.append(max(at, placed[-1] + apart if placed else least))
    limit = most
    for i in range(len(placed) - 1, -1, -1):
        placed[i] = min(placed[i], limit)
        limit = placed[i] - apart
    return placed


def _leaders(
    pieces: list[PiecePicture], frame: _Frame, bottom: float, width: float
) -> tuple[list[Shape], float]:
    """Return letters below the board, each led to a piece too small to hold it."""
    if not pieces:
        return [], bottom
    ordered = sorted(pieces, key=lambda piece: (piece.x + piece.length / 2, piece.y))
    middles = [(frame.x(piece.x + piece.length / 2), frame.y(piece.y + piece.width / 2)) for piece in ordered]
    widest = max(frame.wide(piece.letter, _LABEL, bold=True) for piece in ordered) + 5
    places = spread([x for x, _ in middles], widest, 8, width - 8)
    shapes: list[Shape] = []
    for piece, (x, y), at in zip(ordered, middles, places, strict=True):
        shapes += [
            Line(x, y, at, bottom + 9, "thin"),
            Text(at, bottom + 19, piece.letter, _LABEL, "middle", "ink strong halo"),
        ]
    return shapes, bottom + 20


def _cuts(board: BoardPicture, frame: _Frame) -> list[Shape]:
    lines: list[Shape] = [
        Line(frame.x(cut.x1), frame.y(cut.y1), frame.x(cut.x2), frame.y(cut.y2), "cut") for cut in board.cuts
    ]
    upright_cuts = sorted(
        (cut for cut in board.cuts if cut.x1 == cut.x2), key=lambda cut: (cut.x1, cut.number)
    )
    high = [cut for cut in upright_cuts if not _is_inner(cut, board)]
    row = frame.top - _CIRCLE / 2 - 5
    right = frame.x(board.length)
    places = spread([frame.x(cut.x1) for cut in high], _CIRCLE, frame.left + 6, right)
    for cut, at in zip(high, places, strict=True):
        lines.append(Line(at, row, frame.x(cut.x1), frame.top, "thin"))
        lines.append(numbered(at, row, str(cut.number)))
    level = sorted((cut for cut in board.cuts if cut.y1 == cut.y2), key=lambda cut: (cut.y1, cut.number))
    edge = [cut for cut in level if not _is_inner(cut, board)]
    places = spread([frame.y(cut.y1) for cut in edge], _CIRCLE, frame.top, frame.y(board.width))
    for cut, at in zip(edge, places, strict=True):
        lines.append(Line(frame.left - 12, at, frame.left, frame.y(cut.y1), "thin"))
        lines.append(numbered(frame.left - 13, at, str(cut.number)))
    lines += [numbered(*_spot(cut, frame), str(cut.number), size=9) for cut in _inner_cuts(board)]
    return lines


def _is_inner(cut: CutPicture, board: BoardPicture) -> bool:
    """Return whether a cut begins inside the board, so that its number stands on the wood."""
    begins = min(cut.y1, cut.y2) if cut.x1 == cut.x2 else min(cut.x1, cut.x2)
    return begins >= 2 * board.kerf + 1e-9


def _inner_cuts(board: BoardPicture) -> list[CutPicture]:
    return [cut for cut in board.cuts if _is_inner(cut, board)]


def _spot(cut: CutPicture, frame: _Frame) -> Point:
    """Return where the number of a cut stands that begins inside the board: on its line."""
    x1, y1 = frame.x(min(cut.x1, cut.x2)), frame.y(min(cut.y1, cut.y2))
    if cut.x1 == cut.x2:
        return x1, y1 + min(9.0, abs(cut.y2 - cut.y1) * frame.upscale / 2)
    return x1 + min(9.0, abs(cut.x2 - cut.x1) * frame.scale / 2), y1


def _notes(
    board: BoardPicture, frame: _Frame, unnamed: list[PiecePicture], y: float
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
    unsaid = [offcut for offcut in board.offcuts if not _says_size(offcut, frame)]
    sizes = ", ".join(dict.fromkeys(offcut.size for offcut in unsaid))
    if unsaid:
        y += _KEY + 4
        lines = frame.lines(say("keep (dotted): {sizes}", sizes=sizes))
        shapes += [Text(_LEFT, y + i * 13, line, _KEY) for i, line in enumerate(lines)]
        y += (len(lines) - 1) * 13
    steps, y = _columns(steps_told(board.cuts), y + 2, frame, circled=True)
    cautions, y = _stacked(_cautions(board), y, frame, 20.0, circled=False)
    shapes += [*steps, *cautions]
    if frame.upscale > frame.scale * 1.01:
        y += _SMALL + 5
        times = local_marks(f"{frame.upscale / frame.scale:.1f}".removesuffix(".0"))
        words = say("The width is drawn {times} times as large as the length.", times=times)
        shapes.append(Text(_LEFT, y, words, _SMALL, look="soft"))
    return shapes, y


def _cautions(board: BoardPicture) -> list[tuple[str, str]]:
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
    entries: list[tuple[str, str]], y: float, frame: _Frame, *, circled: bool
) -> tuple[list[Shape], float]:
    """Return marks with their words in as many columns as there is room for, read down."""
    if not entries:
        return [], y
    indent = max(20.0, *(frame.wide(mark, _KEY, bold=True) + 6 for mark, _ in entries))
    widest = max(frame.wide(words, _KEY) for _, words in entries) + indent + 8
    columns = max(1, min(len(entries), int((frame.width - 2 * _LEFT + 8) // widest)))
    rows = -(-len(entries) // columns)
    room = (frame.width - 2 * _LEFT) / columns
    shapes: list[Shape] = []
    if columns == 1:
        return _stacked(entries, y, frame, indent, circled=circled)
    for i, (mark, words) in enumerate(entries):
        x, row = _LEFT + (i // rows) * room, y + (i % rows + 1) * 17
        shapes += [_mark(mark, x, row, circled=circled), Text(x + indent, row, words, _KEY)]
    return shapes, y + rows * 17


def _stacked(
    entries: list[tuple[str, str]], y: float, frame: _Frame, indent: float, *, circled: bool
) -> tuple[list[Shape], float]:
    shapes: list[Shape] = []
    for mark, words in entries:
        y += 17
        shapes.append(_mark(mark, _LEFT, y, circled=circled))
        for i, line in enumerate(frame.lines(words, indent)):
            y += 13 if i else 0
            shapes.append(Text(_LEFT + indent, y, line, _KEY))
    return shapes, y


def _mark(mark: str, x: float, y: float, *, circled: bool) -> Shape:
    if circled and "–" not in mark:
        return numbered(x + 8, y - 4, mark, size=9)
    return Text(x, y, mark, _KEY, look="red strong" if circled else "ink strong")
