"""Writing new prices into a shop file: only the letters of those prices and of the day change."""

from __future__ import annotations

from collections.abc import Mapping

from scantling.fault import Place
from scantling.measure import Money
from scantling.shop import Shop
from scantling.source.loaded import SourceShop


def with_prices(source: SourceShop, prices: Mapping[str, Money], day: str) -> str:
    """Return the text of a shop file with some prices changed and its day set.

    Comments, order and spelling of all else stay as they are.

    Args:
        source: a shop file that was read without a fault.
        prices: by the id of a sale or the key of an article; hardwood by its key, for a board foot.
        day: the new day of the prices, 2026-11-02.
    """
    assert source.shop is not None
    changes = [
        (*_where(source, _place(source.shop, name)), _written(money)) for name, money in prices.items()
    ]
    if ("prices of",) in source.spans.by_path:
        changes.append((*_where(source, Place(("prices of",))), day))
    text = source.document.text
    for start, end, new in sorted(changes, reverse=True):
        text = text[:start] + new + text[end:]
    return text if ("prices of",) in source.spans.by_path else f"prices of: {day}\n{text}"


def _place(shop: Shop, name: str) -> Place:
    if name in shop.wares:
        return shop.wares[name].place.at("price")
    if name in shop.stocks:
        return shop.stocks[name].place.at("per board foot")
    sales = (sale for stock in shop.stocks.values() for sale in stock.sales)
    return next(sale.place for sale in sales if sale.id == name)


def _where(source: SourceShop, place: Place) -> tuple[int, int]:
    """Return where a price stands, also one that is written with the day since which it holds."""
    inner = place.at("price")
    return source.spans.resolve(inner if inner.path in source.spans.by_path else place)


def _written(money: Money) -> str:
    return f"{money.cents // 100}.{money.cents % 100:02d}"
