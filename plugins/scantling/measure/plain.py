"""Angles, weights and money: quantities that only add, scale and compare."""

from __future__ import annotations

from fractions import Fraction
from typing import Self, overload

from scantling.measure.quantity import Number, Quantity, parted, ratio, round_number, times

POUNDS_PER_KILOGRAM = Fraction(100_000_000, 45_359_237)
"""A pound is exactly 0.45359237 kg (NIST SP 811, Appendix B)."""


class Angle(Quantity):
    """An angle, kept in degrees."""

    __slots__ = ()

    @classmethod
    def of_degrees(cls, degrees: Number) -> Self:
        """Return an angle of so many degrees."""
        return cls(degrees)

    @property
    def degrees(self) -> Fraction:
        """The angle in degrees."""
        return Fraction(self.top, self.bottom)

    def __mul__(self, other: Number) -> Self:
        return times(self, other) if isinstance(other, (int, Fraction)) else NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Number) -> Angle: ...
    @overload
    def __truediv__(self, other: Angle) -> Fraction: ...
    def __truediv__(self, other: Number | Angle) -> Angle | Fraction:
        if isinstance(other, (int, Fraction)):
            return parted(self, other)
        return ratio(self, other) if isinstance(other, Angle) else NotImplemented


class Weight(Quantity):
    """A weight, kept in pounds."""

    __slots__ = ()

    @classmethod
    def of_pounds(cls, pounds: Number) -> Self:
        """Return a weight of so many pounds."""
        return cls(pounds)

    @classmethod
    def of_kilograms(cls, kilograms: Number) -> Self:
        """Return a weight of so many kilograms."""
        return cls(kilograms * POUNDS_PER_KILOGRAM)

    @property
    def pounds(self) -> Fraction:
        """The weight in pounds."""
        return Fraction(self.top, self.bottom)

    @property
    def kilograms(self) -> Fraction:
        """The weight in kilograms."""
        return self.amount / POUNDS_PER_KILOGRAM

    def __mul__(self, other: Number) -> Self:
        return times(self, other) if isinstance(other, (int, Fraction)) else NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Number) -> Weight: ...
    @overload
    def __truediv__(self, other: Weight) -> Fraction: ...
    def __truediv__(self, other: Number | Weight) -> Weight | Fraction:
        if isinstance(other, (int, Fraction)):
            return parted(self, other)
        return ratio(self, other) if isinstance(other, Weight) else NotImplemented


class Money(Quantity):
    """A sum of money, in whole cents of whatever currency the shop file names."""

    __slots__ = ()

    def __init__(self, cents: int = 0) -> None:
        """Hold so many cents; only a whole number is taken."""
        if not isinstance(cents, int):
            raise TypeError("money is a whole number of cents")
        super().__init__(cents)

    def __reduce__(self) -> tuple[type[Money], tuple[int]]:
        return (type(self), (self.top,))

    @classmethod
    def of_cents(cls, cents: int) -> Self:
        """Return a sum of so many cents."""
        return cls(cents)

    @property
    def cents(self) -> int:
        """The sum in cents."""
        return self.top

    def __mul__(self, count: int) -> Self:
        return times(self, count) if isinstance(count, int) else NotImplemented

    __rmul__ = __mul__

    def __truediv__(self, other: Money) -> Fraction:
        return ratio(self, other) if isinstance(other, Money) else NotImplemented

    def times(self, quantity: Number) -> Money:
        """Return the price of `quantity` at this price each, to the nearest cent (halves away from zero)."""
        return Money(round_number(Fraction(self.top) * quantity))
