"""A full-size drawing in tiles that fit on a sheet: they overlap, and marks show how they are joined."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from scantling.drawing.shape import Circle, Group, Line, Point, Polygon, Scene, Shape, Text
from scantling.drawing.template import PER_INCH
from scantling.words import say

MOST_WIDE, MOST_HIGH = 6.25 * PER_INCH, 7.25 * PER_INCH
"""What fits between the margins of Letter and of A4, below a heading."""
OVERLAP = 0.5 * PER_INCH
MARGIN, THIN_MARGIN = 18.0, 4.0
"""Around a tile, for its name and its marks; around a drawing that is one tile."""
_MARK = 7.0


@dataclass(frozen=True, slots=True)
class Tile:
    """One piece of a large drawing."""

    name: str
    """A letter across and a number down: A1, A2, B1."""
    scene: Scene


@dataclass(frozen=True, slots=True)
class _Window:
    """What of the whole a tile shows."""

    left: float
    top: float
    right: float
    low: float

    def holds(self, x: float, y: float, by: float = 0.0) -> bool:
        return self.left - by <= x <= self.right + by and self.top - by <= y <= self.low + by


def tiles(scene: Scene) -> tuple[Tile, ...]:
    """Return a full-size scene in tiles, from left to right and from the top down.

    A tile on which nothing is to be followed is left out: bare wood, or waste all over.
    """
    across, down = _spans(scene.width, MOST_WIDE), _spans(scene.height, MOST_HIGH)
    windows = [
        (f"{chr(ord('A') + column)}{row + 1}", _Window(left, top, right, low))
        for row, (top, low) in enumerate(down)
        for column, (left, right) in enumerate(across)
    ]
    wanted = [(name, window) for name, window in windows if _is_followed(scene, window)]
    return tuple(_tile(scene, name, window) for name, window in (wanted or windows))


def _is_followed(scene: Scene, window: _Window) -> bool:
    """Return whether a line to be followed lies in what is a tile's own, and not its neighbour's as well."""
    half = OVERLAP / 2
    own = _Window(
        window.left + (half if window.left > 0 else 0),
        window.top + (half if window.top > 0 else 0),
        window.right - (half if window.right < scene.width - 1e-6 else 0),
        window.low - (half if window.low < scene.height - 1e-6 else 0),
    )
    return any(
        _clip_line((shape.x1, shape.y1), (shape.x2, shape.y2), own) is not None
        for shape in scene.shapes
        if isinstance(shape, Line) and shape.look == "bold"
    )


def _spans(whole: float, most: float) -> list[tuple[float, float]]:
    """Return where tiles begin and end along one way, all alike, each over the next by the overlap."""
    count = 1 if whole <= most else ceil((whole - OVERLAP) / (most - OVERLAP))
    step = (whole - OVERLAP) / count if count > 1 else whole
    return [(i * step, i * step + step + (OVERLAP if count > 1 else 0)) for i in range(count)]


def _tile(scene: Scene, name: str, window: _Window) -> Tile:
    inside = tuple(kept for shape in scene.shapes for kept in _kept(shape, window))
    marks = tuple(_joins(scene, window))
    margin = MARGIN if marks else THIN_MARGIN
    width, height = window.right - window.left + 2 * margin, window.low - window.top + 2 * margin
    label = (Text(MARGIN, 11.0, name, 11.0, look="ink strong"),) if marks else ()
    shapes = (*label, Group((*inside, *marks), margin - window.left, margin - window.top))
    return Tile(
        name,
        Scene(
            width, height, shapes, say("{drawing}, tile {name}", drawing=scene.title, name=name), scene.told
        ),
    )


def _joins(scene: Scene, window: _Window) -> Iterator[Shape]:
    """Yield the lines along which tiles are cut, and crosses that lie on each other once they are joined."""
    cuts_down = (window.top + OVERLAP / 2, window.low - OVERLAP / 2)
    for y, is_join in zip(cuts_down, (window.top > 0, window.low < scene.height - 1e-6), strict=True):
        if is_join:
            yield Line(window.left, y, window.right, y, "cut")
            for x in (window.left, window.right):
                yield from _cross(x, y)
    cuts_across = (window.left + OVERLAP / 2, window.right - OVERLAP / 2)
    for x, is_join in zip(cuts_across, (window.left > 0, window.right < scene.width - 1e-6), strict=True):
        if is_join:
            yield Line(x, window.top, x, window.low, "cut")
            for y in (window.top, window.low):
                yield from _cross(x, y)


def _cross(x: float, y: float) -> Iterator[Shape]:
    yield Circle(x, y, _MARK * 0.6, "thin bare")
    yield Line(x - _MARK, y, x + _MARK, y, "edge")
    yield Line(x, y - _MARK, x, y + _MARK, "edge")


def _kept(shape: Shape, window: _Window) -> Iterator[Shape]:
    """Yield what of a shape lies in the window; nothing hides beyond a tile's edge."""
    match shape:
        case Line(x1, y1, x2, y2, look):
            cut = _clip_line((x1, y1), (x2, y2), window)
            if cut is not None:
                yield Line(*cut[0], *cut[1], look)
        case Circle(x, y, _, _) | Text(x, y):
            if window.holds(x, y):
                yield shape
        case Polygon(points, look, fill):
            inner = _clip_polygon(points, window)
            if len(inner) > 2:
                yield Polygon(inner, look, fill)
        case _:
            raise TypeError(f"a full-size drawing holds no {type(shape).__name__}")


def _clip_line(one: Point, other: Point, window: _Window) -> tuple[Point, Point] | None:
    """Return the part of a line in the window, or None."""
    (x1, y1), (x2, y2) = one, other
    dx, dy = x2 - x1, y2 - y1
    start, stop = 0.0, 1.0
    for way, room in (
        (-dx, x1 - window.left),
        (dx, window.right - x1),
        (-dy, y1 - window.top),
        (dy, window.low - y1),
    ):
        if way == 0:
            if room < 0:
                return None
        elif way < 0:
            start = max(start, room / way)
        else:
            stop = min(stop, room / way)
    if start >= stop:
        return None
    return (x1 + dx * start, y1 + dy * start), (x1 + dx * stop, y1 + dy * stop)


def _clip_polygon(points: tuple[Point, ...], window: _Window) -> tuple[Point, ...]:
    """Return the part of a convex outline in the window."""
    kept = list(points)
    for axis, limit, way in (
        (0, window.left, -1),
        (0, window.right, 1),
        (1, window.top, -1),
        (1, window.low, 1),
    ):
        made: list[Point] = []
        for here, there in zip(kept, (*kept[1:], *kept[:1]), strict=True):
            a, b = (here[axis] - limit) * way, (there[axis] - limit) * way
            if a <= 0:
                made.append(here)
            if (a < 0 < b) or (b < 0 < a):
                part = a / (a - b)
                made.append((here[0] + (there[0] - here[0]) * part, here[1] + (there[1] - here[1]) * part))
        kept = made
    return tuple(kept)
