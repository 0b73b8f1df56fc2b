"""What the room `measure` computes: lengths, areas, money and weights."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="inch-to-millimetre",
        title="Inches to millimetres and back",
        unit="in, mm",
        meaning="The same length in the other unit, exact.",
        room="measure",
    ),
    Quantity(
        id="foot-to-inch",
        title="Feet to inches",
        unit="ft, in",
        meaning="A length written in feet and inches, as inches.",
        room="measure",
    ),
    Quantity(
        id="read-length",
        title="Length as written",
        unit="in, mm",
        meaning="The exact length that a written one such as 7' 6 1/2\" means.",
        room="measure",
    ),
    Quantity(
        id="written-length",
        title="Length as shown",
        unit="in, mm",
        meaning="A length written to the nearest fraction of an inch or whole millimetre.",
        room="measure",
    ),
    Quantity(
        id="area",
        title="Area",
        unit="sq in, sq ft, m²",
        meaning="Length times width, and the same area in another unit.",
        room="measure",
        keys=("materials.area",),
    ),
    Quantity(
        id="board-foot",
        title="Board foot",
        unit="board feet",
        meaning="A volume of wood in units of 144 cubic inches.",
        room="measure",
    ),
    Quantity(
        id="weight-units",
        title="Pounds and kilograms",
        unit="lb, kg",
        meaning="The same weight in the other unit.",
        room="measure",
    ),
    Quantity(
        id="written-money",
        title="Money as shown",
        unit="currency",
        meaning="A sum in whole cents, written in the way of a locale.",
        room="measure",
    ),
    Quantity(
        id="surface-measure",
        title="Surface measure",
        unit="sq ft, board feet",
        meaning="A hardwood board's face in whole square feet, and the board feet that follow from it.",
        room="measure",
    ),
    Quantity(
        id="linear-feet",
        title="Linear feet",
        unit="ft",
        meaning="The length of pieces laid end to end.",
        room="measure",
        keys=("linear_feet",),
    ),
    Quantity(
        id="roots-and-angles",
        title="Roots, sines and angles",
        unit="1, in, deg",
        meaning="Square roots, diagonals, sines and the angles of slopes, to twelve decimals.",
        room="measure",
    ),
)
