"""Can the screws still be driven into their pocket holes?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.boxes import Box, boxes, overlap
from scantling.checks.building import building
from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Note, Severity
from scantling.plan import FittedJoin
from scantling.words import say

ROOM = 3.0
"""Inches in front of a pocket hole in which nothing may stand: less than a driver takes (common practice)."""
_ZONE = 3.0
"""Inches from the end of a part in which its pocket holes lie."""
_COVERED = 0.5
_FACES = {
    "front": (1, -1),
    "back": (1, 1),
    "underside": (2, -1),
    "lower": (2, -1),
    "upper": (2, 1),
    "left": (0, -1),
    "right": (0, 1),
}
"""Words for faces, with the axis that each looks along and which way."""

Face = tuple[int, int]


def _examine(subject: Subject) -> Iterator[Finding]:
    standing = boxes(subject)
    if not standing:
        return
    for join in subject.fitted.joins:
        if join.join.how != "pocket screws":
            continue
        driven = _driven_in(subject, join)
        mine = [box for box in standing if box.part.id == join.join.first and box.is_whole]
        if driven is not None and mine and (cover := _cover(mine[0], standing, driven)) is not None:
            yield _finding(subject, join, cover, driven)


def _driven_in(subject: Subject, join: FittedJoin) -> int | None:
    """Return the first step from the parts' meeting on that needs the join's screws."""
    steps = building(subject)
    start = steps.meets(join)
    if start is None:
        return None
    later = range(start, len(steps.needs))
    return next((at for at in later if any(need.ware == join.fastener for need in steps.needs[at])), None)


def _cover(box: Box, standing: tuple[Box, ...], driven: int) -> Box | None:
    """Return what stands before the holes of a part, if every face that they may look from is covered."""
    before = [
        other for other in standing if other.step is not None and other.step < driven and other is not box
    ]
    drilled = [work.work.where.casefold() for work in box.part.work if work.work.kind == "pocket holes"] or [
        ""
    ]
    found = [
        _before_face(box, face, before, along="edge" in where)
        for where in drilled
        for face in _faces(box, standing, where)
    ]
    return found[0] if all(found) else None


def _faces(box: Box, standing: tuple[Box, ...], where: str) -> list[Face]:
    """Return the faces that pocket holes may be in: one where the words say it, else both wide ones."""
    axis = box.axes[2]
    if "inside" in where:
        middle = (min(one.low[axis] for one in standing) + max(one.high[axis] for one in standing)) / 2
        return [(axis, 1 if middle > box.centre[axis] else -1)]
    for word, face in _FACES.items():
        if word in where and face[0] == axis:
            return [face]
    return [(axis, 1), (axis, -1)]


def _before_face(box: Box, face: Face, others: list[Box], *, along: bool) -> Box | None:
    axis, sign = face
    for other in others:
        gap = other.low[axis] - box.high[axis] if sign > 0 else box.low[axis] - other.high[axis]
        if -1 / 64 <= gap < ROOM and _covers(box, other, along=along):
            return other
    return None


def _covers(box: Box, other: Box, *, along: bool) -> bool:
    """Return whether another box stands before either end of a part, over half of its width.

    Args:
        along: whether the holes run along an edge, so that most of the length must be covered.
    """
    length, width = box.axes[0], box.axes[1]
    if overlap(box, other, width) < _COVERED * (box.high[width] - box.low[width]):
        return False
    if along:
        return overlap(box, other, length) > _COVERED * (box.high[length] - box.low[length])
    zone = min(_ZONE, (box.high[length] - box.low[length]) / 2)
    at_low = min(other.high[length], box.low[length] + zone) - max(other.low[length], box.low[length])
    at_high = min(other.high[length], box.high[length]) - max(other.low[length], box.high[length] - zone)
    return max(at_low, at_high) > _COVERED * zone


def _finding(subject: Subject, join: FittedJoin, cover: Box, driven: int) -> Finding:
    step = subject.fitted.steps[driven]
    put = subject.fitted.steps[cover.step or 0]
    return Finding(
        say(
            "the pocket holes of '{first}' face '{part}', put in by step {number}, before their "
            "screws go in (step {driven})",
            first=join.join.first,
            part=cover.part.id,
            number=put.number,
            driven=step.number,
        ),
        join.join.place.at("join"),
        "drive these screws in an earlier step, or put the holes into another face",
        (Note("this step covers them", put.step.place),),
        about=(join.join.first, join.join.second),
    )


POCKET_COVERED = Check(
    name="pocket-covered",
    group="Order",
    title="Can a driver still reach the pocket holes?",
    meaning="Pocket holes that an earlier step has covered cannot be screwed. They are looked for where "
    "parts "
    "are placed, before the face that the work's 'where' names.",
    mend="drive these screws in an earlier step",
    severity=Severity.FAULT,
    examine=_examine,
    source="3 in of room before the hole, less than any driver takes: common practice, no source",
)
"""Looks for what stands before a pocket hole when its screw goes in."""
