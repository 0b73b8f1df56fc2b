"""From fractions of boards to whole ones: one programme, kept while boards are taken from it.

Whole boards are taken as the programme uses them, then the board it uses most, and the programme goes on
from where it stood: what is taken lowers what is wanted.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from scantling.cutting.knapsack import best_patterns
from scantling.cutting.lengths import Lengths
from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.packing import Filled
from scantling.cutting.steps import Chance, Steps

ROUNDS = 2000
"""How often patterns are looked for at most."""
FEW_PIECES = 24
"""So few pieces are left to the search that tries everything."""
SHARP = 1e-6
"""Less than this is nothing."""


@dataclass(slots=True)
class Stand:
    """How far the taking of boards has come."""

    mixture: Mixture
    taken: list[Filled]
    left: list[int]
    """How many of each kind are not on a board yet."""
    spent: int


class Rounding:
    """Takes boards one after another."""

    def __init__(self, lengths: Lengths, steps: Steps, known: Sequence[Filled]) -> None:
        """Set the programme up.

        Args:
            known: boards of an answer, as patterns to begin with.
        """
        self.lengths, self.steps = lengths, steps
        limits = [
            most if limited else None for most, limited in zip(lengths.most, lengths.limited, strict=True)
        ]
        self.dear = float(2 * max(lengths.prices) + 1)
        self.root = Mixture(lengths.counts, limits, [self.dear] * len(lengths.counts))
        self.seen: set[Filled] = set()
        self.pool: list[Column] = []
        self.chance: Chance | None = None
        for one in known:
            self._add(one)

    def stir(self, chance: Chance) -> None:
        """Make other choices from now on."""
        self.chance = chance

    def _add(self, one: Filled) -> Column | None:
        if one in self.seen:
            return None
        self.seen.add(one)
        column = self.root.column(float(self.lengths.prices[one[0]]), *one)
        self.pool.append(column)
        return column

    def solve(self, mixture: Mixture, left: Sequence[int], until: int) -> bool:
        """Bring the programme to its least cost; return whether it got there."""
        lengths, steps = self.lengths, self.steps
        size = len(left)
        finished = True

        def find(shadow: list[float]) -> list[Column]:
            nonlocal finished
            if steps.done > until:
                finished = False
                return []
            steps.done += mixture.work // 16
            mixture.work = 0
            worths = [max(0.0, price) for price in shadow[:size]]
            targets = [mixture.target(j, price) + SHARP for j, price in enumerate(lengths.prices)]
            found = best_patterns(lengths.wanted, left, worths, lengths.rooms, targets, steps)
            columns = [self._add((sort, tuple(counts))) for _, sort, counts in found]
            return [column for column in columns if column is not None]

        mixture.solve(self.pool, find, ROUNDS, adds=False)
        return finished

    def start(self) -> Stand:
        """Return the stand before any board is taken."""
        return Stand(self.root.copy(), [], list(self.lengths.counts), 0)

    def take(self, stand: Stand, row: int, copies: int) -> None:
        """Take boards with the pattern that stands in a row of the programme."""
        column = stand.mixture.basis[row]
        if column is None:
            return
        stand.mixture.take(row, copies, self.dear)
        for _ in range(copies):
            pattern = tuple([min(n, m) for n, m in zip(column.counts, stand.left, strict=True)])
            if not any(pattern):
                break
            stand.taken.append((column.sort, pattern))
            stand.left = [m - n for n, m in zip(pattern, stand.left, strict=True)]
            stand.spent += self.lengths.prices[column.sort]

    def choices(self, mixture: Mixture) -> Iterator[tuple[float, int]]:
        """Yield (how often, row) of the patterns in use, most used first."""
        ranked = []
        for row, (amount, column) in enumerate(zip(mixture.amounts, mixture.basis, strict=True)):
            if column is not None and column.sort >= 0 and amount > SHARP:
                used = sum([n * length for n, length in zip(column.counts, self.lengths.wanted, strict=True)])
                rank = amount * (80 + self.chance.below(40)) / 100 if self.chance else amount
                ranked.append((-round(rank, 5), -used, column.sort, column.counts, amount, row))
        ranked.sort()
        for *_, amount, row in ranked:
            yield amount, row

    def whole_ones(self, stand: Stand) -> None:
        """Take all boards that the programme uses whole."""
        for amount, row in list(self.choices(stand.mixture)):
            if amount >= 1 - SHARP:
                self.take(stand, row, int(amount + SHARP))

    def take_until_few(self, until: int) -> Stand:
        """Take boards until few pieces are left or the work allowed is done; return how far that came."""
        stand = self.start()
        while self.steps.done < until:
            self.whole_ones(stand)
            row = next((row for _, row in self.choices(stand.mixture)), -1)
            if sum(stand.left) <= FEW_PIECES or row < 0:
                break
            self.take(stand, row, 1)
            self.solve(stand.mixture, stand.left, until)
        return stand
