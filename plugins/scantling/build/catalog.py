"""From a folder of plans to everything that is published, doing only what must be done."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.entries import keep, recall
from scantling.build.job import Job, Made, finish
from scantling.build.lean import lean
from scantling.build.stored import find_result, keep_result
from scantling.build.workers import do_all
from scantling.pages import Choices, Finished, gather_pages, prices_page
from scantling.report import PriceRecord, price_record
from scantling.source import PLAN_FILE, SHOP_FILE, load_shop, read_price_file
from scantling.words import ENGLISH, language_of, speaking

PAGES = "pages"
PICTURES = {".jpg", ".jpeg", ".png", ".webp", ".avif", ".gif"}


@dataclass(frozen=True, slots=True)
class How:
    """How a catalog is built."""

    choices: Choices
    with_paper: bool = True
    """Whether PDFs are made."""
    workers: int = 0
    cluster: str = ""
    cache: Path | None = None


@dataclass(frozen=True, slots=True)
class Built:
    """A built catalog, and what it took."""

    finished: Finished
    made: tuple[str, ...]
    """Plans that had to be made; the others were found as they were."""
    damaged: tuple[str, ...]
    """Entries of the cache that were not whole and were made again."""
    prices: PriceRecord | None
    """Prices and costs as they are now; None where a fault keeps the catalog from being published."""


def build_catalog(folder: Path, how: How, *, cache: Cache | None = None) -> Built:
    """Return everything that a catalog publishes.

    Args:
        folder: the folder with the shop file and a folder for each plan.
        cache: that of an earlier build by this process, which need not look at all entries again.
    """
    cache = cache if cache is not None and cache.folder == how.cache else Cache(how.cache)
    cache.damaged.clear()
    is_first = not cache.held
    with speaking(language_of(how.choices.language)):
        built = _build(folder, how, cache)
    if is_first:
        # later builds of a preview do not touch what they find, so it may look unused
        cache.tidy_daily(time.time())
    return built


def _build(folder: Path, how: How, cache: Cache) -> Built:
    with speaking(ENGLISH):  # as every message for authors
        shop = load_shop(folder / SHOP_FILE, root=folder.resolve().parent)
    found: dict[str, Made | None] = {}
    missing: list[Job] = []
    for job in _jobs(folder, how):
        found[job.slug] = recall(cache, job, shop)
        if found[job.slug] is None:
            missing.append(job)
    fresh = do_all(finish, missing, workers=how.workers, cluster=how.cluster)
    for job, made in zip(missing, fresh, strict=True):
        found[job.slug] = keep(cache, job, shop, made)
    all_made = [one for one in found.values() if one is not None]
    plans = [made.plan for made in all_made]
    finished = gather_pages(shop, plans, how.choices, remember=partial(_remembered, cache))
    record = None
    if shop.shop is not None and not finished.faults:
        costs = {made.plan.slug: made.cost for made in all_made if made.cost is not None}
        record = price_record(shop.shop, costs, read_price_file(folder))
        titles = {plan.slug: plan.pages.title for plan in plans if plan.pages is not None}
        prices = prices_page(shop.shop, record, how.choices, titles)
        finished = replace(
            finished, pages=(*finished.pages, *prices.pages), files=(*finished.files, *prices.files)
        )
    return Built(finished, tuple(job.slug for job in missing), tuple(cache.damaged), record)


def _remembered(cache: Cache, made_of: str, make: Callable[[], Finished]) -> Finished:
    """Return pages that were made of the same things before, or make them."""
    name = digest(code_digest(), made_of)
    found = find_result(cache, PAGES, name)
    if not isinstance(found, Finished):
        found = lean(make(), cache)
        keep_result(cache, PAGES, name, found)
    return found


def _jobs(folder: Path, how: How) -> Iterator[Job]:
    """Yield a job for each plan, in the order of their names."""
    shop = (folder / SHOP_FILE).read_bytes() if (folder / SHOP_FILE).is_file() else b""
    for path in sorted(folder.glob(f"*/{PLAN_FILE}"), key=lambda path: path.parent.name):
        if path.parent.name.startswith("."):
            continue
        pictures = {
            picture.name: picture.read_bytes()
            for picture in sorted(path.parent.iterdir())
            if picture.suffix.lower() in PICTURES and picture.is_file()
        }
        yield Job(
            slug=path.parent.name,
            plan=path.read_bytes(),
            shop=shop,
            pictures=pictures,
            choices=how.choices,
            folder=folder.resolve().name,
            with_paper=how.with_paper,
            cache=None if how.cluster else how.cache,
        )
