"""Joinery details: a part's face with its grooves, dadoes, rabbets, notches and holes laid out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from scantling.drawing.arrow import numbered
from scantling.drawing.body import size_words
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.grain import slanted_grain
from scantling.drawing.lettering import text_width, wrap
from scantling.drawing.profile import has_profile, profile
from scantling.drawing.shape import Circle, Group, Line, Polygon, Polyline, Rectangle, Scene, Shape, Text
from scantling.measure import Display, Length, tangent, write_angle
from scantling.plan import FittedEnd, FittedPart, FittedProse, FittedWork, Quoted
from scantling.words import mark, say

_LEFT, _TOP = 12.0, 44.0
_LOWEST, _HIGHEST = 64.0, 150.0
_KEY = 11.0
_DRAWN = {
    "groove",
    "dado",
    "rabbet",
    "notch",
    "half-lap",
    "pocket holes",
    "holes",
    "shelf pin holes",
    "taper",
}
"""Work that a detail shows; the rest is told in words alone."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A part's face laid on the page."""

    part: FittedPart
    left: float
    top: float
    scale: float
    """Page units an inch along the length."""
    upscale: float
    """Page units an inch across the width."""

    @property
    def length(self) -> float:
        """The part's length on the page."""
        return _inches(self.part.length) * self.scale

    @property
    def width(self) -> float:
        """Its width on the page."""
        return _inches(self.part.width) * self.upscale

    def x(self, inches: float) -> float:
        """Return a place along the length."""
        return self.left + inches * self.scale

    def y(self, inches: float) -> float:
        """Return a place across the width, from the upper edge."""
        return self.top + inches * self.upscale


def detail_drawing(part: FittedPart, display: Display, *, width: float = 440.0) -> Scene | None:
    """Return the detail of a part, or None for a part on which nothing that can be drawn is done."""
    shown = [work for work in part.work if work.work.kind in _DRAWN]
    slanted = part.ends is not None and any(end.kind != "square" for end in part.ends)
    if not shown and not slanted:
        return None
    sheet = _sheet(part, width)
    shapes: list[Shape] = [
        Text(_LEFT, 15, f"{part.letter} {part.id}", 14, look="ink strong"),
        Text(_LEFT, 30, size_words(part, display), 11, look="soft"),
        _wood(sheet),
    ]
    for number, work in enumerate(shown, 1):
        shapes += _DRAWERS[work.work.kind](sheet, work)
        x, y = _mark_at(sheet, work, number)
        shapes.append(numbered(x, y, str(number), size=9.5))
    y = sheet.top + sheet.width
    shapes.append(across(sheet.left, sheet.left + sheet.length, y + 14, display.length(part.length), to=y))
    right = sheet.left + sheet.length
    shapes.append(upright(sheet.top, y, right + 16, display.length(part.width), to=right))
    shapes += _first_distances(sheet, shown, display)
    words = [(str(number), work_words(work, display)) for number, work in enumerate(shown, 1)]
    if slanted:
        words.append(("", say("ends: {how}", how=end_words(part))))
    more, y = _below(sheet, shown, words, y + 28, width, display)
    told = f"{part.letter} {part.id}: " + "; ".join(text for _, text in words) + "."
    return Scene(width, y + 8, (*shapes, *more), say("{part}, joinery", part=part.id), told)


def _sheet(part: FittedPart, width: float) -> Sheet:
    scale = (width - _LEFT - 30) / _inches(part.length)
    high = _inches(part.width) * scale
    upscale = scale * max(1.0, _LOWEST / high) if high < _HIGHEST else _HIGHEST / _inches(part.width)
    scale = min(scale, upscale)
    return Sheet(part, _LEFT, _TOP + 14, scale, upscale)


def _wood(sheet: Sheet) -> Shape:
    outline = tuple(_outline(sheet))
    return Group((Polygon(outline), slanted_grain(sheet.part.id, outline, (1.0, 0.0), apart=7)))


def _outline(sheet: Sheet) -> list[tuple[float, float]]:
    """Return the part's face, its ends cut as they are where mitres are seen."""
    left, right = sheet.left, sheet.left + sheet.length
    top, low = sheet.top, sheet.top + sheet.width
    if sheet.part.ends is None:
        return [(left, top), (right, top), (right, low), (left, low)]
    offs = [_end_off(sheet, end) for end in sheet.part.ends]
    parallel = sheet.part.part.ends is not None and sheet.part.part.ends.parallel
    upper_right, lower_right = (right, right - offs[1]) if parallel else (right - offs[1], right)
    return [(left + offs[0], top), (upper_right, top), (lower_right, low), (left, low)]


def _end_off(sheet: Sheet, end: FittedEnd) -> float:
    """Return how far a mitre runs along the part, on the page."""
    if end.kind != "mitre":
        return 0.0
    return float(abs(tangent(end.angle))) * _inches(sheet.part.width) * sheet.scale


def end_words(part: FittedPart) -> str:
    """Return how a part's ends are cut: "mitre 33.9°, both leaning the same way"."""
    if part.ends is None:
        return say("square")
    left, right = (
        say(end.kind) if end.kind == "square" else f"{say(end.kind)} {write_angle(end.angle)}"
        for end in part.ends
    )
    both = left if left == right else say("{left} at the left, {right} at the right", left=left, right=right)
    if left != right or part.part.ends is None:
        return both
    return f"{both}, " + (
        say("both leaning the same way") if part.part.ends.parallel else say("leaning towards each other")
    )


def _inches(length: Length | None) -> float:
    return 0.0 if length is None else length.top / length.bottom


def work_words(work: FittedWork, display: Display) -> str:
    """Return one piece of work in words: "dado, inside face: 3/4 in wide, 1/4 in deep, 3 in from the end"."""
    kind = work.work.kind
    round_hole = "holes" in kind and kind != "pocket holes"
    measures = [
        say("{count} of them", count=work.count) if work.count and work.count > 1 else "",
        say("{size} across" if round_hole else "{size} wide", size=display.length(work.width))
        if work.width
        else "",
        say("{size} deep", size=display.length(work.depth)) if work.depth else "",
        say("{size} long", size=display.length(work.length)) if work.length else "",
        _first_words(work, display) if work.from_end else "",
        say("{size} apart", size=display.length(work.apart)) if work.apart else "",
        _plain(work.note, display),
    ]
    told = ", ".join(measure for measure in measures if measure)
    where = f", {work.work.where}" if work.work.where else ""
    return f"{kind}{where}" + (f": {told}" if told else "")


def _plain(prose: FittedProse, display: Display) -> str:
    """Return prose as plain words."""
    return "".join(
        piece if isinstance(piece, str) else _value(piece, display) for piece in prose.pieces
    ).strip()


def _value(quoted: Quoted, display: Display) -> str:
    value = quoted.value
    if isinstance(value, Length):
        return display.length(value)
    return str(int(value)) if isinstance(value, Fraction) and value.denominator == 1 else str(value)


def _first_words(work: FittedWork, display: Display) -> str:
    assert work.from_end is not None
    from_edge = _runs_along(work) or work.work.kind == "pocket holes"
    told = mark("the first {size} from the edge") if from_edge else mark("the first {size} from the end")
    return say(told, size=display.length(work.from_end))


def _runs_along(work: FittedWork) -> bool:
    """Return whether the work runs along the part's length; a dado and a rabbet at an end run across."""
    return work.work.kind == "groove" or (work.work.kind == "rabbet" and "end" not in work.work.where.split())


def _groove(sheet: Sheet, work: FittedWork) -> list[Shape]:
    y = sheet.y(_inches(work.from_end))
    high = max(2.0, _inches(work.width) * sheet.upscale)
    return [
        Rectangle(sheet.left, y, _inches(work.length) * sheet.scale or sheet.length, high, "edge", "cutaway")
    ]


def _dado(sheet: Sheet, work: FittedWork) -> list[Shape]:
    high = _inches(work.length) * sheet.upscale or sheet.width
    wide = max(2.0, _inches(work.width) * sheet.scale)
    return [
        Rectangle(x, sheet.top + sheet.width - high, wide, high, "edge", "cutaway")
        for x in (sheet.x(at) for at in _starts(work))
    ]


def _starts(work: FittedWork) -> list[float]:
    first, apart = _inches(work.from_end), _inches(work.apart)
    return [first + apart * i for i in range(work.count or 1)] if apart else [first]


def _rabbet(sheet: Sheet, work: FittedWork) -> list[Shape]:
    if _runs_along(work):
        return [
            Rectangle(
                sheet.left, sheet.top, sheet.length, _inches(work.width) * sheet.upscale, "edge", "cutaway"
            )
        ]
    wide = _inches(work.width) * sheet.scale
    return [
        Rectangle(x, sheet.top, wide, sheet.width, "edge", "cutaway")
        for x in (sheet.left, sheet.left + sheet.length - wide)
    ]


def _notch(sheet: Sheet, work: FittedWork) -> list[Shape]:
    wide, high = _inches(work.width) * sheet.scale, _inches(work.depth) * sheet.upscale
    starts = [sheet.x(at) for at in _starts(work)]
    if work.count == 2 and work.apart is None:
        starts.append(sheet.left + sheet.length - (starts[0] - sheet.left) - wide)
    return [Rectangle(x, sheet.top, wide, high, "edge", "cutaway") for x in starts]


def _half_lap(sheet: Sheet, work: FittedWork) -> list[Shape]:
    wide = _inches(work.width) * sheet.scale or sheet.width
    x = sheet.x(_inches(work.from_end)) if work.from_end else sheet.left + (sheet.length - wide) / 2
    return [Rectangle(x, sheet.top, wide, sheet.width, "edge", "cutaway")]


def _taper(sheet: Sheet, work: FittedWork) -> list[Shape]:
    long, deep = _inches(work.length) * sheet.scale or sheet.length, _inches(work.depth) * sheet.upscale
    low = sheet.top + sheet.width
    corner = ((sheet.left, low), (sheet.left + long, low), (sheet.left, low - deep))
    return [Polygon(corner, "edge", "cutaway")]


def hole_columns(work: FittedWork) -> int:
    """Return in how many columns holes stand; those for shelf pins are made in two."""
    return 2 if "two columns" in work.work.where or work.work.kind == "shelf pin holes" else 1


def _round_holes(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return holes in rows; a pattern "in two columns" has two rows, near the two long edges."""
    if work.work.where.split()[-1:] == ["end"]:
        return _bores(sheet, work)
    columns = hole_columns(work)
    count = max(1, (work.count or 1) // columns)
    apart = _inches(work.apart) or _inches(sheet.part.length) / (count + 1)
    first = _inches(work.from_end) or apart
    radius = max(1.3, min(3.0, _inches(work.width) * sheet.scale / 2))
    heights = [0.18, 0.82] if columns == 2 else [0.5]
    return [
        Circle(sheet.x(first + apart * i), sheet.top + sheet.width * height, radius, "edge paper")
        for height in heights
        for i in range(count)
        if first + apart * i < _inches(sheet.part.length)
    ]


def _bores(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return holes into both ends, as hidden lines: their heights are measured from the upper edge."""
    deep, half = _inches(work.depth) * sheet.scale or 14.0, _inches(work.width) * sheet.upscale / 2
    first, apart = _inches(work.from_end), _inches(work.apart)
    heights = [sheet.y(first + apart * i) for i in range(work.count or 1)]
    ends = ((sheet.left, deep), (sheet.left + sheet.length, -deep))
    return [
        Polyline(((x, y - half), (x + along, y - half), (x + along, y + half), (x, y + half)), "hidden")
        for x, along in ends
        for y in heights
    ]


def _pocket_holes(sheet: Sheet, work: FittedWork) -> list[Shape]:
    """Return pocket holes: slots that run to the end, or to the edge along which they stand."""
    if "edge" in work.work.where and "each end" not in work.work.where:
        count = work.count or 1
        places = [sheet.x(_inches(sheet.part.length) * (i + 0.5) / count) for i in range(count)]
        return [shape for x in places for shape in _slot(x, sheet.top, 0.0, 1.0)]
    count, apart = work.count or 2, _inches(work.apart)
    first = _inches(work.from_end)
    if not apart:
        apart = _inches(sheet.part.width) / count
        first = first or apart / 2
    heights = [sheet.y(first + apart * i) for i in range(count)]
    ends = ((sheet.left, 1.0), (sheet.left + sheet.length, -1.0))
    return [shape for x, way in ends for y in heights for shape in _slot(x, y, way, 0.0)]


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


_DRAWERS: dict[str, Callable[[Sheet, FittedWork], list[Shape]]] = {
    "groove": _groove,
    "dado": _dado,
    "rabbet": _rabbet,
    "notch": _notch,
    "half-lap": _half_lap,
    "taper": _taper,
    "holes": _round_holes,
    "shelf pin holes": _round_holes,
    "pocket holes": _pocket_holes,
}


def _mark_at(sheet: Sheet, work: FittedWork, number: int) -> tuple[float, float]:
    """Return where a work's number stands."""
    kind = work.work.kind
    middle = sheet.top + sheet.width / 2
    if _runs_along(work):
        return sheet.left + sheet.length * (0.3 + 0.12 * (number % 4)), sheet.y(
            _inches(work.from_end) + _inches(work.width) / 2
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
            _inches(work.from_end)
        ) - 12 if work.from_end else sheet.left + 14, sheet.top + sheet.width * row
    if kind == "notch":
        return sheet.x(_inches(work.from_end) + _inches(work.width)) + 12, sheet.top + 12
    return sheet.x(_inches(work.from_end) + _inches(work.width) / 2), middle


def _first_distances(sheet: Sheet, works: list[FittedWork], display: Display) -> list[Shape]:
    """Return dimension lines above the part from its left end to each cut across it."""
    shapes: list[Shape] = []
    y = sheet.top - 10
    for work in works:
        if work.from_end is None or work.work.kind not in {"dado", "notch"}:
            continue
        words = display.length(work.from_end)
        end = sheet.x(_inches(work.from_end))
        if text_width(words, 11) + 6 <= end - sheet.left and not shapes:
            shapes.append(across(sheet.left, end, y, words, to=sheet.top))
    return shapes


def _below(
    sheet: Sheet,
    works: list[FittedWork],
    words: list[tuple[str, str]],
    y: float,
    width: float,
    display: Display,
) -> tuple[list[Shape], float]:
    """Return the key, the profiles and the word about the scale."""
    shapes: list[Shape] = []
    for number, text in words:
        y += 17
        shapes += [numbered(_LEFT + 8, y - 4, number, size=9)] if number else []
        for i, line in enumerate(wrap(text, _KEY, width - 2 * _LEFT - 22)):
            y += 13 if i else 0
            shapes.append(Text(_LEFT + 22, y, line, _KEY))
    shown = [(str(i), work) for i, work in enumerate(works, 1) if has_profile(work, sheet.part.thick)]
    distinct = {(work.work.kind, work.width, work.depth): (number, work) for number, work in reversed(shown)}
    x, apart = _LEFT, min(140.0, max(122.0, (width - _LEFT) / len(distinct or "1")))
    for number, work in list(distinct.values())[::-1][: 3 if width > 400 else 2]:
        shapes.append(profile(x, y + 16, number, work, sheet.part.thick, display))
        x += apart
    if distinct:
        y += 104
    if sheet.upscale > sheet.scale * 1.01:
        times = f"{sheet.upscale / sheet.scale:.1f}".removesuffix(".0")
        y += 16
        shapes.append(
            Text(
                _LEFT,
                y,
                say("The width is drawn {times} times as large as the length.", times=times),
                10,
                look="soft",
            )
        )
    return shapes, y
