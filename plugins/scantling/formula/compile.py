"""Turning the tree of a formula into functions that reckon it quickly, many times."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any, NoReturn

from scantling.fault import Fault, Faulty, Place
from scantling.formula.function import FUNCTIONS
from scantling.formula.reckon import divided, equal, minus, multiplied, ordered, plus
from scantling.formula.tree import (
    Call,
    Chain,
    Choice,
    Comparison,
    Literal,
    Name,
    Node,
    Prefix,
    Step,
    children,
)
from scantling.formula.value import Scope, Value, name_of
from scantling.words import say

Run = Callable[[Scope], Value]
_SUMS: dict[str, Callable[[Any, Any], Value]] = {"+": plus, "-": minus, "*": multiplied, "/": divided}


def compiled(nodes: Sequence[Node]) -> Run:
    """Return a function from a scope to the worth of a tree.

    It raises `KeyError` for a name that the scope lacks, and `Faulty` for what cannot be reckoned.

    Args:
        nodes: the tree's nodes as `walk` gives them. They are compiled from the last to the first, so
            that no call nests, however deep the tree.
    """
    done: list[Run] = []
    for node in reversed(nodes):
        below = [done.pop() for _ in children(node)]
        done.append(_COMPILERS[type(node)](node, below))
    return done[0]


def _literal(node: Literal, _: list[Run]) -> Run:
    value = node.value
    return lambda _: value


def _name(node: Name, _: list[Run]) -> Run:
    name = node.name

    def run(scope: Scope) -> Value:
        value = scope[name]
        return value if value.__class__ is not int else Fraction(value)

    return run


def _chain(node: Chain, below: list[Run]) -> Run:
    if node.steps[0].operator in {"and", "or"}:
        return _logic(node, below)
    first, *rest = below
    if len(rest) == 1:
        return _single(node, first, rest[0])
    steps = [(_SUMS[step.operator], operand, step) for step, operand in zip(node.steps, rest, strict=True)]

    def run(scope: Scope) -> Value:
        value = first(scope)
        for reckon, operand, step in steps:
            other = operand(scope)
            try:
                value = reckon(value, other)
            except Faulty as faulty:
                _misfit(faulty, node, step, value)
        return value

    return run


def _single(node: Chain, first: Run, second: Run) -> Run:
    step = node.steps[0]
    reckon = _SUMS[step.operator]

    def run(scope: Scope) -> Value:
        value, other = first(scope), second(scope)
        try:
            return reckon(value, other)
        except Faulty as faulty:
            _misfit(faulty, node, step, value)

    return run


def _misfit(faulty: Faulty, node: Chain, step: Step, left: Value) -> NoReturn:
    """Place the fault of one step: at the number without a unit or the zero, else at the whole sum."""
    start, end = node.start, step.end
    if faulty.faults[0].code == "divided-by-zero":
        start = step.operand.start
    elif "has no unit" in faulty.faults[0].help:
        number = step.operand if not isinstance(left, Fraction) else node.first
        if isinstance(number, Literal) and (number is step.operand or step is node.steps[0]):
            start, end = number.start, number.end
        else:
            fault = faulty.faults[0]
            unit = "deg" if fault.help.endswith("deg") else "in"
            mend = say("to give a number a unit, multiply it by 1 {unit}", unit=unit)
            faulty = Faulty([replace(fault, help=mend)])
    _place(faulty, start, end)


def _logic(node: Chain, below: list[Run]) -> Run:
    parts = [_yes_or_no(part, run) for part, run in zip(children(node), below, strict=True)]
    stop = node.steps[0].operator == "or"

    def run(scope: Scope) -> Value:
        for part in parts:
            if part(scope) is stop:
                return stop
        return not stop

    return run


def _yes_or_no(node: Node, inner: Run) -> Callable[[Scope], bool]:
    def run(scope: Scope) -> bool:
        value = inner(scope)
        if value is True or value is False:
            return value
        message = say("yes or no is wanted here; this is {value}", value=name_of(value))
        place = Place(start=node.start, end=node.end)
        raise Faulty([Fault("wrong-kind", message, place, say("compare it, as in width > 48 in"))])

    return run


def _comparison(node: Comparison, below: list[Run]) -> Run:
    (left, right), operator = below, node.operator
    alike = operator in {"=", "is"}

    def run(scope: Scope) -> Value:
        one, other = left(scope), right(scope)
        try:
            if operator in {"=", "≠", "is", "is not"}:
                return equal(one, other) is alike
            return ordered(operator, one, other)
        except Faulty as faulty:
            _place(faulty, node.start, node.end)

    return run


def _prefix(node: Prefix, below: list[Run]) -> Run:
    (inner,) = below
    if node.operator == "not":
        wanted = _yes_or_no(node.operand, inner)
        return lambda scope: not wanted(scope)
    negative = node.operator == "-"

    def run(scope: Scope) -> Value:
        value = inner(scope)
        if isinstance(value, (bool, str)):
            message = say(
                "{value} cannot have a '{operator}' before it", value=name_of(value), operator=node.operator
            )
            raise Faulty([Fault("wrong-kind", message, Place(start=node.start, end=node.end))])
        return -value if negative else value

    return run


def _choice(node: Choice, below: list[Run]) -> Run:
    condition, then, otherwise = _yes_or_no(node.condition, below[0]), below[1], below[2]
    return lambda scope: then(scope) if condition(scope) else otherwise(scope)


def _call(node: Call, arguments: list[Run]) -> Run:
    reckon = FUNCTIONS[node.function].reckon

    def run(scope: Scope) -> Value:
        values = [argument(scope) for argument in arguments]
        try:
            return reckon(*values)
        except Faulty as faulty:
            path = faulty.faults[0].place.path
            guilty = node.arguments[path[0]] if path and isinstance(path[0], int) else node
            _place(faulty, guilty.start, guilty.end)

    return run


def _place(faulty: Faulty, start: int, end: int) -> NoReturn:
    """Raise the faults again, those without a place put at the characters given."""
    place = Place(start=start, end=end)
    placed = [
        fault if fault.place.start is not None else replace(fault, place=place) for fault in faulty.faults
    ]
    raise Faulty(placed) from None


_COMPILERS: dict[type, Callable[[Any, list[Run]], Run]] = {
    Literal: _literal,
    Name: _name,
    Chain: _chain,
    Comparison: _comparison,
    Prefix: _prefix,
    Choice: _choice,
    Call: _call,
}
