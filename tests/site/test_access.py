"""Pages for everybody: what axe-core finds, on phone and desktop, by day and by night."""

from __future__ import annotations

import pytest

from tests.support.whole_page import violations

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]  # the first one builds the site

PAGES = ("", "plans/", "plans/entry-bench/", "plans/entry-bench/width-36in/", "reference/checked-against/")
SCREENS = {"phone": {"width": 390, "height": 844}, "desktop": {"width": 1280, "height": 900}}


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("path", PAGES)
def test_axe_finds_nothing(browser, served, path, screen, scheme):
    """No violation of axe-core's rules on home, catalog, plan, an offered size and a page of docs."""
    page = browser.new_page(viewport=SCREENS[screen], color_scheme=scheme)
    page.goto(served.url + path)
    found = violations(page)
    page.close()

    assert found == []


def test_the_first_key_leads_past_the_head(page, served):
    """Tab reaches a link that skips to the content, and the search and the switch of colours by key."""
    page.goto(served.url + "plans/entry-bench/")
    page.keyboard.press("Tab")

    assert page.evaluate("document.activeElement.matches('.md-skip')")

    reached = set()
    for _ in range(12):
        page.keyboard.press("Tab")
        reached.add(
            page.evaluate(
                "document.activeElement.getAttribute('aria-label') || document.activeElement.innerText"
            )
        )

    assert {"Plans", "Search"} <= {str(name).strip() for name in reached}
