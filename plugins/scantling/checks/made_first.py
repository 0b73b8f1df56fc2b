"""Is every part cut, glued up and trimmed before it is used?"""

from __future__ import annotations

import re
from collections.abc import Iterator

from scantling.checks.building import building, is_glue
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import words_of
from scantling.fault import Note, Place, Severity
from scantling.plan import FittedPart, Prose, Quote
from scantling.words import say

_CUTTING = re.compile(r"\b(?:cut|crosscut|rip|saw)\b", re.IGNORECASE)
_CUTS_ALL = re.compile(
    r"\b(?:follow(?:ing)?|by|from|to) the (?:cut list|cut diagrams?|cutting diagrams?)\b"
    r"|\bcut (?:all|every|the) (?:the )?(?:part|piece|panel|board)s?\b"
)
"""A step that says so has cut every part, whatever a later one says of it."""
_ALL = ""
"""Stands for every part among the names of parts."""
_SENTENCE = re.compile(r"(?<=[.!?:;])\s+|\n\s*\n|\n\s*[-*]\s")
_MARK = re.compile("\ue000(\\d+)\ue001")
_SHAPED = ("length", "width", "count")


def _examine(subject: Subject) -> Iterator[Finding]:
    steps = building(subject)
    cut_in = subject.once("cut in", _cut_in)
    order = {step.step.place: index for index, step in enumerate(subject.fitted.steps)}
    for part in subject.fitted.parts:
        used = steps.first_use.get(part.id)
        if used is None:
            continue
        cut = [order[place] for place in cut_in.get(part.id, ()) if place in order]
        if cut and min(cut) > used and not any(order.get(place, used) < used for place in cut_in[_ALL]):
            yield _finding(subject, part, used, min(cut), say("is cut only in"), "uses")
        yield from _glued(subject, part, used)
        yield from _from_offcut(subject, part, used)


def _finding(subject: Subject, part: FittedPart, used: int, made: int, what: str, key: str) -> Finding:
    step, later = subject.fitted.steps[used], subject.fitted.steps[made]
    name = part.id
    place = next((use.place for use in step.step.uses if use.name == name), step.step.place.at(key))
    return Finding(
        say(
            "step {number} uses '{name}', which {what} step {later}",
            number=step.number,
            name=name,
            what=what,
            later=later.number,
        ),
        place,
        "change the order of the steps",
        (Note("it is made here", later.step.place),),
        about=(name,),
    )


def _glued(subject: Subject, part: FittedPart, used: int) -> Iterator[Finding]:
    """Yield a finding for a part that is glued up, where no step until its use has glue."""
    if part.part.glue_up is None:
        return
    glued = [
        index
        for index, needs in enumerate(building(subject).needs)
        if any(is_glue(subject, need.ware) for need in needs)
    ]
    if not glued or min(glued) > used:
        step = subject.fitted.steps[used]
        yield Finding(
            say(
                "'{part}' is glued up from {pieces}, but no step has glue before step {number} uses it",
                part=part.id,
                pieces=part.blank.pieces,
                number=step.number,
            ),
            part.part.place.at("glued up"),
            "add a step that glues it up, with the glue under 'needs:'",
            (Note("it is first used here", step.step.place),),
        )


def _from_offcut(subject: Subject, part: FittedPart, used: int) -> Iterator[Finding]:
    """Yield a finding for a part whose strip falls off something that is used only later."""
    source = building(subject).first_use.get(part.part.source.offcut_of)
    if source is not None and source > used:
        what = say(
            "is cut from what '{offcut_of}' leaves; that is used only in",
            offcut_of=part.part.source.offcut_of,
        )
        yield _finding(subject, part, used, source, what, "uses")


def _cut_in(subject: Subject) -> dict[str, list[Place]]:
    """Return the places of the steps whose words tell the reader to cut a part, by part."""
    found: dict[str, list[Place]] = {_ALL: []}
    for step in subject.plan.steps:
        if _CUTS_ALL.search(words_of(step.text)):
            found[_ALL].append(step.place)
        for name in dict.fromkeys(_cut_by(step.text)):
            found.setdefault(name, []).append(step.place)
    return found


def _cut_by(text: Prose) -> Iterator[str]:
    """Yield the parts whose length, width or count is quoted in a sentence about cutting."""
    quotes: list[Quote] = []
    written = []
    for piece in text.pieces:
        if isinstance(piece, Quote):
            written.append(f"\ue000{len(quotes)}\ue001")
            quotes.append(piece)
        else:
            written.append(piece)
    for sentence in _SENTENCE.split("".join(written)):
        if _CUTTING.search(sentence):
            for mark in _MARK.finditer(sentence):
                name, _, measure = quotes[int(mark[1])].formula.text.strip().rpartition(".")
                if measure in _SHAPED:
                    yield name


MADE_FIRST = Check(
    name="made-first",
    group="Order",
    title="Is every part made before it is used?",
    meaning="A part is used after it is cut, glued up or trimmed; a sentence that cuts it in a later step, "
    "or glue that comes later, tells that the steps changed places.",
    mend="change the order of the steps",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Compares the step that uses a part with the sentences that cut it and the glue that it takes."""
