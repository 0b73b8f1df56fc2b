"""Is everything that the author accepts still there to be accepted?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from scantling.fault import Fault, Place, Severity, did_you_mean
from scantling.plan import Plan

UNKNOWN = "accept-unknown"
"""Code of an `accept` that names no check."""
UNUSED = "accept-unused"
"""Code of one that silences nothing."""


def accepts_of(plan: Plan) -> Iterator[tuple[Place, str]]:
    """Yield place and check of every `accept` in a plan."""
    yield from _listed(Place(("accept",)), plan.accepts)
    for part in plan.parts.values():
        yield from _listed(part.place.at("accept"), part.accepts)
    for step in plan.steps:
        yield from _listed(step.place.at("accept"), step.accepts)


def _listed(place: Place, accepts: Mapping[str, str]) -> Iterator[tuple[Place, str]]:
    yield from ((place.at(name), name) for name in accepts)


def misnamed_accepts(plan: Plan, known: Iterable[str]) -> Iterator[Fault]:
    """Yield a warning for each `accept` that names no check."""
    known = tuple(known)
    for place, name in accepts_of(plan):
        if name not in known:
            message = f"there is no check called '{name}', so nothing is silenced here"
            help_line = did_you_mean(name, known, kind="checks")
            yield Fault(UNKNOWN, message, place.key(), help_line, severity=Severity.WARNING)


def unused_accepts(plan: Plan, known: Iterable[str], used: Iterable[Place]) -> Iterator[Fault]:
    """Yield a hint for each `accept` that silenced nothing over the whole range of sizes."""
    known, used = frozenset(known), frozenset(used)
    for place, name in accepts_of(plan):
        if name in known and place not in used:
            message = f"nothing is found that '{name}' would have to accept here"
            yield Fault(UNUSED, message, place.key(), "take the line out", severity=Severity.HINT)
