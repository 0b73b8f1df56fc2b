"""What a formula can be worth, and what each kind is called when one speaks to the author."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TypeVar

from scantling.fault import Fault, Faulty, Place
from scantling.measure import Angle, Area, Length, write_fraction, write_number
from scantling.words import mark, say

Value = Fraction | Length | Area | Angle | bool | str
"""A number, a length, an area, an angle, yes or no, or words."""
Scope = Mapping[str, Value]
"""The values of names; dotted names are plain keys, as `leg.width`."""
Wanted = TypeVar("Wanted", Fraction, Length, Area, Angle, bool, str)

NAMES: Mapping[type, str] = {
    Fraction: mark("a number"),
    int: mark("a number"),
    Length: mark("a length"),
    Area: mark("an area"),
    Angle: mark("an angle"),
    bool: mark("yes or no"),
    str: mark("words"),
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
    return say(NAMES.get(value.__class__, mark("something else")))


def describe(value: Value) -> str:
    """Write a value exactly, for a message."""
    if isinstance(value, bool):
        return say("yes") if value else say("no")
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
    message = say("this is {value}; {wanted} is wanted", value=name_of(value), wanted=say(NAMES[kind]))
    if isinstance(value, Fraction) and kind is Length:
        number = write_number(value)
        message = say("{number} has no unit; a length is wanted", number=number)
        raise Faulty(
            [
                Fault(
                    "missing-unit",
                    message,
                    _whole(text),
                    say("write {number} in or {number} mm", number=number),
                )
            ]
        )
    raise Faulty([Fault("wrong-kind", message, _whole(text), _EXAMPLES[kind])])


def require_count(value: Value, text: str = "") -> int:
    """Return a count: a whole number, nothing or more.

    Raises:
        Faulty: for any other value.
    """
    number = require(value, Fraction, text)
    if number.denominator != 1:
        message = say("a count must be a whole number; this is {number}", number=write_number(number))
        raise Faulty(
            [Fault("not-whole", message, _whole(text), say("use round up(..., 1) or round down(..., 1)"))]
        )
    if number < 0:
        message = say("a count cannot be below nothing; this is {number}", number=write_number(number))
        raise Faulty([Fault("negative-count", message, _whole(text), say("use max(0, ...)"))])
    return number.numerator


def _whole(text: str) -> Place:
    return Place(start=0, end=len(text)) if text else Place()
