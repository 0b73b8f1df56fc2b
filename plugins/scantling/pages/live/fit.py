"""The answer to "show me this plan at my size": every piece of the page, and what to say about it."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from scantling.checks import CHECKS, Subject
from scantling.fault import Fault, Faulty, Severity
from scantling.measure import Display, write_money
from scantling.pages.csv_file import cut_list_csv
from scantling.pages.drawings import Drawing
from scantling.pages.fragments import plan_fragments
from scantling.pages.live.choice import address_of, position_of, positions, read_choice, show, whole_choice
from scantling.pages.live.marks import mark_changes
from scantling.pages.live.opened import Opened, OpenPlan, Reader
from scantling.pages.live.told import told
from scantling.pages.look import Look
from scantling.plan import USUAL, Choice, Plan, describe_choice
from scantling.report import Report, make_report, plan_data

Answer = dict[str, Any]


@dataclass(frozen=True, slots=True)
class _Shown:
    """A plan at a size, with what a careful reader should know."""

    report: Report
    warnings: tuple[Fault, ...]


def fit(opened: Opened, question: Mapping[str, Any]) -> Answer:
    """Return the page of a plan at a reader's choice.

    Raises:
        Faulty: where it does not work; with every reason.
    """
    here = opened.plan(str(question.get("slug")))
    reader = opened.reader(question.get("mine"))
    start = read_choice(here.plan, pairs(question.get("start")), opened.display).choice()
    read = read_choice(here.plan, pairs(question.get("chosen")), reader.display)
    told_of = [*reader.warnings]
    if read.faults and not question.get("forgiving"):
        raise Faulty(read.faults)
    told_of += read.faults
    choice = _with_start(start, read.choice())
    try:
        shown = _show(opened, here, reader, choice)
    except Faulty as faulty:
        if not question.get("forgiving"):
            raise
        told_of += faulty.faults
        choice = start
        shown = _show(opened, here, reader, choice)
    look = Look(reader.display, here.words, up=_up(question), inline=data_address)
    touched = str(question.get("touched", ""))
    return {
        "ok": True,
        **_chosen(here.plan, choice, start, reader.display),
        "fragments": _marked(opened, here, reader, shown.report, look),
        "files": _files(shown.report, reader.display) if question.get("files") else {},
        "say": _say(opened, here, reader, shown.report, choice),
        "warnings": told((*told_of, *shown.warnings), touched),
    }


def pairs(data: object) -> list[tuple[str, str]]:
    """Return names and texts of a choice, from pairs or from a table; what is neither is left out."""
    found = data.items() if isinstance(data, dict) else data if isinstance(data, list) else ()
    return [
        (pair[0], pair[1])
        for pair in found
        if isinstance(pair, list | tuple) and len(pair) == 2 and all(isinstance(text, str) for text in pair)
    ]


def _with_start(start: Choice, chosen: Choice) -> Choice:
    return Choice({**start.sizes, **chosen.sizes}, {**start.options, **chosen.options})


def _up(question: Mapping[str, Any]) -> str:
    up = question.get("up")
    return up if up in {"", "../"} else ""


def data_address(drawing: Drawing) -> str:
    """Return the address of a drawing that carries the drawing itself."""
    return "data:image/svg+xml," + drawing.svg.translate(_IN_ADDRESS)


_IN_ADDRESS = {ord(sign): f"%{ord(sign):02X}" for sign in "%#\"<>?&'`{}|^\n\t"}


def _show(opened: Opened, here: OpenPlan, reader: Reader, choice: Choice) -> _Shown:
    fitter = opened.fitter(here, reader)
    fitted = fitter.fit(choice)
    whole = whole_choice(here.plan, choice)
    subject = Subject(here.plan, reader.shop, whole, fitted)
    found = [fault for check in CHECKS for fault in check.faults(subject)]
    worst = [fault for fault in found if fault.severity is Severity.FAULT]
    if worst:
        raise Faulty(worst)
    doubtful = tuple(fault for fault in found if fault.severity is Severity.WARNING)
    return _Shown(make_report(fitted, reader.shop), doubtful)


def _chosen(plan: Plan, choice: Choice, start: Choice, display: Display) -> Answer:
    whole = whole_choice(plan, choice)
    sizes = {}
    for name, value in whole.sizes.items():
        size = plan.sizes[name]
        low, high = show(size.least, display), show(size.most, display)
        sizes[name] = {
            "text": show(value, display),
            "exact": show(value, Display()),
            "position": position_of(value, positions(size)),
            "range": f"{low} to {high}",
        }
    return {
        "sizes": sizes,
        "options": dict(whole.options),
        "label": describe_choice(plan, whole),
        "address": address_of(plan, choice, start),
    }


def _drawn(opened: Opened, here: OpenPlan, reader: Reader, look: Look) -> tuple[Report, dict[str, str]]:
    """Return the plan as its author drew it, in this reader's units."""
    authors = opened.reader(None)
    display = reader.display
    key = ("drawn", here.plan.slug, display.system, display.denominator, look.up)

    def make() -> tuple[Report, dict[str, str]]:
        report = _show(opened, here, authors, USUAL).report
        return report, plan_fragments(report, look)

    return opened.once(key, make)


def _marked(opened: Opened, here: OpenPlan, reader: Reader, report: Report, look: Look) -> dict[str, str]:
    _, before = _drawn(opened, here, reader, look)
    return {
        name: mark_changes(html, before.get(name, "")) for name, html in plan_fragments(report, look).items()
    }


def _say(opened: Opened, here: OpenPlan, reader: Reader, report: Report, choice: Choice) -> str:
    """Return what a screen reader says, and what stands below the controls."""
    look = Look(reader.display, here.words, inline=data_address)
    before, _ = _drawn(opened, here, reader, look)
    cost, was = (write_money(one.totals.cost, report.shop.currency) for one in (report, before))
    size = describe_choice(here.plan, choice) or "the size as drawn"
    return f"Shown for {size}. Cost {cost}{'' if cost == was else f'; as drawn {was}'}."


def _files(report: Report, display: Display) -> dict[str, str]:
    """Return the files beside the page at this size, by name."""
    data = json.dumps(plan_data(report, display), ensure_ascii=False, indent=1) + "\n"
    return {"plan.json": data, "cut-list.csv": cut_list_csv(report, display)}
