"""Everything that is made of one plan, as work that any process can do: it takes bytes and gives bytes."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.kept_drafting import KeptDrafting, without_prices
from scantling.build.kept_photos import KeptSizing
from scantling.build.lean import lean
from scantling.build.papers import print_plan
from scantling.build.remembered import DiskMemory
from scantling.pages import Choices, Drafting, Finished, PlanMade, around, plan_pages, prose_links
from scantling.report import PlanCost, plan_cost
from scantling.source import PLAN_FILE, SHOP_FILE, SourcePlan, SourceShop, claim_of, load_plan, load_shop
from scantling.words import ENGLISH, language_of, speaking


@dataclass(frozen=True, slots=True)
class Job:
    """One plan to be finished."""

    slug: str
    plan: bytes
    shop: bytes
    pictures: Mapping[str, bytes]
    """Picture files beside the plan, by name."""
    choices: Choices
    folder: str
    """The folder of plans as shown to the author: `plans`."""
    with_paper: bool
    cache: Path | None
    """Where the solver's answers and PDFs are remembered; None on another machine."""


@dataclass(frozen=True, slots=True)
class Made:
    """What became of one plan."""

    plan: PlanMade
    cost: PlanCost | None
    """At the usual size; None for a plan with faults."""
    wares: tuple[str, ...]
    """Articles whose price the plan depends on."""


def finish(job: Job) -> Made:
    """Return everything that is made of one plan."""
    language = language_of(job.choices.language)
    with tempfile.TemporaryDirectory(prefix="scantling-") as aside:
        with speaking(ENGLISH):  # as every message for authors
            plan = _read(job, Path(aside))
        with speaking(language):
            return _finish(job, plan, Cache(job.cache))


def _read(job: Job, aside: Path) -> SourcePlan:
    """Write the job's files aside and read them as the author's, with the author's paths in messages."""
    home = aside / job.folder / job.slug
    home.mkdir(parents=True)
    (home / PLAN_FILE).write_bytes(job.plan)
    for name, content in job.pictures.items():
        (home / name).write_bytes(content)
    shop = _shop(job.folder, job.shop)
    return load_plan(home / PLAN_FILE, shop.shop, root=aside)


@lru_cache(maxsize=4)
def _shop(folder: str, content: bytes) -> SourceShop:
    """Return the shop file, read once a process."""
    with tempfile.TemporaryDirectory(prefix="scantling-") as aside:
        path = Path(aside) / folder / SHOP_FILE
        path.parent.mkdir(parents=True)
        path.write_bytes(content)
        return load_shop(path, root=Path(aside))


@lru_cache(maxsize=4)
def _shop_without_prices(folder: str, content: bytes) -> str:
    shop = _shop(folder, content).shop
    return "" if shop is None else without_prices(shop)


def _finish(job: Job, plan: SourcePlan, cache: Cache) -> Made:
    if plan.fitter is None:
        broken = PlanMade(job.slug, None, Finished((), ()), plan.diagnostics, claim_of(plan))
        return Made(broken, None, ())
    pages = plan_pages(plan, job.choices, memory=DiskMemory(cache), drafting=_drafting(job, cache))
    beside = around(plan, pages, job.choices, KeptSizing(cache))
    if job.with_paper:
        papers = tuple(print_plan(pages, plan, job.choices, job.pictures, cache))
        beside = replace(beside, files=(*beside.files, *papers))
    reports = [size.report for size in pages.sizes]
    wares = {line.ware.key for report in reports for line in report.materials.wares}
    links = tuple(prose_links(plan, job.choices))
    made = PlanMade(job.slug, replace(pages, sizes=()), beside, plan.diagnostics, claim_of(plan), links)
    done = Made(made, plan_cost(reports[0]) if reports else None, tuple(sorted(wares)))
    return laid_aside(done, cache)


def _drafting(job: Job, cache: Cache) -> Drafting:
    """Return who draws the plan; without a cache, everything is drawn anew."""
    if cache.folder is None:
        return Drafting()
    choices = job.choices
    shop = _shop_without_prices(job.folder, job.shop)
    made_of = digest(code_digest(), job.slug, job.plan, shop, repr(choices.display), choices.language)
    return KeptDrafting(cache, made_of)


def laid_aside(made: Made, cache: Cache) -> Made:
    """Return what was made of a plan with everything large in it in the cache, where there is one."""
    plan = made.plan
    pages = plan.pages
    if pages is not None:
        pages = replace(pages, finished=lean(pages.finished, cache))
    return replace(made, plan=replace(plan, pages=pages, beside=lean(plan.beside, cache)))
