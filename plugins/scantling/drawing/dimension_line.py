"""Dimension lines: a thin line between two slanted ticks, with the measure on it."""

from __future__ import annotations

from math import hypot

from scantling.drawing.lettering import text_width
from scantling.drawing.shape import Group, Line, Point, Shape, Text

_TICK = 3.2


def across(
    x1: float, x2: float, y: float, words: str, *, to: float | None = None, size: float = 11.0
) -> Group:
    """Return a level dimension line from `x1` to `x2` at height `y`.

    Words that do not fit between the ends stand beside them, to the right.

    Args:
        to: where the thin lines lead that bring the measure out of the thing, if they are wanted.
    """
    fits = text_width(words, size) + 6 <= abs(x2 - x1)
    shapes: list[Shape] = [] if to is None else [_leader(x1, to, x1, y), _leader(x2, to, x2, y)]
    shapes += [*_open((x1, y), (x2, y), words if fits else "", size), *(_tick(x, y) for x in (x1, x2))]
    if fits:
        shapes.append(Text((x1 + x2) / 2, y + size * 0.35, words, size, "middle", "ink halo"))
    else:
        shapes.append(Text(max(x1, x2) + 5, y + size * 0.35, words, size, "start", "ink halo"))
    return Group(tuple(shapes))


def upright(
    y1: float, y2: float, x: float, words: str, *, to: float | None = None, size: float = 11.0
) -> Group:
    """Return an upright dimension line from `y1` to `y2` at `x`, its words read from the right.

    Args:
        to: where the thin lines lead that bring the measure out of the thing, if they are wanted.
    """
    fits = text_width(words, size) + 6 <= abs(y2 - y1)
    shapes: list[Shape] = [] if to is None else [_leader(to, y1, x, y1), _leader(to, y2, x, y2)]
    shapes += [*_open((x, y1), (x, y2), words if fits else "", size), *(_tick(x, y) for y in (y1, y2))]
    middle = (y1 + y2) / 2
    if not words:
        return Group(tuple(shapes))
    if fits:
        shapes.append(Text(x + size * 0.35, middle, words, size, "middle", "ink halo", -90))
    else:
        shapes.append(Text(x + 5, middle + size * 0.35, words, size, "start", "ink halo"))
    return Group(tuple(shapes))


def _open(one: Point, other: Point, words: str, size: float) -> list[Line]:
    """Return the thin line, left open round the words in its middle: it would strike through their spaces."""
    (x1, y1), (x2, y2) = one, other
    far = hypot(x2 - x1, y2 - y1)
    if not words or not far:
        return [Line(x1, y1, x2, y2, "thin")]
    upright = abs(x2 - x1) < 1
    flat = 1.0 if upright else abs(x2 - x1) / far
    wide, high = text_width(words, size) + 4, size + 4
    gap = min(wide / flat, high / (1 - flat**2) ** 0.5 if 1 - flat**2 > 1e-6 else wide)
    part = (far - gap) / 2 / far
    if part <= 0:
        return []
    (dx, dy) = (x2 - x1) * part, (y2 - y1) * part
    return [Line(x1, y1, x1 + dx, y1 + dy, "thin"), Line(x2 - dx, y2 - dy, x2, y2, "thin")]


def _tick(x: float, y: float) -> Line:
    return Line(x - _TICK, y + _TICK, x + _TICK, y - _TICK, "edge")


def _leader(x1: float, y1: float, x2: float, y2: float) -> Line:
    """Return the thin line from near the thing to a little past the dimension line."""
    gap, past = 2.5, 4.0
    if x1 == x2:
        way = 1 if y2 > y1 else -1
        return Line(x1, y1 + gap * way, x2, y2 + past * way, "thin")
    way = 1 if x2 > x1 else -1
    return Line(x1 + gap * way, y1, x2 + past * way, y2, "thin")


def slanted(
    one: tuple[float, float],
    other: tuple[float, float],
    words: str,
    off: tuple[float, float],
    *,
    size: float = 11.0,
) -> Group:
    """Return a dimension line along any direction, moved by `off` from the edge that it measures."""
    (x1, y1), (x2, y2) = one, other
    dx, dy = off
    shapes: list[Shape] = [
        _leader_along(one, off),
        _leader_along(other, off),
        *_open((x1 + dx, y1 + dy), (x2 + dx, y2 + dy), words, size),
        _tick(x1 + dx, y1 + dy),
        _tick(x2 + dx, y2 + dy),
    ]
    x, y = (x1 + x2) / 2 + dx, (y1 + y2) / 2 + dy
    if abs(x2 - x1) < 1:
        shapes.append(Text(x + size * 0.35, y, words, size, "middle", "ink halo", -90))
    else:
        shapes.append(Text(x, y + size * 0.35, words, size, "middle", "ink halo"))
    return Group(tuple(shapes))


def _leader_along(point: tuple[float, float], off: tuple[float, float]) -> Line:
    (x, y), (dx, dy) = point, off
    return Line(x + dx * 0.15, y + dy * 0.15, x + dx * 1.25, y + dy * 1.25, "thin")
