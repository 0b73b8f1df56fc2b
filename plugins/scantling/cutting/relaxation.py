"""What fractions of patterns can do: for all stock at its price, or for the boards of one list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Protocol

from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.needs import Need, whole
from scantling.cutting.steps import Steps

Held = tuple[float, list[int], Any]
"""The worth of a pattern, how many of each kind it holds, and how it is laid out."""


class Patterns(Protocol):
    """Knows what a board can hold."""

    rows: list[int]
    """The kinds that are wanted."""
    counts: tuple[int, ...]
    """How many of each of these are wanted."""
    sizes: tuple[int, ...]
    """How much stock one of each kind takes up."""
    prices: tuple[int, ...]
    most: tuple[int, ...]
    limited: tuple[bool, ...]

    def best(
        self, worths: Sequence[float], sorts: Sequence[int], targets: Sequence[float]
    ) -> list[list[Held]]:
        """Return for each of the sorts the best patterns worth more than its target (the very best first)."""
        ...


class _Excluded(Exception):
    """Some worths exclude the list."""

    def __init__(self, worths: list[float]) -> None:
        self.worths = worths


class Unfinished(Exception):
    """There was no leave to finish; what was found is kept for another time."""


class Relaxation:
    """Keeps the columns found, so that one programme helps the next."""

    def __init__(self, patterns: Patterns, steps: Steps) -> None:
        self.patterns, self.steps = patterns, steps
        self.pool: dict[tuple[int, tuple[int, ...]], Any] = {}
        self.bases: list[tuple[float, int, tuple[int, ...]]] = []
        self.until = 1 << 62

    def learn(self, other: Relaxation | None) -> None:
        """Take over the columns of another programme, as far as their pieces are still wanted."""
        if other is None:
            return
        rows, counts = self.patterns.rows, self.patterns.counts
        place = {row: at for at, row in enumerate(other.patterns.rows)}
        from_rows = [place[row] for row in rows]
        for (sort, pattern), chain in other.pool.items():
            clipped = tuple([min(pattern[at], most) for at, most in zip(from_rows, counts, strict=False)])
            if any(clipped):
                self.pool.setdefault((sort, clipped), chain)

    def need(self, worths: Sequence[int]) -> Need:
        """Return the need for these worths."""
        patterns = self.patterns
        sorts = range(len(patterns.prices))
        targets = self._least_held(worths)
        self.steps.done += len(self.pool) // 2
        held = patterns.best(worths, sorts, targets)
        holds = tuple(
            int(found[0][0]) if found else target for found, target in zip(held, targets, strict=True)
        )
        return Need(tuple(worths), holds, sum(w * n for w, n in zip(worths, patterns.counts, strict=False)))

    def _least_held(self, worths: Sequence[int]) -> list[int]:
        """Return for each sort a worth just less than what a known pattern holds."""
        least = [1] * len(self.patterns.prices)
        for sort, counts in self.pool:
            worth = sum([w * n for w, n in zip(worths, counts, strict=True)])
            least[sort] = max(least[sort], worth)
        return [worth - 1 for worth in least]

    def of_prices(self, rounds: int = 300, until: int = 1 << 62) -> Need:
        """Return the need that the least cost of fractions of boards proves, as far as the steps reach."""
        patterns = self.patterns
        self.until = until
        limits = [
            most if limited else None for most, limited in zip(patterns.most, patterns.limited, strict=False)
        ]
        top = float(2 * max(patterns.prices) + 1)
        mixture = Mixture(patterns.counts, limits, [top] * len(patterns.counts))
        try:
            shadow = self._solve(
                mixture, [float(price) for price in patterns.prices], range(len(limits)), rounds
            )
        except Unfinished:
            shadow = mixture.shadow[: len(patterns.counts)]
        self.bases = self._basis(mixture)
        return self.need(whole(shadow))

    def of_list(self, amounts: Sequence[int], rounds: int = 300, until: int = 1 << 62) -> Need | None:
        """Return a need that excludes the list, or None where fractions of patterns can use it.

        Raises:
            Unfinished: when the steps have reached `until`.
        """
        patterns = self.patterns
        self.until = until
        top = max(patterns.sizes)
        mixture = Mixture(patterns.counts, list(amounts), [size / top for size in patterns.sizes])
        sorts = [j for j, amount in enumerate(amounts) if amount]
        try:
            shadow = self._solve(mixture, [0.0] * len(amounts), sorts, rounds, amounts)
        except _Excluded as found:
            shadow = found.worths
        self.bases = self._basis(mixture)
        largest = max(shadow)
        if largest < 1e-9:
            return None
        need = self.need(whole([price / largest for price in shadow]))
        return need if need.slack(amounts) < 0 else None

    def _basis(self, mixture: Mixture) -> list[tuple[float, int, tuple[int, ...]]]:
        """Return the patterns in use as (how often, sort, counts), most used first."""
        found = [
            (amount, column.sort, column.counts)
            for amount, column in zip(mixture.amounts, mixture.basis, strict=False)
            if column is not None and column.sort >= 0 and amount > 1e-7
        ]
        found.sort(key=lambda one: (-one[0], one[1], one[2]))
        return found

    def _solve(
        self,
        mixture: Mixture,
        prices: Sequence[float],
        sorts: Sequence[int],
        rounds: int,
        amounts: Sequence[int] | None = None,
    ) -> list[float]:
        patterns = self.patterns
        size = len(patterns.counts)
        pool = [mixture.column(prices[j], j, counts) for j, counts in self.pool if j in sorts]

        def find(shadow: list[float]) -> list[Column]:
            if self.steps.done > self.until:
                raise Unfinished
            worths = [max(0.0, price) for price in shadow[:size]]
            targets = [mixture.target(j, prices[j]) + 1e-6 for j in sorts]
            self.steps.done += 5 * size + len(pool) // 2 * 3 + mixture.work // 16
            mixture.work = 0
            held = patterns.best(worths, sorts, targets)
            if amounts is not None:
                total = sum([w * n for w, n in zip(worths, patterns.counts, strict=False)])
                for j, target, found in zip(sorts, targets, held, strict=False):
                    total -= amounts[j] * (found[0][0] if found else target)
                if total > 1e-4:
                    raise _Excluded(worths)
            columns = []
            for j, found in zip(sorts, held, strict=False):
                for _, counts, chain in found:
                    key = (j, tuple(counts))
                    self.pool[key] = chain
                    columns.append(mixture.column(prices[j], *key))
            return columns

        return mixture.solve(pool, find, rounds)[:size]
