"""Are holes and screws far enough from edges and ends?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Place, Severity
from scantling.measure import Length
from scantling.plan import FittedPart, FittedWork
from scantling.words import mark, say

LEAST = Length.of_inches(Fraction(3, 8))
"""Least distance from the middle of a screw to an edge."""
HOLES = {"pocket holes", "holes", "shelf pin holes"}


def _examine(subject: Subject) -> Iterator[Finding]:
    for part in subject.fitted.parts:
        for work in part.work:
            if work.work.kind in HOLES and work.from_end is not None:
                words = _row(part, work)
                if words:
                    yield Finding(words, work.work.place.at("from end"), about=(part.id,))
    yield from _narrow(subject)


def _row(part: FittedPart, work: FittedWork) -> str:
    """Say how a row of holes comes too near an edge or leaves the part; "" if it does not."""
    assert work.from_end is not None
    side, room = _measured_along(part, work)
    least = LEAST if work.work.kind == "pocket holes" else Length(0)
    last = work.from_end + (work.apart or Length(0)) * (_in_a_row(work) - 1)
    kind = say(work.work.kind)
    if last > room:
        there = say(
            "{last} along '{part}', which is {room}",
            last=length(last),
            part=part.id,
            room=say(side, size=length(room)),
        )
        return say("the last of these {kind} would be {there}", kind=kind, there=there)
    nearest = min(work.from_end, room - last)
    if nearest < least:
        near = say("within {nearest} of an edge of '{part}'", nearest=length(nearest), part=part.id)
        return say(
            "these {kind} come {near}; {least} is the least", kind=kind, near=near, least=length(least)
        )
    return ""


def _in_a_row(work: FittedWork) -> int:
    count = work.count or 1
    columns = 2 if "two columns" in work.work.where.casefold() else 1
    return max(1, count // columns)


def _measured_along(part: FittedPart, work: FittedWork) -> tuple[str, Length]:
    """Return how the side is told along which holes follow each other, and its size."""
    across = work.work.kind == "pocket holes" and "edge" not in work.work.where.casefold()
    return (mark("{size} wide"), part.width) if across else (mark("{size} long"), part.length)


def _narrow(subject: Subject) -> Iterator[Finding]:
    """Yield a finding for each part so narrow that a screw through it is near both edges."""
    for join in subject.fitted.joins:
        first = subject.fitted.part(join.join.first)
        if first is None or join.join.how not in {"screws", "nails"} or not join.fasteners:
            continue
        narrow = min(first.width, first.length)
        if narrow < 2 * LEAST:
            place = Place((*join.join.place.path, "with"))
            yield Finding(
                say(
                    "'{first}' is {narrow} wide: a screw through it is within {half} of both edges and"
                    " may split it",
                    first=first.id,
                    narrow=length(narrow),
                    half=length(narrow / 2),
                ),
                place,
                "drill for the screws, or use glue and brads",
                about=(first.id, join.join.second),
            )


FASTENER_EDGE = Check(
    name="fastener-edge",
    group="Fasteners",
    title="Are holes and screws far enough from the edges?",
    meaning="A screw close to an edge or end splits the wood, and a row of holes that is longer than its "
    "part "
    "cannot be drilled.",
    mend="move the holes inward, or make fewer of them",
    severity=Severity.WARNING,
    examine=_examine,
    source="3/8 in from the middle of a screw to an edge: common practice, no source",
)
"""Compares rows of holes, and screws through narrow parts, with the edges of the part."""
