"""Do the placed parts go together: no clashes, joins that meet, sizes that hold, doors that open?"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.drawing import check_fit, make_bodies
from scantling.fault import Fault, Severity


def _faults(subject: Subject) -> tuple[Fault, ...]:
    return subject.here("placed fit", _find)


def _find(subject: Subject) -> tuple[Fault, ...]:
    fitted = subject.fitted
    if not any(part.placed for part in fitted.parts):
        return tuple(fault for fault in check_fit(fitted, ()) if fault.code == BREAKS_THROUGH.name)
    return tuple(check_fit(fitted, make_bodies(fitted)))


def _told_as(code: str) -> Callable[[Subject], Iterator[Finding]]:
    def examine(subject: Subject) -> Iterator[Finding]:
        for fault in _faults(subject):
            if fault.code == code:
                yield Finding(fault.message, fault.place, fault.help, fault.notes, fault.severity)

    return examine


def _check(name: str, title: str, meaning: str, mend: str, *, group: str = "Order") -> Check:
    return Check(name, group, title, meaning, mend, Severity.FAULT, _told_as(name))


PARTS_CLASH = _check(
    "parts-clash",
    "Does no part stand in another?",
    "Two pieces of wood cannot be in one place. What a join lets in, as a dado does, may stand in the "
    "other by the join's depth.",
    "move one of them, or let it in with a join",
)
"""Looks for placed parts that stand in each other."""
LET_IN_TOO_DEEP = _check(
    "let-in-too-deep",
    "Does what is let in go as deep as its join says?",
    "A tongue that is placed deeper than its dado does not close.",
    "move one of the parts, or mend the join's depth",
)
"""Compares how deep placed parts stand in each other with their join."""
JOIN_APART = _check(
    "join-apart",
    "Do joined parts meet, as often as they are joined?",
    "A join between parts that do not touch is a slip in a place or in the join.",
    "see where the parts are placed, or mend the join",
)
"""Counts the places at which joined parts meet."""
OVERALL_SIZE = _check(
    "overall-size",
    "Is the whole as large as it says?",
    "A reader measures the niche by the overall sizes.",
    "mend the places, or name what gives the size under 'overall:'",
    group="Counts",
)
"""Compares what the placed parts come to with the overall sizes."""
PATH_BLOCKED = _check(
    "path-blocked",
    "Do doors and drawers open?",
    "A part that slides or swings needs its way free.",
    "make room in front of it, or move one of them",
)
"""Looks for what stands in the way of what opens."""
BREAKS_THROUGH = _check(
    "breaks-through",
    "Does no groove or hole go through its board?",
    "A blind hole or a groove as deep as its board is thick comes out on the other side.",
    "make it less deep",
    group="Wood",
)
"""Compares the depth of blind work with the board."""
PLACED_FIT = (PARTS_CLASH, LET_IN_TOO_DEEP, JOIN_APART, OVERALL_SIZE, PATH_BLOCKED, BREAKS_THROUGH)
"""Every check of this file."""
