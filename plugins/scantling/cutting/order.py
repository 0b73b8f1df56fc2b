"""From a fitted plan to a cutting problem.

Lengths become whole numbers of one unit, chosen so that nothing is rounded; a part whose length
comes from an angle is rounded up, by less than a thousandth of an inch.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from scantling.cutting.problem import PartItem, Problem, Rules, StockItem
from scantling.measure import Length
from scantling.plan import FittedPart
from scantling.shop import Shop, Stock

EXACT = 64 * 5 * 127
"""Parts of an inch that hold every 64th of an inch and every tenth of a millimetre."""
FINE = 1024
"""Anything else is rounded up to this part of an inch."""
STAGES = 3


@dataclass(frozen=True, slots=True)
class Wanted:
    """So many blanks of one part, to be cut from one of some stocks."""

    part: FittedPart
    stocks: tuple[str, ...]
    count: int
    """Blanks: layers and strips counted one by one."""
    plan: str
    """Slug of the plan that it belongs to."""
    id: str
    """Its name in the problem; unlike those of every other plan."""


@dataclass(frozen=True, slots=True)
class Order:
    """A cutting problem, and what its numbers and names stand for."""

    problem: Problem
    per_inch: int
    """Units in an inch."""
    stocks: Mapping[str, Stock]
    """Stock by the id of each of its sales."""

    def length(self, units: int) -> Length:
        """Return a number of units as a length."""
        return Length.of_inches(Fraction(units, self.per_inch))


def write_order(wanted: Iterable[Wanted], shop: Shop, *, name: str = "") -> Order:
    """Return the problem of cutting everything wanted from what the shop sells."""
    wanted = tuple(wanted)
    family = _families(wanted)
    stocks = [shop.stocks[key] for key in shop.stocks if key in family]
    per_inch = _units_per_inch(wanted, stocks, shop)
    units = _Units(per_inch)
    problem = Problem(
        unit=f"1/{per_inch} in",
        kerf=units.of(shop.kerf),
        stages=STAGES,
        stock=tuple(
            item
            for stock in stocks
            for item in _stock_items(stock, family[stock.key], units, _too_long(stock, wanted, shop))
        ),
        parts=tuple(_part_item(want, family[want.stocks[0]], units) for want in wanted),
        rules=_rules(shop, wanted, units),
        name=name,
    )
    return Order(problem, per_inch, {sale.id: stock for stock in stocks for sale in stock.sales})


def _families(wanted: Iterable[Wanted]) -> dict[str, str]:
    """Return the family of each stock: stocks that one part may be cut from belong together."""
    family: dict[str, str] = {}
    for want in wanted:
        joined = {family.get(key, key) for key in want.stocks}
        name = min(joined)
        family.update(dict.fromkeys(want.stocks, name))
        family.update({key: name for key, old in family.items() if old in joined})
    return family


@dataclass(frozen=True, slots=True)
class _Units:
    per_inch: int

    def of(self, length: Length) -> int:
        """Return a length in whole units, rounded up where it is not on the grid."""
        return -(-length.top * self.per_inch // length.bottom)

    def down(self, length: Length) -> int:
        """Return a length in whole units, rounded down."""
        return length.top * self.per_inch // length.bottom


def _units_per_inch(wanted: Iterable[Wanted], stocks: Iterable[Stock], shop: Shop) -> int:
    lengths = [shop.kerf]
    for stock in stocks:
        lengths += [stock.trim_ends, stock.trim_edges]
        lengths += [side for sale in stock.sales for side in (sale.length, sale.width)]
    for want in wanted:
        blank = want.part.blank
        lengths += [blank.along, blank.across, blank.least_across]
    denominators = (length.inches.denominator for length in lengths)
    return lcm(*(denominator if EXACT % denominator == 0 else FINE for denominator in denominators))


def _too_long(stock: Stock, wanted: Iterable[Wanted], shop: Shop) -> Length | None:
    """Return the length from which a board does not fit the car, if its parts can do without longer ones."""
    longest = shop.rules.longest_piece
    if longest is None or stock.is_sheet:
        return None
    needed = max((want.part.blank.along for want in wanted if stock.key in want.stocks), default=longest)
    return longest if needed + 2 * stock.trim_ends <= longest else None


def _stock_items(stock: Stock, family: str, units: _Units, too_long: Length | None) -> Iterable[StockItem]:
    carried = [sale for sale in stock.sales if too_long is None or sale.length <= too_long]
    for sale in carried or stock.sales:
        if sale.price is not None:
            yield StockItem(
                id=sale.id,
                family=family,
                length=units.down(sale.length),
                width=units.down(sale.width),
                price=sale.price.cents,
                available=sale.owned,
                trim_ends=units.of(stock.trim_ends),
                trim_edges=units.of(stock.trim_edges),
            )


def _part_item(want: Wanted, family: str, units: _Units) -> PartItem:
    blank = want.part.blank
    least = units.of(blank.least_across)
    across = units.of(blank.across)
    return PartItem(
        id=want.id,
        family=family,
        count=want.count,
        length=units.of(blank.along),
        width=across,
        may_turn=blank.may_turn,
        least_width=least if least < across else None,
    )


def _rules(shop: Shop, wanted: Iterable[Wanted], units: _Units) -> Rules:
    """Return the shop's rules; a part longer than the car takes must be carried, so as much else may be."""
    rules, longest = shop.rules, shop.rules.longest_piece
    if longest is not None:
        blanks = [want.part.blank for want in wanted]
        longest = max(longest, *(side for blank in blanks for side in (blank.along, blank.across)))
    return Rules(
        least_rip_length=units.of(rules.least_rip_length),
        least_strip_width=units.of(rules.least_strip_width),
        longest_piece=None if longest is None else units.of(longest),
        first_cuts=rules.store_cuts,
        keep_length=units.of(rules.keep_length),
        keep_width=units.of(rules.keep_width),
    )
