"""The profile of a groove, dado, rabbet or half-lap: how wide and how deep, seen on the end."""

from __future__ import annotations

from scantling.drawing.arrow import numbered
from scantling.drawing.detail_face import is_at_end
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.shape import Group, Rectangle, Shape
from scantling.measure import Display, Length
from scantling.plan import FittedWork
from scantling.report import write_measure

_WIDE, _THICK = 110.0, 44.0


def has_profile(work: FittedWork, thick: Length) -> bool:
    """Return whether a work's width and depth are known and make a profile that can be read."""
    width, depth = work.width, work.depth
    if work.work.kind == "groove" and is_at_end(work):
        return False
    if work.work.kind not in {"groove", "dado", "rabbet", "half-lap"} or width is None or depth is None:
        return False
    return Length(0) < depth < thick and Length(0) < width <= 3 * thick


def profile(x: float, y: float, number: str, work: FittedWork, thick: Length, display: Display) -> Group:
    """Return the profile of one work, 120 page units wide and 80 high, from its upper left corner."""
    width, depth = work.width, work.depth
    if width is None or depth is None or thick <= Length(0):
        return Group(())
    scale = min(_THICK / _inches(thick), 44 / _inches(width))
    high, cut_wide, deep = _inches(thick) * scale, _inches(width) * scale, _inches(depth) * scale
    start = x + 8 if work.work.kind == "rabbet" else x + 8 + (_WIDE - 30 - cut_wide) / 2
    top = y + 27
    right = x + _WIDE - 22
    shapes: tuple[Shape, ...] = (
        Rectangle(x + 8, top, right - x - 8, high),
        Rectangle(start, top, cut_wide, deep, "edge", "cutaway"),
        across(start, start + cut_wide, top - 13, write_measure(width, display)),
        upright(top, top + deep, right + 8, write_measure(depth, display), to=right),
        numbered(x + 14, y + 3, number, size=9),
    )
    return Group(shapes)


def _inches(length: Length) -> float:
    return length.top / length.bottom
