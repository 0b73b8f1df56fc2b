"""Shopping lists in order of cost."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.needs import Need
from scantling.cutting.steps import Steps

MANY = 64
"""Where more boards of a sort than this are possible, trying each number of them is work that counts."""


def lists_between(
    prices: Sequence[int],
    most: Sequence[int],
    needs: Sequence[Need],
    low: int,
    high: int,
    steps: Steps,
    limit: int,
) -> list[tuple[int, ...]] | None:
    """Return all lists that cost from `low` up to, but not including, `high` and satisfy every need.

    The cheapest first; of equal cost, the one with fewest boards first.

    Returns:
        The lists, or None where there are more than `limit`, or too many to try in the steps allowed.
    """
    size = len(prices)
    found: list[tuple[int, ...]] = []
    # For each need, how much the sorts from j on can hold for one unit of money, as a fraction.
    order = sorted(range(size), key=lambda j: (-prices[j], j))
    rates = [_best_rates(need, prices, most, order) for need in needs]
    amounts = [0] * size

    def deeper(depth: int, spent: int, missing: list[int]) -> bool:
        steps.done += 1
        if depth == size:
            if spent >= low:
                found.append(tuple(amounts))
                return len(found) <= limit
            return True
        j = order[depth]
        price = prices[j]
        top = most[j] if price == 0 else min(most[j], (high - 1 - spent) // price)
        if size > 1 and top > MANY:
            steps.done += top * len(needs)
            if steps.left == 0:
                return False
        for amount in range(top, -1, -1):
            cost = spent + amount * price
            money = high - 1 - cost
            left = [miss - amount * need.holds[j] for miss, need in zip(missing, needs, strict=True)]
            possible = True
            for miss, (top_rate, base, free) in zip(left, [rate[depth] for rate in rates], strict=True):
                # miss <= free + money * top_rate / base must hold
                if (miss - free) * base > money * top_rate:
                    possible = False
                    break
            if not possible:
                continue
            amounts[j] = amount
            if not deeper(depth + 1, cost, left):
                return False
        amounts[j] = 0
        return True

    if not deeper(0, 0, [need.total for need in needs]):
        return None
    found.sort(key=lambda one: (sum(a * p for a, p in zip(one, prices, strict=False)), sum(one), one))
    return found


def _best_rates(
    need: Need, prices: Sequence[int], most: Sequence[int], order: Sequence[int]
) -> list[tuple[int, int, int]]:
    """Return for each depth the best (held, price) of the sorts after it, and what free sorts hold."""
    rates = []
    for depth in range(len(order)):
        top, base, free = 0, 1, 0
        for j in order[depth + 1 :]:
            if prices[j] == 0:
                free += most[j] * need.holds[j]
            elif need.holds[j] * base > top * prices[j]:
                top, base = need.holds[j], prices[j]
        rates.append((top, base, free))
    return rates
