"""What each inch costs: the cost of a plan along one of its sizes, and the sweet spots on the way."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, MutableMapping
from dataclasses import dataclass, replace
from itertools import pairwise

from scantling.cutting import Cost, Problem, costs_along, plan_problem
from scantling.fault import Faulty
from scantling.formula import Value
from scantling.measure import Length, Money
from scantling.plan import USUAL, Choice, Fitter, Size
from scantling.report.materials import list_wares
from scantling.shop import Shop

MOST_POINTS = 31
"""Sizes that are tried; a finer range is thinned evenly."""
STEPS = 60_000
"""Work allowed for one cutting plan of the chart: less than for the plan itself."""


@dataclass(frozen=True, slots=True)
class CostPoint:
    """The cost at one size."""

    value: Value
    cost: Money


@dataclass(frozen=True, slots=True)
class SweetSpot:
    """A size after which the cost rises."""

    value: Value
    cost: Money
    rise: Money
    """How much more the next size costs."""


@dataclass(frozen=True, slots=True)
class CostChart:
    """The cost of a plan along one size."""

    size: str
    points: tuple[CostPoint, ...]
    """From least to most; sizes at which it cannot be bought are left out."""

    @property
    def sweet_spots(self) -> tuple[SweetSpot, ...]:
        """Return the last size before each rise of the cost: as much furniture as that money buys."""
        return tuple(
            SweetSpot(here.value, here.cost, after.cost - here.cost)
            for here, after in pairwise(self.points)
            if after.cost > here.cost
        )


def main_size(fitter: Fitter) -> Size | None:
    """Return the size that a reader changes first: the width, else the first that can be changed."""
    free = [size for size in fitter.plan.sizes.values() if size.least != size.most]
    return next((size for size in free if size.name == "width"), free[0] if free else None)


@dataclass(frozen=True, slots=True)
class Need:
    """What a plan takes at one size, whatever is paid for it: prices in it are those of any day."""

    value: Value
    problem: Problem
    wares: tuple[tuple[str, int], ...]
    """Keys of wares, with how many boxes, cans or pieces are bought."""


def cost_by_size(
    fitter: Fitter, size: Size, choice: Choice = USUAL, *, steps: int = STEPS, most: int = MOST_POINTS
) -> CostChart:
    """Return the cost of a plan along one size, everything else as in `choice`.

    Args:
        most: how many sizes are tried at most.
    """
    needs = needs_by_size(fitter, size, choice, most=most)
    return cost_of_needs(size.name, needs, fitter.shop, steps=steps, known={})


def needs_by_size(
    fitter: Fitter, size: Size, choice: Choice = USUAL, *, most: int = MOST_POINTS
) -> tuple[Need, ...]:
    """Return what a plan takes along one size; those at which it cannot be bought are left out."""
    return tuple(_needs(fitter, _values(size, most), size.name, choice))


def _needs(fitter: Fitter, values: list[Value], name: str, choice: Choice) -> Iterator[Need]:
    for value in values:
        try:
            fitted = fitter.fit_to_buy(Choice({**choice.sizes, name: value}, choice.options))
            problem = plan_problem(fitted, fitter.shop)
        except Faulty:
            continue
        wares = tuple((line.ware.key, line.quantity) for line in list_wares(fitted, fitter.shop))
        yield Need(value, problem, wares)


def cost_of_needs(
    size: str, needs: Iterable[Need], shop: Shop, *, steps: int = STEPS, known: MutableMapping[str, Cost]
) -> CostChart:
    """Return what is to be paid for needs at today's prices.

    Args:
        size: the name of the size along which they were found.
        shop: in all but its prices the one for which they were found.
        known: what cutting cost where it was asked before; new answers are added.
    """
    return CostChart(size, tuple(_points(needs, shop, steps, known)))


def _points(
    needs: Iterable[Need], shop: Shop, steps: int, known: MutableMapping[str, Cost]
) -> Iterator[CostPoint]:
    prices = {sale.id: sale.price for stock in shop.stocks.values() for sale in stock.sales}
    needs = tuple(needs)
    costs = costs_along([_priced(need.problem, prices) for need in needs], steps=steps, known=known)
    for need, wood in zip(needs, costs, strict=True):
        if wood is None:
            continue
        bought = ((shop.wares[key].price or Money(0)) * count for key, count in need.wares)
        yield CostPoint(need.value, sum(bought, Money(wood)))


def _priced(problem: Problem, prices: Mapping[str, Money | None]) -> Problem:
    """Return a problem with today's prices; a piece that is owned stays free."""
    stock = tuple(replace(item, price=(prices[item.id] or Money(0)).cents) for item in problem.stock)
    return replace(problem, stock=stock)


def _values(size: Size, most: int) -> list[Value]:
    """Return values from least to most on whole inches (or steps) where there are not too many."""
    step = size.step
    if isinstance(step, Length) and step < Length.of_inches(1):
        step = Length.of_inches(1)
    count = size.count_steps(step)
    stride = max(1, -(-count // (most - 1)))
    values = [size.at(index, step) for index in range(0, count + 1, stride)]
    return values if values[-1] == size.most else [*values, size.most]
