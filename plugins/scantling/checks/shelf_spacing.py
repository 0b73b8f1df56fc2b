"""Is there room between the shelves for what stands on them?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.boxes import Box, boxes, overlap
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.checks.shelf_sag import is_shelf
from scantling.fault import Place, Severity
from scantling.measure import Length
from scantling.words import mark, say

LEAST, MOST = Length(7), Length(16)
NAMED = ("clear height", "shelf spacing", "shelf gap height")
"""Names by which a plan may say how much room there is above a shelf."""


def _examine(subject: Subject) -> Iterator[Finding]:
    if not any("book" in word.casefold() for word in (*subject.plan.tags, subject.plan.title)):
        return
    for name in NAMED:
        value = subject.fitted.values.get(name)
        if isinstance(value, Length):
            if not LEAST <= value <= MOST:
                section = "lengths" if name in subject.plan.lengths else "sizes"
                yield _finding(value, Place((section, name)))
            return
    yield from _placed(subject)


def _placed(subject: Subject) -> Iterator[Finding]:
    shelves = [box for box in boxes(subject) if is_shelf(box.part.id)]
    for one in shelves:
        above = [other for other in shelves if other.low[2] > one.high[2] and _is_over(other, one)]
        if above:
            gap = min(other.placed.low[2] - one.placed.high[2] for other in above)
            if not LEAST <= gap <= MOST:
                yield _finding(gap, one.part.part.place.key())
                return


def _is_over(other: Box, one: Box) -> bool:
    return min(overlap(one, other, 0), overlap(one, other, 1)) > 0


def _finding(gap: Length, place: Place) -> Finding:
    told = (
        mark("{gap} between shelves is little for books; 9 to 13 in is usual")
        if gap < LEAST
        else mark("{gap} between shelves is a lot for books; 9 to 13 in is usual")
    )
    return Finding(
        say(told, gap=length(gap)),
        place,
        "change how many shelves there are, or where they sit",
    )


SHELF_SPACING = Check(
    name="shelf-spacing",
    group="Strength and use",
    title="Is there room between the shelves?",
    meaning="Books are mostly 7 to 13 in high; shelves closer together or much further apart are of "
    "little use.",
    mend="change how many shelves there are, or where they sit",
    severity=Severity.HINT,
    examine=_examine,
    source="9 to 13 in of clear height: common practice, no source; a finding below 7 in or above 16 in",
)
"""Compares the room between shelves with the height of books."""
