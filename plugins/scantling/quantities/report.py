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
    ),
    Quantity(
        id="board-feet-actual",
        title="Board feet, actual volume",
        unit="board feet",
        meaning="The volume of the boards as they are, in units of 144 cubic inches.",
        room="report",
    ),
    Quantity(
        id="sheet-area",
        title="Area of sheet goods",
        unit="sq ft",
        meaning="The area of the sheets to buy.",
        room="report",
    ),
    Quantity(
        id="weight",
        title="Weight",
        unit="lb, kg",
        meaning="The volume of the parts times the density of their wood.",
        room="report",
    ),
    Quantity(
        id="yield",
        title="Yield",
        unit="%",
        meaning="The part of the wood bought that ends up in the piece.",
        room="report",
    ),
    Quantity(
        id="cost",
        title="Cost",
        unit="cents",
        meaning="Quantities times unit prices, added up.",
        room="report",
    ),
)
