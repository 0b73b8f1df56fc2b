"""Answers that were found before: the same problem has the same answer, so it need not be solved twice."""

from __future__ import annotations

from dataclasses import replace
from typing import Protocol

from scantling.cutting.answer import Answer, Board
from scantling.cutting.problem import Problem
from scantling.cutting.solve import solve


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
    answers = [_remembered(family_of(problem, name), steps, memory) for name in _names(problem)]
    boards: tuple[Board, ...] = ()
    for answer in answers:
        boards += answer.boards
    return Answer(
        cost=sum(answer.cost for answer in answers),
        bound=sum(answer.bound for answer in answers),
        boards=boards,
        steps=sum(answer.steps for answer in answers),
    )


def _names(problem: Problem) -> list[str]:
    return sorted({part.family for part in problem.parts})


def family_of(problem: Problem, name: str) -> Problem:
    """Return the part of a problem that is cut from one family of stock."""
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
