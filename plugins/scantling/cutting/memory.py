"""Answers that were found before: the same problem has the same answer, so it need not be solved twice."""

from __future__ import annotations

from collections.abc import MutableMapping
from dataclasses import replace
from typing import Protocol

from scantling.cutting.answer import Answer, Board
from scantling.cutting.problem import Problem
from scantling.cutting.solve import solve, solve_cost


class Memory(Protocol):
    """Remembers answers; the engine itself keeps nothing."""

    def recall(self, question: str) -> Answer | None:
        """Return the answer to a question that was asked before, if it is remembered."""
        ...

    def keep(self, question: str, answer: Answer) -> None:
        """Remember an answer."""
        ...


def solve_by_family(problem: Problem, *, steps: int, memory: Memory | None) -> Answer:
    """Return the answer to a problem, each family of stock solved alone and remembered alone.

    A change of one price then leaves every other family's answer as it was.
    """
    if memory is None:
        return solve(problem, steps=steps)
    answers = [_remembered(_family(problem, name), steps, memory) for name in _names(problem)]
    boards: tuple[Board, ...] = ()
    for answer in answers:
        boards += answer.boards
    return Answer(
        cost=sum(answer.cost for answer in answers),
        bound=sum(answer.bound for answer in answers),
        boards=boards,
        steps=sum(answer.steps for answer in answers),
    )


def cost_by_family(problem: Problem, *, steps: int, known: MutableMapping[str, int]) -> int:
    """Return the cost of the answer to a problem, in cents.

    Args:
        known: the cost of each family that was asked for before, by its question; new ones are added.

    Raises:
        Faulty: where the parts cannot be cut from what is to be had.
    """
    cost = 0
    for name in _names(problem):
        family = _family(problem, name)
        question = f"{steps} {family!r}"
        if question not in known:
            known[question] = solve_cost(family, steps=steps)
        cost += known[question]
    return cost


def _names(problem: Problem) -> list[str]:
    return sorted({part.family for part in problem.parts})


def _family(problem: Problem, name: str) -> Problem:
    return replace(
        problem,
        name="",
        stock=tuple(item for item in problem.stock if item.family == name),
        parts=tuple(part for part in problem.parts if part.family == name),
    )


def _remembered(problem: Problem, steps: int, memory: Memory) -> Answer:
    question = f"{steps} {problem!r}"
    answer = memory.recall(question)
    if answer is None:
        answer = solve(problem, steps=steps)
        memory.keep(question, answer)
    return answer
