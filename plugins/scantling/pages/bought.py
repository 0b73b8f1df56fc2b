"""What a plan buys, a line each, for lists that hold no more than that."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.measure import write_money
from scantling.report import Report, StockLine
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Bought:
    """One line of the materials list."""

    quantity: int
    name: str
    """With the size in which it is sold: "2x4, 8 ft"."""
    cost: str
    """In words; "yours" for what the workshop owns already."""


def bought(report: Report) -> Iterator[Bought]:
    """Yield what a plan buys, as one walks through the shop."""
    for _, lines in report.materials.by_shelf():
        for line in lines:
            is_owned = isinstance(line, StockLine) and line.is_owned
            if isinstance(line, StockLine):
                name, sold = line.stock.key, line.sale.label
            else:
                name, sold = line.ware.key, line.ware.sold
            whole = name if sold == "each" else f"{name}, {sold}"
            cost = say("yours") if is_owned else write_money(line.cost, report.shop.currency)
            yield Bought(line.quantity, whole, cost)
