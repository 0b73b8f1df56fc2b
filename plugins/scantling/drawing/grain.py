"""Grain: faint pencil lines along the wood, irregular but the same every time."""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt
from zlib import crc32

from scantling.drawing.shape import Point, Strokes


class Scatter:
    """Numbers that look random and are the same on every machine, from what a thing is called."""

    __slots__ = ("_state",)

    def __init__(self, seed: str) -> None:
        self._state = crc32(seed.encode("utf-8", "replace")) or 1

    def between(self, least: float, most: float) -> float:
        """Return the next number between two ends."""
        self._state = (self._state * 1_103_515_245 + 12_345) % 2_147_483_648
        return least + (most - least) * (self._state // 8) / 268_435_456


def level_grain(
    seed: str, left: float, top: float, width: float, height: float, *, apart: float = 6.0
) -> list[tuple[float, float, float, float]]:
    """Return broken level lines over a rectangle, `apart` on average."""
    scatter = Scatter(seed)
    lines = []
    y = top + scatter.between(0.3, 0.9) * apart
    while y < top + height - 1:
        x = left + scatter.between(0, 30)
        while x < left + width:
            end = x + scatter.between(30, 140)
            lines.append((x, y, min(end, left + width), y))
            x = end + scatter.between(5, 22)
        y += scatter.between(0.6, 1.4) * apart
    return lines


def clip_level(
    lines: Iterable[tuple[float, float, float, float]], left: float, top: float, right: float, bottom: float
) -> list[tuple[float, float, float, float]]:
    """Return what of level lines lies inside a rectangle."""
    return [
        (max(x1, left), y, min(x2, right), y)
        for x1, y, x2, _ in lines
        if top < y < bottom and min(x2, right) - max(x1, left) > 1
    ]


def slanted_grain(seed: str, outline: tuple[Point, ...], along: Point, *, apart: float = 5.0) -> Strokes:
    """Return lines across a convex outline in the direction `along`, which need not have length one."""
    length = sqrt(along[0] ** 2 + along[1] ** 2)
    if length < 1e-9 or len(outline) < 3:
        return Strokes(())
    ux, uy = along[0] / length, along[1] / length
    offsets = [y * ux - x * uy for x, y in outline]
    after = zip((*offsets[1:], offsets[0]), (*outline[1:], outline[0]), strict=True)
    sides = [
        (here, there, x1, y1, x2 - x1, y2 - y1)
        for here, (x1, y1), (there, (x2, y2)) in zip(offsets, outline, after, strict=True)
    ]
    scatter = Scatter(seed)
    lines = []
    at, last = min(offsets) + scatter.between(0.4, 1.0) * apart, max(offsets) - 0.8
    while at < last:
        met = []
        for here, there, x, y, wide, high in sides:
            if (here < at) != (there < at):
                part = (at - here) / (there - here)
                met.append((x + wide * part, y + high * part))
        if len(met) == 2:
            lines += _broken((met[0], met[1]), (ux, uy), scatter)
        at += scatter.between(0.6, 1.4) * apart
    return Strokes(tuple(lines))


def _broken(
    span: tuple[Point, Point], along: Point, scatter: Scatter
) -> list[tuple[float, float, float, float]]:
    """Return the span as one or two strokes that stop a little short of its ends."""
    (x1, y1), (x2, y2) = span
    far = (x2 - x1) * along[0] + (y2 - y1) * along[1]
    if far < 0:
        (x1, y1), far = (x2, y2), -far
    if far < 6:
        return []
    start, end = scatter.between(0.02, 0.25) * far, scatter.between(0.7, 0.98) * far
    ux, uy = along
    return [(x1 + ux * start, y1 + uy * start, x1 + ux * end, y1 + uy * end)]
