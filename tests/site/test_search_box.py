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
