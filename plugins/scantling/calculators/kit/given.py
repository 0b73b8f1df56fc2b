"""What the reader answered, by name and of the right kind."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, TypeVar

from scantling.calculators.kit.ask import nearest_is
from scantling.fault import Fault, Faulty, Place
from scantling.measure import (
    Angle,
    Display,
    Length,
    Money,
    Rounded,
    Way,
    Weight,
    local_marks,
    round_length,
    round_number,
)
from scantling.words import say

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Given:
    """The answers to a calculator's questions, read and within their bounds."""

    values: Mapping[str, Any]
    display: Display
    currency: str = "$"

    def length(self, name: str) -> Length:
        """Return a length."""
        return self._of(name, Length)

    def number(self, name: str) -> Fraction:
        """Return a number, or a number of percent, or a temperature in degrees Fahrenheit."""
        return Fraction(self.values[name])

    def count(self, name: str) -> int:
        """Return a whole number."""
        return self._of(name, int)

    def angle(self, name: str) -> Angle:
        """Return an angle."""
        return self._of(name, Angle)

    def money(self, name: str) -> Money:
        """Return a sum of money."""
        return self._of(name, Money)

    def weight(self, name: str) -> Weight:
        """Return a weight."""
        return self._of(name, Weight)

    def choice(self, name: str) -> str:
        """Return the choice that was made."""
        return self._of(name, str)

    def has(self, name: str) -> bool:
        """Return whether an open question was answered."""
        return self.values[name] is not None

    def _of(self, name: str, kind: type[T]) -> T:
        value = self.values[name]
        assert isinstance(value, kind), name
        return value

    def write(self, length: Length, way: Way = "nearest") -> str:
        """Write a length as it is shown."""
        return self.display.round(length, way).text

    def along(self, length: Length) -> float:
        """Return a length as a coordinate of a plot, in the unit that is shown: that of `display.system`."""
        return float(length.mm if self.display.system == "mm" else length.inches)

    def fine(self, length: Length) -> str:
        """Write a small length to 1/64 in or 0.1 mm."""
        return fine(length, self.display).text

    def refuse(self, name: str, message: str, nearest: str = "", *, mend: str = "") -> Faulty:
        """Return what to raise where an answer does not go with the others.

        Args:
            nearest: the nearest answer that works, as a reader would type it.
            mend: what to do where no single answer works.
        """
        return Faulty(
            [Fault("does-not-fit", message, Place((name,)), nearest_is(nearest) if nearest else mend)]
        )

    def most(self, length: Length) -> str:
        """Write a length at most `length`, within one shown step where it can be, to suggest it."""
        rounded = self.display.round(length, "down")
        return rounded.text if rounded.value > Length(0) else f"{fraction(length.inches)} in"

    def under(self, length: Length) -> str:
        """Write a length below `length` and within one shown step where it can be, to suggest it."""
        rounded = self.display.round(length, "up").value - self.display.step
        return self.most(rounded if rounded > Length(0) else length / 2)

    def least(self, length: Length) -> str:
        """Write a length that is at least `length` and within one shown step of it, for a suggestion."""
        return self.display.round(length, "up").text


def exactly(length: Length, display: Display) -> str:
    """Write a length as it is: a fraction where it has a short one, else four decimals and `≈`."""
    if display.system == "mm":
        return f"{decimals(length.mm, 3, grouped=False)} mm"
    inches = length.inches
    if inches.denominator < 100 or inches.denominator == 128:
        return f"{fraction(inches)} in"
    return f"{decimals(inches, 4, grouped=False)} in"


def fraction(number: Fraction | int) -> str:
    """Write a number as whole and fraction: `4 7/12`."""
    whole, rest = divmod(abs(number.numerator), number.denominator)
    parts = [local_marks(f"{whole:,}")] if whole or not rest else []
    if rest:
        parts.append(f"{rest}/{number.denominator}")
    return ("−" if number < 0 else "") + " ".join(parts)


def decimals(number: Fraction | int, places: int, *, grouped: bool = True) -> str:
    """Write a number with at most so many decimals, `≈` before it where more would be needed.

    Args:
        grouped: whether thousands are parted; those of a length are not, here as on tape and drawing.
    """
    scaled = number * 10**places
    whole = (2 * abs(scaled.numerator) + scaled.denominator) // (2 * scaled.denominator)
    about = "" if scaled.denominator == 1 else "≈ "
    front, rest = divmod(whole, 10**places)
    tail = f".{rest:0{places}d}".rstrip("0") if rest else ""
    digits = f"{front:,}{tail}" if grouped else f"{front}{tail}"
    return f"{about}{'−' if number < 0 and whole else ''}{local_marks(digits)}"


def percent(number: str) -> str:
    """Write a number of percent."""
    return say("{number}%", number=number)


def off_by(size: str, off: Length) -> str:
    """Say that a rounded length is so much too long or too short."""
    return say("{size} too long", size=size) if off > Length(0) else say("{size} too short", size=size)


def fine(length: Length, display: Display, way: Way = "nearest") -> Rounded:
    """Return a small length as it is shown, to 1/64 in or 0.1 mm."""
    if display.system == "in":
        return round_length(length, denominator=64, way=way)
    tenths = Fraction(round_number(length.mm * 10, way), 10)
    value = Length.of_mm(tenths)
    return Rounded(value, f"{decimals(tenths, 1, grouped=False)} mm", value - length)
