"""A part's face laid on the page of its joinery detail."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.drawing.grain import slanted_grain
from scantling.drawing.shape import Group, Polygon, Shape
from scantling.measure import Length, tangent
from scantling.plan import FittedEnd, FittedPart, FittedWork

LEFT, _TOP = 12.0, 44.0
_LOWEST, _HIGHEST = 64.0, 150.0


def inches(length: Length | None) -> float:
    """Return a length in inches for drawing; nothing for none."""
    return 0.0 if length is None else length.top / length.bottom


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
    return float(abs(tangent(end.angle))) * inches(sheet.part.width) * sheet.scale


def runs_along(work: FittedWork) -> bool:
    """Return whether the work runs along the part's length; a dado and a rabbet at an end run across."""
    return work.work.kind == "groove" or (work.work.kind == "rabbet" and "end" not in work.work.where.split())
