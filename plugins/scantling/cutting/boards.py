"""Crosscutting full-width parts from boards: shopping lists from the cheapest up."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family
from scantling.cutting.knapsack import best_patterns, best_worths
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.lengths import Lengths, lengths_of
from scantling.cutting.lists import lists_between
from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.needs import Need, whole
from scantling.cutting.packing import Filled, OutOfSteps, pack
from scantling.cutting.steps import Steps


def solve_boards(family: Family, steps: Steps) -> tuple[list[Layout], int]:
    """Return layouts for all pieces, and a proven bound on the cost."""
    lengths = lengths_of(family)
    search = BoardSearch(lengths, steps)
    filled, bound = search.run()
    return [_layout(family, lengths, one) for one in filled], bound


def _layout(family: Family, lengths: Lengths, filled: Filled) -> Layout:
    j, pattern = filled
    sort = family.sorts[lengths.sorts[j]]
    sections = tuple(
        Section(kind.length, (Strip(sort.width, ((number, 0, kind.length, sort.width),)),))
        for number, (kind, count) in enumerate(zip(family.kinds, pattern, strict=True))
        for _ in range(count)
    )
    return Layout(sort, False, sections)


class BoardSearch:
    """The state of one search."""

    def __init__(self, lengths: Lengths, steps: Steps) -> None:
        self.lengths, self.steps = lengths, steps
        self.needs: list[Need] = []
        self.pool: list[Column] = []

    def need(self, worths: Sequence[int]) -> Need:
        """Return the need for these worths."""
        lengths = self.lengths
        holds = best_worths(lengths.wanted, lengths.counts, worths, lengths.rooms)
        return Need(tuple(worths), tuple(holds), sum(w * n for w, n in zip(worths, lengths.counts)))

    def relax(self) -> None:
        """Solve the linear programme and keep what its shadow prices prove."""
        lengths = self.lengths
        dear = max(lengths.prices) * 2 + 1
        limits = [most if limited else None for most, limited in zip(lengths.most, lengths.limited)]
        mixture = Mixture(lengths.counts, limits, [dear] * len(lengths.wanted))
        size = len(lengths.wanted)

        def find(prices: list[float]) -> list[Column]:
            self.steps.done += 50
            targets = [price - (prices[mixture.row_of[j]] if j in mixture.row_of else 0.0) + 1e-6
                       for j, price in enumerate(lengths.prices)]
            found = best_patterns(lengths.wanted, lengths.counts, prices[:size], lengths.rooms, targets)
            return [(float(lengths.prices[j]), j, tuple(counts)) for _, j, counts in found]

        prices = mixture.solve(self.pool, find, 500)
        self.mixture = mixture
        self.needs.append(self.need(whole(prices[:size])))

    def fits_mixed(self, amounts: Sequence[int]) -> bool:
        """Return whether fractions of patterns could use the list; where not, remember why."""
        lengths = self.lengths
        size = len(lengths.wanted)
        mixture = Mixture(lengths.counts, list(amounts), [float(a) for a in lengths.wanted])
        def find(prices: list[float]) -> list[Column]:
            self.steps.done += 50
            targets = [-prices[mixture.row_of[j]] + 1e-6 for j in range(len(amounts))]
            found = best_patterns(lengths.wanted, lengths.counts, prices[:size], lengths.rooms, targets)
            return [(0.0, j, tuple(counts)) for _, j, counts in found]
        pool = [(0.0, j, counts) for _, j, counts in self.pool]
        known = len(pool)
        prices = mixture.solve(pool, find, 500)
        self.pool += [(float(lengths.prices[j]), j, counts) for _, j, counts in pool[known:]]
        if mixture.value() < 1e-6:
            return True
        top = max(prices[:size])
        need = self.need(whole([p / top for p in prices[:size]]))
        if need.slack(amounts) < 0:
            self.needs.append(need)
            return False
        return True

    def run(self) -> tuple[list[Filled], int]:
        lengths = self.lengths
        self.needs.append(self.need(lengths.wanted))
        self.relax()
        low = max(need.least_cost(lengths.prices, lengths.most) for need in self.needs)
        self.low=low
        bound = None
        at = low
        width = max(1, low // 200)
        tried=0
        while True:
            lists = lists_between(lengths.prices, lengths.most, self.needs, at, at + width, self.steps, 100000)
            for amounts in lists:
                if any(need.slack(amounts) < 0 for need in self.needs):
                    continue
                tried+=1
                if not self.fits_mixed(amounts):
                    continue
                cost = sum(a * p for a, p in zip(amounts, lengths.prices))
                try:
                    found = pack(lengths, amounts, self.needs[:8], self.steps, 20000)
                except OutOfSteps:
                    if bound is None: bound = cost
                    continue
                if found is not None:
                    self.tried=tried
                    return found, cost if bound is None else bound
            at += width
