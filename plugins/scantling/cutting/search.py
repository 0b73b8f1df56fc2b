"""The search: shopping lists in order of cost, each excluded or filled."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import Enum
from typing import Any, Protocol

from scantling.cutting.lists import lists_between
from scantling.cutting.needs import NEVER, Need
from scantling.cutting.steps import Steps

Amounts = tuple[int, ...]
"""How many of each sort of stock."""


MOST_LISTS = 200
"""So many lists are looked at in search of a first answer."""

FEW = 4
"""So many lists are looked at one by one before all prices are looked at together."""


ENOUGH = 3
"""With so much effort a list still undecided is left so when this much of the work allowed is done:"""
SHARE = 3, 10


class Verdict(Enum):
    """What became of a list that was not filled."""

    IMPOSSIBLE = "impossible"
    UNDECIDED = "undecided"


class Cutter(Protocol):
    """Knows one kind of cutting: what it needs, what excludes a list, how boards are filled."""

    prices: tuple[int, ...]
    most: tuple[int, ...]
    needs: list[Need]

    large: bool
    """Whether there is so much to cut that a rounded answer comes first."""

    insists: bool
    """Whether a list is worth more effort before a dearer one is looked at."""

    def cost(self, found: Sequence[Any]) -> int:
        """Return what an answer costs."""
        ...

    def first(self) -> list[Any] | None:
        """Return some answer, quickly found, or None."""
        ...

    def sharpen(self) -> bool:
        """Add the needs that are dear to find; return whether there were any."""
        ...

    def excluded(self, amounts: Amounts, effort: int) -> bool:
        """Return whether a list can be excluded by a need, which is then added."""
        ...

    def fill(self, amounts: Amounts, effort: int) -> list[Any] | Verdict:
        """Fill the boards of a list."""
        ...


class Search:
    """One family's search."""

    def __init__(self, cutter: Cutter, steps: Steps) -> None:
        self.cutter, self.steps = cutter, steps
        self.best: list[Any] | None = None
        self.top = NEVER
        self.rest = NEVER
        self.undecided: list[Amounts] = []
        self.begun: dict[Amounts, int] = {}

    def cost(self, amounts: Sequence[int]) -> int:
        """Return what a list costs."""
        return sum([a * p for a, p in zip(amounts, self.cutter.prices, strict=False)])

    def run(self) -> tuple[list[Any] | None, int]:
        """Return the cheapest answer found (or None) and a proven bound on the cost."""
        if self.cutter.large:
            self._keep(self.cutter.first())
        self._rise()
        self._settle()
        if self.best is None:
            self._keep(self.cutter.first())
        bound = min([self.top, self.rest, *(self.cost(amounts) for amounts in self.undecided)])
        return self.best, bound

    def _rise(self) -> None:
        """Exclude or fill one list after another until one is filled; remember those undecided.

        When much work is done, lists are no longer excluded at length, so that there is an answer.
        """
        hard, begun = 0, self.steps.most * 6 // 10
        for tried, amounts in enumerate(self._lists()):
            if tried == MOST_LISTS or self.steps.left == 0:
                # the lists after this one are never looked at, even where this one is excluded later
                self.rest = min(self.rest, self.cost(amounts))
                self.undecided.append(amounts)
                return
            if self._excluded(amounts, 0):
                continue
            found = self.cutter.fill(amounts, 0)
            if isinstance(found, list):
                self._keep(found)
                return
            if found is Verdict.IMPOSSIBLE:
                continue
            if self.steps.done < begun:
                hard += 1
                if hard == FEW:
                    self.cutter.sharpen()
                if self._excluded(amounts, 1):
                    continue
                found = self.cutter.fill(amounts, 1) if self.cutter.insists else Verdict.UNDECIDED
                if isinstance(found, list):
                    self._keep(found)
                    return
                if found is Verdict.IMPOSSIBLE:
                    continue
                self.begun[amounts] = 1 + self.cutter.insists
            self.undecided.append(amounts)

    def _settle(self) -> None:
        """Exclude or fill the undecided lists with more and more effort, first those that leave most room."""
        effort = 1
        while self.undecided and self.steps.left > 0:
            if effort == ENOUGH:
                self.steps.most = self.steps.most * SHARE[0] // SHARE[1]
            waiting = [a for a in self.undecided if self.cost(a) < self.top]
            waiting.sort(key=lambda a: -self._ease(a))
            self.undecided = []
            for place, amounts in enumerate(waiting):
                if self.steps.left == 0:
                    self.undecided += waiting[place:]
                    break
                if self.cost(amounts) >= self.top:
                    continue
                if self.begun.get(amounts, 1) > effort:
                    self.undecided.append(amounts)
                    continue
                if self._excluded(amounts, effort):
                    continue
                found = self.cutter.fill(amounts, effort)
                if isinstance(found, list):
                    self._keep(found)
                if found is Verdict.UNDECIDED:
                    self.undecided.append(amounts)
            effort += 1
        self.undecided = [a for a in self.undecided if self.cost(a) < self.top]

    def _ease(self, amounts: Amounts) -> float:
        """Return by what share a list satisfies the need that it satisfies least."""
        return min([need.slack(amounts) / need.total for need in self.cutter.needs if need.total])

    def _excluded(self, amounts: Amounts, effort: int) -> bool:
        return any(need.slack(amounts) < 0 for need in self.cutter.needs) or self.cutter.excluded(
            amounts, effort
        )

    def _keep(self, found: list[Any] | None) -> None:
        if found is None:
            return
        cost = self.cutter.cost(found)
        if cost < self.top or (self.best is not None and cost == self.top and len(found) < len(self.best)):
            self.top, self.best = cost, found

    def _lists(self) -> Iterator[Amounts]:
        """Yield the lists that no need excludes, from the cheapest up to the best answer."""
        cutter = self.cutter
        low = max(need.least_cost(cutter.prices, cutter.most) for need in cutter.needs)
        width = max(1, low // 50)
        most = sum(a * p for a, p in zip(cutter.most, cutter.prices, strict=False))
        while low < self.top and low <= most:
            lists = lists_between(
                cutter.prices, cutter.most, cutter.needs, low, min(self.top, low + width), self.steps, 5000
            )
            if lists is None:
                if width > 1:
                    width = max(1, width // 8)
                    continue
                self.rest = low
                return
            for amounts in lists:
                if self.cost(amounts) >= self.top:
                    return
                if all(need.slack(amounts) >= 0 for need in cutter.needs):
                    yield amounts
            low += width
