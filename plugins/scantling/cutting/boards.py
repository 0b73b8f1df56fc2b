"""Crosscutting full-width parts from boards."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import replace

from scantling.cutting.crosscuts import LengthPatterns, Plunge, longest_first
from scantling.cutting.family import Family
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.lengths import Lengths, lengths_of
from scantling.cutting.needs import Need, whole
from scantling.cutting.one_length import OneLength
from scantling.cutting.packing import Filled, OutOfSteps, pack
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.rounding import Rounding
from scantling.cutting.search import Amounts, Search, Verdict
from scantling.cutting.steps import Chance, Steps

LEAVE = 20_000
"""How many steps filling a list may take at the first effort."""
MANY_PIECES = 60
"""With more pieces than this, rounding fractions of patterns comes first."""
SOME_PIECES = 36
"""With more pieces than this from one length, only the number of boards is looked at first."""
TURNS = 3
"""So many times fractions of patterns are rounded, each time with other choices."""
EAGER = (0.6, 0.9, 0.4)
"""From which fraction on a board is taken whole, at one effort after the other."""
NEEDS_USED = 8
"""So many needs guide the filling of boards."""


class BoardCutter:
    """The search's knowledge of crosscutting."""

    insists = True

    def __init__(self, lengths: Lengths, steps: Steps) -> None:
        self.lengths, self.steps = lengths, steps
        self.prices, self.most = lengths.prices, lengths.most
        self.large = sum(lengths.counts) > MANY_PIECES
        self.relaxation = Relaxation(LengthPatterns(lengths, lengths.counts, steps), steps)
        self.needs: list[Need] = [self.relaxation.need(lengths.wanted)]
        self.rounding = Rounding(lengths, steps, longest_first(lengths) or ()) if self.large else None
        if self.rounding is None:
            self.needs.append(self.relaxation.of_prices())
        else:
            self.needs.append(self._of_all_prices(self.rounding))
        self.possible: set[Amounts] = set()

    def cost(self, filled: Sequence[Filled]) -> int:
        """Return what the boards cost."""
        return sum([self.prices[sort] for sort, _ in filled])

    def _of_all_prices(self, rounding: Rounding) -> Need:
        """Return the need that all prices together prove, as far as two fifths of the work reach."""
        rounding.solve(rounding.root, self.lengths.counts, self.steps.done + self.steps.left * 2 // 5)
        self.relaxation.pool.update({(column.sort, column.counts): None for column in rounding.pool})
        return self.relaxation.need(whole(rounding.root.shadow[: len(self.lengths.counts)]))

    def first(self) -> list[Filled] | None:
        """Round what fractions of patterns would do, and search what is left; or fill board after board."""
        best = longest_first(self.lengths)
        for turn in range(TURNS if self.rounding else 0):
            filled = self._rounded(turn)
            if filled is None:
                continue
            if best is None or (self.cost(filled), len(filled)) < (self.cost(best), len(best)):
                best = filled
        return best

    def _rounded(self, turn: int) -> list[Filled] | None:
        """Take boards until few pieces are left or the work allowed is done, and search the rest."""
        if self.rounding is None or (turn and self.steps.left < self.steps.most // 2):
            return None
        if turn:
            self.rounding.stir(Chance(turn))
        stand = self.rounding.take_until_few(self.steps.done + self.steps.left // 3)
        left = replace(self.lengths, counts=tuple(stand.left), most=self._free(stand.taken))
        if not any(stand.left):
            return stand.taken
        rest = longest_first(left)
        if sum(stand.left) <= MANY_PIECES:
            part = Steps(min(self.steps.left, self.steps.most // 10))
            rest, _ = Search(BoardCutter(left, part), part).run()
            self.steps.done += part.done
        return None if rest is None else stand.taken + rest

    def _free(self, taken: Sequence[Filled]) -> tuple[int, ...]:
        used = [sort for sort, _ in taken]
        return tuple(most - used.count(sort) for sort, most in enumerate(self.most))

    def sharpen(self) -> bool:
        """Add nothing: all prices are looked at from the start."""
        return False

    def excluded(self, amounts: Amounts, effort: int) -> bool:  # noqa: ARG002
        """Return whether a list can be excluded by a need, which is then added."""
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

    def fill(self, amounts: Amounts, effort: int) -> list[Filled] | Verdict:
        """Fill the boards of a list, or prove that nobody can."""
        leave = min(LEAVE * 4**effort, self.steps.left)
        with suppress(OutOfSteps):
            filled = pack(self.lengths, amounts, self.needs[:NEEDS_USED], self.steps, leave)
            return Verdict.IMPOSSIBLE if filled is None else filled
        if not self.large and effort < 2:
            return Verdict.UNDECIDED
        plunge = Plunge(self.lengths, self.steps, self.steps.done + 10 * leave, EAGER[effort % len(EAGER)])
        filled = plunge.of_list(amounts, self.needs[:NEEDS_USED], self.relaxation)
        return Verdict.UNDECIDED if filled is None else filled


def solve_boards(family: Family, steps: Steps) -> tuple[list[Layout] | None, int]:
    """Return layouts for all pieces (or None where none were found), and a proven bound on the cost."""
    lengths = lengths_of(family)
    pieces = sum(lengths.counts)
    if len(lengths.prices) == 1 and pieces > SOME_PIECES:
        part = Steps(steps.most if pieces > MANY_PIECES else steps.most // 3)
        filled, bound = OneLength(lengths, part).run()
        steps.done += part.done
        if pieces <= MANY_PIECES and (filled is None or len(filled) * lengths.prices[0] > bound):
            found, other = Search(BoardCutter(lengths, steps), steps).run()
            bound = max(bound, other)
            if filled is None or (found is not None and len(found) < len(filled)):
                filled = found
    else:
        filled, bound = Search(BoardCutter(lengths, steps), steps).run()
    return None if filled is None else [_layout(family, lengths, one) for one in filled], bound


def _layout(family: Family, lengths: Lengths, filled: Filled) -> Layout:
    j, pattern = filled
    sort = family.sorts[lengths.sorts[j]]
    sections = tuple(
        Section(kind.length, (Strip(sort.width, ((number, 0, kind.length, sort.width),)),))
        for number, (kind, count) in enumerate(zip(family.kinds, pattern, strict=True))
        for _ in range(count)
    )
    return Layout(sort, False, sections)
