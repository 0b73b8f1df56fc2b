"""Any width, in the reader's browser: choosing sizes and options."""

from __future__ import annotations

import re

import pytest

from tests.support.live_page import (
    BENCH,
    DESKTOP,
    PHONE,
    choose,
    fragment,
    say,
    size,
    told,
    wait,
)

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]


@pytest.mark.parametrize("viewport", [PHONE, DESKTOP], ids=["phone", "desktop"])
def test_a_typed_width_changes_the_whole_page(fresh, home, viewport):
    """Title, facts, lists, pictures, prose, address and announcement follow; nothing loads before."""
    page = fresh(viewport)
    asked_before = len(home.asked)
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    before = {name: fragment(page, name) for name in ("facts", "materials", "cut-list", "steps")}
    picture = page.get_attribute('[data-fragment="picture"] img', "src")
    assert not any("pyodide" in path or "live.json" in path for path in home.asked[asked_before:])

    choose(page, "width", "40 1/2")
    wait(page, "width 40 1/2 in")

    assert page.url.endswith("?width=40-1/2in")
    assert page.inner_text("h1").endswith("width 40 1/2 in")
    after = {name: fragment(page, name) for name in before}
    assert [name for name in ("facts", "materials", "cut-list") if after[name] == before[name]] == []
    assert "40 1/2 in wide" in after["facts"]
    assert page.get_attribute('[data-fragment="picture"] img', "src") != picture
    assert page.locator(".sc-changed").count() > 10
    assert "as drawn $" in say(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport["width"]

    page.locator("[data-live-reset]").click()
    wait(page, "as drawn")
    assert {name: fragment(page, name) for name in before} == before
    assert page.url.endswith(BENCH)
    assert page.locator(".sc-changed").count() == 0


def test_what_each_inch_costs_follows_a_change(fresh, home):
    """Some time after a change the chart of costs is made again at the reader's choice."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    choose(page, "width", "52")
    wait(page, "width 52 in")

    page.wait_for_selector('[data-fragment="cost"] img[src^="data:image/svg"]', state="attached")
    assert "moves in steps" in fragment(page, "cost")


def test_a_link_shows_the_same_and_the_back_button_leads_back(fresh, home):
    """Who opens a shared address sees that size and option; reloading keeps them; back undoes a change."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=36in&depth=14in&shelf=open")
    wait(page, "width 36 in, depth 14 in, shelf open")
    assert size(page, "width").input_value() == "36 in"
    assert page.locator('input[type="radio"][value="open"]').is_checked()

    page.reload()
    wait(page, "width 36 in, depth 14 in, shelf open")
    choose(page, "width", "50")
    wait(page, "width 50 in")
    page.go_back()
    wait(page, "width 36 in")
    assert size(page, "width").input_value() == "36 in"


def test_what_is_changed_while_the_engine_is_busy_is_not_lost(fresh, home):
    """Who changes three things before the first answer comes gets all three."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    choose(page, "width", "40")
    choose(page, "depth", "14")
    page.locator('input[type="radio"][value="open"]').check()
    wait(page, "width 40 in, depth 14 in, shelf open")

    assert page.url.endswith("?width=40in&depth=14in&shelf=open")
    assert [size(page, name).input_value() for name in ("width", "depth")] == ["40 in", "14 in"]


def test_the_keyboard_does_everything(fresh, home):
    """Slider, field, options, panel and buttons are reached by Tab and worked by keys."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    slider = page.locator('[data-slider="width"]')
    slider.focus()
    page.keyboard.press("ArrowRight")
    wait(page, "width 48 1/2 in")
    assert slider.get_attribute("aria-valuetext") == "48 1/2 in"
    assert page.evaluate("document.activeElement.dataset.slider") == "width"

    page.keyboard.press("Tab")
    names = []
    for _ in range(12):
        names.append(
            page.evaluate("(e => e.dataset.control || e.innerText || e.type)(document.activeElement)")
        )
        page.keyboard.press("Tab")
    assert names[0] == "size depth"
    assert {"option shelf", "option trim", "Back to the size as drawn", "Copy a link to this size"} <= set(
        names
    )
    assert any(name.startswith("My shop") for name in names)

    page.locator('input[name="live-option-0"][value="slatted"]').focus()
    page.keyboard.press("ArrowDown")
    wait(page, "shelf open")


def test_what_does_not_work_is_explained_and_the_last_plan_stays(fresh, home):
    """A fault stands beside its control, is announced, and changes neither page nor address."""
    page = fresh()
    page.goto(home.url + BENCH)
    choose(page, "width", "40")
    wait(page, "width 40 in")
    kept = fragment(page, "cut-list")

    choose(page, "width", "4 ft 7 elbows")
    wait(page, "Not shown")
    [fault] = told(page)
    assert "elbows" in fault
    assert size(page, "width").get_attribute("aria-invalid") == "true"
    assert page.locator('[data-fault="size width"]').is_visible()
    assert (fragment(page, "cut-list"), page.url[-11:]) == (kept, "?width=40in")

    choose(page, "width", "900")
    wait(page, "Not shown")
    assert "from 30 in to 66 in" in told(page)[0]
    choose(page, "width", "41")
    wait(page, "width 41 in")
    assert told(page) == []


BAD = (
    "?width=1e99in",
    "?width=%3Cscript%3Ealert(1)%3C/script%3E",
    "?widht=40in",
    "?shelf=gold",
    "?%F0=%",
    "?=",
)


def test_a_bad_address_is_explained_and_ignored(fresh, home):
    """Whatever an address says, the author's plan is shown, with a word about what was left out."""
    page = fresh()
    page.on("dialog", lambda dialog: pytest.fail(dialog.message))
    page.goto(home.url + BENCH + "?width=-1&depth=14in")
    wait(page, "Shown for depth 14 in")
    assert "from 30 in to 66 in" in told(page)[0]
    for query in BAD:
        # what the browser does when a reader goes back to such an address
        page.evaluate("query => history.pushState(null, '', location.pathname + query)", query)
        page.evaluate("dispatchEvent(new PopStateEvent('popstate'))")
        wait(page, "Shown for the size as drawn")
        assert len(told(page)) == 1, query
        assert page.inner_text("h1") == "Ferry Steps entry bench"
        choose(page, "depth", "14")
        wait(page, "depth 14 in")
        assert told(page) == []


def test_an_offered_page_starts_from_its_size(fresh, home):
    """On the page of an offered size the controls stand there, and a change is told from there."""
    page = fresh()
    page.goto(home.url + BENCH + "width-36in/")
    page.wait_for_selector("[data-live=plan]:not([inert])")
    assert size(page, "width").input_value() == "36 in"
    choose(page, "depth", "14")
    wait(page, "width 36 in, depth 14 in")

    assert page.url.endswith("width-36in/?depth=14in")
    assert re.search(r"width 36 in, depth 14 in$", page.inner_text("h1"))
