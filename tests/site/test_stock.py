"""What can I build from what I have, in a real browser on the demonstration site."""

from __future__ import annotations

import pytest

from tests.support.live_page import READY

pytestmark = pytest.mark.browser


def look(page, text: str) -> None:
    """Write a list, look, and wait until everything is worked out."""
    page.fill("[data-stock-text]", text)
    page.click("[data-stock-look]")
    page.wait_for_function(
        "() => !document.querySelector('[data-live=\"stock\"]').hasAttribute('aria-busy')", timeout=READY
    )


def test_plans_from_one_sheet(page, served):
    """The catalog leads here; one sheet is enough for the low bin at some size, which is linked."""
    page.goto(served.url + "plans/")
    page.get_by_text("What can I build from what I have?").click()
    page.wait_for_selector("[data-stock-text]")
    look(page, "1 sheet 3/4 plywood")
    enough = page.locator('[data-stock-part="enough"] li')

    assert "3/4 plywood, 96 in × 48 in" in page.inner_text("[data-stock-understood]")
    assert any("Tidepool book bin" in text for text in enough.all_inner_texts())
    assert all("nothing more" in text for text in enough.all_inner_texts())
    more = page.locator('[data-stock-part="more"] li').all_inner_texts()
    assert more
    assert all("$" in text for text in more)

    link = page.locator('[data-stock-part="enough"] a').first
    name = link.inner_text().split(",")[0]
    link.click()
    page.wait_for_selector("h1")
    assert name in page.inner_text("h1")


def test_what_is_not_understood_is_told_beside_the_list(page, served):
    """And what was written is still there on the next visit."""
    page.goto(served.url + "from-stock/")
    look(page, "6 2x44 8 ft")

    assert "There is no stock called" in page.inner_text('[data-fault=""]')

    page.reload()
    page.wait_for_selector('[data-live="stock"]:not([inert])')
    assert page.input_value("[data-stock-text]") == "6 2x44 8 ft"
