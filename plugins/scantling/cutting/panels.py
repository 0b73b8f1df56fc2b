"""Sheets, and boards from which strips are ripped."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.bars import bar_need, bars_of
from scantling.cutting.family import Family
from scantling.cutting.filling import Filler
from scantling.cutting.fullest import Fullest
from scantling.cutting.greedy import greedy
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.layout import Layout
from scantling.cutting.needs import Need
from scantling.cutting.rebuild import Rebuilder
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.search import Amounts, Search, Verdict
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.thrift import Thrift
from scantling.cutting.whole_boards import Taker

MANY_PIECES = 60
"""With more pieces than this, a first answer is made in another way."""

FEW_PIECES = 30
"""With more pieces than this from one sort of stock, likewise."""

MANY_COPIES = 8
"""With so many pieces of a kind, a linear programme says which boards to take first."""

SHARES = (8, 80)
"""So many hundredths of the work left go into making that answer cheaper, before and after more is proved."""

MANY_A_BOARD = 6
"""With so many pieces for a board, boards as full as they can be are tried as a beginning."""

FULL = 60
"""That may take so many hundredths of the work left, where there is one sort of stock; of several, the sorts
share them: a mixture of sorts is better found by selling and buying."""

LEAVE = 100_000
"""How many steps a linear programme may take at the first effort."""

SHARPEN = 40_000
"""How many steps the linear programme of all prices may take."""


class PanelCutter:
    """The search's knowledge of sheets and rips."""

    insists = True

    def __init__(self, family: Family, steps: Steps) -> None:
        self.family, self.steps = family, steps
        self.prices = tuple(sort.price for sort in family.sorts)
        self.most = tuple(sort.most for sort in family.sorts)
        self.large = sum(kind.count for kind in family.kinds) > (
            MANY_PIECES if len(family.sorts) > 1 else FEW_PIECES
        )
        self.bars = [bars_of(family, False), bars_of(family, True)]
        self.needs: list[Need] = [area_need(family)]
        for bars in self.bars:
            need = bar_need(family, bars, steps)
            if need is not None:
                self.needs.append(need)
        self.answer: list[Layout] | None = None
        self.relaxation = Relaxation(PanelPatterns(family, steps), steps) if family.stages <= 3 else None
        self.filler = Filler(family, self.relaxation, self.needs, steps)

    def cost(self, layouts: Sequence[Layout]) -> int:
        """Return what the boards cost."""
        return sum([layout.sort.price for layout in layouts])

    def first(self) -> list[Layout] | None:
        """Return some answer; where there is much to cut, the cheapest found in most of the work allowed."""
        self.answer = answer = self._first()
        if answer and self.large:
            thrift = Thrift(self.family, answer, self.steps, Chance())
            for share in SHARES:
                least = max(need.least_cost(self.prices, self.most) for need in self.needs)
                answer = thrift.run(least, self.steps.done + self.steps.left * share // 100)
                if self.cost(answer) > least and self.relaxation is not None and share == SHARES[0]:
                    thrift = self._fuller(thrift)
                    self.needs.append(self.relaxation.of_prices(until=self.steps.done + self.steps.left // 2))
            self.answer = answer
        return answer

    def _fuller(self, thrift: Thrift) -> Thrift:
        """Return a search that begins with boards as full as they can be, where that is cheaper."""
        about = len(thrift.best)
        if sum(kind.count for kind in self.family.kinds) < MANY_A_BOARD * about:
            return thrift
        until = self.steps.done + self.steps.left * FULL // (100 * len(self.prices))
        boards = Fullest(self.family, self.steps).buy(until, about)
        if boards is None or thrift.cost(boards) >= thrift.cost(thrift.best):
            return thrift
        return Thrift(self.family, thrift.builder.layouts_of(boards), self.steps, Chance())

    def _first(self) -> list[Layout] | None:
        """Take whole boards from what fractions would do, and search the rest; or fill board after board."""
        kinds = self.family.kinds
        if self.relaxation is None or sum(kind.count for kind in kinds) < MANY_COPIES * len(kinds):
            return greedy(self.family, self.steps)
        self.needs.append(self.relaxation.of_prices(until=self.steps.done + self.steps.left // 5))
        taker = Taker(self.family, self.steps, self.steps.done + self.steps.left // 4)
        left = taker.take(self.relaxation)
        if not taker.boards:
            return greedy(self.family, self.steps)
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
        self.needs.append(self.relaxation.of_prices(until=self.steps.done + SHARPEN))
        return True

    def excluded(self, amounts: Amounts, effort: int) -> bool:
        """Return whether a list can be excluded by a need, which is then added."""
        if effort == 1 and self.relaxation is None:
            for bars in self.bars:
                need = bar_need(self.family, bars, self.steps, amounts=amounts)
                if need is not None and need.slack(amounts) < 0:
                    self.needs.append(need)
                    return True
        if effort >= 1 and self.relaxation is not None and amounts not in self.filler.bases:
            until = min(self.steps.most, self.steps.done + LEAVE * effort * effort)
            try:
                need = self.relaxation.of_list(amounts, until=until)
            except Unfinished:
                return False
            if need is not None:
                self.needs.append(need)
                return True
            self.filler.bases[amounts] = self.relaxation.bases
        return False

    def fill(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        """Fill the boards of a list; where there is much to cut, that is left to the first answer."""
        if self.large and self.answer:
            return Verdict.UNDECIDED
        return self.filler.fill(amounts, effort)


def area_need(family: Family) -> Need:
    """Return the need that area makes; edges are counted in, because a full width is not trimmed."""
    worths = tuple(kind.length * kind.width for kind in family.kinds)
    holds = tuple(
        sort.length
        * ((sort.item.width + family.kerf) // family.scale if sort.item.trim_edges else sort.width)
        for sort in family.sorts
    )
    return Need(worths, holds, sum(w * kind.count for w, kind in zip(worths, family.kinds, strict=False)))
