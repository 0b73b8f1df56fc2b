"""The functions that a formula can use. To add one: write it here and add a line to `FUNCTIONS`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from scantling.formula.reckon import MEASURES, divided, fail, multiplied, unit_mend
from scantling.formula.value import NAMES, Value, name_of
from scantling.measure import (
    Angle,
    Area,
    Length,
    Way,
    arc_sine,
    arc_tangent,
    cosine,
    diagonal,
    root,
    round_number,
    sine,
    tangent,
    write_number,
)
from scantling.words import say

Reckoner = Callable[..., Value]


@dataclass(frozen=True, slots=True)
class Function:
    """A function of the language."""

    pattern: str
    """How it is written, for messages and the reference."""
    about: str
    """What it gives, in a few words."""
    fewest: int
    most: int
    reckon: Reckoner


def _least(*values: Any) -> Value:
    _alike("min", *values)
    least: Value = min(values)
    return least


def _most(*values: Any) -> Value:
    _alike("max", *values)
    most: Value = max(values)
    return most


def _absolute(value: Any) -> Value:
    _alike("abs", value)
    absolute: Value = abs(value)
    return absolute


def _whole(value: Value) -> Value:
    number = _number("whole", value)
    if number.denominator != 1:
        fail(
            "not-whole",
            say("{number} is no whole number", number=write_number(number)),
            "use round up(..., 1) or round down(..., 1)",
        )
    return number


def _floor(value: Value) -> Value:
    return Fraction(round_number(_number("floor", value), "down"))


def _ceil(value: Value) -> Value:
    return Fraction(round_number(_number("ceil", value), "up"))


def _rounder(name: str, way: Way) -> Reckoner:
    def reckon(value: Value, step: Value = Fraction(1)) -> Value:
        _alike(name, value, step)
        if step <= step.__class__(0):  # type: ignore[operator]
            fail(
                "bad-step",
                say("'{name}' needs a step above nothing to round to", name=name),
                f"write {name}(x, 1/16 in)",
            )
        times = divided(value, step)
        assert isinstance(times, Fraction)
        return multiplied(step, Fraction(round_number(times, way)))

    return reckon


def _diagonal(one: Value, other: Value) -> Value:
    _alike("diagonal", one, other)
    if isinstance(one, Length) and isinstance(other, Length):
        return diagonal(one, other)
    if not isinstance(one, Fraction) or not isinstance(other, Fraction):
        fail("wrong-kind", say("'diagonal' takes two lengths, not {one}", one=name_of(one)))
    return root(one * one + other * other)


def _root(value: Value) -> Value:
    if isinstance(value, Area):
        return Length(root(value.square_inches))
    return root(_number("root", value))


def _of_angle(name: str, reckon: Callable[[Angle], Fraction]) -> Reckoner:
    def checked(value: Value) -> Value:
        if not isinstance(value, Angle):
            mend = unit_mend(value, Angle(0)) or f"write {name}(30 deg)"
            fail(
                "wrong-kind",
                say("'{name}' takes an angle, not {value}", name=name, value=name_of(value)),
                mend,
            )
        return reckon(value)

    return checked


def _arctan(rise: Value, run: Value = Fraction(1)) -> Value:
    _alike("arctan", rise, run)
    if isinstance(rise, Length) and isinstance(run, Length):
        return arc_tangent(rise.inches, run.inches)
    return arc_tangent(_number("arctan", rise), _number("arctan", run))


def _arcsin(value: Value) -> Value:
    return arc_sine(_number("arcsin", value))


def _number(name: str, value: Value) -> Fraction:
    if not isinstance(value, Fraction):
        mend = "to round a length, write round down(x, 1 in)" if name in {"floor", "ceil", "whole"} else ""
        fail("wrong-kind", say("'{name}' takes a number, not {value}", name=name, value=name_of(value)), mend)
    return value


def _alike(name: str, *values: Value) -> None:
    """Complain unless the values are measures of one kind."""
    first = values[0].__class__
    for i, value in enumerate(values):
        if value.__class__ not in MEASURES:
            fail(
                "wrong-kind",
                say("'{name}' takes numbers or measures, not {value}", name=name, value=name_of(value)),
                which=i,
            )
        if value.__class__ is not first:
            message = say(
                "'{name}' is given {kind} and {value}",
                name=name,
                kind=say(NAMES[first]),
                value=name_of(value),
            )
            fail("units-differ", message, unit_mend(values[0], value), 0 if first is Fraction else i)


FUNCTIONS: Mapping[str, Function] = {
    "min": Function("min(a, b, ...)", "the smallest", 1, 100, _least),
    "max": Function("max(a, b, ...)", "the largest", 1, 100, _most),
    "floor": Function("floor(number)", "the next whole number down", 1, 1, _floor),
    "ceil": Function("ceil(number)", "the next whole number up", 1, 1, _ceil),
    "abs": Function("abs(x)", "the same without its minus", 1, 1, _absolute),
    "whole": Function("whole(number)", "the number, which must be whole", 1, 1, _whole),
    "round": Function("round(x, to)", "the nearest step, halves up", 1, 2, _rounder("round", "nearest")),
    "round up": Function("round up(x, to)", "the next step up", 1, 2, _rounder("round up", "up")),
    "round down": Function("round down(x, to)", "the next step down", 1, 2, _rounder("round down", "down")),
    "diagonal": Function("diagonal(a, b)", "corner to corner of a by b", 2, 2, _diagonal),
    "root": Function("root(x)", "the square root of a number or an area", 1, 1, _root),
    "sin": Function("sin(angle)", "the sine", 1, 1, _of_angle("sin", sine)),
    "cos": Function("cos(angle)", "the cosine", 1, 1, _of_angle("cos", cosine)),
    "tan": Function("tan(angle)", "the tangent", 1, 1, _of_angle("tan", tangent)),
    "arctan": Function("arctan(rise, run)", "the angle of a slope", 1, 2, _arctan),
    "arcsin": Function("arcsin(number)", "the angle with that sine", 1, 1, _arcsin),
}
"""Every function, by the name it is written with."""
