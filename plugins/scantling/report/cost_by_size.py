"""What each inch costs: the cost of a plan along one of its sizes, and the sweet spots on the way."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from scantling.cutting import Memory
from scantling.fault import Faulty
from scantling.formula import Value
from scantling.measure import Length, Money
from scantling.plan import USUAL, Choice, Fitter, Size
from scantling.report.report import report_on

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
    """From least to most; sizes at which the plan does not work are left out."""

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


def cost_by_size(
    fitter: Fitter,
    size: Size,
    choice: Choice = USUAL,
    *,
    steps: int = STEPS,
    most: int = MOST_POINTS,
    memory: Memory | None = None,
) -> CostChart:
    """Return the cost of a plan along one size, everything else as in `choice`.

    Args:
        most: how many sizes are tried at most.
    """
    return CostChart(size.name, tuple(_points(fitter, _values(size, most), size.name, choice, steps, memory)))


def _points(
    fitter: Fitter, values: list[Value], name: str, choice: Choice, steps: int, memory: Memory | None
) -> Iterator[CostPoint]:
    for value in values:
        here = Choice({**choice.sizes, name: value}, choice.options)
        try:
            yield CostPoint(value, report_on(fitter, here, steps=steps, memory=memory).totals.cost)
        except Faulty:
            continue


def _values(size: Size, most: int) -> list[Value]:
    """Return values from least to most on whole inches (or steps) where there are not too many."""
    step = size.step
    if isinstance(step, Length) and step < Length.of_inches(1):
        step = Length.of_inches(1)
    count = size.count_steps(step)
    stride = max(1, -(-count // (most - 1)))
    values = [size.at(index, step) for index in range(0, count + 1, stride)]
    return values if values[-1] == size.most else [*values, size.most]
