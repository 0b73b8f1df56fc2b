"""The search in the header of a page."""

from __future__ import annotations

import pytest

pytestmark = pytest.mark.browser


@pytest.mark.parametrize("width", [1240, 1280, 1600])
def test_the_open_search_stays_on_the_page(browser, home, width):
    """Box and results end within the window, and the name of the site keeps its place."""
    page = browser.new_page(viewport={"width": width, "height": 900})
    page.goto(home.url)
    page.wait_for_function("self.document$")
    name = page.locator(".sc-name").bounding_box()
    page.locator(".md-search__input").click()
    page.wait_for_timeout(600)  # the box grows

    box = page.locator(".md-search__inner").bounding_box()
    assert box["x"] + box["width"] <= width
    assert box["x"] >= name["x"] + name["width"]
    assert page.locator(".sc-name").bounding_box() == name
    page.close()


@pytest.mark.parametrize("query", ["36 in", "914 mm"])
def test_plans_that_are_ready_at_a_size_are_found_first(browser, home, site, query):
    """A size brings the plans that are offered at it, in either unit, before all that mentions the number."""
    ready = {folder.parent.name for folder in (site / "plans").glob("*/*36in")}
    page = browser.new_page(viewport={"width": 1280, "height": 900})
    page.goto(home.url)
    page.wait_for_function("self.document$")
    page.locator(".md-search__input").click()
    page.keyboard.type(query, delay=20)
    first = f".md-search-result__item:nth-child({len(ready)}) a"
    page.wait_for_selector(first, state="attached")
    page.wait_for_timeout(500)  # the last letter is answered
    found = page.eval_on_selector_all(
        ".md-search-result__item", "items => items.map((item) => item.querySelector('a').href)"
    )

    assert len(ready) > 3
    assert {address.split("?")[0].rstrip("/").rpartition("/")[2] for address in found[: len(ready)]} == ready
    page.close()
