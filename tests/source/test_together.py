"""What is said of plans that are well each, and not beside each other."""

from __future__ import annotations

import pytest

from scantling.source import read_catalog, render_full

PLAN = """\
---
title: {title}
{more}
parts:
  side: {{from: 2x4, length: 20 in}}
---
## Cut it
uses: side
"""


@pytest.fixture
def told(tmp_path):
    """Return a function that writes plans, given as title and further lines by folder, and reads them."""
    (tmp_path / "shop.yml").write_text("kerf: 1/8 in\nlumber:\n  2x4: {lengths: {8 ft: 4.28}}\n", "utf-8")

    def told(**plans: tuple[str, str]):
        for name, (title, more) in plans.items():
            (tmp_path / name).mkdir()
            (tmp_path / name / "plan.md").write_text(PLAN.format(title=title, more=more), "utf-8")
        return read_catalog(tmp_path, root=tmp_path).diagnostics

    return told


def test_an_address_that_another_plan_has_now_is_refused(told):
    """A redirect would hide that plan from its readers; both places are shown."""
    (one,) = told(bench=("Bench", "formerly: [table]"), table=("Table", ""))

    assert (one.code, one.is_fault) == ("address-taken", True)
    assert "bench/plan.md:3:12: fault: the address 'table' is in use [address-taken]" in render_full((one,))
    assert one.notes[0].spot.path == "table/plan.md"


def test_two_plans_cannot_have_had_one_address(told):
    """A reader of the old address can be led to one of them only."""
    (one,) = told(bench=("Bench", "formerly: [seat]"), stool=("Stool", "formerly: [old-stool, seat]"))

    assert (one.message, one.spot.path, one.spot.column) == (
        "two plans were formerly 'seat'",
        "stool/plan.md",
        23,
    )
    assert one.notes[0].spot.path == "bench/plan.md"


@pytest.mark.parametrize("other", ["Shoe storage", "shoe-storage", "shoe  storage", "shoe storages"])
def test_a_tag_that_was_renamed_in_one_plan_alone_is_told(told, other):
    """It is a warning, with the place of either spelling."""
    (one,) = told(bench=("Bench", "tags: [entry, shoe storage]"), stool=("Stool", f"tags: ['{other}']"))

    assert (one.code, one.is_fault, one.spot.path) == ("tag-spelled-twice", False, "stool/plan.md")
    assert f"the tag '{other}' is spelled 'shoe storage' elsewhere" in one.message
    assert one.notes[0].spot.path == "bench/plan.md"


def test_tags_that_are_other_words_are_left_alone(told):
    """Nothing is said of words that only begin alike."""
    assert told(bench=("Bench", "tags: [oak, glass]"), stool=("Stool", "tags: [oak, oak board, gloss]")) == ()


def test_the_folder_that_it_has_now_is_no_former_one(told):
    """A redirect to itself would lead nowhere."""
    (one,) = told(bench=("Bench", "formerly: [bench]"))

    assert (one.message, one.spot.column) == ("'bench' is what this plan's folder is called now", 12)
