"""Looking at solids from a direction, without perspective."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.geometry.vector import Vector, dot


@dataclass(frozen=True, slots=True)
class View:
    """Where one looks from. All three directions have length one and are square to each other."""

    right: Vector
    """The direction that runs to the right on the page."""
    up: Vector
    """The direction that runs up the page."""
    toward: Vector
    """The direction from the thing to the eye."""

    def flat(self, point: Vector) -> tuple[float, float]:
        """Return the place on a page whose y runs down."""
        return dot(self.right, point), -dot(self.up, point)

    def depth(self, point: Vector) -> float:
        """Return how near the eye a point is."""
        return dot(self.toward, point)


FRONT = View((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0))
"""From the front: x to the right, z up."""
SIDE = View((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0))
"""From the right side: the front is at the left."""
TOP = View((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
"""From above: the front is at the bottom of the page."""
CORNER = View((4 / 5, 3 / 5, 0.0), (-3 / 13, 4 / 13, 12 / 13), (36 / 65, -48 / 65, 5 / 13))
"""From the front, well to the right and a little above: sines and cosines of 5:4:3 and 13:12:5 triangles."""
