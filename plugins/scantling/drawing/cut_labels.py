"""What pieces on a board are called: on the wood as fully as there is room, or led to from below."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.drawing.board_picture import PiecePicture
from scantling.drawing.cut_frame import Frame
from scantling.drawing.cut_measures import LABEL, SMALL
from scantling.drawing.shape import Group, Line, Point, Shape, Text
from scantling.drawing.spread import spread

_NUMBER = 7.5
"""How far a number in its circle reaches on the wood; words keep off it."""


def letter_fits(piece: PiecePicture, frame: Frame) -> bool:
    """Return whether a piece is drawn large enough to hold its letter."""
    _, _, length, height = frame.box(piece)
    return length >= frame.wide(piece.letter, LABEL, bold=True) + 3 and height >= LABEL


def piece_label(piece: PiecePicture, frame: Frame, spots: Sequence[Point]) -> tuple[Shape, bool]:
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

    long_name, long_one = (frame.wide(words, LABEL, bold=True) for words in (name, one))
    long_size = frame.wide(piece.size, SMALL)
    if fits(max(long_name, long_size), 2 * LABEL + 1):
        return _lines(piece, middle_x, middle_y), True
    if fits(long_one + 2, LABEL):
        return _line(one, middle_x, middle_y), True
    if long_one > length and height > length:
        if fits(2 * LABEL, long_name + 4):
            whole = fits(2 * LABEL, long_size + 2)
            return _turned(piece, middle_x, middle_y, whole=whole), whole
        if fits(LABEL, long_one + 4):
            return Text(middle_x + 4, middle_y, one, LABEL, "middle", "ink strong board", -90), True
    if not letter_fits(piece, frame):
        return Group(()), False
    shorter = (f"{piece.letter} {piece.size}", name)
    words = (more for more in shorter if fits(frame.wide(more, LABEL, bold=True), LABEL))
    return _line(next(words, piece.letter), middle_x, middle_y), False


def _lines(piece: PiecePicture, x: float, y: float) -> Group:
    return Group(
        (
            Text(x, y - 2, f"{piece.letter} {piece.name}", LABEL, "middle", "ink strong board"),
            Text(x, y + SMALL, piece.size, SMALL, "middle", "ink board"),
        )
    )


def _line(words: str, x: float, y: float) -> Text:
    return Text(x, y + LABEL * 0.36, words, LABEL, "middle", "ink strong board")


def _turned(piece: PiecePicture, x: float, y: float, *, whole: bool) -> Group:
    """Return the label read from the right, for a piece that stands high and narrow.

    Args:
        whole: whether there is room for its size.
    """
    name = Text(
        x - 3 if whole else x + 4,
        y,
        f"{piece.letter} {piece.name}",
        LABEL,
        "middle",
        "ink strong board",
        -90,
    )
    size = Text(x + SMALL, y, piece.size, SMALL, "middle", "ink board", -90)
    return Group((name, size) if whole else (name,))


def led_letters(
    pieces: list[PiecePicture], frame: Frame, bottom: float, width: float
) -> tuple[list[Shape], float]:
    """Return letters below the board, each led to a piece too small to hold it."""
    if not pieces:
        return [], bottom
    ordered = sorted(pieces, key=lambda piece: (piece.x + piece.length / 2, piece.y))
    middles = [(frame.x(piece.x + piece.length / 2), frame.y(piece.y + piece.width / 2)) for piece in ordered]
    widest = max(frame.wide(piece.letter, LABEL, bold=True) for piece in ordered) + 5
    places = spread([x for x, _ in middles], widest, 8, width - 8)
    shapes: list[Shape] = []
    for piece, (x, y), at in zip(ordered, middles, places, strict=True):
        shapes += [
            Line(x, y, at, bottom + 9, "thin"),
            Text(at, bottom + 19, piece.letter, LABEL, "middle", "ink strong halo"),
        ]
    return shapes, bottom + 20
