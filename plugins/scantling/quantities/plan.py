"""What the room `plan` computes: a plan fitted to a size."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = ()
