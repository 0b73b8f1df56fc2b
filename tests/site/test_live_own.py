"""What a reader makes their own on a live page: a shop, files, paper, ticks in a list."""

from __future__ import annotations

import json
import re

import pytest

from tests.support.live_page import (
    BENCH,
    READY,
    choose,
    cost,
    fragment,
    told,
    wait,
)

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]


def test_my_shop_is_used_remembered_and_forgotten(fresh, home):
    """Prices, kerf, units and owned boards change the plan, survive a reload, and go with one tap."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    usual = cost(page)
    page.locator(".sc-mine summary").click()
    page.locator('[data-mine-price="wood glue"]').fill("9.99")
    page.locator('[data-mine-price="wood glue"]').press("Tab")
    wait(page, "as drawn $")
    assert cost(page) > usual
    assert "$9.99" in fragment(page, "materials")

    page.locator("[data-mine-add]").click()
    page.locator('[data-owned="count"]').fill("9")
    page.locator('[data-owned="size"]').fill("8 ft")
    page.locator('[data-owned="size"]').press("Tab")
    free = page.locator('[data-fragment="materials"] td', has_text=re.compile("^yours$"))
    free.first.wait_for(timeout=READY)
    assert cost(page) < usual

    page.locator('[data-mine="units"]').select_option("mm")
    page.wait_for_function("document.querySelector('[data-fragment=facts]').innerText.includes('mm wide')")
    page.locator('[data-mine="kerf"]').fill("lots")
    page.locator('[data-mine="kerf"]').press("Tab")
    page.wait_for_selector('[data-fault="mine kerf"]:visible')

    page.reload()
    wait(page, "Shown for")
    assert free.count() == 1
    assert "mm" in fragment(page, "cut-list")

    page.locator(".sc-mine summary").click()
    page.locator("[data-mine-reset]").click()
    page.wait_for_function("document.querySelector('[data-fragment=facts]').innerText.includes('in wide')")
    wait(page, "Shown for")
    assert cost(page) == usual
    assert page.evaluate("Object.keys(localStorage).filter(key => key.includes('my shop'))") == []


@pytest.mark.parametrize(
    "kept",
    ["{", '{"version":99,"data":{}}', '"x"', '{"version":1,"data":{"prices":7,"owned":[1],"kerf":{}}}'],
)
def test_damaged_settings_are_left_out_with_a_word(fresh, home, kept):
    """Settings of another version, or damaged ones, break nothing."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:not([inert])")
    page.evaluate("kept => localStorage.setItem('scantling /shop/by-the-harbour/ my shop', kept)", kept)
    page.reload()
    page.wait_for_selector("[data-live=plan]:not([inert])")
    if '"version":1' in kept:
        wait(page, "Shown for the size as drawn")
    else:
        assert "of another version or damaged" in told(page)[0]


def test_files_beside_the_page_are_those_of_the_size_shown(fresh, home):
    """Who resized a plan downloads that plan."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    with page.expect_download() as waiting:
        page.locator('a[href="plan.json"]').first.click()
    data = json.loads(waiting.value.path().read_text("utf-8"))
    assert data["sizes"]["width"]["text"] == "40 in"


def test_print_gives_the_resized_plan(fresh, home):
    """Paper shows the plan at its size, and none of the controls."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    page.emulate_media(media="print")

    assert page.locator("[data-live=plan]").is_hidden()
    assert page.inner_text("h1").endswith("width 40 in")
    assert "40 in wide" in fragment(page, "print")


def test_ticks_in_the_materials_list_survive_a_change_and_a_reload(fresh, home):
    """What is in the cart stays ticked when the plan is worked out anew."""
    page = fresh()
    page.goto(home.url + BENCH)
    box = page.locator('[data-fragment="materials"] input[type="checkbox"]').first
    name = box.get_attribute("data-check")
    box.check()
    choose(page, "height", "18 1/4")
    wait(page, "height 18 1/4 in")
    ticked = page.locator(f'input[data-check="{name}"]')
    assert ticked.is_checked()
    page.reload()
    wait(page, "height 18 1/4 in")
    assert ticked.is_checked()
