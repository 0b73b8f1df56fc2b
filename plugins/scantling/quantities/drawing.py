"""What the room `drawing` computes: drawings."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="model-3d",
        title="Parts in the 3-D file",
        unit="m",
        meaning="Size, place and volume of each part in the 3-D file of a plan.",
        room="drawing",
    ),
)
