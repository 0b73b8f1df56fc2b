"""Filling a list with whole patterns, guided by what fractions of patterns could do.

One pattern of the linear programme is laid on a board, the programme is solved again for what is left,
and so on; where it says that the rest cannot be done, another pattern is tried.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.chain import Chain, laid_out
from scantling.cutting.family import Family
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.layout import Layout
from scantling.cutting.rebuild import OpenBoard, Rebuilder
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.steps import Chance, Steps

Known = dict[tuple[tuple[int, ...], tuple[int, ...]], tuple[Relaxation | None, bool]]
"""The programme for what is left, or None where that cannot be done; and whether it was finished."""


class Diver:
    """The search for whole patterns."""

    def __init__(
        self, family: Family, steps: Steps, chance: Chance, rounds: int, known: Known, until: int
    ) -> None:
        self.family, self.steps, self.chance, self.rounds = family, steps, chance, rounds
        self.known, self.until = known, until
        self.areas = [kind.length * kind.width for kind in family.kinds]

    def dive(
        self, amounts: Sequence[int], width: int, first: Relaxation | None = None
    ) -> list[Layout] | None:
        """Return layouts for the list, or None where none was found."""
        self.width = width
        counts = [kind.count for kind in self.family.kinds]
        return self._deeper(counts, list(amounts), [], first)

    def _deeper(
        self,
        counts: list[int],
        amounts: list[int],
        done: list[OpenBoard],
        relaxation: Relaxation | None,
        parent: Relaxation | None = None,
    ) -> list[Layout] | None:
        if not any(counts):
            return self._finish(counts, amounts, done, 1)
        boards = sum(amounts)
        if boards == 0 or self.steps.done > self.until:
            return None
        if relaxation is None:
            relaxation = self._relaxation(counts, amounts, parent)
            if relaxation is None:
                return None
        if boards == 1:
            return self._finish(counts, amounts, done, self.rounds)
        for sort, laid in self._candidates(relaxation, counts)[: self.width]:
            board, left = lay(self.family, sort, laid, counts, self.steps, self.chance)
            amounts[sort] -= 1
            found = self._deeper(left, amounts, [*done, board], None, relaxation)
            amounts[sort] += 1
            if found is not None:
                return found
        return None

    def _relaxation(
        self, counts: list[int], amounts: list[int], parent: Relaxation | None
    ) -> Relaxation | None:
        """Return the programme for what is left, or None where it cannot be done or was not finished."""
        state = tuple(counts), tuple(amounts)
        if state not in self.known:
            fresh = Relaxation(PanelPatterns(self.family, self.steps, counts), self.steps)
            fresh.learn(parent)
            self.known[state] = fresh, False
        relaxation, finished = self.known[state]
        if relaxation is not None and not finished:
            try:
                possible = relaxation.of_list(amounts, until=self.until) is None
            except Unfinished:
                return None
            self.known[state] = (relaxation if possible else None), True
        return self.known[state][0]

    def _candidates(self, relaxation: Relaxation, counts: list[int]) -> list[tuple[int, tuple[bool, Chain]]]:
        """Return the patterns in use, those that use their board best first."""
        ranked = []
        for amount, sort, pattern in relaxation.bases:
            used = sum(
                [
                    min(n, counts[k]) * self.areas[k]
                    for n, k in zip(pattern, relaxation.patterns.rows, strict=False)
                ]
            )
            stock = self.family.sorts[sort]
            share = used / (stock.length * stock.width) + (amount > 0.999)
            ranked.append((-share, sort, pattern))
        ranked.sort()
        return [(sort, relaxation.pool[sort, pattern]) for _, sort, pattern in ranked]

    def _finish(
        self, counts: list[int], amounts: list[int], done: list[OpenBoard], rounds: int
    ) -> list[Layout] | None:
        """Fill what boards are left, then mend all boards together."""
        sorts = [j for j, amount in enumerate(amounts) for _ in range(amount)]
        loose = [k for k, count in enumerate(counts) for _ in range(count)]
        last = Rebuilder(self.family, sorts, self.steps, self.chance)
        last.boards, last.left = last.recreate(last.boards, loose)
        last.improve(rounds)
        whole = Rebuilder(self.family, [board[0] for board in done] + sorts, self.steps, self.chance)
        whole.boards, whole.left = [*done, *last.boards], last.left
        return whole.improve(self.rounds)


def lay(
    family: Family, sort: int, laid: tuple[bool, Chain], counts: Sequence[int], steps: Steps, chance: Chance
) -> tuple[OpenBoard, list[int]]:
    """Return a board with a pattern's pieces, as far as they are wanted, and the counts left.

    What else fits beside them is added.
    """
    across, chain = laid
    left = list(counts)
    stock = family.sorts[sort]
    long, wide = (stock.width, stock.length) if across else (stock.length, stock.width)
    sections: list[list[Any]] = []
    for strips in laid_out(chain):
        kept: list[list[Any]] = []
        for pieces in strips:
            row = []
            for kind, turned, along, side in pieces:
                if left[kind]:
                    left[kind] -= 1
                    row.append((kind, turned, along, side))
            if row:
                kept.append([max(p[3] for p in row), sum(p[2] for p in row), tuple(row)])
        if kept:
            sections.append([max(s[1] for s in kept), wide - sum(s[0] for s in kept), kept])
    board = [sort, across, long - sum(s[0] for s in sections), long, wide, sections]
    areas = [kind.length * kind.width for kind in family.kinds]
    builder = Rebuilder(family, [sort], steps, chance)
    rest = [k for k, count in enumerate(left) for _ in range(count)]
    rest.sort(key=lambda k: (-areas[k], k))
    (board,), after = builder.recreate([board], rest)
    left = [0] * len(counts)
    for k in after:
        left[k] += 1
    return board, left
