"""Getting stock home: what is too long to be carried is cut at the yard, by as many cuts as it makes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from scantling.cutting.answer import Answer, Board
from scantling.cutting.choosing import store_cuts
from scantling.cutting.fitting import faults_of_fit
from scantling.cutting.problem import Problem, StockItem
from scantling.fault import Fault, Faulty, Place
from scantling.words import say

Solver = Callable[[Problem], Answer]


def faults_of_carrying(problem: Problem) -> list[Fault]:
    """Return a fault for each part that is longer than what can be carried."""
    longest = problem.rules.longest_piece
    return [
        Fault(
            "too-long-to-carry",
            say(
                "part '{part}' is {length} long; at most {longest} can be carried",
                part=part.id,
                length=max(part.length, part.width),
                longest=longest,
            ),
            Place(("parts", index)),
            "allow a longer piece, or make the part of two",
        )
        for index, part in enumerate(problem.parts)
        if longest is not None and max(part.length, part.width) > longest
    ]


def carried(problem: Problem, solver: Solver) -> Answer:
    """Return an answer in which no board needs more cuts at the yard than it makes.

    Stock that would need more is left out, until there is none. The bound of the first answer holds: to
    leave stock out makes nothing cheaper.

    Raises:
        Faulty: where parts cannot be cut from what is left.
    """
    answer = solver(problem)
    bound = answer.bound
    left_out: set[str] = set()
    while found := _cut_too_often(answer.boards, problem):
        left_out |= found
        problem = replace(problem, stock=tuple(_without(problem.stock, left_out)))
        if faults_of_fit(problem):
            raise Faulty(list(_too_long(problem, left_out)))
        try:
            answer = solver(problem)
        except Faulty as faulty:
            raise Faulty([*_too_long(problem, left_out), *faulty.faults]) from None
    return replace(answer, bound=min(bound, answer.cost))


def _cut_too_often(boards: Iterable[Board], problem: Problem) -> set[str]:
    """Return the stock that the yard would have to cut more often than it does."""
    most = problem.rules.first_cuts
    if most is None:
        return set()
    return {board.stock for board in boards if len(store_cuts(board, problem)) > most}


def _without(stock: Iterable[StockItem], left_out: set[str]) -> Iterable[StockItem]:
    return (item for item in stock if item.id not in left_out)


def _too_long(problem: Problem, left_out: set[str]) -> Iterable[Fault]:
    rules = problem.rules
    for name in sorted(left_out):
        yield Fault(
            "too-long-to-carry",
            say(
                "stock '{name}' is longer than the {longest_piece} that can be carried, and "
                "{first_cuts} cuts at the yard do not make it short enough for these parts",
                name=name,
                longest_piece=rules.longest_piece,
                first_cuts=rules.first_cuts,
            ),
            help="add shorter stock, or allow more first cuts",
        )
