"""Edges of a body made of several convex pieces.

Where two pieces meet in one plane there is no edge, nor where two sides meet that are nearly in line, as
those of a curve are.
"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.geometry import Solid, Vector, dot, minus, size, times

_NEAR = 1e-5
_SMOOTH = 0.9
"""The cosine of the angle by which two sides of a curve may differ at most."""


def open_edges(
    solid: Solid, number: int, pieces: list[Solid], toward: Vector
) -> Iterator[tuple[Vector, Vector]]:
    """Yield the stretches of one side's outline along which no other side goes on in the same direction.

    Args:
        toward: the way to the eye; a curve that goes on out of sight ends in an edge.
    """
    side, normal = solid.sides[number], solid.normals[number]
    others = [
        tuple(piece.points[i] for i in other)
        for piece in pieces
        for other, direction in zip(piece.sides, piece.normals, strict=True)
        if dot(direction, normal) > _SMOOTH
        and dot(direction, toward) > _NEAR
        and not (piece is solid and other is side)
    ]
    for at, after in zip(side, (*side[1:], side[0]), strict=True):
        start, end = solid.points[at], solid.points[after]
        yield from _uncovered(start, end, others)


def _uncovered(
    start: Vector, end: Vector, others: list[tuple[Vector, ...]]
) -> Iterator[tuple[Vector, Vector]]:
    way = minus(end, start)
    length = size(way)
    if length < _NEAR:
        return
    way = times(way, 1 / length)
    taken = sorted(span for outline in others for span in _shared(start, way, length, outline))
    at = 0.0
    for first, last in [*taken, (length, length)]:
        if first > at + _NEAR:
            yield _point(start, way, at), _point(start, way, first)
        at = max(at, last)


def _shared(
    start: Vector, way: Vector, length: float, outline: tuple[Vector, ...]
) -> Iterator[tuple[float, float]]:
    """Yield the stretches of an edge that an outline's own edges run along, the other way."""
    x, y, z = start
    ux, uy, uz = way
    places: list[float | None] = []
    for px, py, pz in outline:
        dx, dy, dz = px - x, py - y, pz - z
        along = dx * ux + dy * uy + dz * uz
        off = abs(dx - along * ux) + abs(dy - along * uy) + abs(dz - along * uz)
        places.append(along if off < _NEAR else None)
    for first, last in zip(places, (*places[1:], places[0]), strict=True):
        if first is not None and last is not None:
            low, high = max(0.0, min(first, last)), min(length, max(first, last))
            if high > low + _NEAR:
                yield low, high


def _point(start: Vector, way: Vector, far: float) -> Vector:
    return (start[0] + way[0] * far, start[1] + way[1] * far, start[2] + way[2] * far)
