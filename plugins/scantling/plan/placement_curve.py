"""What an edge that is sawn in an easy curve leaves of a part, as convex pieces."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.measure import Angle, cosine
from scantling.plan.placement_placed import Chunks, Cut, direction

_STEPS = 12
"""Straight lines in place of the curve; an even number."""
_Corner = tuple[Fraction, Fraction]
"""Of the line: how far from the part's end, and how deep the cut is there."""


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge of a part in its own box, which begins at 0, with one of its ends; all in inches."""

    axis: int
    """Along which it runs."""
    end: Fraction
    """Where it ends: at 0, or at the length of the part."""
    across: int
    """The axis on which a cut goes in from it."""
    place: Fraction
    """Where it lies on that axis: at 0, or at the width of the part."""

    def within(self, cut: _Corner, rise: Fraction) -> Cut:
        """Return the cut that keeps what lies below a corner of the line, as the line rises to the end."""
        off, gone = cut
        inwards, onwards = self._signs()
        most = -inwards * self.place - gone + rise * onwards * (self.end - onwards * off)
        return Cut(direction(self.axis, rise * onwards, self.across, -inwards), most)

    def farther(self, off: Fraction) -> Cut:
        """Return the cut that keeps what is farther from the end than so much."""
        return self._across(off, self._signs()[1])

    def nearer(self, off: Fraction) -> Cut:
        """Return the cut that keeps what is nearer to it."""
        return self._across(off, -self._signs()[1])

    def _across(self, off: Fraction, way: Fraction) -> Cut:
        at = self.end - self._signs()[1] * off
        return Cut(direction(self.axis, way, self.axis, way), way * at)

    def _signs(self) -> tuple[Fraction, Fraction]:
        """Return the ways into the part from the edge, and towards its end: 1 or -1."""
        return Fraction(-1 if self.place else 1), Fraction(1 if self.end else -1)


def easy_line(long: Fraction, deep: Fraction, steps: int) -> tuple[_Corner, ...]:
    """Return the corners of the line along which a curve is sawn, from the part's end to the edge.

    It is half a wave of the cosine: so it leaves both edges without a corner.

    Args:
        long: along the edge, in any unit.
        deep: into the part at its end, in the same.
        steps: how many straight lines stand for it.
    """
    return tuple(
        (long * step / steps, deep * (1 + cosine(Angle(Fraction(180 * step, steps)))) / 2)
        for step in range(steps + 1)
    )


def hollowed(edge: Edge, long: Fraction, deep: Fraction) -> Chunks:
    """Return what a curve leaves: nothing is gone where it begins, all of its depth at the part's end.

    Where the curve bulges, what is left is one piece with the rest of the part; where
    it is hollow, a piece for each straight line.

    Args:
        edge: the edge that is sawn.
        long: along the edge, in inches.
        deep: into the part at its end, in inches.
    """
    corners = easy_line(long, deep, _STEPS)
    lines = [edge.within(one, (one[1] - other[1]) / (other[0] - one[0])) for one, other in pairwise(corners)]
    half = _STEPS // 2
    offs = [off for off, _ in corners]
    hollow = ((edge.farther(offs[i]), edge.nearer(offs[i + 1]), lines[i]) for i in range(half))
    return ((edge.farther(offs[half]), *lines[half:]), *hollow)
