"""Which of a plan's formulas decide what is bought."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from scantling.formula import Formula
from scantling.plan.definitions import ATTRIBUTES
from scantling.plan.model import Plan

_OF_A_PART = (*ATTRIBUTES, "layers", "left angle", "right angle")


def names_to_buy(plan: Plan, formulas: Mapping[str, Formula]) -> set[str]:
    """Return the names that parts, joins and hardware are reckoned from, and all that those use in turn.

    Args:
        formulas: every formula of the plan by name.
    """
    found: set[str] = set()
    waiting = list(_first(plan))
    while waiting:
        name = waiting.pop()
        if name in formulas and name not in found:
            found.add(name)
            waiting += formulas[name].names
    return found


def _first(plan: Plan) -> Iterator[str]:
    for part in plan.parts:
        yield from (f"{part}.{name}" for name in _OF_A_PART)
    for join in plan.joins:
        yield from _used(join.only_if, join.each, join.joints, join.depth)
    for item in plan.hardware.values():
        yield from _used(item.only_if, item.count, item.area, item.length)


def _used(*formulas: Formula | None) -> Iterator[str]:
    for formula in formulas:
        yield from formula.names if formula is not None else ()
