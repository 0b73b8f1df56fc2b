"""Fitting a thing of so many inches into a picture, and drawing wood in it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from scantling.drawing import (
    Group,
    Point,
    Polygon,
    Rectangle,
    Scene,
    Shape,
    Strokes,
    Text,
    across,
    text_width,
    upright,
)
from scantling.measure import Length

ROOM = 360.0
"""Width of every picture: on a phone it is shown almost at its size, so that its words can be read."""


def inches(length: Length) -> float:
    """Return a length as a coordinate."""
    return float(length.inches)


@dataclass(frozen=True, slots=True)
class Frame:
    """How the thing's own inches lie in the picture."""

    wide: float
    """Inches from left to right."""
    high: float
    scale: float
    left: float
    top: float

    def x(self, value: float) -> float:
        """Return where so many inches from the left lie."""
        return self.left + value * self.scale

    def y(self, value: float) -> float:
        """Return where so many inches from the top lie."""
        return self.top + value * self.scale

    @property
    def right(self) -> float:
        """Return where the thing ends."""
        return self.x(self.wide)

    @property
    def bottom(self) -> float:
        """Return where the thing ends below."""
        return self.y(self.high)

    def points(self, points: Iterable[Point]) -> tuple[Point, ...]:
        """Return corners as coordinates."""
        return tuple((self.x(x), self.y(y)) for x, y in points)

    def wood(
        self,
        x: float,
        y: float,
        wide: float,
        high: float,
        *,
        look: str = "edge wood",
        fill: str = "",
        grain: str = "x",
    ) -> Group:
        """Return a board, its grain along `x` or `y`; no grain with a filling or an empty `grain`."""
        look = "edge" if fill else look
        left, top, width, height = self.x(x), self.y(y), wide * self.scale, high * self.scale
        shapes: list[Shape] = [Rectangle(left, top, width, height, look, fill)]
        if grain and not fill:
            shapes.append(grain_lines(left, top, width, height, grain))
        return Group(tuple(shapes))

    def polygon(self, points: Iterable[Point], look: str = "edge wood", fill: str = "") -> Polygon:
        """Return a closed outline."""
        return Polygon(self.points(points), look, fill)

    def across(self, x1: float, x2: float, words: str, *, below: float = 0.0, above: float = 0.0) -> Group:
        """Return a level dimension line so far below or above the thing."""
        y = self.bottom + below if below else self.top - above
        return across(self.x(x1), self.x(x2), y, words, to=self.bottom if below else self.top)

    def upright(self, y1: float, y2: float, words: str, *, beside: float = 18.0) -> Group:
        """Return an upright dimension line to the left, further off where its words stand beside it."""
        room = text_width(words, 11.0) + 12
        if room > abs(y2 - y1) * self.scale:
            beside = max(beside, room)
        return upright(self.y(y1), self.y(y2), self.left - beside, words, to=self.left)


def fit(
    wide: float, high: float, *, left: float = 44, top: float = 30, right: float = 40, most: float = 210.0
) -> Frame:
    """Return a frame in which a thing fills the picture's width, or `most` of height."""
    wide, high = max(wide, 1e-6), max(high, 1e-6)
    scale = min((ROOM - left - right) / wide, most / high)
    return Frame(wide, high, scale, left + (ROOM - left - right - wide * scale) / 2, top)


def scene(
    height: float, shapes: Iterable[Shape], title: str, told: str = "", *, width: float = ROOM
) -> Scene:
    """Return a picture of the usual width."""
    return Scene(width, height, tuple(shapes), title, told)


def grain_lines(x: float, y: float, width: float, height: float, along: str) -> Strokes:
    """Return a few lines along the grain, a little short of the ends."""
    short, far = (height, width) if along == "x" else (width, height)
    count = max(1, min(5, int(short / 9)))
    lines = []
    for i in range(count):
        at = short * (i + 0.5) / count
        begin, end = far * (0.04 + 0.05 * (i % 2)), far * (0.97 - 0.06 * (i % 3))
        lines.append(
            (x + begin, y + at, x + end, y + at) if along == "x" else (x + at, y + begin, x + at, y + end)
        )
    return Strokes(tuple(lines))


def label(
    x: float, y: float, words: str, *, size: float = 11.0, anchor: str = "middle", look: str = "ink halo"
) -> Text:
    """Return a line of words about a point."""
    return Text(x, y, words, size, anchor, look)
