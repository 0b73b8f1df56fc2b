"""What the room `cutting` computes: cutting plans."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="kerf-left",
        title="What a cut leaves",
        unit="in, mm",
        meaning="What is left, and where the next piece starts, when strips and kerfs are taken off.",
        room="cutting",
        keys=(
            "pieces.x",
            "pieces.y",
            "from_offcuts.x",
            "offcuts.x",
            "offcuts.y",
            "offcuts.length",
            "offcuts.width",
            "cuts.x",
            "cuts.y",
            "cuts.length",
            "cuts.width",
        ),
    ),
    Quantity(
        id="pieces-in-stock",
        title="Pieces that fit a board",
        unit="1",
        meaning="How many pieces fit one board when each cut takes a kerf.",
        room="cutting",
    ),
    Quantity(
        id="cutting-cost",
        title="Least cost of stock",
        unit="cents",
        meaning="The price of the boards and sheets in a cutting plan.",
        room="cutting",
        keys=("cutting.cost",),
    ),
    Quantity(
        id="cutting-bound",
        title="Bound on the cost",
        unit="cents",
        meaning="A cost below which no cutting plan for the same parts exists.",
        room="cutting",
        keys=("cutting.bound",),
    ),
)
