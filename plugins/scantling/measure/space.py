"""Length, area and volume: exact, and related as they are in the world."""

from __future__ import annotations

from fractions import Fraction
from typing import Self, overload

from scantling.measure.quantity import Number, Q, Quantity, make, parted, ratio, times

MM_PER_INCH = Fraction(254, 10)
"""Exactly 25.4 (16 CFR 500.19: 1 in = 2.54 cm)."""


class Length(Quantity):
    """A length, kept in inches.

    Example:
        `Length.of_mm(38) + Length.of_inches(Fraction(1, 2))`
    """

    __slots__ = ()

    @classmethod
    def of_inches(cls, inches: Number) -> Self:
        """Return a length of so many inches."""
        return cls(inches)

    @classmethod
    def of_feet(cls, feet: Number) -> Self:
        """Return a length of so many feet."""
        return cls(feet * 12)

    @classmethod
    def of_mm(cls, mm: Number) -> Self:
        """Return a length of so many millimetres."""
        return cls(mm / MM_PER_INCH)

    @property
    def inches(self) -> Fraction:
        """The length in inches."""
        return Fraction(self.top, self.bottom)

    @property
    def feet(self) -> Fraction:
        """The length in feet."""
        return Fraction(self.top, self.bottom * 12)

    @property
    def mm(self) -> Fraction:
        """The length in millimetres."""
        return Fraction(self.top * 127, self.bottom * 5)

    @overload
    def __mul__(self, other: Number) -> Length: ...
    @overload
    def __mul__(self, other: Length) -> Area: ...
    @overload
    def __mul__(self, other: Area) -> Volume: ...
    def __mul__(self, other: Number | Length | Area) -> Length | Area | Volume:
        if isinstance(other, (int, Fraction)):
            return times(self, other)
        if isinstance(other, Length):
            return make(Area, self.top * other.top, self.bottom * other.bottom)
        if isinstance(other, Area):
            return make(Volume, self.top * other.top, self.bottom * other.bottom)
        return NotImplemented

    def __rmul__(self, other: Number) -> Length:
        return times(self, other) if isinstance(other, (int, Fraction)) else NotImplemented

    @overload
    def __truediv__(self, other: Number) -> Length: ...
    @overload
    def __truediv__(self, other: Length) -> Fraction: ...
    def __truediv__(self, other: Number | Length) -> Length | Fraction:
        if isinstance(other, (int, Fraction)):
            return parted(self, other)
        return ratio(self, other) if isinstance(other, Length) else NotImplemented


class Area(Quantity):
    """An area, kept in square inches."""

    __slots__ = ()

    @classmethod
    def of_square_feet(cls, square_feet: Number) -> Self:
        """Return an area of so many square feet."""
        return cls(square_feet * 144)

    @classmethod
    def of_square_metres(cls, square_metres: Number) -> Self:
        """Return an area of so many square metres."""
        return cls(square_metres * 1_000_000 / MM_PER_INCH**2)

    @property
    def square_inches(self) -> Fraction:
        """The area in square inches."""
        return Fraction(self.top, self.bottom)

    @property
    def square_feet(self) -> Fraction:
        """The area in square feet."""
        return Fraction(self.top, self.bottom * 144)

    @property
    def square_metres(self) -> Fraction:
        """The area in square metres."""
        return self.amount * MM_PER_INCH**2 / 1_000_000

    @overload
    def __mul__(self, other: Number) -> Area: ...
    @overload
    def __mul__(self, other: Length) -> Volume: ...
    def __mul__(self, other: Number | Length) -> Area | Volume:
        if isinstance(other, (int, Fraction)):
            return times(self, other)
        if isinstance(other, Length):
            return make(Volume, self.top * other.top, self.bottom * other.bottom)
        return NotImplemented

    def __rmul__(self, other: Number) -> Area:
        return times(self, other) if isinstance(other, (int, Fraction)) else NotImplemented

    @overload
    def __truediv__(self, other: Number) -> Area: ...
    @overload
    def __truediv__(self, other: Length) -> Length: ...
    @overload
    def __truediv__(self, other: Area) -> Fraction: ...
    def __truediv__(self, other: Number | Length | Area) -> Area | Length | Fraction:
        if isinstance(other, (int, Fraction)):
            return parted(self, other)
        if isinstance(other, Length):
            return _divided(Length, self, other)
        return ratio(self, other) if isinstance(other, Area) else NotImplemented


class Volume(Quantity):
    """A volume, kept in cubic inches."""

    __slots__ = ()

    @property
    def cubic_inches(self) -> Fraction:
        """The volume in cubic inches."""
        return Fraction(self.top, self.bottom)

    @property
    def cubic_feet(self) -> Fraction:
        """The volume in cubic feet."""
        return Fraction(self.top, self.bottom * 1728)

    @property
    def cubic_metres(self) -> Fraction:
        """The volume in cubic metres."""
        return self.amount * MM_PER_INCH**3 / 1_000_000_000

    def __mul__(self, other: Number) -> Volume:
        return times(self, other) if isinstance(other, (int, Fraction)) else NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Number) -> Volume: ...
    @overload
    def __truediv__(self, other: Length) -> Area: ...
    @overload
    def __truediv__(self, other: Area) -> Length: ...
    @overload
    def __truediv__(self, other: Volume) -> Fraction: ...
    def __truediv__(self, other: Number | Length | Area | Volume) -> Volume | Area | Length | Fraction:
        if isinstance(other, (int, Fraction)):
            return parted(self, other)
        if isinstance(other, Length):
            return _divided(Area, self, other)
        if isinstance(other, Area):
            return _divided(Length, self, other)
        return ratio(self, other) if isinstance(other, Volume) else NotImplemented


def _divided(kind: type[Q], one: Quantity, other: Quantity) -> Q:
    if not other.top:
        raise ZeroDivisionError
    return make(kind, one.top * other.bottom, one.bottom * other.top)
