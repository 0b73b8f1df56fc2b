"""`scantling prices`: what the last price change did to every plan; and taking over a store's list."""

from __future__ import annotations

import json
import re
import subprocess
import tempfile
from argparse import ArgumentParser, Namespace
from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path

from scantling.cli.catalogs import add_catalog_argument, find_catalog, plan_names, plan_of, shop_of
from scantling.cli.command import FAULTY, FINE, Command, misused, say, tell
from scantling.fault import Faulty, did_you_mean
from scantling.plan import Fitter
from scantling.report import PriceRecord, PriceReport, Report, compare, price_words, record_prices, report_on
from scantling.shop import PriceList, Shop
from scantling.source import (
    PLAN_FILE,
    SHOP_FILE,
    Diagnostic,
    SourceShop,
    load_shop,
    read_price_csv,
    read_price_file,
    render_full,
    unknown_told,
    with_prices,
    write_price_file,
)


def _add_arguments(parser: ArgumentParser) -> None:
    add_catalog_argument(parser)
    parser.add_argument(
        "--since",
        metavar="FILE|DAY",
        help="compare with an older shop file or record, or with the shop file of a day (by git)",
    )
    parser.add_argument(
        "--import", dest="list_file", metavar="CSV", type=Path, help="take over a store's price list"
    )
    parser.add_argument(
        "--list", dest="list_name", metavar="NAME", help="which of the shop file's price lists it is"
    )
    parser.add_argument("--day", metavar="DAY", help="the day of the imported prices (usually today)")
    parser.add_argument(
        "--keep", action="store_true", help="remember the prices as they are now, as a build does"
    )
    parser.add_argument("--json", action="store_true", help="print the report as JSON")


@dataclass(frozen=True, slots=True)
class _Now:
    """The catalog as it is."""

    folder: Path
    source: SourceShop
    shop: Shop


def _run(given: Namespace) -> int:
    folder = find_catalog(given.plans)
    source = shop_of(folder)
    if source.shop is None:
        return _faulty(source.diagnostics)
    before = _before(given, folder, source.shop)
    if given.list_file is not None:
        source_after = _imported(given, source)
        if source_after is None:
            return FAULTY
        source = source_after
    assert source.shop is not None
    now = _Now(folder, source, source.shop)
    reports, faults = _reports(now)
    if faults:
        return _faulty(tuple(faults))
    after = record_prices(now.shop, reports, before)
    _show(compare(before, after) if before else None, after, given)
    if given.keep:
        write_price_file(folder, after)
    return FINE


def _faulty(diagnostics: tuple[Diagnostic, ...]) -> int:
    say(render_full(diagnostics))
    return FAULTY


def _reports(now: _Now) -> tuple[list[Report], list[Diagnostic]]:
    """Return every plan at its usual size, and the faults of those that have any."""
    reports: list[Report] = []
    faults: list[Diagnostic] = []
    for name in plan_names(now.folder):
        plan = plan_of(now.folder / name / PLAN_FILE, now.source)
        if plan.fitter is None:
            faults += [one for one in plan.diagnostics if one.is_fault]
        else:
            reports.append(report_on(plan.fitter))
    return reports, faults


def _show(report: PriceReport | None, after: PriceRecord, given: Namespace) -> None:
    if given.json:
        say(json.dumps(_data(report, after), ensure_ascii=False, indent=2))
    elif report is None:
        say("There is no record of earlier prices yet; --keep makes one.")
    else:
        say("\n".join(price_words(report)))


def _data(report: PriceReport | None, after: PriceRecord) -> dict[str, object]:
    if report is None:
        return {"since": None, "prices": [], "plans": [], "total": after.total.cents}
    return {
        "since": report.before.day,
        "prices": [
            {
                "name": change.name,
                "before": change.before.cents if change.before else None,
                "after": change.after.cents if change.after else None,
                "slip": change.slip,
            }
            for change in report.prices
        ],
        "plans": [
            {
                "plan": plan.slug,
                "before": plan.before.cost.cents if plan.before else None,
                "after": plan.after.cost.cents if plan.after else None,
                "buys_differently": [list(row) for row in plan.buys_differently()],
            }
            for plan in report.plans
        ],
        "no_longer_sold": {name: list(slugs) for name, slugs in report.no_longer_sold.items()},
        "total": after.total.cents,
    }


def _before(given: Namespace, folder: Path, shop: Shop) -> PriceRecord | None:
    """Return the prices to compare with: those of the last build, or what `--since` names."""
    if given.since is None:
        kept = read_price_file(folder)
        return kept or (_record(folder, shop) if given.list_file is not None else None)
    if re.fullmatch(r"\d{4}-\d{2}-\d{2}", given.since):
        return _record(folder, _shop_of_day(folder, given.since))
    path = Path(given.since)
    if not path.is_file():
        raise misused(
            f"there is no file {path}", "name an older shop file, a price record, or a day like 2026-09-01"
        )
    if path.suffix == ".json":
        try:
            return PriceRecord.from_data(json.loads(path.read_text("utf-8")))
        except (ValueError, KeyError, TypeError, AttributeError) as error:
            raise misused(
                f"{path} is no record of prices", "name the file that a build keeps, prices.json"
            ) from error
    return _record(folder, _old_shop(path))


def _old_shop(path: Path) -> Shop:
    source = load_shop(path, root=Path())
    if source.shop is None:
        raise misused(f"{path} is no shop file that can be read\n{render_full(source.diagnostics)}")
    return source.shop


def _shop_of_day(folder: Path, day: str) -> Shop:
    """Return the shop file as it stood at the end of a day, from the catalog's git history."""
    try:
        commit = _git(folder, "rev-list", "-1", f"--before={day}T23:59:59", "HEAD", "--", SHOP_FILE)
        text = _git(folder, "show", f"{commit}:./{SHOP_FILE}") if commit else ""
    except (OSError, subprocess.CalledProcessError) as error:
        raise misused(
            "the history of this catalog cannot be read", "name an older shop file instead of a day"
        ) from error
    if not text:
        raise misused(f"the catalog's history has no shop file of {day}", "name a later day")
    with tempfile.TemporaryDirectory() as aside:
        path = Path(aside) / SHOP_FILE
        path.write_text(text, "utf-8")
        return _old_shop(path)


def _git(folder: Path, *words: str) -> str:
    made = subprocess.run(["git", *words], cwd=folder, check=True, capture_output=True, text=True)  # noqa: S603, S607
    return made.stdout.rstrip("\n") if words[0] == "rev-list" else made.stdout


def _record(folder: Path, shop: Shop) -> PriceRecord:
    """Return what an older shop's prices made of today's plans; plans that it cannot serve are left out."""
    reports = []
    now = shop_of(folder)
    for name in plan_names(folder):
        plan = plan_of(folder / name / PLAN_FILE, now)
        if plan.plan is not None:
            try:
                reports.append(report_on(Fitter(plan.plan, shop)))
            except Faulty:
                continue
    return record_prices(shop, reports, None)


def _imported(given: Namespace, source: SourceShop) -> SourceShop | None:
    """Take a store's prices over and return the shop file read again; None after telling of faults."""
    assert source.shop is not None
    how = _price_list(given.list_name, source.shop)
    day = given.day or datetime.now(tz=UTC).date().isoformat()
    try:
        date.fromisoformat(day)
    except ValueError as error:
        raise misused(f"'{day}' is no day", "write it like 2026-11-02") from error
    try:
        data = given.list_file.read_bytes()
    except OSError as error:
        raise misused(f"{given.list_file} cannot be read") from error
    listed = read_price_csv(given.list_file.as_posix(), data, how, source.shop.currency)
    for line in unknown_told(listed, given.list_file.name):
        tell(line)
    if listed.diagnostics:
        _faulty(listed.diagnostics)
        tell("nothing was changed")
        return None
    raw = source.path.read_bytes().decode("utf-8")
    text = with_prices(source, listed.prices, day)
    aside = source.path.with_name(f".{source.path.name}.being-written")
    aside.write_text(text, "utf-8", newline="\r\n" if "\r\n" in raw else "\n")
    again = load_shop(aside, root=Path())
    if again.shop is None:
        aside.unlink()
        _faulty(again.diagnostics)
        tell("nothing was changed")
        return None
    aside.replace(source.path)
    tell(f"{len(listed.prices)} prices of {day} are in {source.document.path} now")
    return load_shop(source.path, root=Path())


def _price_list(name: str | None, shop: Shop) -> PriceList:
    lists = shop.price_lists
    if not lists:
        raise misused("the shop file does not say how price lists are read", "add 'price lists:' to it")
    if name is None:
        if len(lists) > 1:
            raise misused(
                "the shop file knows several price lists", "name one: --list " + " or --list ".join(lists)
            )
        return next(iter(lists.values()))
    if name not in lists:
        raise misused(
            f"the shop file knows no price list '{name}'", did_you_mean(name, lists, kind="price lists")
        )
    return lists[name]


PRICES = Command(
    "prices",
    "tell what the last price change did to every plan, or take over a store's list",
    "scantling prices --import yard.csv --day 2026-11-02",
    _add_arguments,
    _run,
    "Compares the prices of the shop file with those of the last build (kept in plans/prices.json).",
)
"""The command."""
