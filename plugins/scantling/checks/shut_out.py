"""Can each part still be put in when its step comes?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.boxes import CLOSE, Box, boxes, overlap
from scantling.checks.building import building
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import quoted
from scantling.fault import Note, Place, Severity

_WAYS = tuple((axis, sign) for axis in range(3) for sign in (1, -1))
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
    standing = [box for box in boxes(subject) if box.step is not None]
    told: set[str] = set()
    for box in standing:
        if box.part.id in told or box.step is None:
            continue
        before = [other for other in standing if other.step is not None and other.step < box.step]
        if not before:
            continue
        stops = [next((other for other in before if _stops(box, other, *way)), None) for way in _WAYS]
        stoppers = [other for other in stops if other is not None]
        if len(stoppers) == len(_WAYS):
            told.add(box.part.id)
            names = list(dict.fromkeys(other.part.id for other in stoppers))
            closed = max(other.step for other in stoppers if other.step is not None)
            yield _finding(subject, box.part.id, box.step, names, closed), box.part.id


def _stops(box: Box, other: Box, axis: int, sign: int) -> bool:
    """Return whether another box stands in the way of this one when it is drawn out along an axis."""
    across = [overlap(box, other, side) for side in range(3) if side != axis]
    if min(across) <= CLOSE:
        return False
    inside = overlap(box, other, axis)
    if inside > CLOSE:
        return _holds(box, other, axis, sign)
    beyond = other.centre[axis] - box.centre[axis]
    return beyond * sign > 0


def _holds(box: Box, other: Box, axis: int, sign: int) -> bool:
    """Return whether a part that is let into another is held there against a move along an axis.

    What is let in may slide along its groove, and be drawn out of it the way it came.
    """
    shared = [overlap(box, other, side) for side in range(3)]
    depth, along = shared.index(min(shared)), shared.index(max(shared))
    if axis == along:
        return False
    if axis == depth:
        return (other.centre[axis] - box.centre[axis]) * sign > 0
    return True


def _finding(subject: Subject, name: str, used: int, holders: list[str], closed: int) -> Finding:
    step, before = subject.fitted.steps[used], subject.fitted.steps[closed]
    place = next((use.place for use in step.step.uses if use.name == name), step.step.place)
    verb = "closes" if len(dict.fromkeys(holders)) == 1 else "close"
    return Finding(
        f"'{name}' cannot go in any more: {quoted(dict.fromkeys(holders))} {verb} its place "
        f"from step {before.number} on",
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
    "Grooves are read from the joins; where parts are placed, a straight way in is looked for along each axis.",
    mend="use the part in an earlier step",
    severity=Severity.FAULT,
    examine=_examine,
)
"""Looks for a way in for every part, past what earlier steps put there."""
