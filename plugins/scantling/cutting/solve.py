"""The solver's door: each family alone, then added up."""

from __future__ import annotations

from scantling.cutting.answer import Answer, Board
from scantling.cutting.family import Family, families
from scantling.cutting.placing import place
from scantling.cutting.problem import Problem
from scantling.cutting.steps import DEFAULT_STEPS, Steps
from scantling.cutting.shopping import solve_family


def solve(problem: Problem, *, steps: int = DEFAULT_STEPS) -> Answer:
    """Return the cheapest cutting plan found, and a proven bound on the cost of any.

    Args:
        steps: how much work may be done; the same number gives the same answer on every machine.

    Raises:
        Faulty: where the parts cannot be cut from what is to be had.
    """
    cost = bound = done = 0
    boards: list[Board] = []
    for family in families(problem):
        counter = Steps(steps)
        layouts, least = solve_family(family, counter)
        cost += sum(layout.sort.price for layout in layouts)
        bound += least
        done += counter.done
        boards.extend(place(family, layouts))
    return Answer(cost, bound, tuple(boards), done)
