"""The answers to "what can I build from what I have": which plans may do, and what one of them takes more."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from scantling.fault import Fault
from scantling.measure import Money, write_money
from scantling.pages.html import escape, tag
from scantling.pages.live.choice import read_choice
from scantling.pages.live.fit import pairs
from scantling.pages.live.opened import Opened
from scantling.pages.live.told import told
from scantling.report import StockLine, StockNeed, lacking, make_report
from scantling.shop import Owned, read_owned
from scantling.words import counted, say

LONGEST_TEXT = 4_000
MOST_OFFERED = 60


def plans_from_stock(opened: Opened, question: Mapping[str, Any]) -> dict[str, Any]:
    """Return the plans that a reader's stock may be enough for, then those that lack least, best first.

    No plan that needs nothing more is left out: what is missing is never reckoned too high.
    """
    owned, faults = _owned(opened, question)
    catalog = question.get("catalog")
    ranked = sorted(
        (lacking(_needs(size), owned), place, number)
        for place, plan in enumerate(catalog if isinstance(catalog, list) else [])
        for number, size in enumerate(plan["sizes"])
        if _shares(size, owned)
    )
    return {
        "ok": bool(owned) and not faults,
        "faults": told(faults or () if owned else [*faults, _nothing()]),
        "found": [[place, number] for place, number in _best(ranked)],
        "understood": "".join(tag("li", escape(_understood(one, opened, question))) for one in owned),
        "say": counted(
            "{count} plan may do; it is worked out exactly below.",
            "{count} plans may do; each is worked out exactly below.",
            len({place for lack, place, _ in ranked if not lack}),
        ),
    }


def one_from_stock(opened: Opened, question: Mapping[str, Any]) -> dict[str, Any]:
    """Return what one plan at one size takes besides a reader's stock, from its own cutting plan."""
    owned, _ = _owned(opened, question)
    mine = question.get("mine")
    sizes: dict[str, dict[str, str]] = {}
    for one in owned:
        size = one.size if opened.shop.stocks[one.stock].is_sheet else f"{one.length.inches} in"
        before = int(sizes.get(one.stock, {}).get(size, "0"))
        sizes.setdefault(one.stock, {})[size] = str(before + one.count)
    reader = opened.reader({**(mine if isinstance(mine, dict) else {}), "owned": sizes})
    here = opened.plan(str(question.get("slug")))
    choice = read_choice(here.plan, pairs(question.get("chosen")), opened.display).choice()
    report = make_report(opened.fitter(here, reader).fit(choice), reader.shop)
    bought = [line for line in report.materials.stocks if not line.is_owned]
    cost = sum((line.cost for line in bought), Money(0))
    rest = report.totals.cost - cost
    money = write_money(rest, report.shop.currency)
    also = say("hardware and finish {cost}", cost=money) if rest.cents else ""
    return {
        "ok": True,
        "enough": not bought,
        "more": _more(bought, write_money(cost, report.shop.currency)),
        "also": also,
    }


def _owned(opened: Opened, question: Mapping[str, Any]) -> tuple[tuple[Owned, ...], tuple[Fault, ...]]:
    return read_owned(str(question.get("text", ""))[:LONGEST_TEXT], opened.shop)


def _nothing() -> Fault:
    return Fault("nothing-owned", say("nothing is written here yet"), help=say("write it like: 6 2x4 8 ft"))


def _needs(size: Mapping[str, Any]) -> Iterable[StockNeed]:
    return (StockNeed(tuple(stocks), area, longest) for stocks, area, longest in size["needs"])


def _shares(size: Mapping[str, Any], owned: Iterable[Owned]) -> bool:
    """Return whether a plan uses any of what is there."""
    mine = {one.stock for one in owned}
    return any(mine.intersection(stocks) for stocks, _, _ in size["needs"])


def _best(ranked: Iterable[tuple[int, int, int]]) -> list[tuple[int, int]]:
    """Return every size that may do, and of other plans the size that lacks least."""
    found: list[tuple[int, int]] = []
    for lack, place, number in ranked:
        if not lack or all(place != other for other, _ in found):
            found.append((place, number))
    return found[:MOST_OFFERED]


def _understood(one: Owned, opened: Opened, question: Mapping[str, Any]) -> str:
    display = opened.reader(question.get("mine")).display
    size = display.length(one.length)
    if opened.shop.stocks[one.stock].is_sheet:
        size = f"{size} × {display.length(one.width)}"
    return f"{one.count} × {one.stock}, {size}"


def _more(bought: Iterable[StockLine], cost: str) -> str:
    lines = "; ".join(f"{line.quantity} × {line.stock.key}, {line.sale.label}" for line in bought)
    return say("{cost} more: {what}", what=lines, cost=cost) if lines else say("nothing more")
