"""What a drawing is made of: flat shapes, each with the names of how it looks.

Coordinates are floats in the drawing's own unit, x to the right and y **down**, as on a page. Nothing
here knows how a shape is written out; `svg` does.
"""

from __future__ import annotations

from dataclasses import dataclass

Point = tuple[float, float]
"""A place on the page."""


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line."""

    x1: float
    y1: float
    x2: float
    y2: float
    look: str = "edge"


@dataclass(frozen=True, slots=True)
class Polyline:
    """A run of straight lines that does not close."""

    points: tuple[Point, ...]
    look: str = "edge"


@dataclass(frozen=True, slots=True)
class Polygon:
    """A closed outline."""

    points: tuple[Point, ...]
    look: str = "edge wood"
    fill: str = ""
    """A pattern of `look.PATTERNS` that fills it."""


@dataclass(frozen=True, slots=True)
class Rectangle:
    """An upright rectangle, named by its upper left corner."""

    x: float
    y: float
    width: float
    height: float
    look: str = "edge wood"
    fill: str = ""
    """A pattern of `look.PATTERNS` that fills it."""
    round: float = 0.0
    """Radius of its corners."""


@dataclass(frozen=True, slots=True)
class Circle:
    """A circle."""

    x: float
    y: float
    radius: float
    look: str = "edge"


@dataclass(frozen=True, slots=True)
class Strokes:
    """Many separate straight lines of one look, such as grain: `((x1, y1, x2, y2), ...)`."""

    lines: tuple[tuple[float, float, float, float], ...]
    look: str = "grain"


@dataclass(frozen=True, slots=True)
class Move:
    """A step of a path: where to, and the control points of a curve if it is one (none, one or two)."""

    to: Point
    by: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class Path:
    """An outline that may be curved."""

    start: Point
    moves: tuple[Move, ...]
    look: str = "edge"
    closed: bool = False
    fill: str = ""


@dataclass(frozen=True, slots=True)
class Text:
    """One line of words."""

    x: float
    y: float
    """The base line."""
    words: str
    size: float = 12.0
    anchor: str = "start"
    """start, middle or end: which part of the words stands at `x`."""
    look: str = "ink"
    turn: float = 0.0
    """Degrees clockwise about (`x`, `y`)."""


@dataclass(frozen=True, slots=True)
class Group:
    """Shapes that belong together."""

    shapes: tuple[Shape, ...]
    x: float = 0.0
    y: float = 0.0
    """How far the whole is moved."""
    title: str = ""
    """What it is, told when it is pointed at and to those who listen."""
    part: str = ""
    """The part of the plan that it shows, for the page to find."""


Shape = Line | Polyline | Polygon | Rectangle | Circle | Strokes | Path | Text | Group
"""Anything that can be drawn."""


@dataclass(frozen=True, slots=True)
class Scene:
    """A whole drawing."""

    width: float
    height: float
    shapes: tuple[Shape, ...]
    title: str
    """What the drawing is, in a few words."""
    told: str = ""
    """What it shows, for somebody who cannot see it."""
