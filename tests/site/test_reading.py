"""A reader's way through the real site, in a real browser."""

from __future__ import annotations

import json
import re
import subprocess
import sys

import pytest

from tests.support.whole_page import lay_out

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]  # the first one builds the site

PHONE = {"width": 390, "height": 844}


def shown(root, *arguments: str) -> dict:
    """Return what `scantling show --json` prints."""
    command = [sys.executable, "-m", "scantling", "show", *arguments, "--json"]
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def text_of(locator) -> str:
    """Return an element's words, with plain spaces."""
    return " ".join(locator.inner_text().replace("\u00a0", " ").split())


READ_LISTS = """() => {
  const words = (cell) => cell.innerText.replace(/\\s+/g, " ").trim();
  const rows = (list) => [...document.querySelectorAll(list)];
  return [
    rows(".sc-materials tbody tr:not(.sc-shelf)").map((row) => [
      words(row.querySelector("label")), words(row.querySelectorAll(".sc-money")[1]),
    ]),
    rows(".sc-cuts tbody tr").map((row) => [
      words(row.querySelector(".sc-mark")), row.dataset.part, words(row.querySelector(".sc-count")),
      ...[...row.querySelectorAll(".sc-size")].map(words),
    ]),
  ];
}"""


def read_lists(page) -> tuple[list[tuple], list[tuple]]:
    """Return the materials list and the cut list as a reader sees them."""
    lay_out(page)
    materials, cuts = page.evaluate(READ_LISTS)
    return [tuple(row) for row in materials], [tuple(row) for row in cuts]


def lists_of(data: dict) -> tuple[list[tuple], list[tuple]]:
    """Return the same lists from the data."""
    materials = [
        (
            f"{line['quantity']} × {line['item']}" + ("" if line["sold"] == "each" else f", {line['sold']}"),
            line["cost"]["text"],
        )
        for line in data["materials"]
    ]
    cuts = [
        (
            part["letter"],
            part["part"],
            str(part["count"]),
            *(part[side]["text"] for side in ("length", "width", "thick")),
        )
        for part in data["cut_list"]
    ]
    return materials, cuts


def search(page, words: str, wanted: str) -> None:
    """Type words into the search and follow the result that leads to `wanted`."""
    page.locator("label[for=__search]:visible, .md-search__input:visible").first.click()
    page.locator(".md-search__input").press_sequentially(words, delay=20)
    page.locator(f".md-search-result a[href*='{wanted}']").first.click()
    page.wait_for_url(re.compile(wanted))


@pytest.mark.parametrize("words", ["entry bench", "lower side rail", "pocket screw", "shoe storage"])
def test_a_plan_is_found_and_its_offered_size_tells_the_engines_numbers(page, served, root, words):
    """Found by title, part, material or tag, the bench at 36 in reads as `scantling show` prints it."""
    page.goto(served.url)
    search(page, words, "plans/entry-bench/")
    page.get_by_role("navigation", name="Sizes of this plan").get_by_role("link", name="width 36 in").click()
    page.wait_for_url("**/plans/entry-bench/width-36in/")
    data = shown(root, "entry-bench", "--size", "width=36in")

    assert read_lists(page) == lists_of(data)
    assert text_of(page.locator(".sc-fact--cost dd")).startswith(data["totals"]["cost"]["text"])
    assert text_of(page.locator(".sc-materials tfoot td")) == data["totals"]["cost"]["text"]
    assert text_of(page.locator(".sc-fact--size dd")) == " × ".join(
        f"{data['overall'][axis]['text']} {word}"
        for axis, word in (("width", "wide"), ("depth", "deep"), ("height", "high"))
    )
    for step in data["steps"]:
        assert step["title"] == text_of(page.locator(f"#step-{step['number']}"))


def test_every_plan_and_size_tells_the_engines_numbers(browser, served, root, site):
    """On each page of each plan, lists and cost are those of the `plan.json` beside it."""
    beside = sorted(site.glob("plans/**/plan.json"))
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()

    assert len(beside) >= 12
    for path in beside:
        data = json.loads(path.read_text("utf-8"))
        page.goto(served.url + path.parent.relative_to(site).as_posix() + "/", wait_until="domcontentloaded")

        assert read_lists(page) == lists_of(data), path
        assert text_of(page.locator(".sc-fact--cost dd")).startswith(data["totals"]["cost"]["text"]), path
    context.close()


def test_the_catalog_shows_every_plan(page, served, site):
    """Each plan has a card with its picture, cost and size, and the card leads to it."""
    page.goto(served.url + "plans/")
    slugs = sorted(path.parent.name for path in site.glob("plans/*/plan.json"))
    cards = page.locator(".sc-card")

    assert sorted(card.locator("h2 a").get_attribute("href").strip("/") for card in cards.all()) == slugs
    for card in cards.all():
        slug = card.locator("h2 a").get_attribute("href")
        data = json.loads((site / "plans" / slug / "plan.json").read_text("utf-8"))

        assert data["totals"]["cost"]["text"] in text_of(card)
        assert data["overall"]["width"]["text"] in text_of(card)
        assert card.locator(".sc-picture img").evaluate("img => img.complete && img.naturalWidth > 0")
    cards.first.click()
    page.wait_for_url(f"**/plans/{slugs[0]}/")


def test_a_phone_shows_what_matters_first(browser, served):
    """On a phone picture, cost, size and tools stand on the first screen, and nothing scrolls sideways."""
    page = browser.new_page(viewport=PHONE)
    page.goto(served.url + "plans/entry-bench/")
    page.locator(".sc-picture img").evaluate("img => img.decode()")

    for wanted in (".sc-picture img", ".sc-fact--cost", ".sc-fact--size", ".sc-fact--tools"):
        box = page.locator(wanted).bounding_box()
        assert box is not None
        assert box["y"] + box["height"] <= PHONE["height"], wanted
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
    page.close()


def test_ticks_survive_a_reload(page, served):
    """What is ticked off in the aisle is still ticked after the page is loaded again, for this plan alone."""
    page.goto(served.url + "plans/entry-bench/")
    box = page.locator(".sc-materials input").first
    box.check()
    page.reload()

    assert box.is_checked()
    assert not page.locator(".sc-materials input").nth(1).is_checked()

    box.uncheck()
    page.reload()

    assert not box.is_checked()


def test_everything_reads_without_scripts(browser, served, root):
    """With JavaScript off, lists, pictures and offered sizes are all there."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(served.url + "plans/entry-bench/")
    page.get_by_role("link", name="width 60 in").click()

    assert read_lists(page) == lists_of(shown(root, "entry-bench", "--size", "width=60in"))
    context.close()


def test_opened_as_a_file_the_offered_sizes_work(browser, site):
    """From a disk, links lead to pages and not to folders (only the theme's search needs a server)."""
    page = browser.new_page()
    page.goto((site / "plans" / "index.html").as_uri())
    page.get_by_role("link", name="Ferry Steps entry bench").click()
    page.get_by_role("link", name="width 60 in").click()

    assert page.url.endswith("/plans/entry-bench/width-60in/index.html")
    assert "60 in wide" in text_of(page.locator(".sc-fact--size dd"))
    page.close()


def test_nothing_is_asked_of_strangers(browser, served):
    """Home, catalog, plan and search load from the site alone, and nothing is missing."""
    page = browser.new_page()
    asked: list[str] = []
    lost: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.on("response", lambda response: response.status >= 400 and lost.append(response.url))
    for path in ("", "plans/", "plans/entry-bench/", "plans/entry-bench/width-36in/"):
        page.goto(served.url + path, wait_until="networkidle")
    search(page, "bookcase", "plans/")
    page.close()

    assert [url for url in asked if not url.startswith((served.url, "data:", "blob:"))] == []
    assert lost == []


def test_paper_holds_the_plan_and_nothing_else(browser, served):
    """Printed, a page names plan, size and day of the prices, and shows no navigation."""
    page = browser.new_page()
    page.goto(served.url + "plans/entry-bench/")
    page.emulate_media(media="print")

    assert page.locator("h1").is_visible()
    assert "48 in wide" in text_of(page.locator(".sc-print"))
    assert "prices of 20" in text_of(page.locator(".sc-print"))
    for hidden in (".md-header", ".md-footer", ".sc-sizes", ".sc-crumbs", ".md-sidebar"):
        assert not any(one.is_visible() for one in page.locator(hidden).all()), hidden
    page.close()


def test_the_printed_catalog_tears_no_card(browser, served):
    """Printed, the catalog is its cards, each on one sheet; what narrows it down stays on the screen."""
    page = browser.new_page()
    page.goto(served.url + "plans/")
    page.emulate_media(media="print")

    assert page.locator(".sc-card").first.is_visible()
    assert not page.locator(".sc-find").is_visible()
    inside = "cards => cards.map(card => getComputedStyle(card).breakInside)"
    assert set(page.locator(".sc-card").evaluate_all(inside)) == {"avoid"}
    page.close()
