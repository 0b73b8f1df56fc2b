"""The cost of an answer asked for alone is that of the answer; in a row it is asked where it may change."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from scantling.cutting import (
    DEFAULT_STEPS,
    Cost,
    PartItem,
    Problem,
    StockItem,
    costs_along,
    plan_problem,
    solve,
    solve_cost,
)
from scantling.source import read_catalog

PLANS = read_catalog(Path(__file__).resolve().parent.parent.parent / "plans").plans
BOARDS = (StockItem("8 ft", "pine", 96, 4, 500), StockItem("10 ft", "pine", 120, 4, 700))


def rails(length: int, count: int = 4) -> Problem:
    """Return the problem of cutting some rails from boards of 8 or 10 ft."""
    return Problem("in", 0, 3, BOARDS, (PartItem("rail", "pine", count, length, 4),))


def alone(problems: list[Problem]) -> list[int]:
    """Return what the whole answers cost."""
    return [solve(problem).cost for problem in problems]


@pytest.mark.parametrize("source", PLANS, ids=lambda source: source.slug)
def test_the_cost_alone_is_the_cost_of_the_answer(source):
    """For every demo plan, what is told without an answer is what the answer costs, and is told again."""
    problem = plan_problem(source.fitter.fit(), source.fitter.shop)
    known: dict[str, Cost] = {}
    (cost,) = costs_along([problem], steps=DEFAULT_STEPS, known=known)

    assert cost == solve(problem).cost
    assert sum(one.cents for one in known.values()) == cost
    cents = {question: Cost(1, is_proved=True) for question in known}
    assert costs_along([problem], steps=DEFAULT_STEPS, known=cents) == [len(known)]


def test_a_cost_that_stays_the_same_is_not_asked_for_between():
    """Of 30 lengths of rail, few are solved, and all cost what they cost alone."""
    known: dict[str, Cost] = {}
    row = [rails(length) for length in range(33, 63)]

    assert costs_along(row, steps=DEFAULT_STEPS, known=known) == alone(row)
    assert len(known) < 15


def test_a_row_may_shrink_rise_and_fall():
    """Parts that grow smaller, then more, cost along a row what each costs alone."""
    row = [rails(length) for length in range(62, 33, -1)] + [rails(34, count) for count in (4, 9, 2, 9, 4)]

    assert costs_along(row, steps=DEFAULT_STEPS, known={}) == alone(row)


def test_a_cost_between_is_solved_where_parts_do_not_grow_one_way():
    """A larger part between two sizes that cost the same is not taken to cost as much."""
    row = [rails(40), rails(100), rails(40)]

    assert costs_along(row, steps=DEFAULT_STEPS, known={}) == alone(row)
    assert alone(row)[1] > alone(row)[0]


def test_what_cannot_be_cut_has_no_cost():
    """A rail longer than every board has no cost; a size without parts costs nothing."""
    row = [replace(rails(40), parts=()), rails(48), rails(121)]

    assert costs_along(row, steps=DEFAULT_STEPS, known={}) == [0, 1000, None]


def test_the_cost_alone_says_whether_it_is_the_least():
    """A proof of the answer is one of its cost."""
    assert solve_cost(rails(48)) == Cost(1000, is_proved=True)
