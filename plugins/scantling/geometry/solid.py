"""Convex solids: a box, and what is left of it when planes cut pieces off."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from scantling.geometry.vector import Vector, cross, dot, minus, plus, size, unit

NEAR = 1e-7
"""What counts as the same place, in inches."""

_CORNERS = ((0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0), (0, 0, 1), (1, 0, 1), (1, 1, 1), (0, 1, 1))
_SIDES = ((0, 4, 7, 3), (1, 2, 6, 5), (0, 1, 5, 4), (3, 7, 6, 2), (0, 3, 2, 1), (4, 5, 6, 7))
_NORMALS: tuple[Vector, ...] = ((-1, 0, 0), (1, 0, 0), (0, -1, 0), (0, 1, 0), (0, 0, -1), (0, 0, 1))


@dataclass(frozen=True, slots=True)
class Plane:
    """The points whose product with `normal` is at most `most`: what is kept on one side of a cut."""

    normal: Vector
    most: float


@dataclass(frozen=True, slots=True)
class Solid:
    """A convex solid by its corners and flat sides."""

    points: tuple[Vector, ...]
    sides: tuple[tuple[int, ...], ...]
    """Corners of each side by number, anticlockwise as seen from outside."""
    normals: tuple[Vector, ...]
    """The outward direction of each side, of length one."""
    low: Vector
    """The least x, y and z."""
    high: Vector
    """The greatest x, y and z."""
    is_box: bool = False
    """True while all sides are square to x, y and z."""

    @property
    def middle(self) -> Vector:
        """The middle of the box around it."""
        low, high = self.low, self.high
        return ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2)

    @property
    def volume(self) -> float:
        """The volume, in cubic inches where points are in inches."""
        total = 0.0
        base = self.points[0]
        for side in self.sides:
            first = minus(self.points[side[0]], base)
            for i in range(1, len(side) - 1):
                one, other = minus(self.points[side[i]], base), minus(self.points[side[i + 1]], base)
                total += dot(first, cross(one, other))
        return total / 6

    def moved(self, way: Vector) -> Solid:
        """Return the solid moved."""
        points = tuple(plus(point, way) for point in self.points)
        low, high = plus(self.low, way), plus(self.high, way)
        return Solid(points, self.sides, self.normals, low, high, self.is_box)


def box(low: Vector, high: Vector) -> Solid:
    """Return the upright box between two corners."""
    ends = (low, high)
    points = tuple((ends[i][0], ends[j][1], ends[k][2]) for i, j, k in _CORNERS)
    return Solid(points, _SIDES, _NORMALS, low, high, is_box=True)


def clip(solid: Solid, plane: Plane) -> Solid | None:
    """Return what lies on the kept side of a plane, or None if nothing does."""
    far = size(plane.normal)
    heights = [(dot(plane.normal, point) - plane.most) / far for point in solid.points]
    if max(heights) <= NEAR:
        return solid
    if min(heights) >= -NEAR:
        return None
    points: list[Vector] = []
    numbers: dict[object, int] = {}
    sides, normals, rim = [], [], []
    for side, normal in zip(solid.sides, solid.normals, strict=True):
        kept, cut = _clip_side(side, solid.points, heights, points, numbers)
        if len(kept) > 2:
            sides.append(tuple(kept))
            normals.append(normal)
            rim += cut
    rim = list(dict.fromkeys(rim))
    if len(rim) > 2:
        sides.append(_around(rim, points, plane.normal))
        normals.append(unit(plane.normal))
    used = sorted({corner for side in sides for corner in side})
    low = tuple(min(points[i][axis] for i in used) for axis in range(3))
    high = tuple(max(points[i][axis] for i in used) for axis in range(3))
    return Solid(
        tuple(points), tuple(sides), tuple(normals), (low[0], low[1], low[2]), (high[0], high[1], high[2])
    )


def _clip_side(
    side: tuple[int, ...],
    points: tuple[Vector, ...],
    heights: list[float],
    made: list[Vector],
    numbers: dict[object, int],
) -> tuple[list[int], list[int]]:
    """Return what is kept of one side, and those of its corners that lie on the plane."""
    kept: list[int] = []
    rim: list[int] = []

    def add(key: object, point: Vector) -> int:
        if key not in numbers:
            numbers[key] = len(made)
            made.append(point)
        return numbers[key]

    for at, after in zip(side, (*side[1:], side[0]), strict=True):
        here, there = heights[at], heights[after]
        if here <= NEAR:
            kept.append(add(at, points[at]))
            if here >= -NEAR:
                rim.append(kept[-1])
        if (here < -NEAR and there > NEAR) or (here > NEAR and there < -NEAR):
            first, second = min(at, after), max(at, after)
            part = heights[first] / (heights[first] - heights[second])
            one, other = points[first], points[second]
            crossing = (
                one[0] + (other[0] - one[0]) * part,
                one[1] + (other[1] - one[1]) * part,
                one[2] + (other[2] - one[2]) * part,
            )
            kept.append(add((first, second), crossing))
            rim.append(kept[-1])
    return kept, rim


def _around(rim: Iterable[int], points: list[Vector], normal: Vector) -> tuple[int, ...]:
    """Return corners on a plane in order around its outward direction, without any angle function."""
    numbers = list(rim)
    count = len(numbers)
    middle = (
        sum(points[i][0] for i in numbers) / count,
        sum(points[i][1] for i in numbers) / count,
        sum(points[i][2] for i in numbers) / count,
    )
    right = unit(minus(points[numbers[0]], middle))
    up = cross(unit(normal), right)

    def turn(number: int) -> float:
        way = minus(points[number], middle)
        x, y = dot(way, right), dot(way, up)
        slope = y / ((abs(x) + abs(y)) or 1.0)
        return slope if x >= 0 else (2 - slope if y >= 0 else -2 - slope)

    return tuple(sorted(numbers, key=turn))


def carve(solid: Solid, planes: Iterable[Plane]) -> list[Solid]:
    """Return the solid without what lies inside all the planes, in convex pieces."""
    pieces = []
    rest: Solid | None = solid
    for plane in planes:
        if rest is None:
            break
        outside = clip(rest, Plane(_turned(plane.normal), -plane.most))
        if outside is not None:
            pieces.append(outside)
        rest = clip(rest, plane)
    return pieces if rest is not None else [solid]


def _turned(vector: Vector) -> Vector:
    return (-vector[0], -vector[1], -vector[2])


def planes_of(solid: Solid) -> list[Plane]:
    """Return the planes of a solid's sides, each keeping the inside."""
    return [
        Plane(normal, dot(normal, solid.points[side[0]]))
        for side, normal in zip(solid.sides, solid.normals, strict=True)
    ]
