"""Step pictures: the piece as built so far, what a step adds picked out, and how it goes on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.drawing.arrow import arrow
from scantling.drawing.body import Body
from scantling.drawing.callout import Entry, callouts, find_targets, key_lines
from scantling.drawing.corner_view import bounds, key_words
from scantling.drawing.model import Model
from scantling.drawing.shape import Scene, Shape
from scantling.drawing.stage import Room, Stage, draw, set_stage
from scantling.drawing.unseen import dashed, hidden_targets, unseen
from scantling.geometry import Vector
from scantling.plan import FittedStep
from scantling.words import mark, say

_MOST_ARROWS = 6
_REACH = 0.16
"""Length of an arrow as a part of the piece's longest side."""
_OUTSIDE = 0.75
"""A part is at the outside if its middle is so far from the middle, as a part of half the size."""
_FAR, _TOUCH = 1e6, 1e-3
_WAYS: tuple[Vector, ...] = (
    (0.0, 0.0, 1.0),
    (0.0, -1.0, 0.0),
    (0.0, 1.0, 0.0),
    (1.0, 0.0, 0.0),
    (-1.0, 0.0, 0.0),
    (0.0, 0.0, -1.0),
)


@dataclass(frozen=True, slots=True)
class Built:
    """What stands when a step begins, and what it adds: numbers of bodies."""

    before: tuple[int, ...]
    new: tuple[int, ...]


def build_up(model: Model) -> tuple[Built, ...]:
    """Return for each step what stands before it and what it adds.

    A part is used up in the order of its instances.
    """
    waiting: dict[str, list[int]] = {}
    for number, body in enumerate(model.bodies):
        waiting.setdefault(body.part.id, []).append(number)
    built: list[int] = []
    stages = []
    for step in model.fitted.steps:
        new = _taken(step, waiting)
        stages.append(Built(tuple(built), tuple(new)))
        built += new
    return tuple(stages)


def _taken(step: FittedStep, waiting: dict[str, list[int]]) -> list[int]:
    new: list[int] = []
    for use in step.uses:
        left = waiting.get(use.name, [])
        new += left[: use.count]
        waiting[use.name] = left[use.count :]
    return new


def step_picture(
    model: Model, built: Built, number: int, *, width: float = 440.0, keyed: bool = True
) -> Scene | None:
    """Return the picture of one step, or None for a step that adds no part.

    Args:
        keyed: whether the letters are explained below it.
    """
    if not built.new:
        return None
    seen = model.corner.only({*built.before, *built.new})
    stage, _, high = set_stage(seen, Room(44, 30, width - 88, width * 0.85))
    shapes = draw(seen, stage, model.titles, picked=set(built.new))
    targets = find_targets(seen, stage, set(built.new))
    behind = unseen(seen, set(built.new), targets)
    shapes += dashed(behind, stage)
    shapes += _arrows(model, built, stage)
    targets += hidden_targets(seen, stage, behind)
    shapes += callouts(targets, 13, width - 13, 26, max(high + 30, 60))
    entries = _entries(model, built)
    key, y = key_lines(entries, high + 46, width) if keyed else ([], high + 22)
    added = "; ".join(entry.words for entry in entries)
    told = (
        mark("Step {number} adds to what stands already, hatched in the picture: {added}.")
        if built.before
        else mark("Step {number} adds first, hatched in the picture: {added}.")
    )
    return Scene(
        width,
        y + 10,
        (*shapes, *key),
        say("Step {number}", number=number),
        say(told, number=number, added=added) + (" " + say("Dashed: what others hide.") if behind else ""),
    )


def _entries(model: Model, built: Built) -> list[Entry]:
    counts: dict[str, int] = {}
    for number in built.new:
        name = model.bodies[number].part.id
        counts[name] = counts.get(name, 0) + 1
    parts = {part.id: part for part in model.fitted.parts}
    return [Entry(parts[name].letter, key_words(parts[name], count, model)) for name, count in counts.items()]


def _arrows(model: Model, built: Built, stage: Stage) -> list[Shape]:
    """Return arrows along which the new parts come, one for each kind and way."""
    if not built.before:
        return []
    low, high = bounds(model.bodies)
    reach = _REACH * max(b - a for a, b in zip(low, high, strict=True))
    drawn: dict[tuple[str, Vector], list[Body]] = {}
    for body, way in ways_in(model, built):
        drawn.setdefault((body.part.id, way), []).append(body)
    arrows = [_arrow(bodies[len(bodies) // 2], way, reach, stage) for (_, way), bodies in drawn.items()]
    return arrows[:_MOST_ARROWS]


def ways_in(model: Model, built: Built) -> list[tuple[Body, Vector]]:
    """Return new bodies with the side from which each can come without meeting what stands already.

    What slides along a groove has no such side and is left out.

    A part at the outside comes from there. Others of a kind come all from the side that is free for most
    of them: from above, from the front, from behind, from the right, the left, or from below.
    """
    before = [model.bodies[i] for i in built.before]
    base = bounds(tuple(before))
    kinds: dict[str, list[Body]] = {}
    for number in built.new:
        kinds.setdefault(model.bodies[number].part.id, []).append(model.bodies[number])
    found = []
    for bodies in kinds.values():
        free = {body.placed.number: [way for way in _WAYS if _is_free(body, way, before)] for body in bodies}
        usual = max(_WAYS, key=lambda way: sum(way in ways for ways in free.values()))
        for body in bodies:
            outer, ways = _outer_side(body, base), free[body.placed.number]
            way = outer if outer in ways else usual
            if way is not None and way in ways:
                found.append((body, way))
    return found


def _outer_side(body: Body, base: tuple[Vector, Vector]) -> Vector | None:
    """Return the side on which a part lies at the outside of what stands, or None if it lies within."""
    best, outer = _OUTSIDE, None
    for way in _WAYS:
        axis = next(i for i in range(3) if way[i])
        half = (base[1][axis] - base[0][axis]) / 2 or 1.0
        off = (body.middle[axis] - (base[0][axis] + base[1][axis]) / 2) / half * way[axis]
        if off > best:
            best, outer = off, way
    return outer


def _is_free(body: Body, way: Vector, before: Sequence[Body]) -> bool:
    """Return whether the body, moved far out that way, meets nothing on its path.

    What it is let into, or what is let into it, is in the way only where it reaches farther out.
    """
    axis = next(i for i in range(3) if way[i])
    low, high = list(body.low), list(body.high)
    if way[axis] > 0:
        low[axis], high[axis] = high[axis], _FAR
    else:
        low[axis], high[axis] = -_FAR, low[axis]
    return not any(
        all(other.low[i] < high[i] - _TOUCH and other.high[i] > low[i] + _TOUCH for i in range(3))
        for other in before
    )


def _arrow(body: Body, way: Vector, reach: float, stage: Stage) -> Shape:
    middle = body.middle
    axis = next(i for i in range(3) if way[i])
    edge = list(middle)
    edge[axis] = body.high[axis] if way[axis] > 0 else body.low[axis]
    start = list(edge)
    start[axis] += way[axis] * reach
    x1, y1 = stage.at((start[0], start[1], start[2]))
    x2, y2 = stage.at((edge[0], edge[1], edge[2]))
    return arrow(x1, y1, x2, y2, head=9)


def step_pictures(model: Model, *, width: float = 440.0, keyed: bool = True) -> Sequence[Scene | None]:
    """Return the picture of each step, None where a step adds no part."""
    return [
        step_picture(model, built, step.number, width=width, keyed=keyed)
        for built, step in zip(build_up(model), model.fitted.steps, strict=True)
    ]
