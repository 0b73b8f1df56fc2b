"""What a formula can be worth, and what each kind is called when one speaks to the author."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TypeVar

from scantling.fault import Fault, Faulty, Place
from scantling.measure import Angle, Area, Length, write_fraction, write_number

Value = Fraction | Length | Area | Angle | bool | str
"""A number, a length, an area, an angle, yes or no, or words."""
Scope = Mapping[str, Value]
"""The values of names; dotted names are plain keys, as `leg.width`."""
Wanted = TypeVar("Wanted", Fraction, Length, Area, Angle, bool, str)

NAMES: Mapping[type, str] = {
    Fraction: "a number",
    int: "a number",
    Length: "a length",
    Area: "an area",
    Angle: "an angle",
    bool: "yes or no",
    str: "words",
}
_EXAMPLES: Mapping[type, str] = {
    Fraction: "write it without a unit, as 3",
    Length: "write it with a unit, as 12 in or 12 mm",
    Area: "multiply two lengths",
    Angle: "write it with a unit, as 45 deg",
    bool: "write yes, no or a comparison, as width > 48 in",
    str: 'write words in quotes, as "from offcuts"',
}


def name_of(value: Value) -> str:
    """Return what a value's kind is called: "a length", "a number"."""
    return NAMES.get(value.__class__, "something else")


def describe(value: Value) -> str:
    """Write a value exactly, for a message."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Length):
        return f"{write_fraction(value.inches)} in"
    if isinstance(value, Area):
        return f"{write_fraction(value.square_inches)} sq in"
    if isinstance(value, Angle):
        return f"{write_number(value.degrees)} deg"
    return f"'{value}'" if isinstance(value, str) else write_number(value)


def require(value: Value, kind: type[Wanted], text: str = "") -> Wanted:
    """Return `value`, which must be of `kind`.

    Args:
        text: the formula that it came from, of which a fault marks the whole.

    Raises:
        Faulty: where it is of another kind, as an area where a length is due.
    """
    if value.__class__ is kind:
        return value
    message = f"this is {name_of(value)}; {NAMES[kind]} is wanted"
    if isinstance(value, Fraction) and kind is Length:
        number = write_number(value)
        message = f"{number} has no unit; a length is wanted"
        raise Faulty([Fault("missing-unit", message, _whole(text), f"write {number} in or {number} mm")])
    raise Faulty([Fault("wrong-kind", message, _whole(text), _EXAMPLES[kind])])


def require_count(value: Value, text: str = "") -> int:
    """Return a count: a whole number, nothing or more.

    Raises:
        Faulty: for any other value.
    """
    number = require(value, Fraction, text)
    if number.denominator != 1:
        message = f"a count must be a whole number; this is {write_number(number)}"
        raise Faulty(
            [Fault("not-whole", message, _whole(text), "use round up(..., 1) or round down(..., 1)")]
        )
    if number < 0:
        message = f"a count cannot be below nothing; this is {write_number(number)}"
        raise Faulty([Fault("negative-count", message, _whole(text), "use max(0, ...)")])
    return number.numerator


def _whole(text: str) -> Place:
    return Place(start=0, end=len(text)) if text else Place()
