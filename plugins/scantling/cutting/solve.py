"""The solver's door: each family alone, then added up."""

from __future__ import annotations

from scantling.cutting.answer import Answer, Board
from scantling.cutting.family import families
from scantling.cutting.fitting import faults_of_fit
from scantling.cutting.placing import place
from scantling.cutting.problem import Problem
from scantling.cutting.shopping import solve_family
from scantling.cutting.steps import DEFAULT_STEPS, Steps
from scantling.cutting.tree import with_cuts
from scantling.fault import Faulty


def solve(problem: Problem, *, steps: int = DEFAULT_STEPS) -> Answer:
    """Return the cheapest cutting plan found, and a proven bound on the cost of any.

    Args:
        problem: what is wanted and what is to be had.
        steps: how much work may be done for each family of stock; the same number gives the same answer
            on every machine.

    Raises:
        Faulty: where the parts cannot be cut from what is to be had.
    """
    faults = faults_of_fit(problem)
    if faults:
        raise Faulty(faults)
    stock = {item.id: item for item in problem.stock}
    cost = bound = done = 0
    boards: list[Board] = []
    for family in families(problem):
        counter = Steps(steps)
        layouts, least = solve_family(family, counter)
        cost += sum(layout.sort.price for layout in layouts)
        bound += least
        done += counter.done
        for board in place(family, layouts):
            boards.append(with_cuts(board, stock[board.stock], problem.kerf, problem.rules))
    return Answer(cost, bound, tuple(boards), done)
