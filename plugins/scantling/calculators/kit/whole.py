"""Lengths as whole numbers of one small unit, as the cutting room wants them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from scantling.measure import Length, round_number

FINEST = 100_000
USUAL = 12_700
"""A unit of 0.002 mm: 500 to the millimetre, 12,700 to the inch."""


@dataclass(frozen=True, slots=True)
class Unit:
    """So many units to the inch."""

    per_inch: int
    is_exact: bool

    def up(self, length: Length) -> int:
        """Return a length that something must have."""
        return round_number(length.inches * self.per_inch, "up")

    def down(self, length: Length) -> int:
        """Return a length that may be used up."""
        return round_number(length.inches * self.per_inch, "down")

    def back(self, units: int) -> Length:
        """Return units as a length."""
        return Length(Fraction(units, self.per_inch))


def common_unit(lengths: Iterable[Length]) -> Unit:
    """Return the largest unit of which all lengths are whole numbers, or a very small one."""
    per_inch = lcm(*(length.inches.denominator for length in lengths))
    return Unit(per_inch, True) if per_inch <= FINEST else Unit(USUAL, False)
