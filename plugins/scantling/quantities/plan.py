"""What the room `plan` computes: a plan fitted to a size."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="counts",
        title="Counts of pieces and fasteners",
        unit="1",
        meaning="How many pieces, joints and fasteners a plan has, layers and joints multiplied out.",
        room="plan",
        keys=("cut_list.count", "cut_list.blank.pieces", "trace.count", "joins.joints", "joins.fasteners"),
    ),
    Quantity(
        id="blank-size",
        title="Size of a blank",
        unit="in, mm",
        meaning="The size to which a piece is cut first, with what is trimmed off later.",
        room="plan",
        keys=("blank.along", "blank.across", "pieces.length", "pieces.width"),
    ),
)
