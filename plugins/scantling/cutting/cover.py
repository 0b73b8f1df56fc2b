"""Fractions of boards of one length that cover what is wanted: the linear programme, made quick to solve.

A longer piece may stand in for the next shorter one: that changes no least value, and keeps the shadow
prices in order from the start (Valério de Carvalho, Using extra dual cuts to accelerate column generation,
INFORMS Journal on Computing 17, 2005). Patterns are looked for at prices between the present ones and the
best so far (Wentges, Weighted Dantzig-Wolfe decomposition, International Transactions in Operational
Research 4, 1997), and only until the mixture is within the goal, or until the bound of Farley (Operations
Research 38, 1990) is beyond it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from copy import copy
from dataclasses import replace

from scantling.cutting.lengths import Lengths
from scantling.cutting.listed import worthy_patterns
from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.steps import Steps
from scantling.cutting.tabled import good_patterns

MANY = 10
"""So many patterns are added at a time."""
HALF = 0.5
"""How much of the present prices there is in those at which patterns are looked for, to begin with."""
LITTLE = 0.2
"""With less of the present prices left out than this, they are taken as they are."""
TOLL = 0.01
"""What standing in costs once it is to end."""
STANDS_IN = -1000
"""The sort of the columns by which a piece stands in for the next; theirs are this and below."""
SHARP = 1e-6
"""Less than this is nothing."""
LARGE = 20_000
"""Boards of more units than this have no table."""
LONG = 250
"""Nor have those with more units than so many for each kind."""

Pattern = tuple[int, ...]


class Cover:
    """The programme; its rows are the kinds of which some are left."""

    def __init__(
        self,
        lengths: Lengths,
        left: Sequence[int],
        known: Iterable[Pattern],
        steps: Steps,
        *,
        firm: bool = False,
    ) -> None:
        """Set the programme up.

        Args:
            left: how many of each kind are to be covered.
            known: patterns over all kinds to begin with.
            firm: whether standing in costs something from the start.
        """
        self.lengths, self.steps = lengths, steps
        self.room = lengths.rooms[0]
        self.rows = [kind for kind, count in enumerate(left) if count]
        self.left = [left[kind] for kind in self.rows]
        self.sizes = [lengths.wanted[kind] for kind in self.rows]
        self.mixture = Mixture(self.left, [None], [3.0] * len(self.rows))
        self.pool: list[Column] = []
        self.seen: set[Pattern] = set()
        for pattern in known:
            self.add(tuple([min(pattern[kind], left[kind]) for kind in self.rows]))
        self.toll = TOLL if firm else 0.0
        self.best = [size / self.room for size in self.sizes]
        self.bound = 0.0

    def copy(self) -> Cover:
        """Return a programme that goes on from here by itself."""
        twin = copy(self)
        twin.mixture, twin.left = self.mixture.copy(), list(self.left)
        twin.pool, twin.seen = list(self.pool), set(self.seen)
        return twin

    def value(self) -> float:
        """Return how many boards the mixture uses."""
        return self.mixture.value()

    def wide(self, pattern: Pattern) -> Pattern:
        """Return a pattern of the programme's rows as one of all kinds."""
        found = [0] * len(self.lengths.wanted)
        for kind, count in zip(self.rows, pattern, strict=True):
            found[kind] = count
        return tuple(found)

    def used(self) -> list[tuple[float, int, Pattern]]:
        """Return how often each pattern is used, and the row of the programme in which it stands."""
        pairs = zip(self.mixture.amounts, self.mixture.basis, strict=True)
        return [
            (amount, row, column.counts)
            for row, (amount, column) in enumerate(pairs)
            if column is not None and column.sort == 0 and amount > SHARP
        ]

    def solve(self, goal: int, until: int) -> bool:
        """Add patterns until no more boards are used than the goal; return whether that was reached.

        Where it was not, `bound` shows whether more are needed, if the steps did not run out before.
        """
        share, self.bound = HALF, 0.0
        while True:
            self._settle(goal, until)
            if self._within(goal):
                return True
            if self.steps.done > until:
                return False
            new, share = self._priced(share)
            if self.bound > goal + SHARP:
                return False
            if not new and share == 1:
                if self.toll or not self._standing():
                    return False
                self._end_standing()
            share = HALF if new else 1 if share > 1 - LITTLE else (1 + share) / 2

    def _within(self, goal: int) -> bool:
        return self.mixture.value() <= goal + SHARP and not self._standing()

    def _priced(self, share: float) -> tuple[bool, float]:
        """Look for patterns at prices that are in this share the present ones; return whether any gain."""
        size = len(self.rows)
        shadow = [max(0.0, price) for price in self.mixture.shadow[:size]]
        mixed = [share * now + (1 - share) * old for now, old in zip(shadow, self.best, strict=True)]
        found = self._patterns(mixed)
        total = 0.0
        for price, count in zip(mixed, self.left, strict=True):
            total += price * count
        bound = total / max(1.0, found[0][0]) if found else total
        if bound > self.bound:
            self.bound, self.best = bound, mixed
        new = False
        for _, pattern in found:
            worth = 0.0
            for count, price in zip(pattern, shadow, strict=True):
                if count:
                    worth += count * price
            if worth > 1 + SHARP / 10:
                new = self.add(pattern) or new
        return new, share

    def _patterns(self, worths: Sequence[float]) -> list[tuple[float, Pattern]]:
        if self.room <= min(LARGE, LONG * len(self.rows)):
            return good_patterns(self.sizes, self.left, worths, self.room, MANY, self.steps)
        return worthy_patterns(self.sizes, self.left, worths, self.room, MANY, 1 - SHARP, self.steps)

    def add(self, pattern: Pattern) -> bool:
        """Let the mixture use a pattern of the rows; return whether it is new."""
        if pattern in self.seen or not any(pattern):
            return False
        self.seen.add(pattern)
        self.pool.append(self.mixture.column(1.0, 0, pattern))
        return True

    def _settle(self, goal: int, until: int) -> None:
        """Bring the mixture of the patterns known to its least value, or within the goal."""
        mixture, steps = self.mixture, self.steps
        while steps.done <= until:
            if mixture.value() <= goal + SHARP:
                if not self._standing():
                    return
                if not self.toll:
                    self._end_standing()
            steps.done += 5 + (len(self.pool) + len(self.rows)) // 3 + mixture.work // 16
            mixture.work = 0
            column, gain = self._entering()
            if column is None or not mixture.enter(column, gain):
                return

    def _entering(self) -> tuple[Column | None, float]:
        """Return the pattern, the surplus or the standing in that gains most."""
        shadow, toll = self.mixture.shadow, self.toll
        best, enters, before = SHARP / 10, None, None
        for row, price in enumerate(shadow):
            if -price > best:
                best, enters = -price, Column(0.0, -2 - row, (), ((row, -1.0),))
            if before is not None and price - before - toll > best:
                best = price - before - toll
                enters = Column(toll, STANDS_IN - row, (), ((row - 1, -1.0), (row, 1.0)))
            before = price
        for column in self.pool:
            gain = -1.0
            for row, mark in column.marks:
                gain += mark * shadow[row]
            if gain > best:
                best, enters = gain, column
        return enters, best

    def _standing(self) -> bool:
        pairs = zip(self.mixture.amounts, self.mixture.basis, strict=True)
        return any(
            column is not None and column.sort <= STANDS_IN and amount > SHARP / 10
            for amount, column in pairs
        )

    def _end_standing(self) -> None:
        self.toll = TOLL
        for row, column in enumerate(self.mixture.basis):
            if column is not None and column.sort <= STANDS_IN:
                self.mixture.reprice(row, replace(column, cost=TOLL))
