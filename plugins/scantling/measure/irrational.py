"""Roots and angles, worked out in whole numbers so that every machine gives the same answer.

Each result is the exact value rounded to 12 decimals. Inside, numbers are whole multiples of 1e-30.
"""

from __future__ import annotations

from fractions import Fraction
from math import isqrt

from scantling.fault import Fault, Faulty
from scantling.measure.plain import Angle
from scantling.measure.quantity import Number, round_number
from scantling.measure.space import Length
from scantling.words import say

_DECIMALS = 10**12
_ONE = 10**30
_PI = 3_141592653589793238462643383279
"""Pi times 1e30."""


def root(number: Number) -> Fraction:
    """Return the square root, exact where it is rational.

    Raises:
        Faulty: for a number below nothing.
    """
    if number < 0:
        raise Faulty([Fault("root-of-negative", say("a number below nothing has no square root"))])
    top, bottom = isqrt(number.numerator), isqrt(number.denominator)
    if top * top == number.numerator and bottom * bottom == number.denominator:
        return Fraction(top, bottom)
    return _twelve(_root(_fixed(number)))


def diagonal(one: Length, other: Length) -> Length:
    """Return the length of the slope whose run and rise are given (Pythagoras)."""
    return Length(root(one.inches**2 + other.inches**2))


def sine(angle: Angle) -> Fraction:
    """Return the sine."""
    return _twelve(_sine(angle.degrees))


def cosine(angle: Angle) -> Fraction:
    """Return the cosine."""
    return _twelve(_sine(angle.degrees + 90))


def tangent(angle: Angle) -> Fraction:
    """Return the tangent.

    Raises:
        Faulty: at a right angle, where there is none.
    """
    below = _sine(angle.degrees + 90)
    if abs(below) < 10**6:
        raise Faulty([Fault("no-tangent", say("a right angle has no tangent"))])
    return _twelve(round_number(Fraction(_sine(angle.degrees) * _ONE, below)))


def arc_tangent(rise: Number, run: Number = Fraction(1)) -> Angle:
    """Return the angle from 0 to 90 degrees (negative for a fall) of a slope: `arc_tangent(1, 1)` is 45 deg.

    Raises:
        Faulty: where rise and run are both nothing.
    """
    if run == 0 and rise == 0:
        raise Faulty([Fault("no-slope", say("a slope of nothing over nothing has no angle"))])
    if run == 0:
        return Angle(90 if rise > 0 else -90)
    return _degrees(_arc_tangent(Fraction(rise, run)))


def arc_sine(number: Number) -> Angle:
    """Return the angle from -90 to 90 degrees whose sine is given.

    Raises:
        Faulty: for a number outside -1 to 1.
    """
    if not -1 <= number <= 1:
        raise Faulty([Fault("no-angle", say("no angle has a sine above 1 or below -1"))])
    if number in {-1, 1}:
        return Angle(90 * number)
    beside = _root(_fixed(1 - Fraction(number) ** 2))
    return _degrees(_arc_tangent(Fraction(_fixed(number), beside)))


def _fixed(number: Number) -> int:
    return round_number(number * _ONE)


def _twelve(fixed: int) -> Fraction:
    return Fraction(round_number(Fraction(fixed * _DECIMALS, _ONE)), _DECIMALS)


def _root(fixed: int) -> int:
    return isqrt(fixed * _ONE)


def _sine(degrees: Fraction) -> int:
    """Return the sine of an angle, after folding it into -90..90 degrees, by its power series."""
    folded = (degrees + 90) % 360 - 90
    if folded > 90:
        folded = 180 - folded
    x = round_number(folded * _PI / 180)
    square = x * x // _ONE
    term, total, k = x, x, 1
    while term:
        term = -term * square // (_ONE * (k + 1) * (k + 2)) if abs(term) > 1 else 0
        total += term
        k += 2
    return total


def _arc_tangent(slope: Fraction) -> int:
    """Return the arc tangent in radians: the angle is halved until small, then the power series."""
    if slope < 0:
        return -_arc_tangent(-slope)
    if slope > 1:
        return _PI // 2 - _arc_tangent(1 / slope)
    x = _fixed(slope)
    for _ in range(3):
        x = x * _ONE // (_ONE + _root(_ONE + x * x // _ONE))
    square = x * x // _ONE
    power, total, k = x, x, 1
    while power:
        power = -power * square // _ONE if abs(power) > 1 else 0
        k += 2
        total += power // k
    return total * 8


def _degrees(radians: int) -> Angle:
    return Angle(Fraction(round_number(Fraction(radians * 180 * _DECIMALS, _PI)), _DECIMALS))
