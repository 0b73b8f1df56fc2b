"""The answer to "what do I buy for all of these": several plans bought and cut as one."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from scantling.cutting import CutBoard, CuttingPlan, Lot, cut_together
from scantling.fault import Fault, Faulty
from scantling.measure import Money, write_money
from scantling.pages.diagrams import diagrams
from scantling.pages.drawings import cut_drawings
from scantling.pages.html import escape, tag
from scantling.pages.live.choice import day_of, read_choice
from scantling.pages.live.fit import data_address, pairs
from scantling.pages.live.opened import Opened, Reader
from scantling.pages.live.told import told
from scantling.pages.look import Look
from scantling.pages.materials import materials
from scantling.pages.notes import changes_since
from scantling.plan import FittedHardware, FittedPlan, describe_choice
from scantling.report import Report, list_materials, make_report, total
from scantling.words import counted, say

MOST_PLANS = 30
MOST_COPIES = 20


@dataclass(frozen=True, slots=True)
class _Wanted:
    """One plan on the list, fitted."""

    report: Report
    copies: int
    label: str
    saved: str
    """The day of the plan that was put on the list; "" if it is not known."""

    @property
    def title(self) -> str:
        """Return the plan's title."""
        return " ".join(self.report.fitted.plan.title.split())

    @property
    def alone(self) -> Money:
        """Return what it costs to buy each copy for itself."""
        return self.report.totals.cost * self.copies


def plan_trip(opened: Opened, question: Mapping[str, Any]) -> dict[str, Any]:
    """Return one materials list and one cutting plan for a list of plans, each at its size and count.

    What cannot be built is left out and told of.
    """
    reader = opened.reader(question.get("mine"))
    faults: list[dict[str, Any]] = []
    listed = list(_wanted(opened, reader, question.get("items"), faults))
    wanted = [one for one in listed if one is not None]
    answer: dict[str, Any] = {
        "ok": True,
        "warnings": [*told(reader.warnings), *faults],
        "items": [_item(one, opened, reader) for one in listed],
    }
    if not wanted:
        return {**answer, "fragments": {}, "say": say("Nothing on the list yet.")}
    look = Look(reader.display, {}, inline=data_address)
    together = _together(wanted, reader)
    return {
        **answer,
        "fragments": {
            "trip-sum": _sum(wanted, together, reader),
            "trip-materials": materials(together, look),
            "trip-diagrams": diagrams(cut_drawings(together, look.display), look),
        },
        "say": say(
            "{pieces}: {cost} together.", pieces=_counted(wanted), cost=_money(together.totals.cost, reader)
        ),
    }


def _wanted(
    opened: Opened, reader: Reader, items: object, faults: list[dict[str, Any]]
) -> Iterator[_Wanted | None]:
    """Yield what is on the list; None in the place of what cannot be built, which is told of."""
    listed = items if isinstance(items, list) else []
    for number, item in enumerate(listed[:MOST_PLANS]):
        try:
            yield _fitted(opened, reader, item if isinstance(item, dict) else {})
        except Faulty as faulty:
            yield None
            faults += [{**fault, "control": f"item {number}"} for fault in told(faulty.faults)]


def _fitted(opened: Opened, reader: Reader, item: Mapping[str, Any]) -> _Wanted:
    here = opened.plan(str(item.get("slug")))
    read = read_choice(here.plan, pairs(item.get("chosen")), opened.display)
    if read.faults:
        raise Faulty(read.faults)
    copies = item.get("count")
    if not isinstance(copies, int) or not 1 <= copies <= MOST_COPIES:
        raise Faulty(
            [
                Fault(
                    "not-a-count",
                    say("how many there are is a whole number from 1 to {most}", most=MOST_COPIES),
                )
            ]
        )
    fitted = opened.fitter(here, reader).fit(read.choice())
    return _Wanted(
        make_report(fitted, reader.shop),
        copies,
        describe_choice(here.plan, read.choice(), reader.display),
        day_of(item.get("revised")),
    )


def _together(wanted: list[_Wanted], reader: Reader) -> Report:
    """Return all of it as one report, as if one plan had all parts and all hardware."""
    lots = [Lot(_lettered(one, number, wanted), one.copies) for number, one in enumerate(wanted, 1)]
    cutting = _cheapest(wanted, lots, reader)
    hardware = tuple(item for one in wanted for item in _hardware(one))
    # the sums are of what is bought; what the pieces weigh is a matter of each plan
    bought_for = replace(lots[0].fitted, parts=(), hardware=hardware)
    bought = list_materials(bought_for, cutting, reader.shop)
    totals = replace(total(bought_for, cutting, bought, reader.shop), weight=None)
    return Report(bought_for, reader.shop, cutting, bought, totals, ())


def _lettered(one: _Wanted, number: int, wanted: list[_Wanted]) -> FittedPlan:
    """Return a plan whose parts carry its number on the list: 2A, where there are several plans."""
    fitted = one.report.fitted
    if len(wanted) == 1:
        return fitted
    parts = [replace(part, part=replace(part.part, letter=f"{number}{part.letter}")) for part in fitted.parts]
    return replace(fitted, parts=tuple(parts))


def _cheapest(wanted: list[_Wanted], lots: list[Lot], reader: Reader) -> CuttingPlan:
    """Return the joint cutting plan, or the plans' own side by side where those are cheaper.

    That can only be where the joint problem is too large to be solved to the end.
    """
    joint = cut_together(lots, reader.shop)
    apart = sum((one.report.cutting.cost * one.copies for one in wanted), Money(0))
    owns = any(sale.owned for stock in reader.shop.stocks.values() for sale in stock.sales)
    if joint.cost <= apart or owns:
        return joint
    boards = [board for lot in lots for board in cut_together([lot], reader.shop).boards]
    return replace(joint, boards=tuple(_renumbered(boards)), cost=apart)


def _renumbered(boards: Iterable[CutBoard]) -> Iterator[CutBoard]:
    count: dict[str, int] = {}
    for board in boards:
        count[board.stock.key] = count.get(board.stock.key, 0) + 1
        yield replace(board, number=count[board.stock.key])


def _hardware(one: _Wanted) -> Iterator[FittedHardware]:
    """Yield a plan's hardware times its copies, each ware saying once which plan it is for."""
    named: set[str] = set()
    for item in one.report.fitted.hardware:
        yield replace(
            item,
            count=item.count * one.copies,
            area=None if item.area is None else item.area * one.copies,
            length=None if item.length is None else item.length * one.copies,
            whose="" if item.ware in named else one.title,
            joined=(),
            is_banding=False,
        )
        named.add(item.ware)


def _item(one: _Wanted | None, opened: Opened, reader: Reader) -> dict[str, str]:
    if one is None:
        return {"label": "", "each": "", "alone": "", "changed": "", "revised": ""}
    each = _money(one.report.totals.cost, reader)
    fitted = one.report.fitted
    look = Look(reader.display, opened.plan(fitted.plan.slug).words)
    return {
        "label": one.label or say("as drawn"),
        "each": each,
        "alone": _money(one.alone, reader),
        "changed": changes_since(fitted, one.saved, look),
        "revised": fitted.plan.last_change,
    }


def _sum(wanted: list[_Wanted], together: Report, reader: Reader) -> str:
    """Return what it costs together, alone, and what that saves."""
    alone = sum((one.alone for one in wanted), Money(0))
    cost = together.totals.cost
    rows = [
        (say("Each for itself"), _money(alone, reader)),
        (say("Bought and cut together"), _money(cost, reader)),
        (say("Saved"), _money(alone - cost, reader)),
    ]
    inner = "".join(
        tag("div", tag("dt", name) + tag("dd", escape(value)), class_="sc-fact") for name, value in rows
    )
    return tag("dl", inner, class_="sc-facts sc-trip-sum")


def _counted(wanted: list[_Wanted]) -> str:
    pieces = sum(one.copies for one in wanted)
    return counted("{count} piece of furniture", "{count} pieces of furniture", pieces)


def _money(money: Money, reader: Reader) -> str:
    return write_money(money, reader.shop.currency)
