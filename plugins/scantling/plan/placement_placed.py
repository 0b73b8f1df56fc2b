"""A part's instance in its place, exactly."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from scantling.measure import Length

Corner = tuple[Length, Length, Length]
Direction = tuple[Fraction, Fraction, Fraction]
_PAIRS = (("left", "right"), ("front", "back"), ("bottom", "top"))


@dataclass(frozen=True, slots=True)
class Cut:
    """A plane that takes a piece off a box: kept is where `normal` times the place is at most `most` (in)."""

    normal: Direction
    most: Fraction


def direction(axis: int, along: Fraction, other: int, across: Fraction) -> Direction:
    """Return a direction in the plane of two axes."""
    made = [Fraction(0), Fraction(0), Fraction(0)]
    made[axis], made[other] = along, across
    return made[0], made[1], made[2]


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
    opens: str = ""
    """Which way it slides out, or where it is hinged: "slides front", "swings left"; "" for neither."""

    @property
    def is_box(self) -> bool:
        """True if nothing is cut off its box."""
        return not self.cuts and not self.chunks

    def moved(self, axis: int, by: Length) -> Placed:
        """Return it moved along one way."""
        low = _with(self.low, axis, self.low[axis] + by)
        high = _with(self.high, axis, self.high[axis] + by)
        if self.is_box:
            return self._made(low, high, self.along, (), (), self.opens)
        shift = by.inches

        def move(cut: Cut) -> Cut:
            return Cut(cut.normal, cut.most + cut.normal[axis] * shift)

        return self._made(low, high, self.along, *self._cut_by(move), self.opens)

    def mirrored(self, axis: int, total: Length) -> Placed:
        """Return its mirror image about the middle of 0 to `total` along one way."""
        low = _with(self.low, axis, total - self.high[axis])
        high = _with(self.high, axis, total - self.low[axis])
        along, opens = _turned(self.along, axis), _other_way(self.opens, axis)
        if self.is_box:
            return self._made(low, high, along, (), (), opens)
        whole = total.inches

        def turn(cut: Cut) -> Cut:
            return Cut(_turned(cut.normal, axis), cut.most - cut.normal[axis] * whole)

        return self._made(low, high, along, *self._cut_by(turn), opens)

    def numbered(self, number: int) -> Placed:
        """Return it with another number."""
        return Placed(number, self.low, self.high, self.axes, self.along, self.cuts, self.chunks, self.opens)

    def _cut_by(self, change: Callable[[Cut], Cut]) -> tuple[tuple[Cut, ...], Chunks]:
        chunks = tuple(tuple(map(change, chunk)) for chunk in self.chunks)
        return tuple(map(change, self.cuts)), chunks

    def _made(
        self, low: Corner, high: Corner, along: Direction, cuts: tuple[Cut, ...], chunks: Chunks, opens: str
    ) -> Placed:
        return Placed(self.number, low, high, self.axes, along, cuts, chunks, opens)


def _other_way(opens: str, axis: int) -> str:
    """Return what a mirror along an axis makes of the way that something opens."""
    kind, _, side = opens.partition(" ")
    pair = _PAIRS[axis]
    return f"{kind} {pair[1 - pair.index(side)]}" if side in pair else opens


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
