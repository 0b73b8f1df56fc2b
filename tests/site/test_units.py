"""Inches or millimetres on the whole site, chosen once at the head of a page, in a real browser."""

from __future__ import annotations

import pytest

from tests.support.live_page import READY, fragment

pytestmark = pytest.mark.browser


def choose(page, units: str) -> None:
    """Choose at the head of the page."""
    page.locator(".sc-units select").select_option(units)


def engines(page) -> list[str]:
    """Return a list that fills with what the page fetches of the engine."""
    fetched: list[str] = []
    page.on("request", lambda request: "/live/runtime-" in request.url and fetched.append(request.url))
    return fetched


def test_the_catalog_changes_at_once_and_needs_no_engine(page, served):
    """Cards and the width that fits a space, in the other unit and back; the address of a choice stays."""
    fetched = engines(page)
    page.goto(served.url + "plans/")
    card = page.locator(".sc-card", has_text="Ferry Steps entry bench").locator(".sc-line")
    card.scroll_into_view_if_needed()  # what is out of sight has no text yet
    before = card.inner_text()
    page.select_option('[name="width"]', "36in")

    choose(page, "mm")

    assert "48 in wide" in before.replace("\N{NO-BREAK SPACE}", " ")
    assert "1219 mm wide" in card.inner_text().replace("\N{NO-BREAK SPACE}", " ")
    assert "18 in" not in page.locator(".sc-card", has_text="Ferry Steps entry bench").inner_text()
    assert (
        page.locator('[name="width"] option:checked').inner_text().replace("\N{NO-BREAK SPACE}", " ")[:8]
        == "914 mm ("
    )
    assert page.evaluate("location.search") == "?width=36in"

    choose(page, "in")

    assert card.inner_text() == before
    assert fetched == []


def test_the_choice_holds_on_every_page_and_is_written_by_the_engine(page, served):
    """A plan page that is opened later shows millimetres in its lists and drawings, and back inches."""
    page.goto(served.url + "plans/")
    choose(page, "mm")
    page.goto(served.url + "plans/entry-bench/")
    page.wait_for_function(
        "document.querySelector('[data-fragment=\"cut-list\"]').textContent.includes('1219')", timeout=READY
    )

    assert page.locator(".sc-units select").input_value() == "mm"
    assert page.locator('[data-mine="units"]').input_value() == "mm"
    assert " in " not in fragment(page, "cut-list").replace(" in all", "")

    choose(page, "in")
    page.wait_for_function(
        "document.querySelector('[data-fragment=\"cut-list\"]').textContent.includes('48\\u00a0in')",
        timeout=READY,
    )


def test_what_the_site_says_anyway_costs_nothing(page, served):
    """A reader who went back to the site's unit loads no engine on the next page."""
    page.goto(served.url + "plans/")
    choose(page, "mm")
    choose(page, "in")
    fetched = engines(page)
    page.goto(served.url + "plans/entry-bench/")
    page.wait_for_timeout(1_500)

    assert fetched == []
    assert page.evaluate("Object.keys(localStorage).filter((key) => key.includes('my shop'))") == []


def test_a_calculator_follows(page, served):
    """Its own field and its answer change with the switch."""
    page.goto(served.url + "calculators/equal-spaces/")
    page.locator('[data-live="calculator"] [data-name="units"]').wait_for()
    before = fragment(page, "answer")
    choose(page, "mm")
    page.wait_for_function(
        "before => document.querySelector('[data-fragment=\"answer\"]').innerText.includes('mm')",
        arg=before,
        timeout=READY,
    )

    assert page.locator('[data-name="units"]').input_value() == "mm"


def test_the_panel_of_a_plan_and_the_switch_are_one(page, served):
    """Millimetres chosen in "my shop" are chosen at the head of the page."""
    page.goto(served.url + "plans/entry-bench/")
    page.locator(".sc-mine summary").click()
    page.locator('[data-mine="units"]').select_option("mm")

    assert page.locator(".sc-units select").input_value() == "mm"
