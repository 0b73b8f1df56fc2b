"""`scantling check`: everything that is wrong, with file, line and column."""

from __future__ import annotations

import json
import os
import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Iterator
from dataclasses import replace

from scantling.checks import CHECKS, examine_offered, sweep
from scantling.cli.catalogs import add_catalog_argument, find_catalog, find_plan, plan_names, plan_of, shop_of
from scantling.cli.command import Command, say, tell
from scantling.fault import Fault, Faulty, Place
from scantling.plan import USUAL, Fitter, offered_choices
from scantling.report import report_on
from scantling.source import (
    PLAN_FILE,
    Diagnostic,
    SourcePlan,
    check_together,
    claim_of,
    exit_status,
    from_fault,
    render_concise,
    render_full,
    render_github,
    sort_diagnostics,
    summarize,
    to_data,
)


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument(
        "plans_named", metavar="PLAN", nargs="*", help="a plan's name or file; without one, all plans"
    )
    add_catalog_argument(parser)
    parser.add_argument("--sweep", action="store_true", help="try every plan over its whole range of sizes")
    parser.add_argument("--strict", action="store_true", help="exit 1 on a warning too")
    parser.add_argument("--json", action="store_true", help="print the findings as JSON")
    parser.add_argument(
        "--format",
        choices=("full", "concise", "github"),
        default="full",
        help="full: with excerpt and caret (usual); concise: a line each; github: annotations",
    )


def _run(given: Namespace) -> int:
    folder = find_catalog(given.plans)
    named = [find_plan(name, folder) for name in given.plans_named]
    paths = named or [folder / name / PLAN_FILE for name in plan_names(folder)]
    shop = shop_of(folder)
    found: list[Diagnostic] = list(shop.diagnostics)
    plans = [plan_of(path, shop) for path in paths]
    found += check_together(map(claim_of, plans))
    for plan in plans:
        found += plan.diagnostics
        found += _examined(plan, over_all_sizes=given.sweep)
    diagnostics = sort_diagnostics(found)
    _show(diagnostics, given)
    if not given.json:
        count = f"{len(paths)} plan{'' if len(paths) == 1 else 's'}"
        tell(f"{count} and the shop file: {summarize(diagnostics) or 'nothing is wrong'}")
    return exit_status(diagnostics, strict=given.strict)


def _show(diagnostics: tuple[Diagnostic, ...], given: Namespace) -> None:
    if given.json:
        say(json.dumps({"findings": [to_data(one) for one in diagnostics]}, ensure_ascii=False, indent=2))
    elif not diagnostics:
        return
    elif given.format == "concise":
        say(render_concise(diagnostics))
    elif given.format == "github":
        say(render_github(diagnostics))
    else:
        say(render_full(diagnostics, colour=sys.stdout.isatty() and not os.environ.get("NO_COLOR")))


def _examined(source: SourcePlan, *, over_all_sizes: bool) -> list[Diagnostic]:
    """Return what the checks find in a plan that can be fitted, at its usual size or over its whole range."""
    if source.fitter is None:
        return []
    ask = sweep if over_all_sizes else examine_offered
    faults = [*_cut(source.fitter), *ask(source.fitter, CHECKS)]
    known = {(one.code, one.spot) for one in source.diagnostics}
    found = [from_fault(fault, source.document, source.spans) for fault in faults]
    return [one for one in found if (one.code, one.spot) not in known]


def _cut(fitter: Fitter) -> Iterator[Fault]:
    """Yield what keeps the parts from being cut, at the usual size and at every offered one."""
    seen: set[tuple[str, Place]] = set()
    offered = [("", USUAL), *((f" at {one.label}", one.choice) for one in offered_choices(fitter.plan))]
    for size, choice in offered:
        try:
            report_on(fitter, choice)
        except Faulty as faulty:
            for fault in faulty.faults:
                if (fault.code, fault.place) not in seen:
                    seen.add((fault.code, fault.place))
                    yield replace(fault, message=f"{fault.message}{size}")


CHECK = Command(
    "check",
    "find everything that is wrong with plans and shop file",
    "scantling check harbour-bench --format concise",
    _add_arguments,
    _run,
)
