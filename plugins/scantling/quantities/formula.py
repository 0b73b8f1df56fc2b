"""What the room `formula` computes: the value of what an author writes."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="formula-value",
        title="Value of a formula",
        unit="any",
        meaning="What an expression over sizes and numbers comes to.",
        room="formula",
        keys=(
            "cut_list.length",
            "cut_list.width",
            "cut_list.thick",
            "overall.*",
        ),
    ),
)
