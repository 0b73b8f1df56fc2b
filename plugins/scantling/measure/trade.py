"""Board feet, in the ways in which the trade counts them."""

from __future__ import annotations

from fractions import Fraction

from scantling.measure.quantity import Number, round_number
from scantling.measure.space import Length

CUBIC_INCHES_IN_BOARD_FOOT = 144
_INCH = Length(1)


def board_feet(thickness: Length, width: Length, length: Length) -> Fraction:
    """Return the wood that is really there, in board feet of 144 cubic inches.

    Source of the unit: NIST SP 811, Appendix B (board foot).
    """
    return (thickness * width * length).cubic_inches / CUBIC_INCHES_IN_BOARD_FOOT


def board_feet_nominal(thickness: Length, width: Length, length: Length) -> Fraction:
    """Return board feet as softwood is sold: by nominal size, anything under 1 in thick counting as 1 in.

    Source: US Navy training manual Engineering Aid Basic, section 6 (board measure).
    """
    return board_feet(max(thickness, _INCH), width, length)


def surface_measure(width: Length, length: Length) -> int:
    """Return the surface measure of a hardwood board: its face in square feet, to the nearest whole one.

    An exact half is counted up here, where a grader counts every other one down.
    Source: NHLA rules for the measurement and inspection of hardwood, as shown by the American
    Hardwood Export Council (grading sawn lumber, measurement).
    """
    return round_number((width * length).square_feet)


def board_feet_hardwood(thickness: Length, width: Length, length: Length) -> Fraction:
    """Return board feet as rough hardwood is tallied: surface measure times thickness in inches.

    Stock under 1 in thick is counted as 1 in. Source: as `surface_measure`.
    """
    return surface_measure(width, length) * max(thickness, _INCH).inches


def linear_feet(length: Length, count: Number = 1) -> Fraction:
    """Return the length of `count` pieces together, in feet."""
    return length.feet * count
