"""The drawings of a plan page: which there are, their files, and words for who cannot see them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from scantling.cutting import CutBoard
from scantling.drawing import BoardPicture, OffcutPicture, PiecePicture, Scene, cut_diagram, to_svg, told
from scantling.measure import Display
from scantling.pages.html import slug
from scantling.report import Report


@dataclass(frozen=True, slots=True)
class Drawing:
    """One drawing as a file."""

    file: str
    """Its name beside the page."""
    svg: str
    alt: str
    width: int
    height: int


def as_drawing(name: str, scene: Scene, alt: str) -> Drawing:
    """Return a scene as a file named after `name`."""
    return Drawing(f"{slug(name)}.svg", to_svg(scene), alt, round(scene.width), round(scene.height))


def cut_drawings(report: Report, display: Display) -> tuple[Drawing, ...]:
    """Return the cut diagram of every board and sheet, those cut alike together."""
    alike: dict[object, list[CutBoard]] = {}
    for board in report.cutting.boards:
        alike.setdefault(_layout(board), []).append(board)
    made: dict[str, Drawing] = {}
    for boards in alike.values():
        drawing = _cut_drawing(boards, report, display)
        while drawing.file in made:
            drawing = replace(drawing, file=f"also-{drawing.file}")
        made[drawing.file] = drawing
    return tuple(made.values())


def overall_drawing(report: Report, display: Display) -> Drawing | None:
    """Return the outline of the finished piece, or None where its overall sizes are not known."""
    return None


def _layout(board: CutBoard) -> object:
    pieces = tuple((piece.part.id, piece.x, piece.y, piece.length, piece.width) for piece in board.pieces)
    return board.sale.id, pieces


def _cut_drawing(boards: list[CutBoard], report: Report, display: Display) -> Drawing:
    picture = _picture(boards, report, display)
    return as_drawing(f"cut {boards[0].name.replace(' no.', '')}", cut_diagram(picture), told(picture))


def _picture(boards: list[CutBoard], report: Report, display: Display) -> BoardPicture:
    board = boards[0]
    return BoardPicture(
        name=board.name,
        size=board.sale.label,
        length=float(board.sale.length.inches),
        width=float(board.sale.width.inches),
        kerf=float(report.shop.kerf.inches),
        pieces=tuple(
            PiecePicture(
                float(piece.x.inches),
                float(piece.y.inches),
                float(piece.length.inches),
                float(piece.width.inches),
                piece.part.letter,
                piece.part.id,
                f"{display.length(piece.length)} × {display.length(piece.width)}",
                piece.part.id,
            )
            for piece in board.pieces
        ),
        offcuts=tuple(
            OffcutPicture(
                float(piece.x.inches),
                float(piece.y.inches),
                float(piece.length.inches),
                float(piece.width.inches),
                f"{display.length(piece.length)} × {display.length(piece.width)}",
            )
            for piece in board.offcuts
        ),
        length_shown=display.length(board.sale.length),
        width_shown=display.length(board.sale.width),
        like_this=len(boards),
        has_grain=board.stock.has_grain,
    )
