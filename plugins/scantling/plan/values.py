"""Taking a value of the right kind out of a formula's result, or saying what is wrong with it."""

from __future__ import annotations

from fractions import Fraction

from scantling.fault import Fault, Place
from scantling.formula import Value, name_of
from scantling.measure import Angle, Area, Length, write_length, write_number
from scantling.words import say

NOTHING = Length.of_inches(Fraction(0))


def as_length(
    value: Value | None, what: str, place: Place, faults: list[Fault], *, or_zero: bool = False
) -> Length | None:
    """Return the value as a length above nothing, or None after adding a fault."""
    if value is None:
        return None
    if not isinstance(value, Length):
        faults.append(_no_length(value, what, place))
        return None
    if value < NOTHING or (value == NOTHING and not or_zero):
        shown = write_length(value, denominator=64)
        faults.append(
            Fault(
                "not-positive",
                say("{what} comes to {shown} at this size", what=what, shown=shown),
                place,
                "narrow the range of sizes, or mend the formula",
            )
        )
        return None
    return value


def _no_length(value: Value, what: str, place: Place) -> Fault:
    if isinstance(value, Fraction):
        number = write_number(value)
        help_line = f"write {number} in, or {number} mm" if number.isdigit() else "give each number its unit"
        return Fault("missing-unit", say("{what} has no unit", what=what), place, help_line)
    help_line = (
        "multiply lengths by numbers, not by lengths" if isinstance(value, Area) else "write it like 12 in"
    )
    return _wrong(value, what, "a length", place, help_line)


def as_count(value: Value | None, what: str, place: Place, faults: list[Fault]) -> int | None:
    """Return the value as a whole number of at least 0, or None after adding a fault."""
    if value is None:
        return None
    if not isinstance(value, Fraction):
        faults.append(_wrong(value, what, "a number", place, "write a number without a unit"))
        return None
    if value < 0:
        message = say("{what} comes to {value}, less than none", what=what, value=float_text(value))
        faults.append(Fault("not-positive", message, place, "use max(0, ...), or mend the formula"))
        return None
    if value.denominator != 1:
        help_line = "use floor(...), ceil(...) or another formula that comes to a whole number"
        faults.append(
            Fault(
                "not-whole",
                say("{what} comes to {value}, no whole number", what=what, value=float_text(value)),
                place,
                help_line,
            )
        )
        return None
    return int(value)


def as_yes(value: Value | None, what: str, place: Place, faults: list[Fault]) -> bool | None:
    """Return the value as yes or no, or None after adding a fault."""
    if value is None or isinstance(value, bool):
        return value
    faults.append(_wrong(value, what, "yes or no", place, "compare something, like width > 60 in"))
    return None


def as_angle(value: Value | None, what: str, place: Place, faults: list[Fault]) -> Angle | None:
    """Return the value as an angle from -90 to 90 degrees, or None after adding a fault."""
    if value is None:
        return None
    if not isinstance(value, Angle):
        faults.append(_wrong(value, what, "an angle", place, "write it as 45 deg"))
        return None
    if not -90 < value.degrees < 90:
        faults.append(
            Fault(
                "too-steep",
                say("{what} is no angle that an end can be cut at", what=what),
                place,
                "stay under 90 deg",
            )
        )
        return None
    return value


def as_area(value: Value | None, what: str, place: Place, faults: list[Fault]) -> Area | None:
    """Return the value as an area, or None after adding a fault."""
    if value is None or isinstance(value, Area):
        return value
    faults.append(_wrong(value, what, "an area", place, "multiply two lengths, or use surface"))
    return None


def _wrong(value: Value, what: str, expected: str, place: Place, help_line: str) -> Fault:
    return Fault(
        "wrong-unit",
        say("{what} is {value}, not {expected}", what=what, value=name_of(value), expected=say(expected)),
        place,
        help_line,
    )


def float_text(value: Fraction) -> str:
    """Return a number for a message: as a decimal where that is exact, else as a fraction."""
    whole = value * 1000
    if whole.denominator == 1:
        return f"{int(whole) / 1000:g}"
    return f"{value.numerator}/{value.denominator}"
