"""How stores' price lists are read: which article of theirs is which of ours."""

from __future__ import annotations

from collections.abc import Mapping

from scantling.fault import Fault, did_you_mean
from scantling.shop.forms import Entry
from scantling.shop.model import PriceList, Stock, Ware


def priced_names(stocks: Mapping[str, Stock], wares: Mapping[str, Ware]) -> dict[str, str]:
    """Return what a list may give the price of: names as an author writes them, and the ids they stand for.

    Hardwood has one price, that of a board foot; so it is named by its own name.
    """
    names: dict[str, str] = {}
    for stock in stocks.values():
        if stock.kind == "hardwood":
            names[stock.key] = stock.key
        else:
            names |= {f"{stock.key}, {sale.label}": sale.id for sale in stock.sales if sale.owned is None}
    return names | {key: key for key in wares}


def read_price_list(
    entry: Entry, stocks: Mapping[str, Stock], wares: Mapping[str, Ware], faults: list[Fault]
) -> PriceList:
    """Return the list that a record of the shop file describes, adding to `faults`."""
    names = priced_names(stocks, wares)
    articles: dict[str, str] = {}
    given: dict[str, str] = {}
    for theirs, ours in entry.get("articles").items():
        place = entry.place.at("articles", theirs)
        if ours not in names:
            help_line = did_you_mean(ours, names, kind="names")
            faults.append(Fault("unknown-name", f"the shop file sells no '{ours}'", place, help_line))
            continue
        if ours in given:
            message = f"'{ours}' takes its price from two articles"
            faults.append(
                Fault("named-twice", message, place, f"'{given[ours]}' gives it too; leave one out")
            )
        given[ours] = theirs
        articles[theirs] = names[ours]
    try:
        "".encode(entry.get("encoding"))
    except LookupError:
        message = f"no encoding is called '{entry.get('encoding')}'"
        faults.append(Fault("unknown-encoding", message, entry.place.at("encoding"), "write utf-8 or cp1252"))
    return PriceList(
        item=entry.get("item"),
        price=entry.get("price"),
        articles=articles,
        separator=entry.get("separator"),
        decimal=entry.get("decimal"),
        encoding=entry.get("encoding"),
        place=entry.place,
    )
