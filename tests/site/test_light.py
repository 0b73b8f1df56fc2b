"""What a slow phone waits for: a page is painted first, in its colours; what nobody asked for stays away."""

from __future__ import annotations

import re

import pytest

pytestmark = pytest.mark.browser

PLAN = "plans/entry-bench/"
SCHEME = "document.body.dataset.mdColorScheme"
INDEX = "/search/search_index.json"


def test_scripts_wait_in_the_themes_order(site):
    """All scripts with an address wait in a template, and are fetched with low priority meanwhile."""
    text = (site / PLAN / "index.html").read_text("utf-8")
    waiting = re.search(r'<template id="sc-scripts">(.*?)</template>', text, re.DOTALL)
    assert waiting is not None
    addresses = re.findall(r'<script src="([^"]+)"', waiting[1])

    assert [address.rsplit("/", 1)[1].split(".")[0] for address in addresses] == [
        "bundle",
        "notebook",
        "finding",
        "live",
    ]
    assert re.findall(r"<script[^>]* src=", text.replace(waiting[0], "")) == []
    assert re.findall(r'as="script" fetchpriority="low" href="([^"]+)"', text) == addresses


def test_scripts_start_once_the_page_is_painted(browser, served):
    """The first paint comes before the theme's script may run, and the theme wakes up all the same."""
    page = browser.new_page()
    page.add_init_script(
        "new MutationObserver(() => {"
        "  if (!self.startedAt && document.head?.querySelector('script[src*=bundle]'))"
        "    self.startedAt = performance.now();"
        "}).observe(document, { childList: true, subtree: true });"
    )
    page.goto(served.url + PLAN)
    page.wait_for_function("self.document$ && document.querySelector('[data-live][data-awake]')")
    page.wait_for_function("performance.getEntriesByName('first-paint').length")
    painted = page.evaluate("performance.getEntriesByName('first-paint')[0].startTime")

    assert page.evaluate("self.startedAt") > painted
    page.close()


@pytest.mark.parametrize(("wanted", "scheme"), [("light", "notebook"), ("dark", "notebook-night")])
def test_a_page_is_light_or_dark_before_the_theme_wakes(browser, served, wanted, scheme):
    """The reader's device decides, with the theme's script kept away."""
    page = browser.new_page(color_scheme=wanted)
    page.route("**/bundle.*.js", lambda route: route.abort())
    page.goto(served.url + PLAN)

    assert page.evaluate(SCHEME) == scheme
    assert page.locator("label[for^=__palette]:visible").count() == 1
    page.close()


def test_a_choice_of_colours_is_kept_and_none_follows_the_device(browser, served):
    """Without a choice the page changes with the device; a choice holds on the next page too."""
    page = browser.new_page(color_scheme="light")
    page.goto(served.url + PLAN)
    page.emulate_media(color_scheme="dark")
    page.wait_for_function(f"{SCHEME} === 'notebook-night'")
    page.emulate_media(color_scheme="light")
    page.wait_for_function(f"{SCHEME} === 'notebook'")

    page.locator("label[for^=__palette]:visible").click()
    assert page.evaluate(SCHEME) == "notebook-night"
    page.goto(served.url + "calculators/board-feet/")
    assert page.evaluate(SCHEME) == "notebook-night"
    page.wait_for_function("document.querySelector('[name=color-scheme]').content === 'dark'")

    page.locator("[name=__palette]:checked").focus()
    page.keyboard.press("Enter")
    assert page.evaluate(SCHEME) == "notebook"
    # nothing stays that keeps colours from fading
    page.wait_for_function("document.body.dataset.mdColorSwitching === undefined")
    page.close()


def test_the_words_to_search_come_when_somebody_turns_to_the_search(page, served):
    """Until then the largest file of most pages is not asked for; the slash on the keyboard is enough."""
    page.goto(served.url + PLAN, wait_until="networkidle")
    page.wait_for_function("self.document$")
    page.wait_for_timeout(300)
    assert not [path for path in served.asked[-40:] if path.endswith(INDEX)]

    with page.expect_response(lambda answer: answer.url.endswith(INDEX)):
        page.keyboard.press("/")
    page.keyboard.type("herb planter")
    page.locator(".md-search-result a[href*='plans/herb-planter/']").first.wait_for()


def test_words_that_were_searched_are_marked_on_the_page(page, served):
    """Whoever follows a result finds its words marked, which the theme asks the index for."""
    page.goto(served.url + PLAN + "?h=bench")

    page.locator("mark[data-md-highlight]").first.wait_for(state="attached")
