"""What a plan is found by in the catalog: taken from the engine, so that a page's script only compares."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from scantling.measure import Display, Length
from scantling.pages.facts import all_tools
from scantling.pages.live.choice import show
from scantling.pages.plan_page import AtSize
from scantling.report import SHELVES, stock_needs
from scantling.words import say

THOUSAND = 1000
"""Widths stand in the page as thousandths of an inch, rounded up: what fits by them fits."""


@dataclass(frozen=True, slots=True)
class SizeNeeds:
    """What a plan takes of stock at one size, at the least."""

    slug: str
    """Of the size's page; "" for the usual size."""
    label: str
    chosen: tuple[tuple[str, str], ...]
    """The choice as names and texts."""
    needs: tuple[tuple[tuple[str, ...], int, int], ...]
    """Of which stocks, how much area and how long a piece, in thousandths of an inch."""


@dataclass(frozen=True, slots=True)
class Finding:
    """What a plan is found by in the catalog."""

    slug: str
    title: str
    room: str
    skill: str
    time: str
    """The build time up to its first comma: "a weekend"."""
    tags: tuple[str, ...]
    tools: tuple[tuple[str, ...], ...]
    """Each tool that it takes, as the tools of which any one will do."""
    materials: tuple[str, ...]
    """Shelves of the shop from which its stock comes."""
    cents: int
    """What it costs at its usual size."""
    width: int | None
    """Of the whole piece at its usual size, in thousandths of an inch; None where it is not known."""
    least_width: int | None
    """The narrowest that it can be made."""
    sheets: int
    revised: str
    boards: int = 0
    """Boards, pickets and trim to buy at the usual size."""
    sizes: tuple[SizeNeeds, ...] = ()
    """What it takes at each offered size, the usual one first."""


def finding_of(slug: str, sizes: Sequence[AtSize], display: Display) -> Finding:
    """Return what a plan is found by.

    Args:
        sizes: the plan at each offered size, the usual one first.
        display: how the sizes' names show lengths.
    """
    report = sizes[0].report
    plan = report.fitted.plan
    shelves = {line.shelf for line in report.materials.stocks}
    return Finding(
        slug=slug,
        title=" ".join(plan.title.split()),
        room=_line(plan.room),
        skill=_line(plan.skill),
        time=_line(plan.build_time.partition(",")[0]),
        tags=tuple(dict.fromkeys(_line(word) for word in plan.tags)),
        tools=tuple(either(tool) for tool in all_tools(report)),
        materials=tuple(say(title) for shelf, title in SHELVES.items() if shelf in shelves),
        cents=report.totals.cost.cents,
        width=_thousandths(report.fitted.overall().get("width")),
        least_width=_thousandths(_least_width(sizes)),
        sheets=report.totals.sheets,
        revised=plan.revised,
        boards=sum(line.quantity for line in report.materials.stocks if not line.stock.is_sheet),
        sizes=tuple(_size_needs(at, display) for at in sizes),
    )


def _size_needs(at: AtSize, display: Display) -> SizeNeeds:
    choice = at.offered.choice
    chosen = {name: show(value, Display()) for name, value in choice.sizes.items()} | dict(choice.options)
    needs = tuple((need.stocks, need.area, need.longest) for need in stock_needs(at.report.fitted))
    return SizeNeeds(at.offered.slug, at.offered.told(display), tuple(chosen.items()), needs)


def _line(words: str) -> str:
    return " ".join(words.split())


def either(tool: str) -> tuple[str, ...]:
    """Return the tools of which any one will do: "brad nailer or hammer" names two."""
    names = (_line(name) for name in re.split(r"\s+or\s+", tool))
    return tuple(dict.fromkeys(name for name in names if name))


def _least_width(sizes: Sequence[AtSize]) -> Length | None:
    """Return the least width that the plan allows, or the least of those that it offers ready."""
    plan = sizes[0].report.fitted.plan
    size = plan.sizes.get(plan.overall.get("width", "width"))
    ready = [width for at in sizes if (width := at.report.fitted.overall().get("width")) is not None]
    if size is not None and isinstance(size.least, Length):
        ready.append(size.least)
    return min(ready, default=None)


def _thousandths(length: Length | None) -> int | None:
    return None if length is None else -int(-length.inches * THOUSAND // 1)


_NUMBERS: Mapping[str, int] = {
    "half": 0, "a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6,
}  # fmt: skip
_UNITS = ("minute", "hour", "evening", "morning", "afternoon", "day", "weekend", "week", "month")


def time_order(words: str) -> tuple[int, int, str]:
    """Return a key that puts build times in order as far as their words tell, the untold last."""
    found = [word.rstrip("s") for word in words.casefold().split()]
    units = [_UNITS.index(word) for word in found if word in _UNITS]
    count = [_NUMBERS[word] for word in found if word in _NUMBERS]
    return (units[0] if units else len(_UNITS), count[0] if count else len(_NUMBERS), words)
