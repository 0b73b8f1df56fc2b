"""Plots: round ticks, and points where they belong."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import assume, given
from hypothesis import strategies as st

from scantling.drawing import (
    Axis,
    Circle,
    Curve,
    Mark,
    Plot,
    Polyline,
    Text,
    plot_scene,
    round_ticks,
    text_width,
)


@given(st.integers(-10_000, 10_000), st.integers(1, 10_000), st.integers(2, 10))
def test_ticks_are_round_even_and_inside(least, span, wanted):
    """Ticks lie between the ends, equally far apart, by a step of 1, 2 or 5 times a power of ten."""
    ticks = [value for value, _ in round_ticks(least / 7, (least + span) / 7, wanted)]
    assume(len(ticks) > 1)

    assert all(least / 7 - 1e-9 <= tick <= (least + span) / 7 + 1e-9 for tick in ticks)
    steps = [after - before for before, after in pairwise(ticks)]
    assert max(steps) - min(steps) < 1e-9 * max(1, abs(ticks[-1]))
    assert f"{steps[0]:.0e}"[0] in "125"
    assert len(ticks) <= wanted + 1


def test_a_mark_stands_on_its_curve():
    """A picked-out point has the place of the curve's point of the same values."""
    plot = Plot(
        Axis("span, in", 0, 60),
        Axis("sag, in", 0, 1),
        (Curve(((0, 0), (30, 0.5), (60, 1))),),
        (Mark(30, 0.5, "here"),),
    )
    scene = plot_scene(plot)

    curve = next(shape for shape in scene.shapes if isinstance(shape, Polyline) and shape.look == "bold")
    mark = next(shape for shape in scene.shapes if isinstance(shape, Circle))
    assert curve.points[1] == (mark.x, mark.y)


def test_steps_hold_until_the_next_point():
    """A price holds level until the day it changes."""
    plot = Plot(Axis("day", 0, 2), Axis("price", 0, 2), (Curve(((0, 1), (1, 2), (2, 2)), steps=True),))
    curve = next(
        shape for shape in plot_scene(plot).shapes if isinstance(shape, Polyline) and shape.look == "bold"
    )

    for (x1, y1), (x2, y2) in pairwise(curve.points):
        assert x1 == x2 or y1 == y2


def test_the_words_of_a_mark_stand_clear_of_the_curve():
    """Where the cost climbs just after the reader's size, its words stand before it and not on the line."""
    steps = Curve(((0, 1), (30, 2), (34, 3), (38, 4), (60, 5)), steps=True)
    plot = Plot(Axis("width, in", 0, 60), Axis("cost, $", 0, 6), (steps,), (Mark(30, 2, "$115.58"),))
    scene = plot_scene(plot)

    words = next(shape for shape in scene.shapes if isinstance(shape, Text) and shape.words == "$115.58")
    line = next(shape for shape in scene.shapes if isinstance(shape, Polyline) and len(shape.points) > 3)
    left, right = words.x, words.x + text_width("$115.58", words.size, bold=True)
    for (x1, y1), (x2, y2) in pairwise(line.points):
        is_beside = max(x1, x2) < left or min(x1, x2) > right
        is_over = max(y1, y2) < words.y - words.size or min(y1, y2) > words.y + 2
        assert is_beside or is_over
