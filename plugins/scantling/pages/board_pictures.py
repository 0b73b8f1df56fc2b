"""What cut diagrams show of the boards of a cutting plan."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting import CutBoard, CutPiece, KeptOffcut
from scantling.drawing import BoardPicture, CutPicture, OffcutPicture, PiecePicture, cut_order
from scantling.measure import Display, Length
from scantling.report import Report
from scantling.words import say


def alike(boards: Sequence[CutBoard]) -> list[list[CutBoard]]:
    """Return boards in groups that are cut alike, in the order of each group's first."""
    groups: dict[object, list[CutBoard]] = {}
    for board in boards:
        layout = tuple((piece.part.id, piece.x, piece.y, piece.length, piece.width) for piece in board.pieces)
        groups.setdefault((board.sale.id, layout), []).append(board)
    return list(groups.values())


def board_picture(boards: Sequence[CutBoard], report: Report, display: Display) -> BoardPicture:
    """Return what a diagram shows of boards that are cut alike."""
    board = boards[0]
    return BoardPicture(
        name=board.name,
        size=board.sale.label,
        length=_number(board.sale.length),
        width=_number(board.sale.width),
        kerf=_number(report.shop.kerf),
        pieces=tuple(_piece(piece, display) for piece in board.pieces),
        cuts=_cuts(board, report, display),
        offcuts=tuple(OffcutPicture(*_box(offcut), _size(offcut, display)) for offcut in board.offcuts),
        length_shown=display.length(board.sale.length),
        width_shown=display.length(board.sale.width),
        like_this=len(boards),
        has_grain=board.stock.has_grain,
    )


def _cuts(board: CutBoard, report: Report, display: Display) -> tuple[CutPicture, ...]:
    order, letters = report.cutting.order, [piece.part.letter for piece in board.pieces]
    if board.raw.cuts is None:
        return ()
    return cut_order(board.raw.cuts, order.problem.kerf, letters, order.length, display.length)


def _piece(piece: CutPiece, display: Display) -> PiecePicture:
    part = piece.part
    return PiecePicture(
        *_box(piece), part.letter, part.id, _size(piece, display), part.id, _short(piece, display)
    )


def _short(piece: CutPiece, display: Display) -> str:
    """Return that a piece ends up narrower than asked, or ""."""
    if not piece.short_by.inches:
        return ""
    wide, asked = piece.part.blank.across - piece.short_by, piece.part.blank.across
    return say("ends up {width} wide, not {asked}", width=display.length(wide), asked=display.length(asked))


def _box(box: CutPiece | KeptOffcut) -> tuple[float, float, float, float]:
    return _number(box.x), _number(box.y), _number(box.length), _number(box.width)


def _size(box: CutPiece | KeptOffcut, display: Display) -> str:
    return f"{display.length(box.length)} × {display.length(box.width)}"


def _number(length: Length) -> float:
    return length.top / length.bottom
