"""Sheets, and boards from which strips are ripped."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress

from scantling.cutting.bars import bar_need, bars_of
from scantling.cutting.diving import Diver, Known, lay
from scantling.cutting.exhaustion import choose
from scantling.cutting.family import Family
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

SHARES = (40, 80)
"""So many hundredths of the work left go into making that answer cheaper, before and after more is proved."""

ROUNDS = (40, 250, 600, 1200, 2400)
"""How many rounds of rebuilding are tried at each effort."""

LEAVE = 100_000
"""How many steps a linear programme may take at the first effort."""

SHARPEN = 40_000
"""How many steps the linear programme of all prices may take."""

DIVE = 40_000
"""How many steps a dive may take at the first effort."""

EXHAUSTS = 2
"""At this effort, all that boards can hold is tried where there are few pieces."""

EXHAUSTION = 300_000
"""How many steps that may take for a list."""


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
        self.known: Known = {}
        self.answer: list[Layout] | None = None
        self.bases: dict[Amounts, list[tuple[float, int, tuple[int, ...]]]] = {}
        self.relaxation = Relaxation(PanelPatterns(family, steps), steps) if family.stages <= 3 else None

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
                    self.needs.append(self.relaxation.of_prices(until=self.steps.done + self.steps.left // 2))
            self.answer = answer
        return answer

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
            return Verdict.UNDECIDED
        if effort == EXHAUSTS and self.relaxation is not None:
            with suppress(Unfinished):
                return self._exhausted(amounts)
        found = Rebuilder(self.family, sorts, self.steps, Chance(effort + 1)).run(rounds)
        if found is None and effort >= 1 and self.relaxation is not None and amounts in self.bases:
            self.relaxation.bases = self.bases[amounts]
            until = min(self.steps.most, self.steps.done + DIVE * effort * effort)
            diver = Diver(self.family, self.steps, Chance(effort), 100 * effort, self.known, until)
            found = diver.dive(amounts, 1 + effort, self.relaxation)
        return Verdict.UNDECIDED if found is None else found

    def _exhausted(self, amounts: Amounts) -> list[Layout] | Verdict:
        """Fill the boards of a list, or prove that nobody can.

        Raises:
            Unfinished: where that takes too long.
        """
        until = min(self.steps.most, self.steps.done + EXHAUSTION)
        chosen = choose(self.family, self.relaxation, amounts, self.needs, until)
        if chosen is None:
            return Verdict.IMPOSSIBLE
        counts, boards, chance = [kind.count for kind in self.family.kinds], [], Chance()
        for sort, (_, laid) in chosen:
            board, counts = lay(self.family, sort, laid, counts, self.steps, chance)
            boards.append(board)
        return Rebuilder(self.family, [], self.steps, chance).layouts_of(boards)


def area_need(family: Family) -> Need:
    """Return the need that area makes; edges are counted in, because a full width is not trimmed."""
    worths = tuple(kind.length * kind.width for kind in family.kinds)
    holds = tuple(
        sort.length
        * ((sort.item.width + family.kerf) // family.scale if sort.item.trim_edges else sort.width)
        for sort in family.sorts
    )
    return Need(worths, holds, sum(w * kind.count for w, kind in zip(worths, family.kinds, strict=False)))
