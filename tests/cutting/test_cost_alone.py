"""The cost of an answer, asked for alone, is that of the answer."""

from __future__ import annotations

from pathlib import Path

import pytest

from scantling.cutting import DEFAULT_STEPS, cost_by_family, plan_problem, solve
from scantling.source import read_catalog

PLANS = read_catalog(Path(__file__).resolve().parent.parent.parent / "plans").plans


@pytest.mark.parametrize("source", PLANS, ids=lambda source: source.slug)
def test_the_cost_alone_is_the_cost_of_the_answer(source):
    """For every demo plan, what is told without an answer is what the answer costs, and is told again."""
    problem = plan_problem(source.fitter.fit(), source.fitter.shop)
    known: dict[str, int] = {}
    cost = cost_by_family(problem, steps=DEFAULT_STEPS, known=known)

    assert cost == solve(problem).cost
    assert sum(known.values()) == cost
    assert cost_by_family(problem, steps=DEFAULT_STEPS, known=dict.fromkeys(known, 1)) == len(known)
