"""What notches, tapers and curves take off a part that is in its place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from scantling.plan.fitted import FittedPart, FittedWork
from scantling.plan.placement import HIGH, LOW
from scantling.plan.placement_curve import Edge, hollowed
from scantling.plan.placement_placed import Chunks, Cut, direction
from scantling.plan.work_reach import is_at_far_end

_NOTHING, _ONE = Fraction(0), Fraction(1)


@dataclass(frozen=True, slots=True)
class Worked:
    """A part that does not lean, with the axes along which its length, width and thickness run."""

    part: FittedPart
    axes: tuple[int, int, int]

    def measure(self, axis: int) -> Fraction:
        """Return how large it is along an axis, in inches."""
        sides = (self.part.length, self.part.width, self.part.thick)
        return sides[self.axes.index(axis)].inches

    def tapers(self) -> tuple[Cut, ...]:
        """Return the planes of its tapers, towards its foot or its left end, its box beginning at 0."""
        return tuple(cut for work in self.part.work if work.work.kind == "taper" for cut in self._taper(work))

    def _taper(self, work: FittedWork) -> Iterator[Cut]:
        long, deep = self._reach(work)
        if not (long and deep):
            return
        for axis, high in self._sides(work):
            # at the foot all of the depth is gone, at the taper's length above it nothing
            out = _ONE if high else -_ONE
            most = (self.measure(axis) if high else _NOTHING) - deep
            yield Cut(direction(self.axes[0], -deep / long, axis, out), most)

    def _reach(self, work: FittedWork) -> tuple[Fraction, Fraction]:
        """Return how long and how deep work is: without a length all along, without a depth nowhere."""
        long = self.measure(self.axes[0]) if work.length is None else work.length.inches
        return long, _NOTHING if work.depth is None else work.depth.inches

    def _sides(self, work: FittedWork) -> list[tuple[int, bool]]:
        """Return the sides that `where` names, each as its axis and whether it is the upper end."""
        words = work.work.where.replace(",", " ").split()
        across = self.axes[1:]
        if "inside" in words or "inner" in words:
            return [(axis, True) for axis in sorted(across)]
        named = [(LOW.index(word), False) for word in words if word in LOW]
        named += [(HIGH.index(word), True) for word in words if word in HIGH]
        return [(axis, high) for axis, high in named if axis in across]

    def chunks(self) -> Chunks:
        """Return the convex pieces into which its notches and curves part it, its box beginning at 0.

        `where` begins with the edge; of two notches without `apart`, the second is as far from the other end.
        """
        chunks: Chunks = ()
        for pieces in self._parted():
            chunks = tuple((*chunk, *piece) for chunk in chunks for piece in pieces) or pieces
        return chunks

    def _parted(self) -> Iterator[Chunks]:
        for work in self.part.work:
            if work.work.kind == "notch":
                yield from self._beside(work)
            elif work.work.kind == "curve":
                yield from self._hollowed(work)

    def _hollowed(self, work: FittedWork) -> Iterator[Chunks]:
        """Yield what a curve leaves; at the end where it runs out all of its depth is gone."""
        long, deep = self._reach(work)
        if not (long and deep):
            return
        end = self.measure(self.axes[0]) if is_at_far_end(work) else _NOTHING
        for axis, high in self._sides(work)[:1]:
            edge = Edge(self.axes[0], end, axis, self.measure(axis) if high else _NOTHING)
            yield hollowed(edge, long, deep)

    def _beside(self, work: FittedWork) -> Iterator[Chunks]:
        """Yield what is left beside each notch: before it, after it, and behind it."""
        if work.width is None or work.depth is None:
            return
        along, wide, deep = self.axes[0], work.width.inches, work.depth.inches
        for axis, high in self._sides(work)[:1]:
            edge = direction(along, _NOTHING, axis, _ONE if high else -_ONE)
            behind = Cut(edge, self.measure(axis) - deep if high else -deep)
            for start in self._starts(work):
                before, after = direction(along, _ONE, along, _ONE), direction(along, -_ONE, along, -_ONE)
                end = start + wide
                within = (Cut(after, -start), Cut(before, end), behind)
                yield (Cut(before, start),), (Cut(after, -end),), within

    def _starts(self, work: FittedWork) -> list[Fraction]:
        """Return where each notch begins, from the left end."""
        first = work.from_end.inches if work.from_end is not None else _NOTHING
        count, wide = work.count or 1, work.width.inches if work.width is not None else _NOTHING
        if work.apart is not None:
            return [first + work.apart.inches * i for i in range(count)]
        return [first, self.measure(self.axes[0]) - first - wide] if count == 2 else [first]
