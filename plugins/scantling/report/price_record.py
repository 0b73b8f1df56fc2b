"""What prices were and what every plan cost with them: small, plain, one line a fact, so that it merges."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from scantling.measure import Money
from scantling.report.materials import StockLine
from scantling.report.report import Report
from scantling.shop import Shop


@dataclass(frozen=True, slots=True)
class Price:
    """One price, and since which day it has been that."""

    money: Money
    since: str


@dataclass(frozen=True, slots=True)
class PlanCost:
    """What one plan costs at its usual size, and what is bought for it."""

    cost: Money
    buys: Mapping[str, int]
    """How many of each sale or ware, by its id."""


@dataclass(frozen=True, slots=True)
class PriceRecord:
    """Prices and plan costs of one day, and what the whole catalog cost on earlier days."""

    day: str
    currency: str
    prices: Mapping[str, Price]
    plans: Mapping[str, PlanCost]
    history: Mapping[str, Money] = field(default_factory=dict)
    """What the whole catalog cost, by day."""
    before: PriceRecord | None = None
    """The record before the last change of a price, without what was before that."""

    @property
    def total(self) -> Money:
        """Return what all plans cost together."""
        return sum((plan.cost for plan in self.plans.values()), Money(0))

    def to_data(self) -> dict[str, Any]:
        """Return the record as JSON-able data, every table in the order of its keys."""
        return {
            "day": self.day,
            "currency": self.currency,
            "prices": {name: [price.money.cents, price.since] for name, price in sorted(self.prices.items())},
            "plans": {
                slug: {"cost": plan.cost.cents, "buys": dict(sorted(plan.buys.items()))}
                for slug, plan in sorted(self.plans.items())
            },
            "history": {day: money.cents for day, money in sorted(self.history.items())},
            "before": None if self.before is None else self.before.to_data(),
        }

    @classmethod
    def from_data(cls, data: Mapping[str, Any]) -> PriceRecord:
        """Return the record in `data`.

        Raises:
            KeyError, TypeError, ValueError: where it is none.
        """
        return cls(
            day=str(data["day"]),
            currency=str(data["currency"]),
            prices={name: Price(Money(cents), str(since)) for name, (cents, since) in data["prices"].items()},
            plans={
                slug: PlanCost(Money(plan["cost"]), dict(plan["buys"]))
                for slug, plan in data["plans"].items()
            },
            history={day: Money(cents) for day, cents in data["history"].items()},
            before=None if data.get("before") is None else cls.from_data(data["before"]),
        )


def prices_of(shop: Shop) -> dict[str, Money]:
    """Return every price of a shop that is known, by the id of its sale or the key of its ware."""
    prices = {
        sale.id: sale.price
        for stock in shop.stocks.values()
        for sale in stock.sales
        if sale.price is not None and sale.owned is None
    }
    return prices | {key: ware.price for key, ware in shop.wares.items() if ware.price is not None}


def plan_cost(report: Report) -> PlanCost:
    """Return what a reported plan costs and buys."""
    buys = {
        line.sale.id if isinstance(line, StockLine) else line.ware.key: line.quantity
        for line in report.materials.lines
    }
    return PlanCost(report.totals.cost, buys)


def record_prices(shop: Shop, reports: Iterable[Report], last: PriceRecord | None) -> PriceRecord:
    """Return the record of a shop's prices now, from every plan at its usual size."""
    return price_record(shop, {report.fitted.plan.slug: plan_cost(report) for report in reports}, last)


def price_record(shop: Shop, plans: Mapping[str, PlanCost], last: PriceRecord | None) -> PriceRecord:
    """Return the record of a shop's prices now.

    Args:
        plans: what each plan costs at its usual size, by its name.
        last: the record before; a price that is the same keeps the day since which it has been that.
    """
    day = shop.prices_of
    written = {sale.id: sale.touched for stock in shop.stocks.values() for sale in stock.sales}
    written |= {key: ware.touched for key, ware in shop.wares.items()}
    prices = {
        name: Price(money, written[name] or _since(name, money, day, last))
        for name, money in prices_of(shop).items()
    }
    made = PriceRecord(day, shop.currency, prices, plans, last.history if last else {}, _before(prices, last))
    return replace(made, history={**made.history, day: made.total}) if day else made


def _before(prices: Mapping[str, Price], last: PriceRecord | None) -> PriceRecord | None:
    """Return the record before the last change: the last one if a price changed, else what that one has."""
    if last is None:
        return None
    money = {name: price.money for name, price in prices.items()}
    same = money == {name: price.money for name, price in last.prices.items()}
    return last.before if same else replace(last, before=None, history={})


def _since(name: str, money: Money, day: str, last: PriceRecord | None) -> str:
    before = last.prices.get(name) if last else None
    return before.since if before is not None and before.money == money else day
