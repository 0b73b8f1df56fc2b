"""What the room `words` computes: which wording goes with a number."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="counted-words",
        title="Words for a number",
        unit="1",
        meaning="Which wording of a language goes with a whole number.",
        room="words",
    ),
)
