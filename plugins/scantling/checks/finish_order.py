"""Does the finish go on when it should: after the glue, and before a panel is closed in?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.building import building, kind_of
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.wood_movement import WIDE, swells
from scantling.fault import Note, Severity
from scantling.words import say

FINISH = "finish"


def _examine(subject: Subject) -> Iterator[Finding]:
    finished = [
        index
        for index, needs in enumerate(building(subject).needs)
        if any(kind_of(subject, need.ware) == FINISH for need in needs)
    ]
    if finished:
        yield from _glued_on_finish(subject, finished[0])
        yield from _closed_in_bare(subject, finished[0])


def _glued_on_finish(subject: Subject, finished: int) -> Iterator[Finding]:
    """Yield a finding for each glued join of two parts that were finished before they met."""
    steps = building(subject)
    note = Note("the finish goes on here", subject.fitted.steps[finished].step.place)
    for join in subject.fitted.joins:
        meet = steps.meets(join)
        if meet is not None and meet > finished and (join.join.glue or "glue" in join.join.how):
            number = subject.fitted.steps[meet].number
            pair = join.join.first, join.join.second
            yield Finding(
                say(
                    "'{first}' and '{second}' are glued in step {number}, after the finish: glue does not "
                    "hold on it",
                    first=pair[0],
                    second=pair[1],
                    number=number,
                ),
                join.join.place.at("join"),
                "finish it once all is glued, or say that these faces are left bare, and accept this",
                (note,),
                about=pair,
            )


def _closed_in_bare(subject: Subject, finished: int) -> Iterator[Finding]:
    """Yield a hint for each solid panel that goes into its grooves before it has any finish."""
    steps = building(subject)
    for name in dict.fromkeys(join.join.first for join in subject.fitted.joins if join.join.how == "groove"):
        part, used = subject.fitted.part(name), steps.first_use.get(name)
        if part is None or used is None or used >= finished:
            continue
        if part.width >= WIDE and swells(part, subject.shop) is not None:
            number = subject.fitted.steps[used].number
            yield Finding(
                say(
                    "'{name}' is closed in by step {number} without a finish, and shows a bare edge when "
                    "it shrinks",
                    name=name,
                    number=number,
                ),
                part.part.place.key(),
                "finish the panel before that step",
                severity=Severity.HINT,
            )


FINISH_ORDER = Check(
    name="finish-order",
    group="Order",
    title="Does the finish go on in its turn?",
    meaning="Glue does not hold on varnish, oil or paint, so that what is glued is glued first. A solid "
    "panel in a frame "
    "is finished before it is closed in: in the dry months it shrinks, and an edge that no brush could "
    "reach comes out.",
    mend="change the order of the steps",
    severity=Severity.WARNING,
    examine=_examine,
    source="common practice, no source",
)
"""Compares the step of the finish with the glued joins, and with panels in grooves."""
