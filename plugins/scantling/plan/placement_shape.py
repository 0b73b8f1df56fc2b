"""The shape of one instance before it is put in its place: its corners, and the planes that cut its box."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from scantling.formula import Value
from scantling.measure import Angle, Length, cosine, root, sine, tangent
from scantling.plan.model import Part
from scantling.plan.placement import HIGH, LOW, Placement
from scantling.plan.placement_placed import Corner, Cut, Direction

_NOTHING, _ONE = Fraction(0), Fraction(1)
_UP = 2
Spot = tuple[Fraction, Fraction, Fraction]
"""A place in inches."""
Pair = tuple[Fraction, Fraction]
_AXES: tuple[Direction, Direction, Direction] = (
    (_ONE, _NOTHING, _NOTHING),
    (_NOTHING, _ONE, _NOTHING),
    (_NOTHING, _NOTHING, _ONE),
)
_SIDES = ((0, 1, 2, 3), (4, 5, 6, 7), (0, 1, 5, 4), (1, 2, 6, 5), (2, 3, 7, 6), (3, 0, 4, 7))
"""The six sides by the numbers of their corners: four of one face in turn, then four of the other."""


@dataclass(frozen=True, slots=True)
class Shape:
    """A part as it lies once it is turned, its box beginning at 0."""

    extents: Corner
    """How large its box is along x, y and z."""
    along: Direction
    """The direction of its length."""
    corners: tuple[Spot, ...] = ()
    """Its eight corners; none for one that is its box."""

    def cuts(self) -> tuple[Cut, ...]:
        """Return the planes that take the rest off its box."""
        if not self.corners:
            return ()
        middle = _mean(self.corners)
        made = (_plane([self.corners[i] for i in side], middle) for side in _SIDES)
        return tuple(cut for cut in made if cut is not None)


def _cornered(corners: Sequence[Spot], along: Direction) -> Shape:
    """Return the shape of these corners, moved so that its box begins at 0."""
    low = [min(corner[axis] for corner in corners) for axis in range(3)]
    moved = tuple((x - low[0], y - low[1], z - low[2]) for x, y, z in corners)
    x, y, z = (Length(max(corner[axis] for corner in moved)) for axis in range(3))
    return Shape((x, y, z), along, moved)


def shape_of(part: Part, place: Placement, values: Mapping[str, Value], lean: str) -> Shape | None:
    """Return the shape of a part as a place turns it, or None where its measures are not known.

    Args:
        lean: the name under which `values` holds the angle of the place's lean.
    """
    sides = [values.get(f"{part.id}.{name}") for name in ("length", "width", "thick")]
    lengths = [side for side in sides if isinstance(side, Length)]
    if len(lengths) != 3:
        return None
    angle = values.get(lean) if place.lean is not None else None
    if place.lean is not None and not isinstance(angle, Angle):
        return None
    if angle is None and _has_square_ends(part):
        return _plain(lengths, place.axes)
    measures = [length.inches for length in lengths]
    if isinstance(angle, Angle) and len(place.leans or ()) == 2:
        return _splayed(measures, place, angle)
    corners = _square_corners(part, place, values, measures)
    along = _axis(place.axes[0])
    if isinstance(angle, Angle) and place.leans:
        turn = _Turn(cosine(angle), sine(angle), _side_axis(place.leans[0]), _sign(place.leans[0]))
        corners, along = tuple(turn.of(corner) for corner in corners), turn.of(along)
    return _cornered(corners, along)


def _plain(lengths: Sequence[Length], axes: tuple[int, int, int]) -> Shape:
    """Return the shape of a part that is its box."""
    x, y, z = (lengths[axes.index(axis)] for axis in range(3))
    return Shape((x, y, z), _AXES[axes[0]])


@dataclass(frozen=True, slots=True)
class _Turn:
    """A lean: it takes what is above towards one side."""

    cos: Fraction
    sin: Fraction
    axis: int
    sign: int

    def of(self, spot: Spot) -> Spot:
        side, up = spot[self.axis] * self.sign, spot[_UP]
        turned = list(spot)
        turned[self.axis] = (side * self.cos + up * self.sin) * self.sign
        turned[_UP] = up * self.cos - side * self.sin
        return turned[0], turned[1], turned[2]


def _splayed(measures: Sequence[Fraction], place: Placement, angle: Angle) -> Shape:
    """Return a part that runs up and leans both ways by one angle, as seen from the front and from the side.

    Its front looks straight out under the lean, its ends are level, and its length is measured along it.
    """
    slope = tangent(angle)
    ways = {_side_axis(side): _sign(side) for side in place.leans or ()}
    lean_x, lean_y = slope * ways.get(0, 1), slope * ways.get(1, 1)
    height = measures[0] / root(1 + 2 * slope * slope)
    wide, thick = (measures[place.axes.index(axis)] / 2 for axis in (0, 1))
    off_y = thick * root(1 + slope * slope)
    face_x, face_y = 1 + slope * slope, -lean_x * lean_y
    off_x = wide * root(face_x * face_x + face_y * face_y + lean_x * lean_x)
    section: list[Pair] = []
    for sign_x, sign_y in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        y = sign_y * off_y
        section.append(((sign_x * off_x - face_y * y) / face_x, y))
    corners = [(x + lean_x * z, y + lean_y * z, z) for z in (_NOTHING, height) for x, y in section]
    steep = 1 / root(1 + 2 * slope * slope)
    return _cornered(corners, (lean_x * steep, lean_y * steep, steep))


def _square_corners(
    part: Part, place: Placement, values: Mapping[str, Value], measures: Sequence[Fraction]
) -> tuple[Spot, ...]:
    """Return the corners of a part that does not lean, its ends cut."""
    length, width, thick = place.axes
    bevelled = part.ends is not None and "bevel" in {part.ends.left.kind, part.ends.right.kind}
    across, other = (thick, width) if bevelled else (width, thick)
    wide, deep = (measures[place.axes.index(axis)] for axis in (across, other))
    outline = _outline(part, place, values, measures[0], wide, across)
    made = []
    for side in (_NOTHING, deep):
        for along, over in outline:
            spot = [_NOTHING, _NOTHING, _NOTHING]
            spot[length], spot[across], spot[other] = along, over, side
            made.append((spot[0], spot[1], spot[2]))
    return tuple(made)


def _has_square_ends(part: Part) -> bool:
    return part.ends is None or (part.ends.left.angle is None and part.ends.right.angle is None)


def _outline(
    part: Part,
    place: Placement,
    values: Mapping[str, Value],
    length: Fraction,
    wide: Fraction,
    across: int,
) -> tuple[Pair, ...]:
    """Return the outline of the side on which the cuts of the ends are seen."""
    left = right = _NOTHING
    if part.ends is not None:
        left = _slope(values.get(f"{part.id}.left angle")) if part.ends.left.angle else left
        right = _slope(values.get(f"{part.id}.right angle")) if part.ends.right.angle else right
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


def _offsets(slope: Fraction, wide: Fraction, *, high: bool) -> Pair:
    """Return how much an end is short of the whole length at the lower and at the upper edge."""
    if slope < 0:
        slope, high = -slope, not high
    return (slope * wide, _NOTHING) if high else (_NOTHING, slope * wide)


def _slope(angle: Value | None) -> Fraction:
    return tangent(angle) if isinstance(angle, Angle) and abs(angle.degrees) < 90 else _NOTHING


def _side_axis(side: str) -> int:
    return LOW.index(side) if side in LOW else HIGH.index(side)


def _sign(side: str) -> int:
    return -1 if side in LOW else 1


def _axis(axis: int) -> Direction:
    return _AXES[axis]


def _mean(spots: Sequence[Spot]) -> Spot:
    x, y, z = (sum((spot[axis] for spot in spots), _NOTHING) / len(spots) for axis in range(3))
    return x, y, z


def _plane(side: Sequence[Spot], middle: Spot) -> Cut | None:
    """Return the plane of a side, keeping the middle; None if the side is one of its box."""
    one, other = _minus(side[2], side[0]), _minus(side[3], side[1])
    normal = (
        one[1] * other[2] - one[2] * other[1],
        one[2] * other[0] - one[0] * other[2],
        one[0] * other[1] - one[1] * other[0],
    )
    if sum(part != 0 for part in normal) < 2:
        return None
    most = _dot(normal, _mean(side))
    if _dot(normal, middle) > most:
        normal, most = (-normal[0], -normal[1], -normal[2]), -most
    return Cut(normal, most)


def _minus(one: Spot, other: Spot) -> Spot:
    return one[0] - other[0], one[1] - other[1], one[2] - other[2]


def _dot(one: Spot, other: Spot) -> Fraction:
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2]
