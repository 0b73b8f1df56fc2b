"""Points and directions in space: x to the right, y to the back, z up."""

from __future__ import annotations

from math import sqrt

Vector = tuple[float, float, float]
"""A point, or a direction."""


def plus(one: Vector, other: Vector) -> Vector:
    """Return the sum."""
    return (one[0] + other[0], one[1] + other[1], one[2] + other[2])


def minus(one: Vector, other: Vector) -> Vector:
    """Return the way from `other` to `one`."""
    return (one[0] - other[0], one[1] - other[1], one[2] - other[2])


def times(vector: Vector, number: float) -> Vector:
    """Return the vector made `number` times as long."""
    return (vector[0] * number, vector[1] * number, vector[2] * number)


def dot(one: Vector, other: Vector) -> float:
    """Return the scalar product."""
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2]


def cross(one: Vector, other: Vector) -> Vector:
    """Return the vector product."""
    return (
        one[1] * other[2] - one[2] * other[1],
        one[2] * other[0] - one[0] * other[2],
        one[0] * other[1] - one[1] * other[0],
    )


def size(vector: Vector) -> float:
    """Return the length."""
    return sqrt(dot(vector, vector))


def unit(vector: Vector) -> Vector:
    """Return the direction, of length one; a vector of no length is returned as it is."""
    length = size(vector)
    return times(vector, 1 / length) if length else vector
