"""What the room `drawing` computes: drawings."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = ()
