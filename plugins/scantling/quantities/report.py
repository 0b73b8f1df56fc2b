"""What the room `report` computes: materials, cost, weight."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="board-feet-nominal",
        title="Board feet, nominal",
        unit="board feet",
        meaning="Board feet as lumber is sold: nominal thickness and width times length.",
        room="report",
        keys=("board_feet_nominal",),
    ),
    Quantity(
        id="board-feet-actual",
        title="Board feet, actual volume",
        unit="board feet",
        meaning="The volume of the boards as they are, in units of 144 cubic inches.",
        room="report",
        keys=("board_feet_actual",),
    ),
    Quantity(
        id="sheet-area",
        title="Area of sheet goods",
        unit="sq ft",
        meaning="The area of the sheets to buy.",
        room="report",
        keys=("sheet_area",),
    ),
    Quantity(
        id="weight",
        title="Weight",
        unit="lb, kg",
        meaning="The volume of the parts times the density of their wood.",
        room="report",
        keys=("weight",),
    ),
    Quantity(
        id="yield",
        title="Yield",
        unit="%",
        meaning="The part of the wood bought that ends up in the piece.",
        room="report",
        keys=("yield",),
    ),
    Quantity(
        id="cost",
        title="Cost",
        unit="cents",
        meaning="Quantities times unit prices, added up.",
        room="report",
        keys=(
            "totals.cost",
            "totals.wood_cost",
            "materials.cost",
        ),
    ),
    Quantity(
        id="quantity-to-buy",
        title="Quantity to buy",
        unit="1",
        meaning="What is needed of one thing, and that in whole boards, sheets, boxes or rolls.",
        room="report",
        keys=("materials.quantity", "materials.needed", "totals.sheets"),
    ),
)
