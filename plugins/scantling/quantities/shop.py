"""What the room `shop` computes: what can be bought, at its true size."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="actual-size",
        title="Actual size of nominal lumber",
        unit="in, mm",
        meaning="The dry dressed thickness and width of a board that is sold by its nominal size.",
        room="shop",
        keys=(
            "materials.thick",
            "materials.width",
        ),
    ),
    Quantity(
        id="panel-size",
        title="Actual size of sheet goods",
        unit="in, mm",
        meaning="The thickness, length and width of a sheet that is sold by a nominal thickness.",
        room="shop",
    ),
)
