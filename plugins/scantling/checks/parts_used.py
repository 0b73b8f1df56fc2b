"""Is every part used up by the steps, none twice, none never?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Note, Severity
from scantling.words import counted, say


def _examine(subject: Subject) -> Iterator[Finding]:
    if not subject.fitted.steps:
        return
    used: dict[str, int] = {}
    last: dict[str, Note] = {}
    for step in subject.fitted.steps:
        for use in step.uses:
            used[use.name] = used.get(use.name, 0) + use.count
            last[use.name] = Note("it is last used here", step.step.place)
    for part in subject.fitted.parts:
        count = used.get(part.id, 0)
        if count == 0:
            yield Finding(
                counted(
                    "no step uses '{part}' ({count} is cut)",
                    "no step uses '{part}' ({count} are cut)",
                    part.count,
                    part=part.id,
                ),
                part.part.place.key(),
                f"add 'uses: {part.id}' to the step that puts it in",
            )
        elif count != part.count:
            more = say("more than") if count > part.count else say("fewer than")
            yield Finding(
                say(
                    "the steps use {count} of '{part}', {more} the {wanted} that are cut",
                    count=count,
                    part=part.id,
                    more=more,
                    wanted=part.count,
                ),
                part.part.place.key(),
                "mend the counts after 'uses:'",
                (last[part.id],),
            )


PARTS_USED = Check(
    name="parts-used",
    group="Counts",
    title="Do the steps use up every part exactly?",
    meaning="A part that no step mentions is left over; one that is used twice is missing.",
    mend="say under each step what it uses up",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Counts what the steps use up against what is cut."""
