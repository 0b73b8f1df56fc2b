"""Where the numbers of the work on a part stand, and how far the first of it is from the end."""

from __future__ import annotations

from scantling.drawing.detail_face import Sheet, inches, is_at_end, runs_along
from scantling.drawing.dimension_line import across
from scantling.drawing.lettering import text_width
from scantling.drawing.shape import Shape
from scantling.measure import Display
from scantling.plan import FittedWork, is_at_far_end

_ROOM = 17.0
"""Room between the middles of two numbers in circles."""


def mark_at(sheet: Sheet, work: FittedWork, number: int) -> tuple[float, float]:
    """Return where a work's number stands."""
    kind = work.work.kind
    middle = sheet.top + sheet.width / 2
    right = sheet.left + sheet.length
    is_far = is_at_far_end(work)
    if runs_along(work):
        return sheet.left + sheet.length * (0.3 + 0.12 * (number % 4)), sheet.y(
            inches(work.from_end) + inches(work.width) / 2
        )
    if kind == "pocket holes":
        if "edge" in work.work.where and "each end" not in work.work.where:
            return sheet.left + sheet.length / 2 + 14, sheet.top + 16
        left, right = sheet.ends_at(middle)
        return (right - 36 if is_far else left + 36), middle
    if kind == "groove" and is_at_end(work):
        return (right - 14 if is_far else sheet.left + 14), middle
    if kind == "curve":
        x = inches(work.length) * sheet.scale * 0.18
        return (right - x if is_far else sheet.left + x), sheet.top + sheet.width - 12
    if kind in {"half-lap", "taper"}:
        return (sheet.left + sheet.length / 2 if kind == "half-lap" else sheet.left + 18), middle
    if kind in {"holes", "shelf pin holes"}:
        row = 0.18 if kind == "shelf pin holes" else 0.5
        if is_far:
            return sheet.x(inches(sheet.part.length) - inches(work.from_end)), middle - 16
        return sheet.x(
            inches(work.from_end)
        ) - 12 if work.from_end else sheet.left + 14, sheet.top + sheet.width * row
    if kind == "notch":
        return sheet.x(inches(work.from_end) + inches(work.width)) + 12, sheet.top + 12
    return sheet.x(inches(work.from_end) + inches(work.width) / 2), middle


def marks_apart(wanted: list[tuple[float, float]], right: float) -> list[tuple[float, float]]:
    """Return where numbers stand so that none covers another, nor the dimension line beyond the part's end.

    Each moves to the right until it is free, or to the left where the part ends before that.
    """
    placed: list[tuple[float, float]] = []
    last = right - _ROOM / 2
    for x, y in wanted:
        taken = [at for at, low in placed if abs(y - low) < _ROOM]
        way, x = _ROOM, min(x, last)
        start = x
        while any(abs(x - at) < _ROOM for at in taken):
            if x + way > last:
                way, x = -_ROOM, start
            x += way
        placed.append((x, y))
    return placed


def first_distances(sheet: Sheet, works: list[FittedWork], display: Display) -> list[Shape]:
    """Return dimension lines above the part from its left end to each cut across it."""
    shapes: list[Shape] = []
    y = sheet.top - 10
    for work in works:
        if work.from_end is None or work.work.kind not in {"dado", "notch"}:
            continue
        words = display.length(work.from_end)
        end = sheet.x(inches(work.from_end))
        if text_width(words, 11) + 6 <= end - sheet.left and not shapes:
            shapes.append(across(sheet.left, end, y, words, to=sheet.top))
    return shapes
