"""Nominal sizes of lumber and what they measure.

Minimum dressed dry sizes of the American Softwood Lumber Standard (Voluntary Product Standard
PS 20): a 2x4 measures 1 1/2 in by 3 1/2 in.
"""

from __future__ import annotations

import re
from fractions import Fraction

from scantling.measure import Length

THICKNESS = {
    Fraction(1): Fraction(3, 4),
    Fraction(5, 4): Fraction(1),
    Fraction(3, 2): Fraction(5, 4),
    Fraction(2): Fraction(3, 2),
    Fraction(5, 2): Fraction(2),
    Fraction(3): Fraction(5, 2),
    Fraction(7, 2): Fraction(3),
    Fraction(4): Fraction(7, 2),
}
"""Nominal to actual thickness, dry, in inches (PS 20, boards and dimension lumber)."""

_PATTERN = re.compile(r"(\d{1,2}(?:/\d{1,2})?)\s*[xX×]\s*(\d{1,2})(?:\s+[^\W\d_].*)?")


def nominal_size(name: str) -> tuple[Fraction, Fraction] | None:
    """Return nominal (thickness, width) in inches if `name` is like `2x4`, `5/4x6` or `1x4 cedar`."""
    found = _PATTERN.fullmatch(name.strip())
    if not found or found[1].endswith("/0"):
        return None
    return Fraction(found[1]), Fraction(found[2])


def actual_size(nominal: tuple[Fraction, Fraction]) -> tuple[Length, Length] | None:
    """Return actual (thickness, width) of dry dressed lumber, or None for a size outside the table."""
    thick, wide = nominal
    actual_wide = _timber(wide) if thick > 4 else _width(wide)
    actual_thick = _timber(thick) if thick > 4 else THICKNESS.get(thick)
    if actual_thick is None or actual_wide is None:
        return None
    return Length.of_inches(actual_thick), Length.of_inches(actual_wide)


def _width(nominal: Fraction) -> Fraction | None:
    """Return the dry width: 1/2 in less up to 6 in, 3/4 in less from 8 in (2 in to 16 in wide)."""
    if not 2 <= nominal <= 16:
        return None
    return nominal - (Fraction(1, 2) if nominal < 8 else Fraction(3, 4))


def _timber(nominal: Fraction) -> Fraction | None:
    """Return the side of a 5x5 or 6x6 timber: 1/2 in less (larger timbers are not in this table)."""
    return nominal - Fraction(1, 2) if nominal in {5, 6} else None
