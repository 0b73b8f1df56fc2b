"""Weights, from the volume of wood and its handbook density at 12 % moisture."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.measure import Volume, Weight
from scantling.plan import FittedPart
from scantling.shop import Stock, wood_named

CUBIC_INCHES = 1728
"""Cubic inches in a cubic foot."""


@dataclass(frozen=True, slots=True)
class Density:
    """Weight by volume, in lb/ft3."""

    pounds_per_cubic_foot: Fraction

    def __mul__(self, volume: Volume) -> Weight:
        """Return the weight of a volume."""
        return Weight.of_pounds(self.pounds_per_cubic_foot * volume.cubic_inches / CUBIC_INCHES)


def stock_density(stock: Stock) -> Density | None:
    """Return the density of a stock's wood, or None where it is not known."""
    wood = wood_named(stock.wood)
    return None if wood is None else Density(wood.density)


def part_weight(part: FittedPart, stock_key: str, stocks: Mapping[str, Stock]) -> Weight | None:
    """Return the weight of one finished piece, or None where its wood is not known."""
    density = stock_density(stocks[stock_key]) if stock_key in stocks else None
    return None if density is None else density * (part.length * part.width * part.thick)
