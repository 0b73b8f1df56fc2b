"""Pages printed from the browser: what a reader takes to the bench, and nothing of the site's furniture."""

from __future__ import annotations

import io

import pypdf
import pytest

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]  # the first one builds the site


def printed(browser, url: str) -> tuple[str, int]:
    """Return the words of a page printed on Letter paper, and on how many sheets."""
    page = browser.new_page()
    page.goto(url)
    reader = pypdf.PdfReader(io.BytesIO(page.pdf(format="Letter")))
    page.close()
    return " ".join(" ".join(sheet.extract_text() for sheet in reader.pages).split()), len(reader.pages)


@pytest.mark.parametrize(
    ("path", "furniture"),
    [
        ("", ("See all plans",)),
        ("plans/", ("What can I build from what I have?", "Tools that I have")),
        ("plans/entry-bench/", ("Plans like this one", "What each inch costs", "Turn it around")),
        ("blog/", ("Continue reading",)),
        ("calculators/shelf-sag/", ("Found under",)),
    ],
)
def test_nothing_to_press_is_on_paper(browser, served, path, furniture):
    """Buttons, ways onward and aids to choosing stay on the screen; the page's address is printed."""
    words, _ = printed(browser, served.url + path)

    assert [what for what in furniture if what in words] == []
    assert f"https://plans.example.org/{path}" in words


def test_the_catalog_takes_one_sheet(browser, served):
    """Twelve plans, each with its picture, cost and size, stand on one sheet."""
    words, sheets = printed(browser, served.url + "plans/")

    assert sheets == 1
    assert "Bollard stool" in words
    assert "Tidepool book bin" in words


def test_a_size_of_the_readers_own_is_in_the_address_on_paper(browser, served):
    """Who printed a bench at another width finds the way back to just that."""
    page = browser.new_page()
    page.goto(served.url + "plans/entry-bench/?width=40in")
    page.wait_for_function(  # scripts start after the paint
        "() => { dispatchEvent(new Event('beforeprint'));"
        " return document.querySelector('.sc-address').textContent.includes('?'); }"
    )
    page.emulate_media(media="print")

    assert page.locator(".sc-address").inner_text() == (
        "https://plans.example.org/plans/entry-bench/?width=40in"
    )
    page.close()


def test_an_embedded_plan_says_the_sum_once_and_last(browser, served):
    """Where its list goes on to a second sheet, the sum stands below the last line alone."""
    words, _ = printed(browser, served.url + "plans/entry-bench/embed/")

    assert words.count("Together") == 1
    assert words.index("wiping varnish") < words.index("Together")
