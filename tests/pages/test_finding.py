"""What a plan is found by, and the choices that the catalog offers."""

from __future__ import annotations

import json
import re
from html import unescape

import pytest

from scantling.measure import Display
from scantling.pages import Choices, make_pages
from scantling.pages.catalog_filters import filters
from scantling.pages.finding import either, time_order
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, hostile_plan, write_catalog
from tests.support.many_plans import made_up


def catalog_of(folder, **plans: str) -> str:
    """Return the catalog page of some plans."""
    finished = make_pages(read_catalog(write_catalog(folder, **plans)), Choices())
    return next(page for page in finished.pages if page.path == "plans/index.md").markdown


def test_a_card_carries_what_the_engine_reckoned(tmp_path):
    """Cents, widths in thousandths, tools of the plan and its steps: as in the plan's own data."""
    home = write_catalog(tmp_path, stool=BENCH, other=BENCH.replace("drill", "drill or brace"))
    finished = make_pages(read_catalog(home), Choices())
    page = next(page for page in finished.pages if page.path == "plans/index.md").markdown
    card = re.findall(r"<li[^>]*>", page[page.index("sc-cards") :])[1]
    facts = {key: unescape(value) for key, value in re.findall(r'data-([\w-]+)="([^"]*)"', card)}
    data = json.loads(next(file.content for file in finished.files if file.path == "plans/stool/plan.json"))

    assert int(facts["cost"]) == data["totals"]["cost"]["cents"]
    assert (facts["width"], facts["least-width"]) == ("24000", "18000")
    assert json.loads(facts["tools"]) == [["saw"], ["drill"]]
    assert json.loads(facts["room"]) == ["entry"]
    assert json.loads(facts["material"]) == ["Lumber"]
    assert facts["new"] == "2026-11-09"


def test_hostile_words_stay_words(tmp_path):
    """Tags and tools that try to break out of attributes and choices come back as they were typed."""
    page = catalog_of(tmp_path, evil=hostile_plan(), stool=BENCH)

    assert "<script" not in page
    assert "<img src=x" not in page
    assert "{{" not in page


@pytest.mark.parametrize(
    ("tool", "tools"),
    [
        ("drill", ("drill",)),
        ("brad nailer or hammer", ("brad nailer", "hammer")),
        ("router", ("router",)),
        ("saw or saw", ("saw",)),
        ("a or b  or c", ("a", "b", "c")),
    ],
)
def test_a_tool_may_be_one_of_several(tool, tools):
    """The word "or" parts tools of which one will do, and no part of another word does."""
    assert either(tool) == tools


def test_build_times_stand_from_short_to_long():
    """Afternoons come before weekends, and words that tell no time come last."""
    times = ["two weekends", "a while", "a day", "an afternoon", "three weekends", "a weekend", "two hours"]

    assert sorted(times, key=time_order) == [
        "two hours",
        "an afternoon",
        "a day",
        "a weekend",
        "two weekends",
        "three weekends",
        "a while",
    ]


def test_limits_are_whole_steps_that_part_the_plans():
    """Each step of budget and width lets some plans through and not all, in the site's own units."""
    found = [made_up(number) for number in range(40)]
    inches, millimetres = (filters(found, Display(system), "$") for system in ("in", "mm"))
    budgets = re.findall(r'value="(\d+)" data-words="([^"]*)" data-most="(\d+)">[^<]*\((\d+)\)', inches)

    assert budgets
    for _, words, most, count in budgets:
        if words.startswith("$"):
            assert sum(one.cents <= int(most) for one in found) == int(count)
        assert 0 < int(count) < len(found)
    assert 'value="24in" data-words="24 in" data-most="24000"' in inches
    assert 'value="600mm" data-words="600 mm" data-most="23622"' in millimetres  # 23.62204...


def test_one_plan_is_not_narrowed_down(tmp_path):
    """A catalog of one plan has no form."""
    assert "<form" not in catalog_of(tmp_path)
