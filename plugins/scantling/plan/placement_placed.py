"""A part's instance in its place, exactly."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.measure import Length

Corner = tuple[Length, Length, Length]
Direction = tuple[Fraction, Fraction, Fraction]


@dataclass(frozen=True, slots=True)
class Cut:
    """A plane that takes a piece off a box: kept is where `normal` times the place is at most `most` (in)."""

    normal: Direction
    most: Fraction


Chunks = tuple[tuple[Cut, ...], ...]
"""The cuts of each convex piece of a body that is not convex."""


@dataclass(frozen=True, slots=True)
class Placed:
    """One instance in its place: a box, less what its cuts take off."""

    number: int
    """From 1, among the part's instances."""
    low: Corner
    """The left, front, bottom corner of the box that just holds it."""
    high: Corner
    """Its right, back, top corner."""
    axes: tuple[int, int, int]
    """Along which of x, y, z the length, the width and the thickness run (for a brace, in its plane)."""
    along: Direction
    """The direction of its length and grain."""
    cuts: tuple[Cut, ...] = ()
    chunks: Chunks = ()
    """Further cuts that give each convex chunk of a part with a half-lap; none: it is one convex piece."""

    @property
    def is_box(self) -> bool:
        """True if nothing is cut off its box."""
        return not self.cuts and not self.chunks

    def moved(self, axis: int, by: Length) -> Placed:
        """Return it moved along one way."""
        shift = by.inches

        def move(cut: Cut) -> Cut:
            return Cut(cut.normal, cut.most + cut.normal[axis] * shift)

        return self._changed(
            _with(self.low, axis, self.low[axis] + by), _with(self.high, axis, self.high[axis] + by), move
        )

    def mirrored(self, axis: int, total: Length) -> Placed:
        """Return its mirror image about the middle of 0 to `total` along one way."""
        whole = total.inches

        def turn(cut: Cut) -> Cut:
            normal = _turned(cut.normal, axis)
            return Cut(normal, cut.most - cut.normal[axis] * whole)

        image = self._changed(
            _with(self.low, axis, total - self.high[axis]),
            _with(self.high, axis, total - self.low[axis]),
            turn,
        )
        return Placed(
            image.number,
            image.low,
            image.high,
            image.axes,
            _turned(self.along, axis),
            image.cuts,
            image.chunks,
        )

    def numbered(self, number: int) -> Placed:
        """Return it with another number."""
        return Placed(number, self.low, self.high, self.axes, self.along, self.cuts, self.chunks)

    def _changed(self, low: Corner, high: Corner, change: object) -> Placed:
        cuts = tuple(change(cut) for cut in self.cuts)  # type: ignore[operator]
        chunks = tuple(tuple(change(cut) for cut in chunk) for chunk in self.chunks)  # type: ignore[operator]
        return Placed(self.number, low, high, self.axes, self.along, cuts, chunks)


def _with(corner: Corner, axis: int, value: Length) -> Corner:
    return (
        value if axis == 0 else corner[0],
        value if axis == 1 else corner[1],
        value if axis == 2 else corner[2],
    )


def _turned(direction: Direction, axis: int) -> Direction:
    return (
        -direction[0] if axis == 0 else direction[0],
        -direction[1] if axis == 1 else direction[1],
        -direction[2] if axis == 2 else direction[2],
    )
