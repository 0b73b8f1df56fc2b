"""A reader's kept list and link say what changed in a plan since, in a real browser."""

from __future__ import annotations

import json

import pytest

from tests.support.live_page import wait

pytestmark = pytest.mark.browser
KEPT = "items => localStorage.setItem('scantling / trip', JSON.stringify({version: 1, data: items}))"


def test_a_kept_list_tells_what_changed_until_it_was_seen(page, served):
    """The bench was put on the list before its rails were mended; the stool is as it was."""
    page.goto(served.url + "trip/")
    page.evaluate(KEPT, [{"slug": "entry-bench", "count": 1, "chosen": {}, "revised": "2026-08-01"}])
    page.reload()
    wait(page, "1 piece of furniture")
    changed = page.locator("[data-trip-changed]:visible")

    assert "2026-09-14" in changed.inner_text()
    assert "side rail:" in changed.inner_text()

    page.locator("[data-trip-seen]").click()
    changed.wait_for(state="detached")
    page.reload()
    wait(page, "1 piece of furniture")

    assert changed.count() == 0


def test_a_copied_link_says_of_which_day_the_plan_was(page, served):
    """With the day in it the page tells what was mended since, and the size is the link's."""
    page.goto(served.url + "plans/entry-bench/?width=40in&as-of=2026-08-01")
    wait(page, "Shown for width 40 in")

    assert "2026-09-14" in page.inner_text("[data-live-changed]")

    page.goto(served.url + "plans/entry-bench/?width=40in")
    wait(page, "Shown for width 40 in")

    assert page.locator("[data-live-changed]").is_hidden()


def test_a_plan_is_put_on_the_list_with_its_day(page, served):
    """So that the list can tell later."""
    page.goto(served.url + "plans/entry-bench/")
    page.locator("[data-live-add]").click()
    wait(page, "is on the shopping trip")
    kept = json.loads(page.evaluate("localStorage.getItem('scantling / trip')"))

    assert [item["revised"] for item in kept["data"]] == ["2026-11-09"]
