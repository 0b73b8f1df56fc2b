"""The page with every price, its day, and what the last change did."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from scantling.measure import write_money
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.front_matter import in_front_matter
from scantling.pages.held import held
from scantling.pages.html import escape, items, tag
from scantling.pages.plan_names import PlanNames
from scantling.pages.price_plot import price_plot
from scantling.report import SHELVES, PriceRecord, PriceReport, compare, price_words
from scantling.shop import Shop
from scantling.words import mark, say

PATH = "prices/index.md"
PLOT = "cost-of-all-plans.svg"
LATEST = 24
"""Days that the plot shows at most."""
NO_TITLES: Mapping[str, str] = MappingProxyType({})


def prices_page(
    shop: Shop, record: PriceRecord, choices: Choices, titles: Mapping[str, str] = NO_TITLES
) -> Finished:
    """Return the page, and the plot beside it once there are two days to show.

    Args:
        titles: the plans' titles, by folder.
    """
    names = PlanNames(titles, choices.folder)
    report = compare(record.before, record) if record.before is not None else None
    history = dict(list(record.history.items())[-LATEST:])
    files = []
    blocks = [f"# {say('Prices')}", _intro(record)]
    if len(history) > 1:
        files.append(SideFile(f"prices/{PLOT}", price_plot(history, record.currency)))
        blocks += [f"## {say('What all plans cost together')}", _plot(list(history))]
    if report is not None:
        changed = say("What changed since {day}", day=report.before.day or say("before"))
        blocks += [f"## {held(changed)}", _unsearched(_changes(report, names))]
    blocks += [f"## {say('What each plan costs')}", _unsearched(_plans(record, names))]
    blocks += [f"## {say('The list')}", _unsearched(_lists(shop, record))]
    meta = {
        "title": say("Prices"),
        "description": in_front_matter(
            say("What wood and hardware cost on {day}, and what that does to each plan.", day=record.day)
        ),
    }
    return Finished((Page(PATH, "\n\n".join(blocks) + "\n", meta, in_nav=True),), tuple(files))


def _intro(record: PriceRecord) -> str:
    if record.day:
        here = say("Every plan here is reckoned with these prices of {day}.", day=record.day)
    else:
        here = say("Every plan here is reckoned with these prices.")
    return held(here) + say(" Yours will differ: a plan's page lets you put them in.")


def _unsearched(html: str) -> str:
    return tag("section", html, data_search_exclude="true")


def _plot(days: list[str]) -> str:
    first, last = days[0], days[-1]
    alt = say("What all plans cost together, from {first} to {last}.", first=first, last=last)
    picture = tag("img", src=PLOT, alt=alt, loading="lazy", decoding="async")
    return _unsearched(tag("figure", picture, class_="sc-paper"))


def _changes(report: PriceReport, names: PlanNames) -> str:
    first, *lines = price_words(report, names.held)
    told: list[str] = []
    for line in lines:
        if line.startswith(_UNDER) and told:
            told[-1] += f"; {line.strip()}"
        else:
            told.append(line.strip())
    return held(tag("p", escape(first)) + items(names.filled(line) for line in told))


_UNDER = " " * 4
"""Before what belongs to the line above it."""


def _plans(record: PriceRecord, names: PlanNames) -> str:
    before = record.before.plans if record.before else {}
    rows = []
    for slug, plan in record.plans.items():
        old = before.get(slug)
        cells = [
            tag("th", names.link(slug), scope="row"),
            tag("td", escape(write_money(old.cost, record.currency)) if old else "", class_="sc-money"),
            tag("td", escape(write_money(plan.cost, record.currency)), class_="sc-money"),
        ]
        rows.append(tag("tr", "".join(cells)))
    return _table((mark("Plan"), mark("Before"), mark("Now")), rows)


def _lists(shop: Shop, record: PriceRecord) -> str:
    bodies = []
    for shelf, title in SHELVES.items():
        rows = list(_shelf(shop, record, shelf))
        if rows:
            bodies.append(
                tag("h3", escape(say(title))) + _table((mark("Article"), mark("Price"), mark("Since")), rows)
            )
    return "".join(bodies)


def _shelf(shop: Shop, record: PriceRecord, shelf: str) -> Iterator[str]:
    for stock in shop.stocks.values():
        if stock.kind == shelf:
            for sale in stock.sales:
                if sale.id in record.prices:
                    yield _row(f"{stock.key}, {sale.label}", sale.id, record)
    for ware in shop.wares.values():
        if ware.shelf == shelf and ware.key in record.prices:
            yield _row(ware.key + (f", {ware.sold}" if ware.sold != "each" else ""), ware.key, record)


def _row(words: str, name: str, record: PriceRecord) -> str:
    price = record.prices[name]
    cells = [
        tag("th", held(escape(words)), scope="row"),
        tag("td", escape(write_money(price.money, record.currency)), class_="sc-money"),
        tag("td", held(escape(price.since))),
    ]
    return tag("tr", "".join(cells))


def _table(heads: tuple[str, ...], rows: list[str]) -> str:
    classes = [None, "sc-money", None if heads[2] == "Since" else "sc-money"]
    head = "".join(
        tag("th", say(word), scope="col", class_=kind) for word, kind in zip(heads, classes, strict=True)
    )
    return tag("table", tag("thead", tag("tr", head)) + tag("tbody", "".join(rows)), class_="sc-table")
