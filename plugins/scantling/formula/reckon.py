"""Sums and comparisons between values, each checked for units.

These are called only when both sides are known; what goes wrong is raised with no place, and the
caller, who knows the characters, adds it.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from operator import add, ge, gt, le, lt, sub
from typing import Any, NoReturn

from scantling.fault import Fault, Faulty, Place
from scantling.formula.value import Value, describe, name_of
from scantling.measure import Angle, Area, Length, write_number
from scantling.words import say

MEASURES = frozenset({Fraction, Length, Area, Angle})
_PRODUCTS = frozenset(
    {
        (Fraction, Fraction), (Length, Fraction), (Area, Fraction), (Angle, Fraction), (Length, Length),
    }
)  # fmt: skip
_QUOTIENTS = frozenset(
    {
        (Fraction, Fraction), (Length, Fraction), (Area, Fraction), (Angle, Fraction), (Length, Length),
        (Area, Area), (Angle, Angle), (Area, Length),
    }
)  # fmt: skip
_ORDERS: dict[str, Callable[[Any, Any], object]] = {"<": lt, "<=": le, ">": gt, ">=": ge}


def fail(code: str, message: str, mend: str = "", which: int | None = None) -> NoReturn:
    """Raise a fault whose characters are not known here.

    Args:
        which: the position of the value at fault among those that a function was given.
    """
    raise Faulty([Fault(code, message, Place(() if which is None else (which,)), mend)])


def unit_mend(*values: Value) -> str:
    """Return the help for a number among lengths or angles."""
    number = next((value for value in values if isinstance(value, Fraction)), None)
    if number is None:
        return ""
    written = write_number(number)
    if any(isinstance(value, Length) for value in values):
        return say("{written} has no unit; write {written} in or {written} mm", written=written)
    if any(isinstance(value, Angle) for value in values):
        return say("{written} has no unit; write {written} deg", written=written)
    return ""


def plus(left: Any, right: Any) -> Value:
    """Add two values of one kind."""
    if left.__class__ is right.__class__ and left.__class__ in MEASURES:
        return add(left, right)  # type: ignore[no-any-return]
    fail(
        "units-differ",
        say("{left} plus {right} makes no sense", left=name_of(left), right=name_of(right)),
        unit_mend(left, right),
    )


def minus(left: Any, right: Any) -> Value:
    """Take one value from another of its kind."""
    if left.__class__ is right.__class__ and left.__class__ in MEASURES:
        return sub(left, right)  # type: ignore[no-any-return]
    fail(
        "units-differ",
        say("{left} minus {right} makes no sense", left=name_of(left), right=name_of(right)),
        unit_mend(left, right),
    )


def multiplied(left: Any, right: Any) -> Value:
    """Multiply: by a number, or a length by a length."""
    kinds = (left.__class__, right.__class__)
    if kinds in _PRODUCTS:
        return left * right  # type: ignore[no-any-return]
    if left.__class__ is Fraction and right.__class__ in MEASURES:
        return multiplied(right, left)
    fail("units-differ", say("{left} times {right} makes no sense", left=name_of(left), right=name_of(right)))


def divided(left: Any, right: Any) -> Value:
    """Divide: by a number, or by something of a kind that leaves a length or a number."""
    if (left.__class__, right.__class__) not in _QUOTIENTS:
        fail(
            "units-differ",
            say("{left} divided by {right} makes no sense", left=name_of(left), right=name_of(right)),
            unit_mend(left, right),
        )
    try:
        return left / right  # type: ignore[no-any-return]
    except ZeroDivisionError:
        fail(
            "divided-by-zero",
            say("{left} is divided by nothing", left=describe(left)),
            say("see what makes the divisor 0"),
        )


def ordered(operator: str, left: Any, right: Any) -> bool:
    """Tell whether two values of one kind stand in an order: `<`, `<=`, `>`, `>=`."""
    if left.__class__ is not right.__class__ or left.__class__ not in MEASURES:
        _incomparable(left, right)
    return bool(_ORDERS[operator](left, right))


def equal(left: Any, right: Any) -> bool:
    """Tell whether two values of one kind are the same; words regardless of capitals."""
    if left.__class__ is not right.__class__:
        _incomparable(left, right)
    if isinstance(left, str):
        return same_words(left, right)
    return bool(left == right)


def same_words(one: str, other: str) -> bool:
    """Tell whether two texts are the same words, regardless of capitals and of spaces around them."""
    return one == other or " ".join(one.split()).casefold() == " ".join(other.split()).casefold()


def _incomparable(left: Value, right: Value) -> NoReturn:
    mend = unit_mend(left, right)
    if str in {left.__class__, right.__class__}:
        mend = say("'is' and 'is not' compare words; to compare sizes write = or ≠")
    fail(
        "units-differ",
        say("{left} cannot be compared with {right}", left=name_of(left), right=name_of(right)),
        mend,
    )
