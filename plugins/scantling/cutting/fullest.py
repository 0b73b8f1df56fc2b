"""Filling board after board, each as full as it can be of what is left.

What a board can hold at most is found exactly, as for the linear programme; boards that hold many pieces come
out far fuller so than by laying one piece after another. Filling a sheet and then the next by a knapsack
problem is as old as the problem itself (Gilmore and Gomory, 1965, for their rounding).
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.diving import lay
from scantling.cutting.family import Family
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.rebuild import OpenBoard
from scantling.cutting.steps import Chance, Steps

LARGER = 1.02
"""A piece is worth its area to this power: a little more the larger it is, so that small ones come last."""

TRIES, MANY = 2, 4
"""So often a board is filled whose pattern holds more of a kind than is wanted: for a list, and to buy."""

LESS = 0.1
"""By this part of what is too much, a kind is then worth less."""

EARLY = 5
"""The first board takes so many times as long as boards do on average, since all pieces are there."""


class Fullest:
    """Fills boards of a family."""

    def __init__(self, family: Family, steps: Steps) -> None:
        self.family, self.steps = family, steps
        self.worths: list[float] = [float(kind.length * kind.width) ** LARGER for kind in family.kinds]

    def fill(self, sorts: Sequence[int]) -> tuple[list[OpenBoard], list[int]]:
        """Fill boards of given sorts in their order.

        Returns:
            The boards, and how many of each kind found no place.
        """
        counts = [kind.count for kind in self.family.kinds]
        boards: list[OpenBoard] = []
        for sort in sorts:
            board, counts = self._fullest(counts, [sort], TRIES) or self._empty(sort, counts)
            boards.append(board)
        return boards, counts

    def buy(self, until: int, about: int) -> list[OpenBoard] | None:
        """Return boards of any sort that hold all pieces; each gives most for its price.

        Args:
            until: how many steps may be done.
            about: how many boards there may be.

        Returns:
            The boards, or None where they would take too many steps or there are too few.
        """
        counts = [kind.count for kind in self.family.kinds]
        boards: list[OpenBoard] = []
        most = [sort.most for sort in self.family.sorts]
        begun, allowed = self.steps.done, until - self.steps.done
        while any(counts):
            filled = self._fullest(counts, [number for number, left in enumerate(most) if left], MANY)
            done = self.steps.done - begun
            if filled is None or done > allowed or done * about > allowed * EARLY * (len(boards) + 1):
                return None
            board, counts = filled
            most[board[0]] -= 1
            boards.append(board)
        return boards

    def _empty(self, sort: int, counts: list[int]) -> tuple[OpenBoard, list[int]]:
        return lay(self.family, sort, (False, ()), counts, self.steps, Chance())

    def _fullest(
        self, counts: Sequence[int], sorts: Sequence[int], tries: int
    ) -> tuple[OpenBoard, list[int]] | None:
        """Return the board that gives most for its price, and what is left to be cut."""
        if not any(counts) or not sorts:
            return None
        patterns = PanelPatterns(self.family, self.steps, counts)
        worths = [self.worths[row] for row in patterns.rows]
        best: tuple[float, OpenBoard, list[int]] | None = None
        for _ in range(tries):
            surplus = [0.0] * len(worths)
            for sort, found in zip(sorts, patterns.best(worths, sorts, [0] * len(sorts)), strict=True):
                for _, held, laid in found:
                    board, left = lay(self.family, sort, laid, counts, self.steps, Chance())
                    gain = self._gain(counts, left) / (self.family.sorts[sort].price or 0.5)
                    if best is None or gain > best[0]:
                        best = gain, board, left
                    for row, (number, wanted) in enumerate(zip(held, patterns.counts, strict=True)):
                        surplus[row] = max(surplus[row], (number - wanted) / max(1, number))
            if not any(surplus):
                break
            worths = [worth * (1 - LESS * part) for worth, part in zip(worths, surplus, strict=True)]
        return best and best[1:]

    def _gain(self, before: Sequence[int], after: Sequence[int]) -> float:
        gains = zip(self.worths, before, after, strict=True)
        return sum([worth * (a - b) for worth, a, b in gains], 0.0)
