"""The search: shopping lists in order of cost, each excluded or filled."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import Enum
from typing import Protocol

from scantling.cutting.layout import Layout
from scantling.cutting.lists import lists_between
from scantling.cutting.needs import NEVER, Need
from scantling.cutting.steps import Steps

Amounts = tuple[int, ...]
"""How many of each sort of stock."""


class Verdict(Enum):
    """What became of a list that was not filled."""

    IMPOSSIBLE = "impossible"
    UNDECIDED = "undecided"


class Cutter(Protocol):
    """Knows one kind of cutting: what it needs, what excludes a list, how boards are filled."""

    prices: tuple[int, ...]
    most: tuple[int, ...]
    needs: list[Need]

    def first(self) -> list[Layout] | None:
        """Return some answer, quickly found, or None."""
        ...

    def sharpen(self) -> bool:
        """Add the needs that are dear to find; return whether there were any."""
        ...

    def excluded(self, amounts: Amounts, effort: int) -> bool:
        """Return whether a list can be excluded by a need, which is then added."""
        ...

    def fill(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        """Fill the boards of a list."""
        ...


class Search:
    """One family's search."""

    def __init__(self, cutter: Cutter, steps: Steps) -> None:
        self.cutter, self.steps = cutter, steps
        self.best: list[Layout] | None = None
        self.top = NEVER
        self.undecided: list[Amounts] = []
        self.complete = True

    def cost(self, amounts: Sequence[int]) -> int:
        """Return what a list costs."""
        return sum([a * p for a, p in zip(amounts, self.cutter.prices)])

    def run(self) -> tuple[list[Layout] | None, int]:
        """Return the cheapest layouts found (or None) and a proven bound on the cost."""
        cutter = self.cutter
        hard = 0
        for amounts in self._lists():
            if self.steps.left == 0:
                self.undecided.append(amounts)
                break
            if self._excluded(amounts, 0):
                continue
            if self._try(amounts, 0):
                break
            hard += 1
            if hard == 4:
                cutter.sharpen()
            if self._excluded(amounts, 1):
                continue
            if self._try(amounts, 1):
                break
            self.undecided.append(amounts)
        self._again()
        if self.best is None:
            self._keep(cutter.first())
        bound = min([self.top, *(self.cost(amounts) for amounts in self.undecided)])
        return self.best, bound

    def _excluded(self, amounts: Amounts, effort: int) -> bool:
        return any([need.slack(amounts) < 0 for need in self.cutter.needs]) or self.cutter.excluded(amounts, effort)

    def _try(self, amounts: Amounts, effort: int) -> bool:
        """Try to fill a list; return whether nothing dearer need be looked at."""
        found = self.cutter.fill(amounts, effort)
        if found is Verdict.IMPOSSIBLE:
            return False
        if found is Verdict.UNDECIDED:
            return False
        self._keep(found)
        return True

    def _keep(self, layouts: list[Layout] | None) -> None:
        if layouts is None:
            return
        cost = sum(layout.sort.price for layout in layouts)
        if cost < self.top or (self.best is not None and cost == self.top and len(layouts) < len(self.best)):
            self.top, self.best = cost, layouts

    def _lists(self) -> Iterator[Amounts]:
        """Yield the lists that no need excludes, from the cheapest up to the best answer."""
        cutter = self.cutter
        low = max(need.least_cost(cutter.prices, cutter.most) for need in cutter.needs)
        width = max(1, low // 50)
        most = sum(a * p for a, p in zip(cutter.most, cutter.prices))
        while low < self.top and low <= most:
            lists = lists_between(cutter.prices, cutter.most, cutter.needs, low, min(self.top, low + width), self.steps, 5000)
            if lists is None:
                if width > 1:
                    width = max(1, width // 8)
                    continue
                self.undecided.append(self._at(low))
                return
            for amounts in lists:
                if self.cost(amounts) >= self.top:
                    return
                if all([need.slack(amounts) >= 0 for need in cutter.needs]):
                    yield amounts
            low += width

    def _at(self, cost: int) -> Amounts:
        raise NotImplementedError

    def _again(self) -> None:
        """Try the undecided lists again, ever harder, from the cheapest up."""
        effort = 2
        while self.undecided and self.steps.left > 0:
            before = self.undecided
            self.undecided = []
            for place, amounts in enumerate(before):
                if self.cost(amounts) >= self.top:
                    break
                if self._excluded(amounts, effort):
                    continue
                if self.steps.left == 0:
                    self.undecided += [a for a in before[place:] if self.cost(a) < self.top]
                    break
                found = self.cutter.fill(amounts, effort)
                if found is Verdict.IMPOSSIBLE:
                    continue
                if found is Verdict.UNDECIDED:
                    self.undecided.append(amounts)
                    continue
                self._keep(found)
                break
            self.undecided = [a for a in self.undecided if self.cost(a) < self.top]
            effort += 1
