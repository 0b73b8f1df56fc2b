"""Live pages for everybody: what axe-core finds on them when they are in use."""

from __future__ import annotations

import pytest

from tests.support.live_page import choose, told, wait
from tests.support.whole_page import violations

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]
SCREENS = {"phone": {"width": 390, "height": 844}, "desktop": {"width": 1280, "height": 900}}


@pytest.mark.parametrize(("screen", "scheme"), [("phone", "dark"), ("desktop", "light")])
def test_axe_finds_nothing_on_pages_in_use(browser, served, screen, scheme):
    """A resized plan with faults and panel open; a filled shopping trip; calculators; the catalog."""
    context = browser.new_context(viewport=SCREENS[screen], color_scheme=scheme)
    page = context.new_page()
    page.goto(served.url + "plans/entry-bench/?width=40in")
    wait(page, "width 40 in")
    page.locator(".sc-mine summary").click()
    page.locator("[data-mine-add]").click()
    page.locator('[data-mine-price="wood glue"]').fill("cheap")
    choose(page, "depth", "a yard")
    wait(page, "Not shown")
    assert told(page)
    assert violations(page) == []

    page.locator("[data-live-add]").click()
    page.goto(served.url + "trip/")
    wait(page, "1 piece of furniture")
    page.locator(".sc-mine summary").click()
    assert violations(page) == []
    for path in ("plans/", "calculators/", "calculators/board-feet/"):
        answer = page.goto(served.url + path)
        assert answer.ok, path
        page.wait_for_timeout(300)
        assert violations(page) == [], path
    context.close()
