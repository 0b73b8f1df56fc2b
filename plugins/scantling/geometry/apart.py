"""How far apart two convex solids are, and the plane that parts them."""

from __future__ import annotations

from collections.abc import Iterator

from scantling.geometry.solid import Solid
from scantling.geometry.vector import Vector, cross, dot, minus, size, times

_AXES: tuple[Vector, ...] = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
_BACK: tuple[Vector, ...] = ((-1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (0.0, 0.0, -1.0))


def parting(one: Solid, other: Solid) -> tuple[float, Vector]:
    """Return the widest gap between two solids along any of the directions that can part them, and that
    direction, pointing from `one` to `other`.

    A gap below nothing is how deep they stand in each other (exact for convex solids: the separating
    axis theorem). A gap above nothing is a lower bound on their distance.
    """
    return _parting(one, other, enough=1e300)


def divider(one: Solid, other: Solid) -> Vector:
    """Return the direction from `one` to `other` square to some plane that parts them, found quickly; where
    they stand in each other, the direction in which they do so least.
    """
    return _parting(one, other, enough=-1e-7)[1]


def _parting(one: Solid, other: Solid, enough: float) -> tuple[float, Vector]:
    """Return the widest gap and its direction, or the first that is wide enough."""
    best, way = straight_gap(one, other)
    if best >= enough or (one.is_box and other.is_box):
        return best, way
    for axis in _slanted(one, other):
        here, there = [dot(axis, point) for point in one.points], [dot(axis, point) for point in other.points]
        forth, back = min(there) - max(here), min(here) - max(there)
        if max(forth, back) > best + 1e-12:
            best, way = (forth, axis) if forth >= back else (back, times(axis, -1.0))
            if best >= enough:
                break
    return best, way


def straight_gap(one: Solid, other: Solid) -> tuple[float, Vector]:
    """Return the widest gap and its direction among x, y and z alone, which are all that part two boxes."""
    low, high = one.low, one.high
    least, most = other.low, other.high
    best, way = -1e300, _AXES[0]
    for i in range(3):
        forth, back = least[i] - high[i], low[i] - most[i]
        if forth >= back and forth > best:
            best, way = forth, _AXES[i]
        elif back > forth and back > best:
            best, way = back, _BACK[i]
    return best, way


def _slanted(one: Solid, other: Solid) -> Iterator[Vector]:
    yield from one.normals
    yield from other.normals
    others = _edges(other)
    for edge in _edges(one):
        for against in others:
            axis = cross(edge, against)
            length = size(axis)
            if length > 1e-9:
                yield times(axis, 1 / length)


def _edges(solid: Solid) -> list[Vector]:
    """Return the directions of a solid's edges, each once."""
    found: list[Vector] = []
    for side in solid.sides:
        for at, after in zip(side, (*side[1:], side[0]), strict=True):
            if at < after:
                way = minus(solid.points[after], solid.points[at])
                length = size(way)
                if length < 1e-9:
                    continue
                way = times(way, 1 / length)
                if not any(size(cross(way, known)) < 1e-9 for known in found):
                    found.append(way)
    return found
