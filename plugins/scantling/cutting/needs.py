"""What any shopping list must satisfy.

Give every kind of part a worth. No board of a sort can hold more than some greatest worth, so a list of
boards can only do if these add up to the worth of all parts. Each choice of worths is one `Need`; the
shadow prices of a linear programme over patterns are the choices that exclude most.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

SCALE = 1 << 24
"""Shadow prices become whole numbers by this; all proofs are in whole numbers."""


@dataclass(frozen=True, slots=True)
class Need:
    """Worths for which `sum(list[j] * holds[j]) >= total` in every list of stock that suffices."""

    worths: tuple[int, ...]
    holds: tuple[int, ...]
    total: int

    def slack(self, amounts: Sequence[int]) -> int:
        """Return by how much a shopping list satisfies the need; below nothing it cannot do."""
        return sum([a * b for a, b in zip(amounts, self.holds, strict=False)]) - self.total

    def least_cost(self, prices: Sequence[int], most: Sequence[int]) -> int:
        """Return the least cost, rounded up, of fractions of boards that satisfy the need."""
        left, spent = self.total, 0
        order = sorted(
            (j for j in range(len(prices)) if self.holds[j] > 0), key=lambda j: (prices[j] / self.holds[j], j)
        )
        for j in order:
            if most[j] * self.holds[j] >= left:
                return spent + -(-prices[j] * max(0, left) // self.holds[j])
            left -= most[j] * self.holds[j]
            spent += prices[j] * most[j]
        return spent if left <= 0 else NEVER


NEVER = 1 << 62
"""A cost beyond all costs."""


def whole(prices: Sequence[float]) -> tuple[int, ...]:
    """Return shadow prices as whole worths."""
    return tuple(max(0, int(price * SCALE)) for price in prices)


def remaining(need: Need, counts: Sequence[int]) -> Need:
    """Return the need of what is left to cut."""
    return Need(need.worths, need.holds, sum([w * n for w, n in zip(need.worths, counts, strict=False)]))


def of_kinds(need: Need, rows: Sequence[int], kinds: int) -> Need:
    """Return a need with a worth for each of a family's kinds; those that are not in `rows` have none."""
    if len(need.worths) == kinds:
        return need
    worths = [0] * kinds
    for row, worth in zip(rows, need.worths, strict=True):
        worths[row] = worth
    return Need(tuple(worths), need.holds, need.total)
