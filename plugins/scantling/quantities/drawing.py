"""What the room `drawing` computes: drawings."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="saw-setting",
        title="Saw settings on cut diagrams",
        unit="in, mm",
        meaning="What the fence or the stop is set to for each cut of a board, in the order of the cuts.",
        room="drawing",
        keys=("cuts.setting",),
    ),
    Quantity(
        id="model-3d",
        title="Parts in the 3-D file",
        unit="m",
        meaning="Size, place and volume of each part in the 3-D file of a plan.",
        room="drawing",
    ),
    Quantity(
        id="full-size",
        title="Full-size templates and the check ruler",
        unit="in, mm",
        meaning="How large a template and the ruler beside it come out when printed at 100 %.",
        room="drawing",
    ),
)
