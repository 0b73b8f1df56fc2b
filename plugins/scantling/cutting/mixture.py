"""A linear programme over patterns: covers each kind's count with fractions of patterns at least cost.

Columns are made as they are needed. Only the simplex method's floats are used here; what is proven
from its shadow prices is recomputed in whole numbers elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

TINY = 1e-9

Column = tuple[float, int, tuple[int, ...]]
"""Its cost, its sort of stock (or -1), and how many of each row it covers."""


class Mixture:
    """The programme: least cost such that every row is covered; rows of `limits` are capped."""

    def __init__(self, needs: Sequence[int], limits: Sequence[int | None], dear: Sequence[float]) -> None:
        """Start with stand-ins that cover each row at the price `dear`."""
        self.kinds = len(needs)
        self.caps = [number for number, limit in enumerate(limits) if limit is not None]
        self.row_of = {number: self.kinds + row for row, number in enumerate(self.caps)}
        size = self.size = self.kinds + len(self.caps)
        self.inverse = [[1.0 if i == j else 0.0 for j in range(size)] for i in range(size)]
        self.basis: list[Column | None] = [None] * size
        self.costs = [float(price) for price in dear] + [0.0] * len(self.caps)
        self.amounts = [float(need) for need in needs] + [float(limits[number] or 0) for number in self.caps]
        self.pivots = 0

    def prices(self) -> list[float]:
        """Return the shadow price of each row."""
        found = [0.0] * self.size
        for cost, row in zip(self.costs, self.inverse, strict=True):
            if cost:
                found = [price + cost * value for price, value in zip(found, row, strict=True)]
        return found

    def value(self) -> float:
        """Return the cost of the mixture."""
        return sum(cost * amount for cost, amount in zip(self.costs, self.amounts, strict=True))

    def gain(self, column: Column, prices: Sequence[float]) -> float:
        """Return how much cheaper the column is than what it replaces."""
        cost, sort, counts = column
        gain = -cost
        for count, price in zip(counts, prices):
            if count:
                gain += count * price
        row = self.row_of.get(sort)
        return gain + prices[row] if row is not None else gain

    def enter(self, column: Column) -> bool:
        """Take a column into the mixture; return whether anything changed."""
        cost, sort, counts = column
        marks = [(k, float(count)) for k, count in enumerate(counts) if count]
        if sort in self.row_of:
            marks.append((self.row_of[sort], 1.0))
        return self._pivot(column, cost, marks)

    def slack(self, row: int, sign: float) -> bool:
        """Take the surplus of a kind (-1) or the slack of a cap (+1) into the mixture."""
        return self._pivot((0.0, -2 - row, ()), 0.0, [(row, sign)])

    def _pivot(self, column: Column, cost: float, marks: list[tuple[int, float]]) -> bool:
        if len(marks) == 1:
            at, mark = marks[0]
            step = [row[at] * mark for row in self.inverse]
        else:
            step = [sum([row[at] * mark for at, mark in marks]) for row in self.inverse]
        best, out = None, -1
        for row, (move, amount) in enumerate(zip(step, self.amounts, strict=True)):
            if move > TINY:
                ratio = amount / move
                if best is None or ratio < best - TINY or (ratio <= best + TINY and move > step[out]):
                    best, out = ratio, row
        if best is None:
            return False
        self.pivots += 1
        lead = step[out]
        new = [value / lead for value in self.inverse[out]]
        amount = max(0.0, self.amounts[out] / lead)
        for row, move in enumerate(step):
            if row != out and (move > TINY or move < -TINY):
                self.inverse[row] = [a - move * b for a, b in zip(self.inverse[row], new, strict=True)]
                self.amounts[row] = max(0.0, self.amounts[row] - move * amount)
        self.inverse[out], self.amounts[out] = new, amount
        self.basis[out], self.costs[out] = column, cost
        return True

    def solve(self, pool: list[Column], find: Callable[[list[float]], list[Column]], most: int) -> list[float]:
        """Add columns while any helps; return the last shadow prices.

        Args:
            pool: columns known so far; new ones are added to it.
            find: gives columns that gain at some shadow prices.
            most: how many rounds at most.
        """
        for _ in range(most):
            prices = self.prices()
            while self._settle(pool, prices):
                prices = self.prices()
            found = find(prices)
            changed = False
            for column in found:
                pool.append(column)
                if self.gain(column, self.prices()) > TINY:
                    changed = self.enter(column) or changed
            if not changed:
                return prices
        return self.prices()

    def _settle(self, pool: list[Column], prices: list[float]) -> bool:
        """Take in the best known column, surplus or slack; return whether there was one."""
        best, which = 1e-7, None
        for row in range(self.kinds):
            if -prices[row] > best:
                best, which = -prices[row], (row, -1.0)
        for row in range(self.kinds, self.size):
            if prices[row] > best:
                best, which = prices[row], (row, 1.0)
        column = None
        for known in pool:
            gain = self.gain(known, prices)
            if gain > best:
                best, column = gain, known
        if column is not None:
            return self.enter(column)
        return which is not None and self.slack(*which)
