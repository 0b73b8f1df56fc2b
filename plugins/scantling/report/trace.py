"""Where each piece comes from, and the cuts that free it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.cutting import CutBoard, CutPiece, CuttingPlan, OffcutPiece
from scantling.plan import FittedPart, FittedPlan


@dataclass(frozen=True, slots=True)
class Origin:
    """Blanks of one part that come from one board, or from the strips of another part."""

    part: FittedPart
    board: CutBoard | None
    pieces: tuple[CutPiece, ...]
    strips: tuple[OffcutPiece, ...]

    @property
    def count(self) -> int:
        """Return how many blanks come from there."""
        return len(self.pieces) + len(self.strips)

    @property
    def is_ripped(self) -> bool:
        """True if the blank is narrower than its board."""
        return self.board is not None and any(piece.width < self.board.sale.width for piece in self.pieces)


def trace(fitted: FittedPlan, cutting: CuttingPlan) -> tuple[Origin, ...]:
    """Return for each part, in the plan's order, the boards and strips that it comes from."""
    return tuple(origin for part in fitted.parts for origin in _origins(part, cutting))


def _origins(part: FittedPart, cutting: CuttingPlan) -> Iterator[Origin]:
    strips = tuple(piece for piece in cutting.from_offcuts if piece.part.id == part.id)
    if strips:
        yield Origin(part, None, (), strips)
    for board in cutting.boards:
        pieces = tuple(piece for piece in board.pieces if piece.part.id == part.id)
        if pieces:
            yield Origin(part, board, pieces, ())
