"""Small plots: two axes with ticks, curves or steps, and points that are picked out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.drawing.lettering import text_width
from scantling.drawing.number import short
from scantling.drawing.shape import Circle, Line, Point, Polyline, Scene, Shape, Text
from scantling.measure import local_marks
from scantling.words import say

_LETTER = 11.0


@dataclass(frozen=True, slots=True)
class Axis:
    """One axis: what it shows, from where to where."""

    title: str
    least: float
    most: float
    ticks: tuple[tuple[float, str], ...] = ()
    """Values with their words; without any, round values are chosen."""


@dataclass(frozen=True, slots=True)
class Curve:
    """A line through points in the axes' own units."""

    points: tuple[Point, ...]
    title: str = ""
    look: str = "bold"
    steps: bool = False
    """True for a value that holds until the next point (a price that changes on a day)."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A point that is picked out, with thin lines to both axes."""

    x: float
    y: float
    words: str


@dataclass(frozen=True, slots=True)
class Plot:
    """Everything that a plot shows."""

    across: Axis
    up: Axis
    curves: tuple[Curve, ...]
    marks: tuple[Mark, ...] = ()
    title: str = ""
    told: str = ""


@dataclass(frozen=True, slots=True)
class _Frame:
    plot: Plot
    left: float
    top: float
    width: float
    height: float

    def x(self, value: float) -> float:
        axis = self.plot.across
        return self.left + self.width * (value - axis.least) / ((axis.most - axis.least) or 1.0)

    def y(self, value: float) -> float:
        axis = self.plot.up
        return self.top + self.height * (1 - (value - axis.least) / ((axis.most - axis.least) or 1.0))


def round_ticks(least: float, most: float, wanted: int = 5) -> tuple[tuple[float, str], ...]:
    """Return about `wanted` round values between two ends, each with its words."""
    low, high = Fraction(least), Fraction(most)
    if high <= low:
        return ((least, short(least)),)
    rough = (high - low) / max(1, wanted)
    power = Fraction(1)
    while power > rough:
        power /= 10
    while power * 10 <= rough:
        power *= 10
    step = next(power * times for times in (1, 2, 5, 10) if power * times >= rough)
    first = -(-low // step)
    values = [step * (first + i) for i in range(int((high - step * first) // step) + 1)]
    return tuple((float(value), _words(value)) for value in values)


def _words(value: Fraction) -> str:
    text = f"{float(value):,.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else local_marks(text)


def plot_scene(plot: Plot, *, width: float = 440.0, height: float = 260.0) -> Scene:
    """Return the plot as a scene."""
    rows = plot.up.ticks or round_ticks(plot.up.least, plot.up.most)
    columns = plot.across.ticks or round_ticks(plot.across.least, plot.across.most, 6)
    left = 14 + max((text_width(words, _LETTER) for _, words in rows), default=0)
    frame = _Frame(plot, left, 28, width - left - 16, height - 28 - 40)
    shapes: list[Shape] = [*_axes(frame, columns, rows)]
    for curve in plot.curves:
        shapes += _curve(frame, curve)
    for mark in plot.marks:
        shapes += _mark(frame, mark, width)
    return Scene(
        width,
        height,
        tuple(shapes),
        plot.title or say("{up} by {across}", up=plot.up.title, across=plot.across.title),
        plot.told,
    )


def _axes(
    frame: _Frame, columns: Sequence[tuple[float, str]], rows: Sequence[tuple[float, str]]
) -> list[Shape]:
    bottom, right = frame.top + frame.height, frame.left + frame.width
    shapes: list[Shape] = []
    taken = -1e9
    for value, words in columns:
        x, half = frame.x(value), text_width(words, _LETTER) / 2
        shapes.append(Line(x, bottom, x, bottom + 4, "thin"))
        if x - half >= taken:
            shapes.append(Text(x, bottom + 15, words, _LETTER, "middle", "ink"))
            taken = x + half + 4
    for value, words in rows:
        y = frame.y(value)
        shapes += [
            Line(frame.left, y, right, y, "grain"),
            Text(frame.left - 5, y + 4, words, _LETTER, "end", "ink"),
        ]
    axis = ((frame.left, frame.top), (frame.left, bottom), (right, bottom))
    return [
        *shapes,
        Polyline(axis, "edge"),
        Text(right, bottom + 32, frame.plot.across.title, _LETTER, "end", "soft"),
        Text(4, 14, frame.plot.up.title, _LETTER, "start", "soft"),
    ]


def _line(frame: _Frame, curve: Curve) -> list[Point]:
    """Return a curve's corners on the page."""
    points = [(frame.x(x), frame.y(y)) for x, y in curve.points]
    if not curve.steps:
        return points
    return [
        corner for before, after in pairwise(points) for corner in (before, (after[0], before[1]))
    ] + points[-1:]


def _curve(frame: _Frame, curve: Curve) -> list[Shape]:
    points = _line(frame, curve)
    shapes: list[Shape] = [Polyline(tuple(points), curve.look)]
    if curve.title and points:
        x, y = points[-1]
        shapes.append(Text(x - 2, y - 6, curve.title, _LETTER, "end", "ink halo"))
    return shapes


def _mark(frame: _Frame, mark: Mark, width: float) -> list[Shape]:
    x, y = frame.x(mark.x), frame.y(mark.y)
    left, low = _place_of_words(frame, mark, width)
    return [
        Line(x, y, x, frame.top + frame.height, "hidden"),
        Line(frame.left, y, x, y, "hidden"),
        Circle(x, y, 4, "mark"),
        Text(left, low, mark.words, _LETTER, "start", "ink strong halo"),
    ]


def _place_of_words(frame: _Frame, mark: Mark, width: float) -> Point:
    """Return where a mark's words begin: above it to the right, unless a curve or the edge is in the way."""
    x, y = frame.x(mark.x), frame.y(mark.y)
    room = text_width(mark.words, _LETTER, bold=True)
    after, before = x + 7, x - 7 - room
    places = [(left, low) for low in (y - 7, y + 16) for left in (after, before)]
    inside = [spot for spot in places if spot[0] + room < width - 4 and spot[0] > frame.left] or places[1:2]
    crossing = [spot for curve in frame.plot.curves for spot in _along(_line(frame, curve))]
    return min(
        inside,
        key=lambda spot: sum(
            spot[0] - 2 <= at <= spot[0] + room + 2 and spot[1] - _LETTER <= high <= spot[1] + 3
            for at, high in crossing
        ),
    )


def _along(corners: list[Point]) -> list[Point]:
    """Return places close together along a line."""
    return [
        (x1 + (x2 - x1) * step / 16, y1 + (y2 - y1) * step / 16)
        for (x1, y1), (x2, y2) in pairwise(corners)
        for step in range(17)
    ]
