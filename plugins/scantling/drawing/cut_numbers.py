"""The cuts of a board, each with its number at the edge where it begins, or on the wood."""

from __future__ import annotations

from scantling.drawing.arrow import numbered
from scantling.drawing.board_picture import BoardPicture, CutPicture
from scantling.drawing.cut_frame import Frame
from scantling.drawing.cut_measures import CIRCLE
from scantling.drawing.shape import Line, Point, Shape
from scantling.drawing.spread import spread


def numbered_cuts(board: BoardPicture, frame: Frame) -> list[Shape]:
    """Return the lines of the cuts and their numbers."""
    lines: list[Shape] = [
        Line(frame.x(cut.x1), frame.y(cut.y1), frame.x(cut.x2), frame.y(cut.y2), "cut") for cut in board.cuts
    ]
    upright_cuts = sorted(
        (cut for cut in board.cuts if cut.x1 == cut.x2), key=lambda cut: (cut.x1, cut.number)
    )
    high = [cut for cut in upright_cuts if not _is_inner(cut, board)]
    row = frame.top - CIRCLE / 2 - 5
    right = frame.x(board.length)
    places = spread([frame.x(cut.x1) for cut in high], CIRCLE, frame.left + 6, right)
    for cut, at in zip(high, places, strict=True):
        lines.append(Line(at, row, frame.x(cut.x1), frame.top, "thin"))
        lines.append(numbered(at, row, str(cut.number)))
    level = sorted((cut for cut in board.cuts if cut.y1 == cut.y2), key=lambda cut: (cut.y1, cut.number))
    edge = [cut for cut in level if not _is_inner(cut, board)]
    places = spread([frame.y(cut.y1) for cut in edge], CIRCLE, frame.top, frame.y(board.width))
    for cut, at in zip(edge, places, strict=True):
        lines.append(Line(frame.left - 12, at, frame.left, frame.y(cut.y1), "thin"))
        lines.append(numbered(frame.left - 13, at, str(cut.number)))
    lines += [numbered(*_spot(cut, frame), str(cut.number), size=9) for cut in _inner_cuts(board)]
    return lines


def inner_spots(board: BoardPicture, frame: Frame) -> list[Point]:
    """Return the middles of the numbers that stand on the wood."""
    return [_spot(cut, frame) for cut in _inner_cuts(board)]


def _is_inner(cut: CutPicture, board: BoardPicture) -> bool:
    """Return whether a cut begins inside the board, so that its number stands on the wood."""
    begins = min(cut.y1, cut.y2) if cut.x1 == cut.x2 else min(cut.x1, cut.x2)
    return begins >= 2 * board.kerf + 1e-9


def _inner_cuts(board: BoardPicture) -> list[CutPicture]:
    return [cut for cut in board.cuts if _is_inner(cut, board)]


def _spot(cut: CutPicture, frame: Frame) -> Point:
    """Return where the number of a cut stands that begins inside the board: on its line."""
    x1, y1 = frame.x(min(cut.x1, cut.x2)), frame.y(min(cut.y1, cut.y2))
    if cut.x1 == cut.x2:
        return x1, y1 + min(9.0, abs(cut.y2 - cut.y1) * frame.upscale / 2)
    return x1 + min(9.0, abs(cut.x2 - cut.x1) * frame.scale / 2), y1
