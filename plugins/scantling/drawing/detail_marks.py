"""Where the numbers of the work on a part stand, and how far the first of it is from the end."""

from __future__ import annotations

from scantling.drawing.detail_face import Sheet, inches, runs_along
from scantling.drawing.dimension_line import across
from scantling.drawing.lettering import text_width
from scantling.drawing.shape import Shape
from scantling.measure import Display
from scantling.plan import FittedWork


def mark_at(sheet: Sheet, work: FittedWork, number: int) -> tuple[float, float]:
    """Return where a work's number stands."""
    kind = work.work.kind
    middle = sheet.top + sheet.width / 2
    if runs_along(work):
        return sheet.left + sheet.length * (0.3 + 0.12 * (number % 4)), sheet.y(
            inches(work.from_end) + inches(work.width) / 2
        )
    if kind == "pocket holes":
        if "edge" in work.work.where and "each end" not in work.work.where:
            return sheet.left + sheet.length / 2 + 14, sheet.top + 16
        return sheet.left + 36, middle
    if kind in {"half-lap", "taper"}:
        return (sheet.left + sheet.length / 2 if kind == "half-lap" else sheet.left + 18), middle
    if kind in {"holes", "shelf pin holes"}:
        row = 0.18 if kind == "shelf pin holes" else 0.5
        return sheet.x(
            inches(work.from_end)
        ) - 12 if work.from_end else sheet.left + 14, sheet.top + sheet.width * row
    if kind == "notch":
        return sheet.x(inches(work.from_end) + inches(work.width)) + 12, sheet.top + 12
    return sheet.x(inches(work.from_end) + inches(work.width) / 2), middle


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
