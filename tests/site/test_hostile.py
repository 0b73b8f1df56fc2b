"""A plan whose every word is hostile, in a real browser: nothing of it runs."""

from __future__ import annotations

import pytest

from tests.support.catalogs import build_small_site

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]  # the first one builds the site


@pytest.fixture(scope="session")
def hostile(once, serve_folder):
    """Return a served site with a hostile plan beside a good one."""
    return serve_folder(once("small-site", build_small_site) / "site")


@pytest.mark.parametrize(
    "path",
    ["plans/", "plans/evil/", "plans/evil/width-30in/", "plans/evil/cut-2x4-1.svg", "plans/evil/card.svg"],
)
def test_no_word_of_a_plan_runs(browser, hostile, path):
    """Pages and drawings show hostile words as letters: no script runs, no picture of theirs is asked for."""
    page = browser.new_page()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(hostile.url + path, wait_until="networkidle")

    assert page.evaluate("window.hacked") is None
    assert page.locator("[onerror], [onclick], img[src='x'], a[href^='javascript']").count() == 0
    assert [url for url in asked if url.endswith("/x") or not url.startswith(hostile.url)] == []
    if path == "plans/evil/":
        assert "<script>window.hacked=1</script>" in page.locator("h1").inner_text()
    page.close()


def test_no_search_result_runs(browser, hostile):
    """Hostile titles, tags and steps in the search's results are letters too."""
    page = browser.new_page()
    page.goto(hostile.url)
    page.locator(".md-search__input").press_sequentially("evil stool")
    page.locator(".md-search-result a[href*='plans/evil/']").first.wait_for()
    page.wait_for_timeout(300)

    assert page.evaluate("window.hacked") is None
    assert page.locator(".md-search-result img, .md-search-result script").count() == 0
    page.close()
