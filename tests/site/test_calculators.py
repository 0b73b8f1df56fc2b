"""The calculators in a real browser: live answers, addresses, faults, and the page without scripts."""

from __future__ import annotations

import html
import re

import pytest

from scantling.calculators import SLUGS, run
from scantling.measure import Display
from scantling.pages.calculator_fragment import answer_html
from tests.support.whole_page import violations

pytestmark = pytest.mark.browser

ANSWER = '[data-fragment="answer"]'
ASK = """async (slugs) => {
  const live = document.querySelector('script[src*="live.js"]').src;
  const engine = await import(live.replace("live.js", "engine.js"));
  const root = document.querySelector("[data-live]");
  const shop = new URL(root.dataset.shop, location.href).href;
  const site = { engine: root.dataset.engine, shop, display: JSON.parse(root.dataset.display), plans: {} };
  const found = {};
  for (const calculator of slugs) {
    const ask = () => engine.ask({ ask: "calculate", calculator, chosen: {} }, site);
    const answer = await ask();
    let best = Infinity;
    for (let i = 0; i < 7; i++) {
      const begin = performance.now();
      await ask();
      best = Math.min(best, performance.now() - begin);
    }
    found[calculator] = [best, answer.fragments.answer];
  }
  return found;
}"""


def wait_for(page, answer):
    """Wait until the answer says so."""
    page.wait_for_function(
        """(words) => document.querySelector("[data-fragment=answer]").innerText
            .replaceAll("\\u00a0", " ").includes(words)""",
        arg=answer,
    )


def words(fragment):
    """Return what a person reads of a piece of HTML."""
    return " ".join(html.unescape(re.sub(r"<[^>]*>", " ", fragment)).split())


@pytest.mark.timeout(300)
def test_every_answer_is_the_builds_own_and_quick(page, served):
    """Each usual answer in the browser has the words of the build, and a warm one lets nobody wait."""
    page.goto(served.url + "calculators/strips/")
    page.wait_for_selector("[data-live]:not([inert])")
    found = page.evaluate(ASK, list(SLUGS))

    for slug in SLUGS:
        assert words(found[slug][1]) == words(answer_html(run(slug, {}), lambda drawing: drawing.file)), slug
    assert {slug: round(best) for slug, (best, _) in found.items() if best > 250} == {}


def test_what_is_typed_is_answered_and_kept_in_the_address(page, served):
    """Typing changes answer and address; the address alone brings the answer back."""
    page.goto(served.url + "calculators/equal-spaces/")
    page.wait_for_selector("[data-live]:not([inert])")
    page.fill('[data-name="opening"]', "40 in")
    page.press('[data-name="opening"]', "Tab")
    wait_for(page, "40 in")
    address = page.url
    there = words(page.inner_html(ANSWER))

    assert address.endswith("?opening=40+in")
    assert not page.is_visible("[data-calc-story]")
    page.goto("about:blank")
    page.goto(address)
    wait_for(page, "40 in")
    assert words(page.inner_html(ANSWER)) == there


def test_millimetres_are_answered_in_millimetres(page, served):
    """The choice of units is the engine's own display."""
    page.goto(served.url + "calculators/slats/?units=mm")
    page.wait_for_function("document.querySelector('[data-fragment=answer]').innerText.includes('mm')")
    example = dict(run("slats", {}).calculator.example.inputs)
    wanted = answer_html(run("slats", example, Display("mm")), lambda drawing: drawing.file)

    assert words(page.inner_html(ANSWER)) == words(wanted)


@pytest.mark.parametrize(
    ("slug", "field", "inches", "metric", "answers"),
    [
        ("finish", "coverage", "400", "10", ("1.11 qt", "1.03 l")),
        ("moisture", "temperature", "68 °F", "20 °C", ("10.1%", "10.1%")),
    ],
)
def test_the_example_changes_with_the_units(page, served, slug, field, inches, metric, answers):
    """What stands as the example has it is written in the unit that is shown."""
    page.goto(f"{served.url}calculators/{slug}/")
    page.wait_for_selector("[data-live]:not([inert])")
    for units, value, answer in (("mm", metric, answers[1]), ("in", inches, answers[0])):
        page.locator(".sc-units select").select_option(units)
        page.wait_for_function(
            "([field, value]) => document.querySelector(`[data-name=${field}]`).value === value",
            arg=[field, value],
        )
        wait_for(page, answer)
        assert page.evaluate("location.search") == ""
        assert "°" not in value or value in page.inner_text("[data-calc-story]").replace(
            "\N{NO-BREAK SPACE}", " "
        )


def test_how_lengths_are_shown_is_asked_where_there_are_any(page, served):
    """Nobody is asked for the unit of lengths where none is asked for or answered."""
    page.goto(served.url + "calculators/moisture/")
    page.wait_for_selector("[data-live]:not([inert])")
    assert page.locator("[data-live] [data-name=units]").count() == 0
    page.goto(served.url + "calculators/slats/")
    assert page.locator("[data-live] [data-name=units]").count() == 1


def test_a_fault_is_told_at_its_field(page, served):
    """What cannot be is told beside its field, which is marked; the answer before it stays."""
    page.goto(served.url + "calculators/strips/")
    page.wait_for_selector("[data-live]:not([inert])")
    before = page.inner_html(ANSWER)
    page.fill('[data-name="kerf"]', "2 in")
    page.press('[data-name="kerf"]', "Tab")
    page.wait_for_selector('[data-fault="input kerf"]:visible')

    assert "The nearest that works is 1/2 in." in page.inner_text('[data-fault="input kerf"]')
    assert page.get_attribute('[data-name="kerf"]', "aria-invalid") == "true"
    assert page.inner_html(ANSWER) == before


def test_without_scripts_the_worked_example_stands(browser, served):
    """A reader without JavaScript sees example, answer, picture, formula and source, and no dead fields."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(served.url + "calculators/brace/")

    assert page.is_visible("[data-calc-story]")
    assert not page.is_visible("[data-live]")
    assert "46 3/4 in" in words(page.inner_html(ANSWER))
    assert page.locator(f"{ANSWER} img").first.evaluate("image => image.naturalWidth") > 0
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [390, 1280])
@pytest.mark.parametrize("path", ["calculators/", "calculators/sheet-yield/", "calculators/drawer/"])
def test_axe_finds_nothing(browser, served, path, width, scheme):
    """No violation of axe-core's rules, and nothing wider than a phone."""
    page = browser.new_page(viewport={"width": width, "height": 900}, color_scheme=scheme)
    page.goto(served.url + path)
    page.wait_for_timeout(300)
    found = violations(page)
    wide = page.evaluate("document.documentElement.scrollWidth")
    page.close()

    assert found == []
    assert wide <= width
