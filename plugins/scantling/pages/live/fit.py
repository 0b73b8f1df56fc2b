"""The answer to "show me this plan at my size": every piece of the page, and what to say about it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from scantling.checks import CHECKS, Subject
from scantling.fault import Fault, Faulty, Severity
from scantling.measure import Display, hold, telling_in, write_money
from scantling.pages.cost_chart import cost_drawing, cost_words
from scantling.pages.csv_file import cut_list_csv
from scantling.pages.data_file import DATA_FILE, data_file
from scantling.pages.drawings import Drawing, Drawings
from scantling.pages.fragments import FRAGMENTS, plan_fragments
from scantling.pages.live.choice import (
    address_of,
    day_of,
    position_of,
    positions,
    read_choice,
    show,
    whole_choice,
)
from scantling.pages.live.marks import mark_changes
from scantling.pages.live.opened import Opened, OpenPlan, Reader
from scantling.pages.live.told import told
from scantling.pages.look import Look
from scantling.pages.model_file import model_text
from scantling.pages.notes import changes_since
from scantling.pages.words import words_from
from scantling.plan import USUAL, Choice, Plan, describe_choice
from scantling.report import Report, cost_by_size, main_size, make_report
from scantling.words import say

Answer = dict[str, Any]


@dataclass(frozen=True, slots=True)
class _Shown:
    """A plan at a size, with what a careful reader should know."""

    report: Report
    found: tuple[Fault, ...]
    """What the checks find, silenced findings left out."""


PICTURES = ("picture", "diagrams", "details", "views", "steps")
"""Pieces with drawings, which take longest: a page asks for them when the numbers stand already."""
WORDS = tuple(name for name in FRAGMENTS if name not in PICTURES)


def fit(opened: Opened, question: Mapping[str, Any]) -> Answer:
    """Return a plan at a reader's choice: pieces with words, pieces with pictures, or all; or the 3-D file.

    Raises:
        Faulty: where it does not work; with every reason.
    """
    here = opened.plan(str(question.get("slug")))
    reader = opened.reader(question.get("mine"))
    start = read_choice(here.plan, pairs(question.get("start")), opened.display).choice()
    read = read_choice(here.plan, pairs(question.get("chosen")), reader.display)
    if read.faults and not question.get("forgiving"):
        raise Faulty(read.faults)
    told_of = [*reader.warnings, *read.faults]
    choice = _with_start(start, read.choice())
    try:
        report, doubtful = _passing(opened, here, reader, choice)
    except Faulty as faulty:
        if not question.get("forgiving"):
            raise
        told_of += faulty.faults
        choice = start
        report, doubtful = _passing(opened, here, reader, choice)
    up = _up(question)
    look = Look(reader.display, words_from(here.words, up), up=up, inline=data_address)
    part = str(question.get("part"))
    names = {"words": WORDS, "pictures": PICTURES, "model": (), "cost": ()}.get(part, FRAGMENTS)
    return {
        "ok": True,
        **_chosen(here.plan, choice, start, reader.display),
        "fragments": _cost(opened, here, reader, choice, report, look)
        if part == "cost"
        else _marked(opened, here, report, look, names),
        "model": model_text(report.fitted, reader.display) if part == "model" else "",
        "files": _files(report, reader.display) if question.get("files") else {},
        "changed": changes_since(report.fitted, day_of(question.get("asOf")), look),
        "say": _say(opened, here, reader, report, choice),
        "warnings": told((*told_of, *doubtful), str(question.get("touched", ""))),
    }


CHARTED = 16
"""Sizes that a chart made in the browser tries at most."""


def _cost(
    opened: Opened, here: OpenPlan, reader: Reader, choice: Choice, report: Report, look: Look
) -> dict[str, str]:
    """Return what each inch costs at a reader's choice, with a reader's prices."""
    fitter = opened.fitter(here, reader)
    size = main_size(fitter)
    if size is None:
        return {}
    chart = cost_by_size(fitter, size, choice, most=CHARTED)
    return {"cost": cost_words(chart, report, cost_drawing(chart, report, reader.display), look)}


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
    return up if up in ("", "../") else ""


def data_address(drawing: Drawing) -> str:
    """Return the address of a drawing that carries the drawing itself."""
    svg = drawing.svg
    for sign in _NOT_IN_ADDRESS:
        svg = svg.replace(sign, f"%{ord(sign):02X}")
    return "data:image/svg+xml," + svg


_NOT_IN_ADDRESS = "%#\"<>?&'`{}|^\n\t"


_ASKED = tuple(
    check
    for check in CHECKS
    if check.every_size
    and check.group not in {"Words", "Safety"}
    and check.name not in {"tools-needed", "named-at-hand"}
)
"""Checks that can answer otherwise at another size, and are of the furniture, not of its words."""


def _show(opened: Opened, here: OpenPlan, reader: Reader, choice: Choice) -> _Shown:
    whole = whole_choice(here.plan, choice)
    key = ("shown", here.plan.slug, reader.key, *whole.sizes.values(), *whole.options.values())
    return opened.once(key, lambda: _shown(opened, here, reader, choice, whole))


def _shown(opened: Opened, here: OpenPlan, reader: Reader, choice: Choice, whole: Choice) -> _Shown:
    try:
        fitted = opened.fitter(here, reader).fit(choice)
        report = make_report(fitted, reader.shop)
    except Faulty as faulty:
        raise Faulty(_for_reader(fault) for fault in faulty.faults) from faulty
    memo: dict[str, object] = opened.once(("checks", here.plan.slug, reader.key), dict)
    subject = Subject(here.plan, reader.shop, whole, fitted, memo=memo)
    with telling_in(reader.display.system):
        found = [_for_reader(fault) for check in _ASKED for fault in check.faults(subject)]
    return _Shown(report, tuple(fault for fault in found if fault.severity is not Severity.HINT))


def _for_reader(fault: Fault) -> Fault:
    """Return what the engine says to an author as it is said to a reader, who cannot mend the plan."""
    return replace(fault, help=say("choose another size or option"))


def _passing(opened: Opened, here: OpenPlan, reader: Reader, choice: Choice) -> tuple[Report, list[Fault]]:
    """Return the report on a plan, and what is doubtful at this size and was not at the author's.

    Raises:
        Faulty: where it does not work, or where a check finds a fault that was not there either.
    """
    shown = _show(opened, here, reader, choice)
    drawn = _show(opened, here, opened.reader(None), USUAL)
    known = {(fault.code, fault.place) for fault in drawn.found}
    new = [fault for fault in shown.found if (fault.code, fault.place) not in known]
    worst = [fault for fault in new if fault.severity is Severity.FAULT]
    if worst:
        raise Faulty(worst)
    return shown.report, new


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
            "range": hold(say("{least} to {most}", least=low, most=high)),
        }
    return {
        "sizes": sizes,
        "options": dict(whole.options),
        "label": describe_choice(plan, whole, display),
        "address": address_of(plan, choice, start),
    }


class _Undrawn(Drawings):
    """No drawings: what is marked is words."""

    head = None
    views = cuts = details = ()
    steps: Mapping[int, Drawing] = {}


def _drawn(opened: Opened, here: OpenPlan, look: Look) -> tuple[Report, dict[str, str]]:
    """Return the plan as its author drew it, in this reader's units, without pictures."""
    display = look.display

    def make() -> tuple[Report, dict[str, str]]:
        report = _show(opened, here, opened.reader(None), USUAL).report
        return report, plan_fragments(report, look, drawings=_Undrawn(report, display))

    return opened.once(("drawn", here.plan.slug, display.system, display.denominator), make)


def _marked(
    opened: Opened, here: OpenPlan, report: Report, look: Look, names: tuple[str, ...]
) -> dict[str, str]:
    _, before = _drawn(opened, here, look)
    made = plan_fragments(report, look, names=names)
    return {
        name: html if name in _UNMARKED else mark_changes(html, before[name]) for name, html in made.items()
    }


_UNMARKED = ("print", "picture", "diagrams", "details", "views")


def _say(opened: Opened, here: OpenPlan, reader: Reader, report: Report, choice: Choice) -> str:
    """Return what a screen reader says, and what stands below the controls."""
    before, _ = _drawn(opened, here, Look(reader.display, here.words))
    cost, was = (write_money(one.totals.cost, report.shop.currency) for one in (report, before))
    size = describe_choice(here.plan, choice, reader.display) or say("the size as drawn")
    if cost == was:
        return say("Shown for {size}. Cost {cost}.", size=size, cost=cost)
    return say("Shown for {size}. Cost {cost}; as drawn {was}.", size=size, cost=cost, was=was)


def _files(report: Report, display: Display) -> dict[str, str]:
    """Return the files beside the page at this size, by name."""
    return {DATA_FILE: data_file(report, display), "cut-list.csv": cut_list_csv(report, display)}
