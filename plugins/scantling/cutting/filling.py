"""Filling the sheets or boards of one shopping list, with more and more effort.

A list leaves room, or it leaves little. Where there is room, boards are filled one after another, and pieces
are taken out and put back until all lie on the boards. Where there is little, hardly anything that a board
can hold is good enough, and all of it can be tried out: that finds what is hard to come upon, or proves that
there is nothing.
"""

from __future__ import annotations

from contextlib import suppress
from math import prod

from scantling.cutting.diving import Diver, Known, lay
from scantling.cutting.exhaustion import Exhaustion
from scantling.cutting.family import Family
from scantling.cutting.fullest import Fullest
from scantling.cutting.layout import Layout
from scantling.cutting.needs import Need, of_kinds
from scantling.cutting.rebuild import Rebuilder
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.search import Amounts, Verdict
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.tightness import tight_need

ROUNDS = (40, 250, 600, 1200, 2400)
"""How many rounds of rebuilding are tried at each effort."""

MORE_ROUNDS = 1000
"""So many more are tried at the first effort where there is room."""

OTHERWISE = 14
"""Where these begin: the number of their chance."""

MEND = 250
"""So many rounds of rebuilding mend boards that were filled one after another."""

TELL = 100_000
"""How many steps it may take to tell whether a list leaves room."""

DIVE = 40_000
"""How many steps a dive may take at the first effort."""

ROOMY = 0.03
"""A list leaves room where more than this part of its boards can be wasted."""

MANY_WAYS = 20_000
"""Where there are fewer ways to choose pieces for a board, all is tried out first, be there room or not."""

EXHAUSTION = (0, 100_000, 150_000)
"""How many steps that may take at each effort."""


class Filler:
    """What is known of each list, from effort to effort."""

    def __init__(
        self, family: Family, relaxation: Relaxation | None, needs: list[Need], steps: Steps
    ) -> None:
        self.family, self.relaxation, self.needs, self.steps = family, relaxation, needs, steps
        self.has_few_ways = prod(kind.count + 1 for kind in family.kinds) <= MANY_WAYS
        self.known: Known = {}
        self.exhaustions: dict[Amounts, Exhaustion | None] = {}
        """How far all has been tried out; None for lists that leave room."""
        self.bases: dict[Amounts, list[tuple[float, int, tuple[int, ...]]]] = {}
        """The fractions of patterns that would do for a list."""

    def fill(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        """Fill the boards of a list, or prove that nobody can; the more effort the longer."""
        if self.relaxation is None or effort == 0:
            return self._rebuilt(amounts, effort) or Verdict.UNDECIDED
        begins = self.has_few_ways or effort > 2
        with suppress(Unfinished):
            if begins and self._is_tight(amounts):
                return self._exhausted(amounts, effort)
        found = self._rebuilt(amounts, effort)
        with suppress(Unfinished):
            if not found and effort == 2 and not begins and self._is_tight(amounts):
                return self._exhausted(amounts, effort)
        if not found and (effort != 2 or self.exhaustions.get(amounts) is None):
            found = self._dived(amounts, effort)
        with suppress(Unfinished):
            if not found and effort == 1 and not self._is_tight(amounts):
                found = self._filled(amounts) or self._rebuilt(amounts, OTHERWISE - 1, MORE_ROUNDS)
        return found or Verdict.UNDECIDED

    def _rebuilt(self, amounts: Amounts, effort: int, rounds: int | None = None) -> list[Layout] | None:
        """Lay all pieces on the boards by taking some out and putting them back better."""
        sorts = [j for j, amount in enumerate(amounts) for _ in range(amount)]
        rounds = rounds or ROUNDS[min(effort, len(ROUNDS) - 1)]
        return Rebuilder(self.family, sorts, self.steps, Chance(effort + 1)).run(rounds)

    def _filled(self, amounts: Amounts) -> list[Layout] | None:
        """Fill board after board, each as full as it can be, then mend all boards together."""
        stock = self.family.sorts
        sorts = [j for j, amount in enumerate(amounts) for _ in range(amount)]
        sorts.sort(key=lambda j: stock[j].length * stock[j].width)
        builder = Rebuilder(self.family, sorts, self.steps, Chance(1))
        builder.boards, left = Fullest(self.family, self.steps).fill(sorts)
        builder.left = [kind for kind, count in enumerate(left) for _ in range(count)]
        return builder.improve(MEND)

    def _dived(self, amounts: Amounts, effort: int) -> list[Layout] | None:
        """Lay whole patterns on the boards."""
        if self.relaxation is None or amounts not in self.bases:
            return None
        self.relaxation.bases = self.bases[amounts]
        until = min(self.steps.most, self.steps.done + DIVE * effort * effort)
        diver = Diver(self.family, self.steps, Chance(effort), 100 * effort, self.known, until)
        return diver.dive(amounts, 1 + effort, self.relaxation)

    def _is_tight(self, amounts: Amounts) -> bool:
        """Return whether a list leaves so little room that all its boards can hold may be tried out.

        Raises:
            Unfinished: where that takes too long to tell.
        """
        if amounts not in self.exhaustions and self.relaxation is not None:
            until = min(self.steps.most, self.steps.done + TELL)
            most = 1.0 if self.has_few_ways else ROOMY
            tight = tight_need(self.relaxation, amounts, until, most=most)
            exhaustion = None
            if tight is not None:
                rows = self.relaxation.patterns.rows
                needs = [of_kinds(need, rows, len(self.family.kinds)) for need in (tight, *self.needs)]
                exhaustion = Exhaustion(self.family, amounts, needs, self.steps)
                self.needs.append(tight)
            self.exhaustions[amounts] = exhaustion
        return self.exhaustions[amounts] is not None

    def _exhausted(self, amounts: Amounts, effort: int) -> list[Layout] | Verdict:
        """Go on trying out all that the boards of a list can hold.

        Raises:
            Unfinished: where that takes too long.
        """
        exhaustion = self.exhaustions[amounts]
        if exhaustion is None:
            raise Unfinished
        allowed = EXHAUSTION[min(effort, len(EXHAUSTION) - 1)]
        chosen = exhaustion.run(min(self.steps.most, self.steps.done + allowed))
        if chosen is None:
            return Verdict.IMPOSSIBLE
        counts, boards, chance = [kind.count for kind in self.family.kinds], [], Chance()
        for sort, (_, laid) in chosen:
            board, counts = lay(self.family, sort, laid, counts, self.steps, chance)
            boards.append(board)
        return Rebuilder(self.family, [], self.steps, chance).layouts_of(boards)
