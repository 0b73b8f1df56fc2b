"""What the room `calculators` computes: the calculators."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = ()
