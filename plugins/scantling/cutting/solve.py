"""The solver's door: each family alone, then added up."""

from __future__ import annotations

from dataclasses import replace

from scantling.cutting.answer import Answer, Board
from scantling.cutting.family import families
from scantling.cutting.fitting import faults_of_fit
from scantling.cutting.placing import place
from scantling.cutting.problem import Problem
from scantling.cutting.shopping import solve_family
from scantling.cutting.shortfall import SHARES, may_be_narrow, narrowed, widened
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
    if not may_be_narrow(problem):
        return _finished(_solved(problem, steps), problem)
    least = _solved(narrowed(problem), steps)
    if not faults_of_fit(problem):
        asked = _solved(problem, steps)
        if asked.cost <= least.cost:
            return _finished(replace(asked, bound=min(asked.bound, least.bound)), problem)
    saved = replace(_widest(problem, least, steps), bound=least.bound)
    stock = {item.id: item for item in problem.stock}
    boards = tuple(widened(board, stock[board.stock], problem) for board in saved.boards)
    return _finished(replace(saved, boards=boards), problem)


def _widest(problem: Problem, least: Answer, steps: int) -> Answer:
    """Return the answer with the widest parts that costs no more than the one with parts at their least."""
    best, low, high = least, 0, SHARES
    while high - low > 1:
        share = (low + high) // 2
        wider = narrowed(problem, share)
        answer = None if faults_of_fit(wider) else _solved(wider, steps)
        if answer is not None and answer.cost <= least.cost:
            best, low = answer, share
        else:
            high = share
    return best


def _solved(problem: Problem, steps: int) -> Answer:
    """Return the cheapest plan found for parts of just the sizes asked, without its cuts."""
    faults = faults_of_fit(problem)
    if faults:
        raise Faulty(faults)
    cost = bound = done = 0
    boards: list[Board] = []
    for family in families(problem):
        counter = Steps(steps)
        layouts, least = solve_family(family, counter)
        cost += sum(layout.sort.price for layout in layouts)
        bound += least
        done += counter.done
        boards += place(family, layouts)
    return Answer(cost, bound, tuple(boards), done)


def _finished(answer: Answer, problem: Problem) -> Answer:
    """Return an answer with the cuts and offcuts of its boards."""
    stock = {item.id: item for item in problem.stock}
    boards = (with_cuts(board, stock[board.stock], problem) for board in answer.boards)
    return replace(answer, boards=tuple(boards))
