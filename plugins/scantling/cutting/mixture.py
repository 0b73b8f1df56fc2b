"""A linear programme over patterns: covers each kind's count with fractions of patterns at least cost.

Columns are made as they are needed. Only the simplex method's floats are used here; what is proven
from its shadow prices is recomputed in whole numbers elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from copy import copy
from dataclasses import dataclass

TINY = 1e-9
ENOUGH = 1e-7
"""A column that gains less than this is as good as none."""
LEAD = 1e-6
"""A pivot smaller than this would blow up the errors of floats."""
FRESH = 64
"""After so many pivots the shadow prices are computed anew, so that errors do not add up."""


@dataclass(frozen=True, slots=True)
class Column:
    """A pattern as the programme sees it."""

    cost: float
    sort: int
    """Its sort of stock, or the number of a cap of another kind."""
    counts: tuple[int, ...]
    """How many of each row it covers."""
    marks: tuple[tuple[int, float], ...]
    """The same without the zeros, and with its cap."""


class Mixture:
    """The programme: least cost such that every row is covered; rows with limits are capped."""

    def __init__(self, needs: Sequence[int], limits: Sequence[int | None], dear: Sequence[float]) -> None:
        """Start with stand-ins that cover each row at the price `dear`."""
        self.kinds = len(needs)
        caps = [number for number, limit in enumerate(limits) if limit is not None]
        self.row_of = {number: self.kinds + row for row, number in enumerate(caps)}
        size = self.size = self.kinds + len(caps)
        self.inverse = [[1.0 if i == j else 0.0 for j in range(size)] for i in range(size)]
        self.basis: list[Column | None] = [None] * size
        self.costs = [float(price) for price in dear] + [0.0] * len(caps)
        self.amounts = [float(need) for need in needs] + [float(limits[number] or 0) for number in caps]
        self.shadow = list(self.costs)
        self.pivots = 0
        self.work = 0
        """How many numbers the pivots have touched."""

    def copy(self) -> Mixture:
        """Return a programme that goes on from here by itself."""
        twin = copy(self)
        twin.inverse, twin.basis, twin.costs = list(self.inverse), list(self.basis), list(self.costs)
        twin.amounts, twin.shadow = list(self.amounts), list(self.shadow)
        return twin

    def take(self, row: int, copies: int, dear: float) -> None:
        """Take copies of the pattern in a row out of what is still to be covered.

        Where that is more than the mixture uses, a stand-in at the price `dear` gives some back.
        """
        self.amounts[row] -= copies
        column = self.basis[row]
        if self.amounts[row] >= 0 or column is None:
            return
        back = Column(dear, -1, (), tuple((at, -mark) for at, mark in column.marks))
        self.amounts[row] = -self.amounts[row]
        worth = dear + self.costs[row]
        old = self.inverse[row]
        self.shadow = [price - worth * value for price, value in zip(self.shadow, old, strict=True)]
        self.inverse[row] = [-value for value in old]
        self.basis[row], self.costs[row] = back, dear

    def reprice(self, row: int, column: Column) -> None:
        """Give the column in a row another price: `column` is the same at that price."""
        more = column.cost - self.costs[row]
        self.shadow = [
            price + more * value for price, value in zip(self.shadow, self.inverse[row], strict=True)
        ]
        self.basis[row], self.costs[row] = column, column.cost

    def column(self, cost: float, sort: int, counts: tuple[int, ...]) -> Column:
        """Return a pattern as a column."""
        marks = [(row, float(count)) for row, count in enumerate(counts) if count]
        if sort in self.row_of:
            marks.append((self.row_of[sort], 1.0))
        return Column(cost, sort, counts, tuple(marks))

    def value(self) -> float:
        """Return the cost of the mixture."""
        return sum(cost * amount for cost, amount in zip(self.costs, self.amounts, strict=True))

    def gain(self, column: Column) -> float:
        """Return how much cheaper the column is than what it replaces."""
        shadow = self.shadow
        gain = -column.cost
        for row, mark in column.marks:
            gain += mark * shadow[row]
        return gain

    def target(self, sort: int, price: float) -> float:
        """Return what the kinds in a pattern must be worth for the pattern to gain."""
        row = self.row_of.get(sort)
        return price if row is None else price - self.shadow[row]

    def solve(
        self,
        pool: list[Column],
        find: Callable[[list[float]], list[Column]],
        rounds: int,
        *,
        adds: bool = True,
    ) -> list[float]:
        """Add columns while any helps; return the last shadow prices.

        Args:
            pool: columns known so far; new ones are added to it.
            find: gives columns that gain at some shadow prices.
            rounds: how often columns are looked for at most.
            adds: whether new columns are to be added to the pool.
        """
        for _ in range(rounds):
            while self._settle(pool):
                pass
            changed = False
            for column in find(self.shadow):
                if adds:
                    pool.append(column)
                gain = self.gain(column)
                if gain > ENOUGH:
                    changed = self.enter(column, gain) or changed
            if not changed:
                break
        return self.shadow

    def _settle(self, pool: list[Column]) -> bool:
        """Take in the best known column, surplus or slack; return whether there was one."""
        best, enters = ENOUGH, None
        for row, price in enumerate(self.shadow):
            gain = -price if row < self.kinds else price
            if gain > best:
                best, enters = gain, Column(0.0, -2 - row, (), ((row, -1.0 if row < self.kinds else 1.0),))
        for known in pool:
            gain = self.gain(known)
            if gain > best:
                best, enters = gain, known
        return enters is not None and self.enter(enters, best)

    def enter(self, column: Column, gain: float) -> bool:
        """Take a column into the mixture; return whether that was possible."""
        marks = column.marks
        if len(marks) == 1:
            at, mark = marks[0]
            step = [row[at] * mark for row in self.inverse]
        else:
            step = [sum([row[at] * mark for at, mark in marks]) for row in self.inverse]
        out = self._leaves(step)
        if out < 0:
            return False
        self.pivots += 1
        lead = step[out]
        new = [value / lead for value in self.inverse[out]]
        amount = max(0.0, self.amounts[out] / lead)
        inverse, amounts = self.inverse, self.amounts
        touched = 0
        changes = [(at, value) for at, value in enumerate(new) if value]
        for row, move in enumerate(step):
            if row != out and (move > TINY or move < -TINY):
                fresh = inverse[row].copy()
                for at, value in changes:
                    fresh[at] -= move * value
                inverse[row] = fresh
                amounts[row] = max(0.0, amounts[row] - move * amount)
                touched += 1
        self.work += (touched + 4) * self.size
        inverse[out], amounts[out] = new, amount
        self.basis[out], self.costs[out] = column, column.cost
        self.shadow = [price - gain * value for price, value in zip(self.shadow, new, strict=False)]
        if self.pivots % FRESH == 0:
            self._refresh()
        return True

    def _leaves(self, step: list[float]) -> int:
        """Return the row that runs out first, or -1 where none does."""
        best, out = 0.0, -1
        for row, move in enumerate(step):
            if move > LEAD:
                ratio = self.amounts[row] / move
                if out < 0 or ratio < best - TINY or (ratio <= best + TINY and move > step[out]):
                    best, out = ratio, row
        return out

    def _refresh(self) -> None:
        found = [0.0] * self.size
        for cost, row in zip(self.costs, self.inverse, strict=True):
            if cost:
                found = [price + cost * value for price, value in zip(found, row, strict=False)]
        self.shadow = found
