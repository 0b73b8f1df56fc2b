"""Each kind of work drawn on a part's face."""

from __future__ import annotations

from collections.abc import Callable

from scantling.drawing.detail_face import Sheet, inches, is_at_end, runs_along
from scantling.drawing.shape import Circle, Line, Polygon, Polyline, Rectangle, Shape
from scantling.measure import Length
from scantling.plan import FittedWork, easy_line, ends_worked, is_at_far_end

_CURVE_STEPS = 24


def _groove(sheet: Sheet, work: FittedWork) -> list[Shape]:
    if is_at_end(work):
        return _end_groove(sheet, work)
    y = sheet.y(inches(work.from_end))
    high = max(2.0, inches(work.width) * sheet.upscale)
    return [
        Rectangle(sheet.left, y, inches(work.length) * sheet.scale or sheet.length, high, "edge", "cutaway")
    ]


def _end_groove(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return a groove in the end itself, as a hidden line as deep as it goes."""
    deep = max(4.0, inches(work.depth) * sheet.scale)
    return [
        Rectangle(x, sheet.top, deep, sheet.width, "hidden")
        for x, is_worked in zip(
            (sheet.left, sheet.left + sheet.length - deep), ends_worked(work), strict=True
        )
        if is_worked
    ]


def _dado(sheet: Sheet, work: FittedWork) -> list[Shape]:
    high = inches(work.length) * sheet.upscale or sheet.width
    wide = max(2.0, inches(work.width) * sheet.scale)
    return [
        Rectangle(x, sheet.top + sheet.width - high, wide, high, "edge", "cutaway")
        for x in (sheet.x(at) for at in _starts(work))
    ]


def _starts(work: FittedWork) -> list[float]:
    first, apart = inches(work.from_end), inches(work.apart)
    return [first + apart * i for i in range(work.count or 1)] if apart else [first]


def _rabbet(sheet: Sheet, work: FittedWork) -> list[Shape]:
    if runs_along(work):
        return [
            Rectangle(
                sheet.left, sheet.top, sheet.length, inches(work.width) * sheet.upscale, "edge", "cutaway"
            )
        ]
    wide = inches(work.width) * sheet.scale
    places = (sheet.left, sheet.left + sheet.length - wide)
    return [
        Rectangle(x, sheet.top, wide, sheet.width, "edge", "cutaway")
        for x, is_worked in zip(places, ends_worked(work), strict=True)
        if is_worked
    ]


def _notch(sheet: Sheet, work: FittedWork) -> list[Shape]:
    wide, high = inches(work.width) * sheet.scale, inches(work.depth) * sheet.upscale
    starts = [sheet.x(at) for at in _starts(work)]
    if work.count == 2 and work.apart is None:
        starts.append(sheet.left + sheet.length - (starts[0] - sheet.left) - wide)
    return [Rectangle(x, sheet.top, wide, high, "edge", "cutaway") for x in starts]


def _half_lap(sheet: Sheet, work: FittedWork) -> list[Shape]:
    wide = inches(work.width) * sheet.scale or sheet.width
    x = sheet.x(inches(work.from_end)) if work.from_end else sheet.left + (sheet.length - wide) / 2
    return [Rectangle(x, sheet.top, wide, sheet.width, "edge", "cutaway")]


def _taper(sheet: Sheet, work: FittedWork) -> list[Shape]:
    long, deep = inches(work.length) * sheet.scale or sheet.length, inches(work.depth) * sheet.upscale
    low = sheet.top + sheet.width
    corner = ((sheet.left, low), (sheet.left + long, low), (sheet.left, low - deep))
    return [Polygon(corner, "edge", "cutaway")]


def _curve(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return an edge that is hollowed: as far in as it is deep at the end, and out again in an easy line."""
    low = sheet.top + sheet.width
    from_right = is_at_far_end(work)
    start, way = (sheet.left + sheet.length, -1.0) if from_right else (sheet.left, 1.0)
    long = sheet.part.length if work.length is None else work.length
    deep = Length(0) if work.depth is None else work.depth
    line = [
        (start + way * float(off) * sheet.scale, low - float(gone) * sheet.upscale)
        for off, gone in easy_line(long.inches, deep.inches, _CURVE_STEPS)
    ]
    return [Polygon(((start, low), *line), "edge", "cutaway")]


def hole_columns(work: FittedWork) -> int:
    """Return in how many columns holes stand; those for shelf pins are made in two."""
    return 2 if "two columns" in work.work.where or work.work.kind == "shelf pin holes" else 1


def _round_holes(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return holes in rows; a pattern "in two columns" has two rows, near the two long edges."""
    if work.work.where.split()[-1:] == ["end"]:
        return _bores(sheet, work)
    columns = hole_columns(work)
    count = max(1, (work.count or 1) // columns)
    apart = inches(work.apart) or inches(sheet.part.length) / (count + 1)
    first = inches(work.from_end) or apart
    radius = max(1.3, min(3.0, inches(work.width) * sheet.scale / 2))
    heights = [0.18, 0.82] if columns == 2 else [0.5]
    long = inches(sheet.part.length)
    along = [first + apart * i for i in range(count) if first + apart * i < long]
    if is_at_far_end(work):
        along = [long - at for at in along]
    return [
        Circle(sheet.x(at), sheet.top + sheet.width * height, radius, "edge paper")
        for height in heights
        for at in along
    ]


def _bores(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return holes into the ends, as hidden lines: their heights are measured from the upper edge."""
    deep, half = inches(work.depth) * sheet.scale or 14.0, inches(work.width) * sheet.upscale / 2
    first, apart = inches(work.from_end), inches(work.apart)
    heights = [sheet.y(first + apart * i) for i in range(work.count or 1)]
    ends = ((sheet.left, deep), (sheet.left + sheet.length, -deep))
    return [
        Polyline(((x, y - half), (x + along, y - half), (x + along, y + half), (x, y + half)), "hidden")
        for (x, along), is_worked in zip(ends, ends_worked(work), strict=True)
        for y in heights
        if is_worked
    ]


def _pocket_holes(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return pocket holes: slots that run to the end, or to the edge along which they stand."""
    if "edge" in work.work.where and "each end" not in work.work.where:
        count = work.count or 1
        left, right = sheet.ends_at(sheet.top)
        places = [left + (right - left) * (i + 0.5) / count for i in range(count)]
        return [shape for x in places for shape in _slot(x, sheet.top, 0.0, 1.0)]
    count, apart = work.count or 2, inches(work.apart)
    first = inches(work.from_end)
    if not apart:
        apart = inches(sheet.part.width) / count
        first = first or apart / 2
    heights = [sheet.y(first + apart * i) for i in range(count)]
    return [
        shape
        for y in heights
        for x, way, is_worked in zip(sheet.ends_at(y), (1.0, -1.0), ends_worked(work), strict=True)
        if is_worked
        for shape in _slot(x, y, way, 0.0)
    ]


def _slot(x: float, y: float, along: float, down: float) -> list[Shape]:
    """Return one pocket hole that leaves the wood at (`x`, `y`) and runs inwards."""
    near, far, half = 9.0, 20.0, 2.6
    across_x, across_y = down * half, along * half
    outline = (
        (x + along * near - across_x, y + down * near - across_y),
        (x + along * far - across_x, y + down * far - across_y),
        (x + along * far + across_x, y + down * far + across_y),
        (x + along * near + across_x, y + down * near + across_y),
    )
    return [
        Line(x, y, x + along * near, y + down * near, "hidden"),
        Polygon(outline, "edge paper"),
    ]


DRAWN_BY: dict[str, Callable[[Sheet, FittedWork], list[Shape]]] = {
    "groove": _groove,
    "dado": _dado,
    "rabbet": _rabbet,
    "notch": _notch,
    "half-lap": _half_lap,
    "taper": _taper,
    "curve": _curve,
    "holes": _round_holes,
    "shelf pin holes": _round_holes,
    "pocket holes": _pocket_holes,
}
"""How each kind of work is drawn; the rest is told in words alone."""
