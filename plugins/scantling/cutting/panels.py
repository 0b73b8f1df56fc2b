"""Sheets, and boards from which strips are ripped."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.bars import bar_need, bars_of
from scantling.cutting.diving import Diver, Known
from scantling.cutting.family import Family
from scantling.cutting.greedy import greedy
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.layout import Layout
from scantling.cutting.needs import Need
from scantling.cutting.rebuild import Rebuilder, number_of, unused
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.search import Amounts, Search, Verdict
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.whole_boards import Taker

MANY_PIECES = 60
"""With more pieces than this, a first answer is made in another way."""

VERY_MANY_PIECES = 250
"""With more pieces than this, boards are done without before lists are looked at."""

ROUNDS = (40, 250, 600, 1200, 2400)
"""How many rounds of rebuilding are tried at each effort."""

MORE = 5
"""Where there is an answer to begin with, so many times as many are tried."""

PATIENCE = (10, 10, 4, 1)
"""By how many hundredths what is left may then grow for a while, at each effort."""

LEAVE = 100_000
"""How many steps a linear programme may take at the first effort."""

DIVE = 40_000
"""How many steps a dive may take at the first effort."""


class PanelCutter:
    """The search's knowledge of sheets and rips."""

    insists = False

    def __init__(self, family: Family, steps: Steps) -> None:
        self.family, self.steps = family, steps
        self.prices = tuple(sort.price for sort in family.sorts)
        self.most = tuple(sort.most for sort in family.sorts)
        self.large = sum(kind.count for kind in family.kinds) > MANY_PIECES
        self.bars = [bars_of(family, False), bars_of(family, True)]
        self.needs: list[Need] = [area_need(family)]
        for bars in self.bars:
            need = bar_need(family, bars, steps)
            if need is not None:
                self.needs.append(need)
        self.known: Known = {}
        self.answer: list[Layout] | None = None
        self.builders: dict[Amounts, Rebuilder] = {}
        self.bases: dict[Amounts, list[tuple[float, int, tuple[int, ...]]]] = {}
        self.relaxation = Relaxation(PanelPatterns(family, steps), steps) if family.stages <= 3 else None

    def cost(self, layouts: Sequence[Layout]) -> int:
        """Return what the boards cost."""
        return sum([layout.sort.price for layout in layouts])

    def first(self) -> list[Layout] | None:
        """Return some answer, and keep it to begin with."""
        self.answer = self._first()
        if self.answer and sum(kind.count for kind in self.family.kinds) > VERY_MANY_PIECES:
            self._shrink(self.steps.done + self.steps.left // 2)
        return self.answer

    def _shrink(self, until: int) -> None:
        """Do without the emptiest board as long as its pieces find places on the others."""
        while self.answer and self.steps.done < until:
            fullest = sorted(self.answer, key=lambda layout: unused(layout, self.family))[:-1]
            sorts = [number_of(layout, self.family) for layout in fullest]
            search = Rebuilder(self.family, sorts, self.steps, Chance())
            search.begin_with(self.answer)
            search.patience = PATIENCE[-1]
            found = search.improve(ROUNDS[0] * MORE) if sorts else None
            if found is None:
                return
            self.answer = found

    def _first(self) -> list[Layout] | None:
        """Take whole boards from what fractions would do, and search the rest; or fill board after board."""
        if not self.large or self.relaxation is None:
            return greedy(self.family, self.steps)
        self.needs.append(self.relaxation.of_prices(until=self.steps.done + self.steps.left // 5))
        taker = Taker(self.family, self.steps, self.steps.done + self.steps.left // 4)
        left = taker.take(self.relaxation)
        layouts = Rebuilder(self.family, [], self.steps, Chance()).layouts_of(taker.boards)
        rest = self._rest(left)
        return greedy(self.family, self.steps) if rest is None else layouts + rest

    def _rest(self, left: Family) -> list[Layout] | None:
        """Search what is left, where that is little."""
        if not any(kind.count for kind in left.kinds):
            return []
        part = Steps(max(20_000, self.steps.left // 2))
        cutter = PanelCutter(left, part)
        found = greedy(left, part) if cutter.large else Search(cutter, part).run()[0]
        self.steps.done += part.done
        return found

    def sharpen(self) -> bool:
        """Add what the prices of all stock together prove."""
        if self.relaxation is None:
            return False
        self.needs.append(self.relaxation.of_prices())
        return True

    def excluded(self, amounts: Amounts, effort: int) -> bool:
        """Return whether a list can be excluded by a need, which is then added."""
        if effort == 1 and self.relaxation is None:
            for bars in self.bars:
                need = bar_need(self.family, bars, self.steps, amounts=amounts)
                if need is not None and need.slack(amounts) < 0:
                    self.needs.append(need)
                    return True
        if effort >= 1 and self.relaxation is not None and amounts not in self.bases:
            until = min(self.steps.most, self.steps.done + LEAVE * effort * effort)
            try:
                need = self.relaxation.of_list(amounts, until=until)
            except Unfinished:
                return False
            if need is not None:
                self.needs.append(need)
                return True
            self.bases[amounts] = self.relaxation.bases
        return False

    def fill(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        """Rebuild the boards of a list, or lay whole patterns on them."""
        sorts = [j for j, amount in enumerate(amounts) for _ in range(amount)]
        rounds = ROUNDS[min(effort, len(ROUNDS) - 1)]
        if self.large and self.answer:
            found = self._builder(amounts, sorts, self.answer, effort).improve(rounds * MORE)
        else:
            found = Rebuilder(self.family, sorts, self.steps, Chance(effort + 1)).run(rounds)
        if found is None and effort >= 1 and self.relaxation is not None and amounts in self.bases:
            self.relaxation.bases = self.bases[amounts]
            until = min(self.steps.most, self.steps.done + DIVE * effort * effort)
            diver = Diver(self.family, self.steps, Chance(effort), 100 * effort, self.known, until)
            found = diver.dive(amounts, 1 + effort, self.relaxation)
        if found is not None:
            self.answer = found
        return Verdict.UNDECIDED if found is None else found

    def _builder(
        self, amounts: Amounts, sorts: Sequence[int], answer: Sequence[Layout], effort: int
    ) -> Rebuilder:
        """Return the search that goes on from where it left a list, at first from the answer known."""
        if amounts not in self.builders:
            self.builders[amounts] = Rebuilder(self.family, sorts, self.steps, Chance())
            self.builders[amounts].begin_with(answer)
        self.builders[amounts].patience = PATIENCE[min(effort, len(PATIENCE) - 1)]
        return self.builders[amounts]


def area_need(family: Family) -> Need:
    """Return the need that area makes; edges are counted in, because a full width is not trimmed."""
    worths = tuple(kind.length * kind.width for kind in family.kinds)
    holds = tuple(
        sort.length
        * ((sort.item.width + family.kerf) // family.scale if sort.item.trim_edges else sort.width)
        for sort in family.sorts
    )
    return Need(worths, holds, sum(w * kind.count for w, kind in zip(worths, family.kinds, strict=False)))
