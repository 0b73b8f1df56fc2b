"""What cutting costs along a row of sizes, solved only where the cost may change.

Parts that are smaller, or fewer, can be cut as the larger ones are, and trimmed: they cost no more. So where
two sizes cost the same, proven the least that the one with the smaller parts can cost, and parts only grow
from the one to the other, every size between costs that too.
"""

from __future__ import annotations

from collections.abc import Callable, MutableMapping, Sequence
from itertools import pairwise

from scantling.cutting.memory import family_of
from scantling.cutting.problem import PartItem, Problem
from scantling.cutting.solve import Cost, solve_cost
from scantling.fault import Faulty

_NOTHING = Cost(0, is_proved=True)


def costs_along(
    problems: Sequence[Problem], *, steps: int, known: MutableMapping[str, Cost]
) -> list[int | None]:
    """Return the cost of the answer to each problem, in cents; None where the parts cannot be cut.

    Args:
        problems: those of one plan along one of its sizes.
        steps: how much work may be done for each family of stock of each problem.
        known: the cost of each family that was asked for before, by its question; new ones are added.
    """

    def ask(problem: Problem) -> Cost | None:
        if not problem.parts:
            return _NOTHING
        question = f"{steps} {problem!r}"
        if question not in known:
            try:
                known[question] = solve_cost(problem, steps=steps)
            except Faulty:
                return None
        return known[question]

    names = dict.fromkeys(part.family for problem in problems for part in problem.parts)
    rows = [_Row([family_of(problem, name) for problem in problems], ask).costs() for name in names]
    return [_sum(costs) for costs in zip(*rows, strict=True)] if rows else [0] * len(problems)


def _sum(costs: Sequence[int | None]) -> int | None:
    found = [cost for cost in costs if cost is not None]
    return sum(found) if len(found) == len(costs) else None


class _Row:
    """The problems of one family in a row."""

    def __init__(self, problems: Sequence[Problem], ask: Callable[[Problem], Cost | None]) -> None:
        self._problems = problems
        self._ask = ask
        self._grows = [is_within(one, other) for one, other in pairwise(problems)]
        self._shrinks = [is_within(other, one) for one, other in pairwise(problems)]
        self._found: dict[int, Cost | None] = {}

    def costs(self) -> list[int | None]:
        """Return the cost of each."""
        spans = [(0, len(self._problems) - 1)]
        while spans:
            first, last = spans.pop()
            cost = self._same(first, last)
            if cost is not None:
                self._found.update(dict.fromkeys(range(first + 1, last), cost))
            elif last - first > 1:
                middle = (first + last) // 2
                spans += [(first, middle), (middle, last)]
        found = (self._found[number] for number in range(len(self._problems)))
        return [None if cost is None else cost.cents for cost in found]

    def _same(self, first: int, last: int) -> Cost | None:
        """Return what every size from one to another costs, or None where it is not sure to be the same."""
        ends = self._cost(first), self._cost(last)
        if ends[0] is None or ends[1] is None or ends[0].cents != ends[1].cents:
            return None
        if ends[0].is_proved and all(self._grows[first:last]):
            return ends[0]
        return ends[1] if ends[1].is_proved and all(self._shrinks[first:last]) else None

    def _cost(self, number: int) -> Cost | None:
        if number not in self._found:
            self._found[number] = self._ask(self._problems[number])
        return self._found[number]


def is_within(one: Problem, other: Problem) -> bool:
    """Return whether whatever cuts the parts of `other` cuts those of `one` too: none is larger, or more."""
    if (one.unit, one.kerf, one.stock, one.rules) != (other.unit, other.kerf, other.stock, other.rules):
        return False
    larger = {part.id: part for part in other.parts}
    return all(part.id in larger and _is_smaller(part, larger[part.id]) for part in one.parts)


def _is_smaller(part: PartItem, other: PartItem) -> bool:
    if part is other or part == other:
        return True
    exact = all(
        least is None
        for least in (part.least_length, part.least_width, other.least_length, other.least_width)
    )
    return (
        exact
        and part.may_turn == other.may_turn
        and part.count <= other.count
        and part.length <= other.length
        and part.width <= other.width
    )
