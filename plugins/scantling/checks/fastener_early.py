"""Are fasteners driven only once the parts that they hold are there?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.building import building
from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Note, Severity
from scantling.plan import FittedJoin
from scantling.words import say


def _examine(subject: Subject) -> Iterator[Finding]:
    listed: dict[str, int] = {}
    for item in subject.fitted.hardware:
        if item.hardware is not None:
            listed[item.ware] = listed.get(item.ware, 0) + int(item.count)
    joins: dict[str, list[tuple[int, FittedJoin]]] = {}
    steps = building(subject)
    for join in subject.fitted.joins:
        start = steps.meets(join)
        if join.fasteners and start is not None:
            joins.setdefault(join.fastener, []).append((start, join))
    driven: dict[str, int] = {}
    told: set[str] = set()
    for index, needs in enumerate(steps.needs):
        for need in needs:
            if need.ware not in joins or need.ware in told:
                continue
            driven[need.ware] = driven.get(need.ware, 0) + need.count
            ready = sum(join.fasteners for start, join in joins[need.ware] if start <= index)
            ready += listed.get(need.ware, 0)
            later = [(start, join) for start, join in joins[need.ware] if start > index]
            if driven[need.ware] > ready and later:
                told.add(need.ware)
                start, join = min(later, key=lambda pair: pair[0])
                there = subject.fitted.steps[start]
                yield Finding(
                    say(
                        "too early for {count} of '{ware}': '{first}' and '{second}' meet only in step "
                        "{number}",
                        count=need.count,
                        ware=need.ware,
                        first=join.join.first,
                        second=join.join.second,
                        number=there.number,
                    ),
                    need.use.place,
                    "move them to that step, or use the parts earlier",
                    (Note("the parts meet here", there.step.place),),
                )


FASTENER_EARLY = Check(
    name="fastener-early",
    group="Order",
    title="Are fasteners driven only when there is something to hold?",
    meaning="A step that asks for screws before both parts are there sends the reader looking for a part.",
    mend="name the fasteners in the step in which the parts meet",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Compares the fasteners of each step with the joins whose parts are together by then."""
