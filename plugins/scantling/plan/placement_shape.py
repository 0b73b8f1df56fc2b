"""The shape of one instance before it is put in its place: its box, and what cuts and leaning make of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.formula import Value
from scantling.measure import Angle, Length, cosine, sine, tangent
from scantling.plan.fitted import FittedWork
from scantling.plan.model import Part
from scantling.plan.placement import HIGH, LOW, Placement
from scantling.plan.placement_placed import Cut, Direction

_NOTHING = Fraction(0)
Measures = tuple[Fraction, Fraction, Fraction]
Chunks = tuple[tuple[Cut, ...], ...]
Flat = tuple[Fraction, Fraction]
"""A place on a part's side: along its length and across, in inches."""


@dataclass(frozen=True, slots=True)
class Sides:
    """A part's measures in inches along its length, width and thickness, and which axes these run along."""

    measures: Measures
    axes: tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Slant:
    """The outline of a part whose ends are cut or that leans, in the plane of one of its sides."""

    across: int
    """The axis across the length, in that plane."""
    corners: tuple[Flat, Flat, Flat, Flat]
    """Lower left, lower right, upper right, upper left, as it lies before it leans."""
    turn: tuple[Fraction, Fraction]
    """Cosine and sine of its lean."""
    flip: bool
    """True if it leans to the lower end of the axis."""

    def turned(self) -> list[Flat]:
        """Return the corners once it leans, its box beginning at (0, 0)."""
        cos, sin = self.turn
        points = [(a * cos - b * sin, a * sin + b * cos) for a, b in self.corners]
        if self.flip:
            points = [(a, -b) for a, b in reversed(points)]
        least = (min(a for a, _ in points), min(b for _, b in points))
        return [(a - least[0], b - least[1]) for a, b in points]


def extents_of(
    part: Part, place: Placement, values: Mapping[str, Value]
) -> tuple[Length, Length, Length] | None:
    """Return how large a part's box is along x, y and z, or None where its measures are not known."""
    sides = _sides(part, place, values)
    if sides is None:
        return None
    extents = [Length(0)] * 3
    for measure, axis in zip(sides.measures, sides.axes, strict=True):
        extents[axis] = Length(measure)
    slant = _slant(part, place, values, sides)
    if slant is not None and place.lean is not None:
        points = slant.turned()
        extents[sides.axes[0]] = Length(max(a for a, _ in points))
        extents[slant.across] = Length(max(b for _, b in points))
    return extents[0], extents[1], extents[2]


def cuts_of(
    part: Part, place: Placement, values: Mapping[str, Value], work: tuple[FittedWork, ...]
) -> tuple[tuple[Cut, ...], Direction]:
    """Return what is cut off a part's box that begins at 0, and the direction of its length."""
    sides = _sides(part, place, values)
    if sides is None:
        return (), _axis(place.axes[0])
    slant = _slant(part, place, values, sides)
    tapers = () if place.lean is not None else _tapers(work, sides)
    if slant is None:
        return tapers, _axis(place.axes[0])
    points = slant.turned()
    length = sides.axes[0]
    cuts = []
    for (a1, b1), (a2, b2) in zip(points, (*points[1:], points[0]), strict=True):
        # anticlockwise in (length, across): the outside lies to the right of each edge
        along, across = b2 - b1, a1 - a2
        if along == 0 or across == 0:
            continue
        cuts.append(Cut(_direction(length, along, slant.across, across), a1 * along + b1 * across))
    cos, sin = slant.turn
    return (*cuts, *tapers), _direction(length, cos, slant.across, -sin if slant.flip else sin)


def _sides(part: Part, place: Placement, values: Mapping[str, Value]) -> Sides | None:
    found = [values.get(f"{part.id}.{name}") for name in ("length", "width", "thick")]
    measures = [value.inches for value in found if isinstance(value, Length)]
    return Sides((measures[0], measures[1], measures[2]), place.axes) if len(measures) == 3 else None


def _slant(part: Part, place: Placement, values: Mapping[str, Value], sides: Sides) -> Slant | None:
    lean = values.get(f"{part.id}.#1 lean") if place.lean is not None else None
    ends = part.ends
    kinds = {cut.kind for cut in (ends.left, ends.right) if cut.angle is not None} if ends else set()
    if not isinstance(lean, Angle) and not kinds:
        return None
    across = _side_axis(place.leans) if isinstance(lean, Angle) and place.leans else None
    if across is None:
        across = sides.axes[2] if kinds == {"bevel"} else sides.axes[1]
    wide = sides.measures[sides.axes.index(across)]
    kind = "mitre" if across == sides.axes[1] else "bevel"
    turn = (cosine(lean), sine(lean)) if isinstance(lean, Angle) else (Fraction(1), Fraction(0))
    corners = _corners(part, place, values, sides.measures[0], wide, kind, across)
    return Slant(across, corners, turn, flip=isinstance(lean, Angle) and place.leans in LOW)


def _corners(
    part: Part,
    place: Placement,
    values: Mapping[str, Value],
    length: Fraction,
    wide: Fraction,
    kind: str,
    across: int,
) -> tuple[Flat, Flat, Flat, Flat]:
    """Return the corners of a part that lies along, its ends cut."""
    left = right = _NOTHING
    if part.ends is not None:
        left = _slope(values.get(f"{part.id}.left angle")) if part.ends.left.kind == kind else left
        right = _slope(values.get(f"{part.id}.right angle")) if part.ends.right.kind == kind else right
    high = place.long_side == HIGH[across]
    starts = _offsets(left, wide, high=high)
    parallel = part.ends is not None and part.ends.parallel
    stops = _offsets(right, wide, high=high is not parallel)
    return (
        (starts[0], _NOTHING),
        (length - stops[0], _NOTHING),
        (length - stops[1], wide),
        (starts[1], wide),
    )


def _offsets(slope: Fraction, wide: Fraction, *, high: bool) -> tuple[Fraction, Fraction]:
    """Return how much an end is short of the whole length at the lower and at the upper edge."""
    if slope < 0:
        slope, high = -slope, not high
    return (slope * wide, _NOTHING) if high else (_NOTHING, slope * wide)


def _slope(angle: Value | None) -> Fraction:
    return tangent(angle) if isinstance(angle, Angle) and abs(angle.degrees) < 90 else _NOTHING


def _side_axis(side: str) -> int:
    return LOW.index(side) if side in LOW else HIGH.index(side)


def _axis(axis: int) -> Direction:
    one = [_NOTHING, _NOTHING, _NOTHING]
    one[axis] = Fraction(1)
    return one[0], one[1], one[2]


def _direction(axis: int, along: Fraction, other: int, across: Fraction) -> Direction:
    made = [_NOTHING, _NOTHING, _NOTHING]
    made[axis], made[other] = along, across
    return made[0], made[1], made[2]


def _tapers(work: tuple[FittedWork, ...], sides: Sides) -> tuple[Cut, ...]:
    """Return the planes of tapers towards the foot (or the left end), on the sides that `where` names."""
    cuts = []
    for one in work:
        if one.work.kind != "taper" or one.depth is None:
            continue
        long = one.length.inches if one.length is not None else sides.measures[0]
        deep = one.depth.inches
        words = one.work.where.replace(",", " ").split()
        for axis, high in _tapered(words, sides):
            wide = sides.measures[sides.axes.index(axis)]
            slope = deep / long
            # at the foot `deep` is gone, at `long` above it nothing is
            sign = Fraction(1) if high else Fraction(-1)
            most = (wide if high else _NOTHING) - deep
            cuts.append(Cut(_direction(sides.axes[0], -slope, axis, sign), most))
    return tuple(cuts)


def _tapered(words: list[str], sides: Sides) -> list[tuple[int, bool]]:
    """Return the sides that are tapered, each as its axis and whether its upper end is meant."""
    across = sides.axes[1:]
    if "inside" in words or "inner" in words:
        return [(axis, True) for axis in sorted(across)]
    named = [(LOW.index(word), False) for word in words if word in LOW]
    named += [(HIGH.index(word), True) for word in words if word in HIGH]
    return [(axis, high) for axis, high in named if axis in across]


def notches_of(work: tuple[FittedWork, ...], place: Placement, part_measures: Measures) -> Chunks:
    """Return the convex chunks of a part whose box begins at 0 and out of whose edges notches are cut.

    `where` names the edge; of two without `apart`, the second is as far from the other end.
    """
    sides = Sides(part_measures, place.axes)
    chunks: Chunks = ()
    for one in work:
        if one.work.kind != "notch" or one.width is None or one.depth is None:
            continue
        words = one.work.where.replace(",", " ").split()
        for axis, high in _edges_named(words, sides):
            for start in _starts(one, sides.measures[0]):
                pieces = _beside(sides, axis, start, start + one.width.inches, one.depth.inches, high=high)
                chunks = tuple((*chunk, *piece) for chunk in chunks for piece in pieces) or pieces
    return chunks


def _starts(one: FittedWork, length: Fraction) -> list[Fraction]:
    """Return where each notch begins, from the left end."""
    first = one.from_end.inches if one.from_end is not None else _NOTHING
    count, wide = one.count or 1, one.width.inches if one.width is not None else _NOTHING
    if one.apart is not None:
        return [first + one.apart.inches * i for i in range(count)]
    if count == 2:
        return [first, length - first - wide]
    return [first]


def _beside(sides: Sides, axis: int, start: Fraction, end: Fraction, deep: Fraction, *, high: bool) -> Chunks:
    """Return what is left of a box beside one notch: before it, after it, and behind it."""
    along, wide = sides.axes[0], sides.measures[sides.axes.index(axis)]
    one, back = Fraction(1), Fraction(-1)
    before = Cut(_direction(along, one, axis, _NOTHING), start)
    after = Cut(_direction(along, back, axis, _NOTHING), -end)
    behind = Cut(_direction(along, _NOTHING, axis, one if high else back), wide - deep if high else -deep)
    within = (
        Cut(_direction(along, back, axis, _NOTHING), -start),
        Cut(_direction(along, one, axis, _NOTHING), end),
    )
    return (before,), (after,), (*within, behind)


def _edges_named(words: list[str], sides: Sides) -> list[tuple[int, bool]]:
    named = [(LOW.index(word), False) for word in words[:2] if word in LOW]
    named += [(HIGH.index(word), True) for word in words[:2] if word in HIGH]
    return [(axis, high) for axis, high in named if axis in sides.axes[1:]]
