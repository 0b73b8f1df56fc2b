"""Building does only what must be done, and what comes out does not depend on who did it."""

from __future__ import annotations

import hashlib
from pathlib import Path

import pytest

from scantling.build import How, build_catalog
from scantling.pages import Choices, raw, whole

SHOP = """currency: $
prices of: 2026-09-01
kerf: 1/8 in
lumber:
  2x4: {wood: spruce-pine-fir, lengths: {8 ft: 4.28, 10 ft: 5.98}}
  1x6: {wood: eastern white pine, lengths: {8 ft: 9.10}}
hardware:
  wood glue: {price: 6.00}
  felt pad: {price: 2.00}
"""
SAWHORSE = """---
title: Sawhorse
sizes:
  width: {usual: 40 in, from: 30 in, to: 60 in, offer: [36 in, 48 in]}
parts:
  beam: {count: 2, from: 2x4, length: width}
hardware:
  wood glue: 1
---
## Cut it
uses: beam

Cut two beams of {beam.length}.
"""
SHELF = """---
title: Shelf
parts:
  board: {from: 1x6, length: 30 in}
hardware:
  felt pad: 4
---
## Cut it
uses: board

Cut it.
"""


@pytest.fixture
def plans(tmp_path) -> Path:
    """Return a catalog of two plans that share no material."""
    folder = tmp_path / "plans"
    for name, text in (("sawhorse", SAWHORSE), ("shelf", SHELF)):
        (folder / name).mkdir(parents=True)
        (folder / name / "plan.md").write_text(text)
    (folder / "shop.yml").write_text(SHOP)
    return folder


def build(plans: Path, **how):
    """Build with a cache beside the plans."""
    how.setdefault("cache", plans.parent / "cache")
    how.setdefault("with_paper", False)
    return build_catalog(plans, How(Choices(), **how))


def content(built) -> dict[str, str]:
    """Return a digest of all that is published, by its path."""
    pages = {page.path: (whole(page), dict(page.meta)) for page in built.finished.pages}
    everything = {**pages, **{file.path: raw(file.source) for file in built.finished.files}}
    return {path: hashlib.sha256(repr(one).encode()).hexdigest()[:16] for path, one in everything.items()}


def test_an_unchanged_catalog_is_found_as_it_was(plans):
    """The second build makes nothing, and publishes the same."""
    first, second = build(plans), build(plans)

    assert first.made == ("sawhorse", "shelf")
    assert second.made == ()
    assert content(first) == content(second)


def test_an_edited_plan_touches_that_plan_alone(plans):
    """A word changed in one plan leaves the others as they were."""
    build(plans)
    (plans / "shelf" / "plan.md").write_text(SHELF.replace("Cut it.", "Cut it square."))

    assert build(plans).made == ("shelf",)


@pytest.mark.parametrize(
    ("old", "new", "made"),
    [
        ("4.28", "4.78", ("sawhorse",)),
        ("9.10", "9.90", ("shelf",)),
        ("price: 2.00", "price: 2.50", ("shelf",)),
        ("kerf: 1/8 in", "kerf: 3/32 in", ("sawhorse", "shelf")),
        ("2026-09-01", "2026-10-01", ("sawhorse", "shelf")),
    ],
)
def test_another_price_touches_the_plans_that_pay_it(plans, old, new, made):
    """A price of the shop file concerns the plans that buy the thing, a kerf concerns all."""
    build(plans)
    (plans / "shop.yml").write_text(SHOP.replace(old, new))

    assert build(plans).made == made


def test_what_is_remembered_is_what_would_be_made(plans):
    """After a price change the cached build publishes what a fresh one does."""
    build(plans)
    (plans / "shop.yml").write_text(SHOP.replace("4.28", "7.78"))

    assert content(build(plans)) == content(build(plans, cache=None))


def test_a_damaged_entry_is_made_again_and_told(plans):
    """A turned bit in the cache costs time and nothing else."""
    first = build(plans)
    for path in (plans.parent / "cache").rglob("*"):
        if path.is_file():
            path.write_bytes(path.read_bytes()[:-1] + b"?")
    again = build(plans)

    assert again.made == ("sawhorse", "shelf")
    assert again.damaged
    assert content(first) == content(again)


def test_faults_are_told_with_their_place_in_the_authors_file(plans):
    """Wherever a plan is made, its faults name the file that the author knows; cached ones too."""
    (plans / "shelf" / "plan.md").write_text(SHELF.replace("30 in", "30"))

    for _ in range(2):
        told = build(plans).finished.faults
        assert [(one.spot.path, one.spot.line) for one in told] == [("plans/shelf/plan.md", 4)]


def many(plans: Path, count: int) -> Path:
    """Fill the catalog with more plans."""
    for number in range(count):
        (plans / f"sawhorse-{number:02}").mkdir()
        (plans / f"sawhorse-{number:02}" / "plan.md").write_text(
            SAWHORSE.replace("40 in", f"{40 + number / 4} in")
        )
    return plans


def test_one_worker_two_and_a_cluster_publish_the_same(plans):
    """The same bytes, PDFs included, whoever does the work; with a real scheduler and two workers."""
    from dask.distributed import LocalCluster

    many(plans, 5)
    alone = content(build(plans, cache=None, workers=1, with_paper=True))
    two = content(build(plans, cache=None, workers=2, with_paper=True))
    with LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None) as cluster:
        far = content(build(plans, cache=None, cluster=cluster.scheduler_address, with_paper=True))

    assert alone.keys() == two.keys() == far.keys()
    assert sum(path.endswith(".pdf") for path in alone) == 2 * (6 * 3 + 1)
    assert alone == two
    assert alone == far
