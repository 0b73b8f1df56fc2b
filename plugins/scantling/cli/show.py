"""`scantling show`: one plan at one size."""

from __future__ import annotations

import json
import sys
from argparse import ArgumentParser, Namespace

from scantling.cli.catalogs import add_catalog_argument, find_catalog, find_plan, plan_of, shop_of
from scantling.cli.command import FAULTY, FINE, Command, misused, say, tell, tell_faults
from scantling.cli.sheet import sheet_of
from scantling.fault import Faulty, did_you_mean
from scantling.formula import Value, read_formula
from scantling.measure import Display
from scantling.plan import Choice, Plan
from scantling.report import plan_data, report_on
from scantling.source import SourcePlan, render_full


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument("plan", metavar="PLAN", help="a plan's name or file")
    add_catalog_argument(parser)
    parser.add_argument(
        "--size", metavar="NAME=VALUE", action="append", default=[], help="width=36in; may be repeated"
    )
    parser.add_argument(
        "--option", metavar="NAME=CHOICE", action="append", default=[], help="trim=bought; may be repeated"
    )
    parser.add_argument("--units", choices=("in", "mm"), default="in", help="inches (usual) or millimetres")
    parser.add_argument(
        "--json", action="store_true", help="print everything as JSON, as plan.json on the site"
    )


def _run(given: Namespace) -> int:
    folder = find_catalog(given.plans)
    path = find_plan(given.plan, folder)
    shop = shop_of(folder)
    source = plan_of(path, shop)
    if source.plan is None or source.fitter is None:
        tell(render_full([*shop.diagnostics, *source.diagnostics], colour=sys.stderr.isatty()))
        return FAULTY
    choice = _choice(source.plan, given)
    try:
        report = report_on(source.fitter, choice)
    except Faulty as faulty:
        tell_faults(source.document.path, (("", fault.message, fault.help) for fault in faulty.faults))
        return FAULTY
    data = plan_data(report, Display(given.units))
    say(json.dumps(data, ensure_ascii=False, indent=2) if given.json else sheet_of(data))
    return FINE


def _choice(plan: Plan, given: Namespace) -> Choice:
    chosen = _pairs(given.size, "--size", list(plan.sizes), "sizes")
    sizes = {name: _value(name, text) for name, text in chosen}
    options = dict(_pairs(given.option, "--option", list(plan.options), "options"))
    return Choice(sizes, options)


def _pairs(written: list[str], flag: str, known: list[str], kind: str) -> list[tuple[str, str]]:
    pairs = []
    for one in written:
        name, sign, text = one.partition("=")
        name = name.strip()
        if not sign or not text.strip():
            raise misused(
                f"{flag} {one} does not say what it should be", f"write {flag} {name or 'width'}=..."
            )
        if name not in known:
            raise misused(f"the plan has no {kind[:-1]} '{name}'", did_you_mean(name, known, kind=kind))
        pairs.append((name, text.strip()))
    return pairs


def _value(name: str, text: str) -> Value:
    try:
        return read_formula(text).evaluate({})
    except Faulty as faulty:
        fault = faulty.faults[0]
        raise misused(f"--size {name}={text}: {fault.message}", fault.help) from None


SHOW = Command(
    "show",
    "show one plan at one size: materials, cut list, cutting plan, cost",
    "scantling show harbour-bench --size width=36in --option trim=bought",
    _add_arguments,
    _run,
)

__all__ = ["SHOW", "SourcePlan"]
