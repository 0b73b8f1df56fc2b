"""The instances of a fitted plan as solids, ready to be looked at."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from scantling.geometry import Plane, Solid, Vector, box, clip
from scantling.measure import Display, Length
from scantling.plan import Cut, FittedPart, FittedPlan, Placed
from scantling.report import write_thick

MOST_BODIES = 300
"""A plan of more pieces is not drawn, nor checked for clashes: each is compared with each, at every size."""


@dataclass(frozen=True, slots=True)
class Body:
    """One instance of a part."""

    part: FittedPart
    placed: Placed
    solids: tuple[Solid, ...]
    """Its convex pieces; one for all but half-lapped and notched parts."""
    along: Vector
    """The direction of its length and grain."""
    low: Vector
    high: Vector

    @property
    def middle(self) -> Vector:
        """The middle of its box."""
        low, high = self.low, self.high
        return ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2)

    def moved(self, way: Vector) -> Body:
        """Return it somewhere else, as in an exploded view."""
        low = (self.low[0] + way[0], self.low[1] + way[1], self.low[2] + way[2])
        high = (self.high[0] + way[0], self.high[1] + way[1], self.high[2] + way[2])
        solids = tuple(solid.moved(way) for solid in self.solids)
        return Body(self.part, self.placed, solids, self.along, low, high)


def make_bodies(fitted: FittedPlan) -> tuple[Body, ...]:
    """Return every instance that has a place, part by part in the author's order."""
    return tuple(_body(part, placed) for part in fitted.parts for placed in part.placed)


def is_drawable(fitted: FittedPlan) -> bool:
    """Return whether every part has a place, and there are not too many pieces to draw in a moment."""
    if not fitted.parts or not all(part.placed for part in fitted.parts):
        return False
    return sum(len(part.placed) for part in fitted.parts) <= MOST_BODIES


def size_words(part: FittedPart, display: Display) -> str:
    """Return a part's size as lists write it: length × width × thickness."""
    sides = (display.length(part.length), display.length(part.width), write_thick(part.thick, display))
    return " × ".join(sides)


def _body(part: FittedPart, placed: Placed) -> Body:
    low, high = _floats(placed.low), _floats(placed.high)
    whole = _clipped(box(low, high), placed.cuts)
    if whole is None:
        pieces: tuple[Solid, ...] = ()
    elif placed.chunks:
        made = (_clipped(whole, chunk) for chunk in placed.chunks)
        pieces = tuple(piece for piece in made if piece is not None)
    else:
        pieces = (whole,)
    x, y, z = (float(part) for part in placed.along)
    return Body(part, placed, pieces, (x, y, z), low, high)


def _clipped(solid: Solid | None, cuts: Iterable[Cut]) -> Solid | None:
    for cut in cuts:
        if solid is None:
            return None
        x, y, z = cut.normal
        solid = clip(solid, Plane((float(x), float(y), float(z)), float(cut.most)))
    return solid


def _floats(corner: tuple[Length, Length, Length]) -> Vector:
    x, y, z = corner
    return x.top / x.bottom, y.top / y.bottom, z.top / z.bottom
