"""What the room `geometry` computes: angles and places."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="brace-fit",
        title="Brace fitted into an opening",
        unit="in, mm, degrees",
        meaning="Slope, saw angle and length of a strip that fits an opening corner to corner.",
        room="geometry",
    ),
)
