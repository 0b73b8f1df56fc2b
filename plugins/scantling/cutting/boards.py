"""Crosscutting full-width parts from boards."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.crosscuts import LengthPatterns, Plunge
from scantling.cutting.family import Family
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.lengths import Lengths, lengths_of
from scantling.cutting.needs import Need
from scantling.cutting.packing import Filled, OutOfSteps, pack
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.search import Amounts, Verdict
from scantling.cutting.steps import Steps

LEAVE = 20_000
"""How many steps filling a list may take at the first effort."""
NEEDS_USED = 8
"""So many needs guide the filling of boards."""


class BoardCutter:
    """The search's knowledge of crosscutting."""

    def __init__(self, family: Family, steps: Steps) -> None:
        self.family, self.steps = family, steps
        self.lengths = lengths = lengths_of(family)
        self.prices, self.most = lengths.prices, lengths.most
        self.relaxation = Relaxation(LengthPatterns(lengths, lengths.counts), steps)
        self.needs: list[Need] = [self.relaxation.need(lengths.wanted), self.relaxation.of_prices()]
        self.mixed = self.relaxation.bases
        self.possible: set[Amounts] = set()

    def first(self) -> list[Layout] | None:
        """Round what fractions of patterns would do."""
        filled = Plunge(self.lengths, self.steps).of_prices(self.relaxation)
        return None if filled is None else self._layouts(filled)

    def sharpen(self) -> bool:
        return False

    def excluded(self, amounts: Amounts, effort: int) -> bool:
        if amounts in self.possible:
            return False
        try:
            need = self.relaxation.of_list(amounts, until=self.steps.most)
        except Unfinished:
            return False
        if need is not None:
            self.needs.append(need)
            return True
        self.possible.add(amounts)
        return False

    def fill(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        try:
            filled = pack(self.lengths, amounts, self.needs[:NEEDS_USED], self.steps, LEAVE * 4**effort)
        except OutOfSteps:
            return Verdict.UNDECIDED
        return Verdict.IMPOSSIBLE if filled is None else self._layouts(filled)

    def _layouts(self, filled: Sequence[Filled]) -> list[Layout]:
        return [_layout(self.family, self.lengths, one) for one in filled]


def _layout(family: Family, lengths: Lengths, filled: Filled) -> Layout:
    j, pattern = filled
    sort = family.sorts[lengths.sorts[j]]
    sections = tuple(
        Section(kind.length, (Strip(sort.width, ((number, 0, kind.length, sort.width),)),))
        for number, (kind, count) in enumerate(zip(family.kinds, pattern, strict=True))
        for _ in range(count)
    )
    return Layout(sort, False, sections)
