"""What the room `geometry` computes: angles and places."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = ()
