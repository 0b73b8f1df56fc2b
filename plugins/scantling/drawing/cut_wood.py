"""The wood of a cut diagram: pieces, and offcuts worth keeping."""

from __future__ import annotations

from scantling.drawing.board_picture import BoardPicture, OffcutPicture
from scantling.drawing.cut_frame import Frame
from scantling.drawing.cut_measures import SMALL
from scantling.drawing.grain import clip_level, level_grain
from scantling.drawing.shape import Group, Rectangle, Shape, Strokes, Text
from scantling.words import say


def wood(board: BoardPicture, frame: Frame) -> list[Shape]:
    """Return the board with its grain, its pieces and its offcuts."""
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


def _offcut(offcut: OffcutPicture, frame: Frame) -> Group:
    x, y, length, height = frame.box(offcut)
    box = Rectangle(x, y, length, height, "edge", "offcut")
    middle, words = x + length / 2, _offcut_words(offcut, frame)
    first = y + height / 2 + 3.5 - (len(words) - 1) * 6
    label = [Text(middle, first + i * 12, line, SMALL, "middle", "ink halo") for i, line in enumerate(words)]
    return Group((box, *label), title=say("kept offcut, {size}", size=offcut.size))


def _offcut_words(offcut: OffcutPicture, frame: Frame) -> list[str]:
    """Return "keep" and the size, on one line or more, as full as there is room for."""
    _, _, length, height = frame.box(offcut)
    along, _, over = offcut.size.partition(" × ")
    keep, whole = say("keep"), say("keep: {size}", size=offcut.size)
    folded = [keep, along, *([f"× {over}"] if over else [])]
    for lines in ([whole], [keep, offcut.size], folded, [offcut.size], [keep]):
        widest = max(frame.wide(line, SMALL) for line in lines)
        if widest + 6 <= length and height >= len(lines) * 12 + 2:
            return lines
    return []


def says_size(offcut: OffcutPicture, frame: Frame) -> bool:
    """Return whether an offcut is drawn large enough to hold its size."""
    return any(any(letter.isdigit() for letter in line) for line in _offcut_words(offcut, frame))
