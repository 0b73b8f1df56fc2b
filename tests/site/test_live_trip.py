"""The shopping trip, and what is left of the site where there is no network."""

from __future__ import annotations

import re

import pytest

from tests.support.live_page import choose, fragment, say, wait, watch

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]
BENCH, BOOKCASE = "plans/entry-bench/", "plans/plywood-bookcase/"


@pytest.fixture(scope="module")
def home(site, serve_folder):
    """Return the site below a path."""
    return serve_folder(site, under="shop")


def cents(text: str) -> int:
    """Return a sum of money as cents."""
    return int(re.sub(r"\D", "", text))


def sums(page) -> list[int]:
    """Return what the list costs each for itself, together, and saved."""
    return [cents(one) for one in page.locator(".sc-trip-sum dd").all_inner_texts()]


def test_two_plans_are_bought_and_cut_as_one(browser, home):
    """Plans are put on the list at their size; counts change; ticks and list survive a reload."""
    context = browser.new_context(viewport={"width": 390, "height": 844})
    page = context.new_page()
    trouble = watch(page)
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    page.locator("[data-live-add]").click()
    assert "is on the shopping trip" in say(page)
    page.goto(home.url + BOOKCASE)
    page.locator("[data-live-add]").click()
    page.locator("[data-live-trip]").click()

    wait(page, "2 pieces of furniture")
    assert page.locator(".sc-trip li").count() == 2
    assert "width 40 in" in page.inner_text(".sc-trip li >> nth=0")
    alone, together, saved = sums(page)
    assert saved == alone - together > 0
    shown = [cents(text) for text in page.locator("[data-trip-cost]").all_inner_texts()]
    assert sum(shown) == alone
    assert page.locator('[data-fragment="trip-diagrams"] img').count() > 2
    assert page.evaluate("document.documentElement.scrollWidth") <= 390

    count = page.locator(".sc-trip input").first
    count.fill("2")
    count.press("Tab")
    wait(page, "3 pieces of furniture")
    assert sums(page)[0] == shown[0] * 2 + shown[1]
    box = page.locator('[data-fragment="trip-materials"] input[type="checkbox"]').first
    box.check()
    page.reload()
    wait(page, "3 pieces of furniture")
    assert box.is_checked()

    page.locator("[data-trip-remove]").first.click()
    wait(page, "1 piece of furniture")
    assert sums(page)[2] == 0
    page.locator("[data-trip-clear]").click()
    page.wait_for_selector("[data-trip-empty]:visible")
    assert page.locator("[data-trip-part]:visible").count() == 0
    context.close()

    assert trouble == []


@pytest.mark.parametrize("kept", ["[", '{"version":1,"data":[{"slug":"gone"},7,{"slug":"__proto__"}]}'])
def test_a_damaged_list_is_left_out_with_a_word(page, home, kept):
    """What is not a list, or names plans that are not there, breaks nothing."""
    page.goto(home.url + "trip/")
    page.wait_for_selector(".sc-live:visible")
    page.evaluate("kept => localStorage.setItem('scantling /shop/ trip', kept)", kept)
    page.reload()
    page.wait_for_selector(".sc-live:not([inert])")
    page.wait_for_selector('[data-fault=""]:visible')

    assert "damaged, and is left out" in page.inner_text('[data-fault=""]')


def test_plan_and_trip_open_without_a_network(browser, home):
    """Once used, the plan at its size and the list are there in the aisle; what was not used is not kept."""
    context = browser.new_context()
    page = context.new_page()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    page.locator("[data-live-add]").click()
    page.goto(home.url + "trip/")
    wait(page, "1 piece of furniture")
    page.wait_for_function(
        """async () => {
          const names = await caches.keys();
          const cache = names.length && await caches.open(names[0]);
          if (!cache || !await cache.match(new URL(".", location.href).href)) return false;
          return (await cache.keys()).length > 20;
        }""",
        timeout=60_000,
    )
    page.reload()
    wait(page, "1 piece of furniture")

    context.set_offline(True)
    page.reload()
    wait(page, "1 piece of furniture")
    assert "2x4" in fragment(page, "trip-materials")
    page.goto(home.url + BENCH + "?width=40in&depth=14in")
    wait(page, "width 40 in, depth 14 in")
    assert "40 in wide" in fragment(page, "facts")
    choose(page, "width", "52")
    wait(page, "width 52 in")

    kept = page.evaluate(
        """async () => (await Promise.all((await caches.keys()).map(async (name) =>
          (await (await caches.open(name)).keys()).map((one) => one.url)))).flat()"""
    )
    assert not any(BOOKCASE in url for url in kept)
    assert all(url.startswith(home.url) for url in kept)
    context.close()
