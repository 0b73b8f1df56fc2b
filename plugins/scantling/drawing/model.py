"""A fitted plan made ready to be drawn: its bodies, and their order as seen from the corner."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cached_property

from scantling.drawing.body import Body, is_drawable, make_bodies, size_words
from scantling.drawing.cover import find_visible
from scantling.drawing.stage import Seen, look
from scantling.geometry import CORNER, FRONT, SIDE, TOP, View
from scantling.measure import Display, Length
from scantling.plan import FittedPlan

Span = tuple[Length, Length]
"""From where to where, exactly."""


@dataclass(frozen=True)
class Model:
    """What all pictures of a plan at one size are drawn from."""

    fitted: FittedPlan
    display: Display
    bodies: tuple[Body, ...]
    titles: tuple[str, ...]
    """What each body is called: "A leg, 16 1/2 in × 2 1/2 in × 2 1/2 in"."""
    spans: tuple[Span, Span, Span]
    """From where to where the whole reaches along x, y and z."""

    @cached_property
    def corner(self) -> Seen:
        """The bodies as seen from the corner, ordered once for all pictures that show them in place."""
        return look(self.bodies, CORNER)

    @cached_property
    def straight(self) -> Mapping[View, Seen]:
        """The bodies as seen straight from the front, the right side and above."""
        return {view: look(self.bodies, view) for view in (FRONT, SIDE, TOP)}

    @cached_property
    def in_sight(self) -> Mapping[View, Collection[int]]:
        """The numbers of the bodies that can be seen from each of these, be it only in part."""
        return {view: find_visible(seen) for view, seen in self.straight.items()}


def make_model(fitted: FittedPlan, display: Display | None = None) -> Model | None:
    """Return the model of a plan, or None where some part has no place."""
    if not is_drawable(fitted):
        return None
    shown = display or Display()
    bodies = make_bodies(fitted)
    words = {part.id: f"{part.letter} {part.id}, {size_words(part, shown)}" for part in fitted.parts}
    titles = tuple(words[body.part.id] for body in bodies)
    x, y, z = (_span(bodies, axis) for axis in range(3))
    return Model(fitted, shown, bodies, titles, (x, y, z))


def _span(bodies: tuple[Body, ...], axis: int) -> Span:
    first = min(bodies, key=lambda body: body.low[axis])
    last = max(bodies, key=lambda body: body.high[axis])
    return first.placed.low[axis], last.placed.high[axis]
