"""Cutting parts from the strips that trimming leaves."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction

from scantling.measure import Length
from scantling.plan import FittedOffcut, FittedPart

NOTHING = Length.of_inches(Fraction(0))


@dataclass(frozen=True, slots=True)
class OffcutPiece:
    """One part cut from a strip that fell off another part."""

    part: FittedPart
    strip: FittedOffcut
    strip_number: int
    """Which of the strips of that kind, from 1."""
    x: Length
    """Where along the strip it begins."""


@dataclass(slots=True)
class _Strip:
    """One strip while parts are being laid out on it."""

    offcut: FittedOffcut
    number: int
    reach: list[Length] = field(default_factory=list)
    """How far each lane is used; lanes lie side by side across the strip."""
    lane: tuple[Length, Length] | None = None

    def take(self, part: FittedPart, kerf: Length) -> Length | None:
        """Return where along the strip the part can be cut, taking the place, or None."""
        section = (part.width, part.thick)
        if self.lane is None:
            lanes = _lanes(self.offcut, part, kerf)
            if not lanes:
                return None
            self.reach = [NOTHING] * lanes
            self.lane = section
        if section != self.lane:
            return None
        for number, reach in enumerate(self.reach):
            if reach + part.length <= self.offcut.length:
                self.reach[number] = reach + part.length + kerf
                return reach
        return None


def _lanes(offcut: FittedOffcut, part: FittedPart, kerf: Length) -> int:
    """Return how many strips of the part's section lie side by side in an offcut."""
    best = 0
    for wide, thick in ((offcut.width, offcut.thick), (offcut.thick, offcut.width)):
        if part.width <= wide and part.thick <= thick:
            best = max(best, int((wide + kerf) / (part.width + kerf)))
    return best


def cut_trimmings(
    parts: Iterable[FittedPart], offcuts: Iterable[FittedOffcut], kerf: Length
) -> tuple[tuple[OffcutPiece, ...], dict[str, int]]:
    """Lay out parts on strips, longest first, each on the slenderest strip that holds it.

    Returns:
        The pieces that found a place, and how many of each part did not.
    """
    slender_first = sorted(offcuts, key=lambda offcut: offcut.width.inches * offcut.thick.inches)
    strips = [_Strip(offcut, number) for offcut in slender_first for number in range(1, offcut.count + 1)]
    pieces: list[OffcutPiece] = []
    left: dict[str, int] = {}
    for part in sorted(parts, key=lambda part: -part.length.inches):
        for _ in range(part.count):
            piece = _place(part, strips, kerf)
            if piece is None:
                left[part.id] = left.get(part.id, 0) + 1
            else:
                pieces.append(piece)
    return tuple(pieces), left


def _place(part: FittedPart, strips: Iterable[_Strip], kerf: Length) -> OffcutPiece | None:
    for strip in strips:
        if strip.offcut.of == part.part.source.offcut_of:
            x = strip.take(part, kerf)
            if x is not None:
                return OffcutPiece(part, strip.offcut, strip.number, x)
    return None
