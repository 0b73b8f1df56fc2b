"""Small plans whose parts have places, as plain data."""

from __future__ import annotations

from typing import Any

from scantling.fault import Faulty
from scantling.measure import Length, read_length
from scantling.plan import USUAL, Choice, FittedPlan, Fitter, Placed, read_plan
from scantling.shop import read_shop
from tests.support.workshop import shop_data

WHOLE = {"width": "48 in", "depth": "20 in", "height": "30 in"}


def plan_data(parts: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Return a plan of these parts; each is a 2x4 and 24 in long unless it says otherwise."""
    filled = {name: {"from": "2x4", "length": "24 in", **fields} for name, fields in parts.items()}
    return {"title": "Frame", "sizes": dict(WHOLE), "parts": filled, **more}


def fit(parts: dict[str, Any], chosen: dict[str, str] | None = None, **more: Any) -> FittedPlan:
    """Return the fitted plan of these parts."""
    choice = (
        Choice({name: read_length(text) for name, text in (chosen or {}).items()}, {}) if chosen else USUAL
    )
    return Fitter(read_plan(plan_data(parts, **more), "frame"), read_shop(shop_data())).fit(choice)


def faults(parts: dict[str, Any], **more: Any) -> list[tuple[str, tuple[Any, ...], str]]:
    """Return the faults of these parts: code, where, and the characters that are marked."""
    data = plan_data(parts, **more)
    try:
        fit(parts, **more)
    except Faulty as faulty:
        return [(fault.code, fault.place.path, _marked(data, fault.place)) for fault in faulty.faults]
    return []


def _marked(data: Any, place: Any) -> str:
    for key in place.path:
        data = data[key]
    return data[place.start : place.end] if isinstance(data, str) else ""


def one(parts: dict[str, Any], name: str, number: int = 1, **more: Any) -> Placed:
    """Return one placed instance."""
    part = fit(parts, **more).part(name)
    assert part is not None
    return part.placed[number - 1]


def box(placed: Placed) -> tuple[float, ...]:
    """Return the six ends of a placed instance's box in inches: left, front, bottom, right, back, top."""
    return tuple(float(end.inches) for end in (*placed.low, *placed.high))


def boxes(parts: dict[str, Any], name: str, **more: Any) -> list[tuple[float, ...]]:
    """Return the boxes of all instances of a part."""
    part = fit(parts, **more).part(name)
    assert part is not None
    return [box(placed) for placed in part.placed]


def inches(number: int) -> Length:
    """Return so many inches."""
    return Length.of_inches(number)
