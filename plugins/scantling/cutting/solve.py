"""The solver's door: each family alone, then added up."""

from __future__ import annotations

from dataclasses import dataclass, replace

from scantling.cutting.answer import Answer, Board
from scantling.cutting.carrying import carried, faults_of_carrying
from scantling.cutting.choosing import Chooser
from scantling.cutting.closing import closed_up
from scantling.cutting.family import families
from scantling.cutting.fitting import faults_of_fit
from scantling.cutting.problem import Problem
from scantling.cutting.shopping import solve_family
from scantling.cutting.shortfall import SHARES, enlarged, lessened, may_be_less
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
    faults = faults_of_carrying(problem)
    if faults:
        raise Faulty(faults)
    return carried(problem, lambda one: _closed(_answered(one, steps), one))


def _closed(answer: Answer, problem: Problem) -> Answer:
    return replace(answer, boards=tuple(closed_up(answer.boards, problem)))


@dataclass(frozen=True, slots=True)
class Cost:
    """What an answer costs."""

    cents: int
    is_proved: bool
    """True if no cutting plan costs less."""


def solve_cost(problem: Problem, *, steps: int = DEFAULT_STEPS) -> Cost:
    """Return what the answer to a problem costs, without choosing among those that cost the same.

    Raises:
        Faulty: as `solve`.
    """
    if problem.rules.first_cuts is not None or faults_of_carrying(problem):
        # what can be carried depends on the cuts
        answer = solve(problem, steps=steps)
    else:
        answer = _answered(problem, steps, with_boards=False)
    return Cost(answer.cost, answer.proved)


def _answered(problem: Problem, steps: int, *, with_boards: bool = True) -> Answer:
    """Return the cheapest plan found, with parts a little smaller where they may be and that saves."""
    if not may_be_less(problem):
        return _solved(problem, steps, with_boards=with_boards)
    least = _solved(lessened(problem), steps, with_boards=with_boards)
    if not faults_of_fit(problem):
        asked = _solved(problem, steps, with_boards=with_boards)
        if asked.cost <= least.cost:
            return replace(asked, bound=min(asked.bound, least.bound))
    saved, cut = _largest(problem, least, steps, with_boards=with_boards)
    stock, parts = {item.id: item for item in problem.stock}, {part.id: part for part in cut.parts}
    boards = (enlarged(board, stock[board.stock], problem, parts) for board in saved.boards)
    cuts = (with_cuts(board, stock[board.stock], problem) for board in boards)
    return replace(saved, boards=tuple(cuts), bound=least.bound)


def _largest(problem: Problem, least: Answer, steps: int, *, with_boards: bool) -> tuple[Answer, Problem]:
    """Return the answer with the largest parts that costs no more than the least; its problem."""
    best, low, high = (least, lessened(problem)), 0, SHARES
    while high - low > 1:
        share = (low + high) // 2
        larger = lessened(problem, share)
        answer = None if faults_of_fit(larger) else _solved(larger, steps, with_boards=with_boards)
        if answer is not None and answer.cost <= least.cost:
            best, low = (answer, larger), share
        else:
            high = share
    return best


def _solved(problem: Problem, steps: int, *, with_boards: bool) -> Answer:
    """Return the cheapest plan found for parts of just the sizes asked, with its cuts.

    Args:
        with_boards: whether its boards are wanted, and not its cost alone.
    """
    faults = faults_of_fit(problem)
    if faults:
        raise Faulty(faults)
    cost = bound = done = 0
    price = {item.id: item.price for item in problem.stock}
    boards: list[Board] = []
    for family in families(problem):
        counter = Steps(steps)
        layouts, least = solve_family(family, counter)
        bound += least
        done += counter.done
        if with_boards:
            chosen = Chooser(family, problem).boards(layouts)
            cost += sum(price[board.stock] for board in chosen)
            boards += chosen
        else:
            cost += sum(layout.sort.price for layout in layouts)
    return Answer(cost, bound, tuple(boards), done)
