"""Every kind of page for everybody: what axe-core finds where no other test looks, in one browser."""

from __future__ import annotations

import pytest

from scantling.calculators import SLUGS
from tests.support.whole_page import violations

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]

KINDS = (
    "from-stock/",
    "prices/",
    "checks/",
    "trip/",
    "404.html",
    "blog/category/prices/",
    "plans/sliding-door-console/",
    "plans/splayed-stool/height-29in/",
    "plans/entry-bench/embed/",
    "plans/entry-bench/embed/fragment.html",
    "start/first-plan/",
    "how-to/placement/",
    "reference/plan-format/",
    "reference/cutting-benchmarks/",
    "explain/cutting/",
)
LOOKS = [("phone", "dark"), ("desktop", "light")]
SCREENS = {"phone": {"width": 390, "height": 844}, "desktop": {"width": 1280, "height": 900}}
BARE = {
    "plans/entry-bench/embed/fragment.html": {
        "document-title",
        "html-has-lang",
        "landmark-one-main",
        "page-has-heading-one",
        "region",
    }
}
"""What a fragment is not asked: the page into which it is put has a title, a language and a main part."""


@pytest.fixture(scope="module", params=LOOKS, ids="-".join)
def shown(browser, request):
    """Return a page on one screen, by day or by night."""
    screen, scheme = request.param
    context = browser.new_context(viewport=SCREENS[screen], color_scheme=scheme)
    yield context.new_page()
    context.close()


@pytest.mark.parametrize("path", KINDS)
def test_axe_finds_nothing_on_any_kind_of_page(shown, served, path):
    """No violation of axe-core's rules, and nothing wider than the screen."""
    shown.goto(served.url + path)
    shown.wait_for_timeout(300)

    assert [found for found in violations(shown) if found[0] not in BARE.get(path, ())] == []
    assert shown.evaluate("document.documentElement.scrollWidth - innerWidth") <= 1


@pytest.mark.parametrize("slug", SLUGS)
def test_axe_finds_nothing_on_any_calculator(shown, served, slug):
    """Each calculator, with its picture, its tables and its formula."""
    shown.goto(f"{served.url}calculators/{slug}/")
    shown.wait_for_timeout(300)

    assert violations(shown) == []
    assert shown.evaluate("document.documentElement.scrollWidth - innerWidth") <= 1


def test_axe_finds_nothing_while_searching(shown, served):
    """The search with its results open, and with none."""
    shown.goto(served.url + "plans/")
    if not shown.locator(".md-search__input").is_visible():
        shown.locator(".md-header__button[for='__search']").click()
    box = shown.locator(".md-search__input")
    for words, told in (("bench 2x4", ".md-search-result__item"), ("zzzyx", ".md-search-result__meta")):
        box.fill(words)
        shown.wait_for_selector(told, state="attached")
        shown.wait_for_timeout(500)

        assert violations(shown) == [], words
    shown.keyboard.press("Escape")


def test_axe_finds_nothing_when_filters_leave_nothing(shown, served):
    """The catalog with all its filters open, and with no plan left."""
    shown.goto(served.url + "plans/")
    shown.evaluate("for (const one of document.querySelectorAll('.sc-find__group')) one.open = true")
    assert violations(shown) == []

    shown.goto(served.url + "plans/?budget=25&width=12in")
    shown.wait_for_timeout(300)
    assert violations(shown) == []
