"""What an edge that is sawn in an easy curve leaves of a part, as convex pieces."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.measure import Angle, cosine
from scantling.plan.placement_placed import Chunks, Cut, direction

_STEPS = 12
"""Straight lines in place of the curve; an even number."""
_NEAR_END = re.compile(r"\b(?:lower|bottom|left|front) end\b")
_FAR_END = re.compile(r"\b(?:top|upper|right|back) end\b")
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


def is_at_far_end(where: str) -> bool:
    """Return whether words name the top, right or back end alone: "front edge, at the top end"."""
    return bool(_FAR_END.search(where)) and not _NEAR_END.search(where)


def hollowed(edge: Edge, long: Fraction, deep: Fraction) -> Chunks:
    """Return what a curve leaves: nothing is gone where it begins, all of its depth at the part's end.

    The curve is half a wave. Where it bulges, what is left is one piece with the rest of the part; where
    it is hollow, a piece for each straight line.

    Args:
        edge: the edge that is sawn.
        long: along the edge, in inches.
        deep: into the part at its end, in inches.
    """
    corners = [(long * step / _STEPS, deep * _share(step)) for step in range(_STEPS + 1)]
    lines = [edge.within(one, (one[1] - other[1]) / (other[0] - one[0])) for one, other in pairwise(corners)]
    half = _STEPS // 2
    offs = [off for off, _ in corners]
    hollow = ((edge.farther(offs[i]), edge.nearer(offs[i + 1]), lines[i]) for i in range(half))
    return ((edge.farther(offs[half]), *lines[half:]), *hollow)


def _share(step: int) -> Fraction:
    """Return how much of the depth is gone at a corner: all at the end, none where the curve begins."""
    return (1 + cosine(Angle(Fraction(180 * step, _STEPS)))) / 2
