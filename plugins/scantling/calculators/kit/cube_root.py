"""Cube roots in whole numbers, so that every machine gives the same answer."""

from __future__ import annotations

from fractions import Fraction

_DECIMALS = 10**12


def cube_root(number: Fraction) -> Fraction:
    """Return the cube root of a number that is not below nothing, to 12 decimals, rounded down."""
    scaled = number.numerator * _DECIMALS**3 // number.denominator
    if not scaled:
        return Fraction(0)
    guess = 1 << -(-scaled.bit_length() // 3)
    while True:
        better = (2 * guess + scaled // guess**2) // 3
        if better >= guess:
            return Fraction(guess, _DECIMALS)
        guess = better
