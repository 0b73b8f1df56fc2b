"""What a plan takes of each stock at the least, without cutting it: what rules a plan out at a glance."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from scantling.measure import Length
from scantling.plan import FittedPlan
from scantling.shop import Owned

THOUSAND = 1000


@dataclass(frozen=True, slots=True)
class StockNeed:
    """What some parts take of stocks of which any one will do."""

    stocks: tuple[str, ...]
    area: int
    """The faces of all pieces together, in thousandths of a square inch, rounded down."""
    longest: int
    """The longest piece, in thousandths of an inch, rounded down."""


def stock_needs(fitted: FittedPlan) -> tuple[StockNeed, ...]:
    """Return the least that a plan takes, for each choice of stocks in its parts.

    What is cut from offcuts counts nothing, and a piece that may end up narrower counts as narrow.
    """
    areas: dict[tuple[str, ...], int] = {}
    longest: dict[tuple[str, ...], int] = {}
    for part in fitted.parts:
        stocks, blank = part.part.source.stocks, part.blank
        if not stocks or part.part.source.offcut_of or not part.count:
            continue
        along, across = _thousandths(blank.along), _thousandths(min(blank.least_across, blank.across))
        pieces = part.count * blank.pieces
        areas[stocks] = areas.get(stocks, 0) + along * across * pieces // THOUSAND
        longest[stocks] = max(longest.get(stocks, 0), max(along, across) if blank.may_turn else along)
    return tuple(StockNeed(stocks, areas[stocks], longest[stocks]) for stocks in areas)


def lacking(needs: Iterable[StockNeed], owned: Iterable[Owned]) -> int:
    """Return what is missing at the least, in thousandths of a square inch; 0 where it may be enough.

    It is never more than what is missing in truth: cutting wastes wood, and this counts none.
    """
    areas: dict[str, int] = {}
    longest: dict[str, int] = {}
    for one in owned:
        length, width = _up(one.length), _up(one.width)
        areas[one.stock] = areas.get(one.stock, 0) + (length * width * one.count // THOUSAND + one.count)
        longest[one.stock] = max(longest.get(one.stock, 0), length, width)
    return sum(_lacking(need, areas, longest) for need in needs)


def _lacking(need: StockNeed, areas: Mapping[str, int], longest: Mapping[str, int]) -> int:
    if max((longest.get(stock, 0) for stock in need.stocks), default=0) < need.longest:
        return max(1, need.area - sum(areas.get(stock, 0) for stock in need.stocks))
    return max(0, need.area - sum(areas.get(stock, 0) for stock in need.stocks))


def _thousandths(length: Length) -> int:
    return int(length.inches * THOUSAND // 1)


def _up(length: Length) -> int:
    return -int(-length.inches * THOUSAND // 1)
