"""The whole piece seen from the corner, and taken apart."""

from __future__ import annotations

from scantling.drawing.body import Body, size_words
from scantling.drawing.callout import Entry, callouts, find_targets, key_lines
from scantling.drawing.dimension_line import slanted
from scantling.drawing.model import Model
from scantling.drawing.shape import Scene, Shape
from scantling.drawing.stage import Room, Stage, draw, look, set_stage
from scantling.geometry import CORNER, Vector
from scantling.plan import FittedPart
from scantling.words import say

_TALLEST = 1.15
"""A picture is at most so many times as high as it is wide."""


def corner_view(model: Model, *, width: float = 440.0, sizes: bool = True) -> Scene:
    """Return the piece as seen from its right front corner, a little above.

    Args:
        sizes: write the overall width, depth and height along its edges.
    """
    margin = 34.0 if sizes else 8.0
    room = Room(margin, 10, width - 2 * margin, width * _TALLEST)
    stage, _, high = set_stage(model.corner, room)
    shapes = draw(model.corner, stage, model.titles)
    if sizes:
        shapes += _sizes(model, stage)
    title = say("{plan}, from the corner", plan=model.fitted.plan.title)
    return Scene(width, high + (46 if sizes else 20), tuple(shapes), title, _told(model))


def _told(model: Model) -> str:
    parts = ", ".join(f"{part.count} {part.id}" for part in model.fitted.parts)
    return say("The finished piece seen from its right front corner: {parts}.", parts=parts)


def _sizes(model: Model, stage: Stage) -> list[Shape]:
    low, high = bounds(model.bodies)
    exact = [last - first for first, last in model.spans]
    x1, y1, z1 = low
    x2, y2, z2 = high
    lines = (
        ((x1, y1, z1), (x2, y1, z1), exact[0], (0.0, 17.0)),
        ((x2, y1, z1), (x2, y2, z1), exact[1], (8.0, 15.0)),
        ((x1, y1, z1), (x1, y1, z2), exact[2], (-17.0, 0.0)),
    )
    return [
        slanted(stage.at(one), stage.at(other), model.display.length(length), off)
        for one, other, length, off in lines
    ]


def bounds(bodies: tuple[Body, ...]) -> tuple[Vector, Vector]:
    """Return the corners of the box around all bodies."""
    low = tuple(min(body.low[i] for body in bodies) for i in range(3))
    high = tuple(max(body.high[i] for body in bodies) for i in range(3))
    return (low[0], low[1], low[2]), (high[0], high[1], high[2])


def exploded_view(model: Model, *, width: float = 440.0, apart: float = 0.7, keyed: bool = True) -> Scene:
    """Return the parts pulled away from the middle, each kind with its letter, and the key to them.

    Args:
        apart: how much farther from the middle each part is than in its place.
        keyed: whether the letters are explained below it.
    """
    low, high = bounds(model.bodies)
    middle = tuple((a + b) / 2 for a, b in zip(low, high, strict=True))
    moved = []
    for body in model.bodies:
        here = body.middle
        moved.append(
            body.moved(
                (
                    (here[0] - middle[0]) * apart,
                    (here[1] - middle[1]) * apart * 1.4,
                    (here[2] - middle[2]) * apart,
                )
            )
        )
    seen = look(moved, CORNER)
    stage, _, tall = set_stage(seen, Room(34, 12, width - 68, width * _TALLEST))
    shapes = draw(seen, stage, model.titles)
    targets = find_targets(seen, stage, range(len(moved)))
    lowest = max(tall, 24.0 * len(targets) / 2)
    shapes += callouts(targets, 13, width - 13, 18, lowest)
    entries = [Entry(part.letter, key_words(part, part.count, model)) for part in model.fitted.parts]
    key, y = key_lines(entries, lowest + 20, width) if keyed else ([], lowest + 6)
    title = say("{plan}, taken apart", plan=model.fitted.plan.title)
    parts = "; ".join(f"{entry.letter}, {entry.words}" for entry in entries)
    told = say("The parts pulled apart: {parts}.", parts=parts)
    return Scene(width, y + 10, (*shapes, *key), title, told)


def key_words(part: FittedPart, count: int, model: Model) -> str:
    """Return what the key says of a part: how many, its name, its size."""
    return f"{count} × {part.id}, {size_words(part, model.display)}"
