"""What the room `checks` computes: the checks of a plan."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = ()
