"""Can each part still be put in when its step comes?"""

from __future__ import annotations

import re
from collections.abc import Iterator

from scantling.checks.boxes import CLOSE, Box, Corner, boxes, overlap
from scantling.checks.building import building
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import quoted
from scantling.fault import Note, Place, Severity
from scantling.plan import FittedPart
from scantling.words import counted

Way = tuple[int, int]
"""An axis, and 1 or -1 for the way along it."""
_WAYS: tuple[Way, ...] = tuple((axis, sign) for axis in range(3) for sign in (1, -1))
_OPENS = re.compile(r"\b(?:doors?|drawers?|box|lids?|flaps?|leaf|leaves)\b")
_SIDES = 4
"""So many grooves hold a panel that cannot be taken out again."""


def _examine(subject: Subject) -> Iterator[Finding]:
    told: set[str] = set()
    for finding, name in (*_by_grooves(subject), *_by_places(subject)):
        if name not in told:
            told.add(name)
            yield finding


def _by_grooves(subject: Subject) -> Iterator[tuple[Finding, str]]:
    """Yield a finding for each panel that comes after all four pieces whose grooves hold it."""
    steps = building(subject)
    for part in subject.fitted.parts:
        used = steps.first_use.get(part.id)
        holders = [
            join.join.second
            for join in subject.fitted.joins
            if join.join.first == part.id and join.join.how == "groove"
        ]
        closed = [steps.last_use[name] for name in holders if name in steps.last_use]
        pieces = sum(one.count for one in subject.fitted.parts if one.id in holders)
        if used is not None and len(closed) == len(holders) and pieces >= _SIDES and max(closed) < used:
            yield _finding(subject, part.id, used, holders, max(closed)), part.id


def _by_places(subject: Subject) -> Iterator[tuple[Finding, str]]:
    """Yield a finding for each placed part that earlier ones leave no straight way in."""
    moving = subject.here("moving parts", _moving)
    fixed = (box for box in boxes(subject) if box.step is not None and box.part.id not in moving)
    standing = sorted(fixed, key=_step)
    room = _room_before(standing)
    for box in _first_and_last(standing):
        stoppers = None if _is_outside(box, room[_step(box)]) else _stoppers(box, standing)
        if stoppers is not None:
            names = list(dict.fromkeys(other.part.id for other in stoppers))
            yield _finding(subject, box.part.id, _step(box), names, max(map(_step, stoppers))), box.part.id


def _moving(subject: Subject) -> set[str]:
    """Return doors, drawers and what is fixed to them: they open, so that nothing is shut in by them."""
    found = {part.id for part in subject.fitted.parts if _opens(part)}
    pairs = [{join.join.first, join.join.second} for join in subject.fitted.joins]
    while more := {name for pair in pairs if pair & found for name in pair} - found:
        found |= more
    return found


def _opens(part: FittedPart) -> bool:
    return any(placed.opens for placed in part.placed) or bool(_OPENS.search(part.id.casefold()))


def _step(box: Box) -> int:
    return -1 if box.step is None else box.step


def _first_and_last(standing: list[Box]) -> list[Box]:
    """Return of each part, and each step that uses it, the first and the last instance."""
    first: dict[tuple[str, int], Box] = {}
    last: dict[tuple[str, int], Box] = {}
    for box in standing:
        first.setdefault((box.part.id, _step(box)), box)
        last[box.part.id, _step(box)] = box
    return [
        box for key, one in first.items() for box in ((one, last[key]) if last[key] is not one else (one,))
    ]


def _room_before(standing: list[Box]) -> dict[int, tuple[Corner, Corner]]:
    """Return for each step the corners of the room that all earlier parts take up together."""
    found: dict[int, tuple[Corner, Corner]] = {}
    low, high = [1e9] * 3, [-1e9] * 3
    for box in standing:
        found.setdefault(_step(box), ((low[0], low[1], low[2]), (high[0], high[1], high[2])))
        low, high = list(map(min, low, box.low)), list(map(max, high, box.high))
    return found


def _is_outside(box: Box, room: tuple[Corner, Corner]) -> bool:
    """Return whether a part reaches as far out, some way, as all that is there: it goes in from that side."""
    low, high = room
    return any(box.low[i] <= low[i] + CLOSE or box.high[i] >= high[i] - CLOSE for i in range(3))


def _stoppers(box: Box, standing: list[Box]) -> list[Box] | None:
    """Return what stops a part along each of the six ways; None where a way is free."""
    found: dict[Way, Box] = {}
    step = _step(box)
    for other in standing:
        if _step(other) >= step:
            break
        for way in _stopped(box, other):
            found.setdefault(way, other)
        if len(found) == len(_WAYS):
            return [found[way] for way in _WAYS]
    return None


def _stopped(box: Box, other: Box) -> tuple[Way, ...]:
    """Return the ways along which another box stands in the way of this one when it is drawn out."""
    shared = [overlap(box, other, axis) for axis in range(3)]
    apart = [axis for axis in range(3) if shared[axis] <= CLOSE]
    if len(apart) > 1:
        return ()
    if apart:
        return ((apart[0], _side(box, other, apart[0])),)
    # what is let in may slide along its groove, and be drawn out of it the way it came
    depth, along = shared.index(min(shared)), shared.index(max(shared))
    held = next((axis for axis in range(3) if axis not in {depth, along}), depth)
    return (depth, _side(box, other, depth)), (held, 1), (held, -1)


def _side(box: Box, other: Box, axis: int) -> int:
    """Return on which side of a part another one is: 1 if it is further along the axis, else -1."""
    return 1 if other.low[axis] + other.high[axis] > box.low[axis] + box.high[axis] else -1


def _finding(subject: Subject, name: str, used: int, holders: list[str], closed: int) -> Finding:
    step, before = subject.fitted.steps[used], subject.fitted.steps[closed]
    place = next((use.place for use in step.step.uses if use.name == name), step.step.place)
    holding = dict.fromkeys(holders)
    return Finding(
        counted(
            "'{name}' cannot go in any more: {holders} closes its place from step {number} on",
            "'{name}' cannot go in any more: {holders} close its place from step {number} on",
            len(holding),
            name=name,
            holders=quoted(holding),
            number=before.number,
        ),
        place,
        f"use '{name}' in an earlier step",
        (Note("its place is closed here", Place(before.step.place.path)),),
        about=(name,),
    )


SHUT_OUT = Check(
    name="shut-out",
    group="Order",
    title="Can every part still be put in when its turn comes?",
    meaning="A panel in four grooves, or a shelf between closed sides, only fits in before the last of them. "
    "Grooves are read from the joins; where parts are placed, a straight way in is looked for along each "
    "axis.",
    mend="use the part in an earlier step",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Looks for a way in for every part, past what earlier steps put there."""
