"""What the room `checks` computes: the checks of a plan."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    Quantity(
        id="check-shelf-sag",
        title="Sag of a shelf, by the check of a plan",
        unit="in, mm",
        meaning="Deflection in the middle of a shelf on two supports, and half as much again over years.",
        room="checks",
    ),
    Quantity(
        id="check-movement",
        title="Seasonal movement, by the check of a plan",
        unit="in, mm",
        meaning="How much wider a solid panel is in the damp season than in the dry.",
        room="checks",
    ),
    Quantity(
        id="check-bite",
        title="Bite of a screw",
        unit="in, mm",
        meaning="How much of a fastener is left for the second part, and how long it is to be.",
        room="checks",
    ),
    Quantity(
        id="check-tipping",
        title="What tips a piece over",
        unit="lb",
        meaning="The pull at the top, or the load on an open drawer, at which a piece begins to tip.",
        room="checks",
    ),
    Quantity(
        id="check-heights",
        title="Heights for people",
        unit="in, mm",
        meaning="The heights with which seats, desks and counters are compared.",
        room="checks",
    ),
)
"""Every quantity of the room."""
