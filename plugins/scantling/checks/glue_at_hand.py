"""Are glue and fasteners at hand together, for each glued join?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.building import Building, building, is_glue
from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Note, Severity
from scantling.plan import FittedJoin
from scantling.words import say


def _examine(subject: Subject) -> Iterator[Finding]:
    steps = building(subject)
    for join in subject.fitted.joins:
        start = steps.meets(join)
        if start is None or not (join.join.glue or "glue" in join.join.how):
            continue
        wanted = {join.fastener} if join.fasteners else set()
        if not any(
            any(is_glue(subject, ware) for ware in wares) and wanted <= wares for wares in _from(steps, start)
        ):
            yield _finding(subject, join, start)


def _from(steps: Building, start: int) -> Iterator[set[str]]:
    """Yield the wares that each step needs, from the one in which the parts meet."""
    yield from ({need.ware for need in needs} for needs in steps.needs[start:])


def _finding(subject: Subject, join: FittedJoin, start: int) -> Finding:
    step = subject.fitted.steps[start]
    pair = say("'{first}' and '{second}'", first=join.join.first, second=join.join.second)
    if join.fasteners:
        what = say(
            "{pair} are glued, but no step has the glue and '{fastener}' at hand together",
            pair=pair,
            fastener=join.fastener,
        )
    else:
        what = say(
            "{pair} are glued, but no step from number {number} on needs any glue",
            pair=pair,
            number=step.number,
        )
    return Finding(
        what,
        join.join.place.at("join"),
        "add the glue to the 'needs:' of the step that joins them",
        (Note("they come together in this step", step.step.place),),
        about=(join.join.first, join.join.second),
    )


GLUE_AT_HAND = Check(
    name="glue-at-hand",
    group="Counts",
    title="Are glue and fasteners at hand together?",
    meaning="Once the glue is spread there are minutes, not an errand's time, to find the screws.",
    mend="name glue and fasteners in the step that joins the parts",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Looks for a step that needs both the glue and the fasteners of each glued join."""
