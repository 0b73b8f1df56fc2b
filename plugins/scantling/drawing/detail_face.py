"""A part's face laid on the page of its joinery detail."""

from __future__ import annotations

import re
from dataclasses import dataclass

from scantling.drawing.grain import slanted_grain
from scantling.drawing.shape import Group, Point, Polygon, Shape
from scantling.measure import Length, tangent
from scantling.plan import FittedEnd, FittedPart, FittedWork

LEFT, _TOP = 12.0, 38.0
_LOWEST, _HIGHEST = 64.0, 132.0


def inches(length: Length | None) -> float:
    """Return a length in inches for drawing; nothing for none."""
    return 0.0 if length is None else length.top / length.bottom


@dataclass(frozen=True, slots=True)
class Sheet:
    """A part's face laid on the page, with its lower end, or its left one, to the left."""

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
        return inches(self.part.length) * self.scale

    @property
    def width(self) -> float:
        """Its width on the page."""
        return inches(self.part.width) * self.upscale

    def x(self, inches: float) -> float:
        """Return a place along the length."""
        return self.left + inches * self.scale

    def y(self, inches: float) -> float:
        """Return a place across the width, from the upper edge."""
        return self.top + inches * self.upscale

    def ends_at(self, y: float) -> Point:
        """Return where the part begins and ends at a height of the page: a mitred end leans."""
        upper_left, upper_right, lower_right, lower_left = _outline(self)
        down = (y - self.top) / self.width if self.width else 0.0
        left = upper_left[0] + (lower_left[0] - upper_left[0]) * down
        return left, upper_right[0] + (lower_right[0] - upper_right[0]) * down


def face_of(part: FittedPart, width: float) -> Sheet:
    """Return a part's face, wide enough to be read and no higher than need be."""
    scale = (width - LEFT - 30) / inches(part.length)
    high = inches(part.width) * scale
    upscale = scale * max(1.0, _LOWEST / high) if high < _HIGHEST else _HIGHEST / inches(part.width)
    scale = min(scale, upscale)
    return Sheet(part, LEFT, _TOP + 14, scale, upscale)


def wood(sheet: Sheet) -> Shape:
    """Return the face itself, with its grain."""
    outline = tuple(_outline(sheet))
    return Group((Polygon(outline), slanted_grain(sheet.part.id, outline, (1.0, 0.0), apart=7)))


def _outline(sheet: Sheet) -> list[Point]:
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
    return float(abs(tangent(end.angle))) * inches(sheet.part.width) * sheet.scale


def runs_along(work: FittedWork) -> bool:
    """Return whether the work runs along the part's length; a dado and what is at an end run across."""
    return work.work.kind in {"groove", "rabbet"} and not is_at_end(work)


def is_at_end(work: FittedWork) -> bool:
    """Return whether the work is done on an end of the part, or on both."""
    return re.search(r"\bends?\b", work.work.where) is not None


def is_laid_out(work: FittedWork) -> bool:
    """Return whether the plan says enough to draw the work: single holes need their distances."""
    return work.work.kind != "holes" or work.from_end is not None or work.apart is not None
