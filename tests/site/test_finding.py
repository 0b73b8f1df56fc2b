"""Narrowing a catalog down, in a real browser, on pages of made-up plans."""

from __future__ import annotations

from urllib.parse import parse_qsl

import pytest

from scantling.pages.finding import Finding
from tests.support.many_plans import catalog_html, made_up

pytestmark = pytest.mark.browser
FEW, MANY = 60, 1_000


@pytest.fixture(scope="module")
def catalogs(tmp_path_factory, serve_folder):
    """Return the address of a folder with a small and a large catalog."""
    folder = tmp_path_factory.mktemp("catalogs")
    for name, count in (("few", FEW), ("many", MANY)):
        (folder / f"{name}.html").write_text(catalog_html(count), "utf-8")
    return serve_folder(folder).url


def shown(page) -> list[str]:
    """Return the titles of the cards that are seen, in their order."""
    return page.eval_on_selector_all(
        ".sc-card:not([hidden]) h2", "found => found.map((one) => one.textContent)"
    )


def fitting(keep, count: int = FEW) -> list[Finding]:
    """Return the made-up plans that a reader wants, reckoned here without the page."""
    return [found for number in range(count) if keep(found := made_up(number))]


def tick(page, name: str, word: str) -> None:
    """Open a group of choices, if it is closed, and tick one or take its tick away."""
    box = page.locator(f'input[name="{name}"][value="{word}"]')
    if not box.is_visible():
        page.locator("details", has=box).locator("summary").click()
    box.click()


def test_choices_combine_and_stand_in_the_address(page, catalogs):
    """Either of two rooms, with a skill, a budget and a width: in the cards, in words, in the address."""
    page.goto(catalogs + "few.html")
    for room in ("entry", "garden"):
        tick(page, "room", room)
    tick(page, "skill", "first project")
    page.select_option('[name="budget"]', "300")
    page.select_option('[name="width"]', "36in")
    wanted = fitting(
        lambda found: (
            found.room in {"entry", "garden"}
            and found.skill == "first project"
            and found.cents <= 300_00
            and found.least_width is not None
            and found.least_width <= 36_000
        )
    )

    assert 0 < len(wanted) < FEW
    assert shown(page) == [found.title for found in wanted]
    assert page.inner_text("[data-say]") == f"{len(wanted)} of {FEW} plans"
    assert parse_qsl(page.evaluate("location.search.slice(1)")) == [
        ("room", "entry"),
        ("room", "garden"),
        ("skill", "first project"),
        ("budget", "300"),
        ("width", "36in"),
    ]

    address = page.evaluate("location.href")
    page.goto("about:blank")
    page.goto(address)

    assert shown(page) == [found.title for found in wanted]

    page.click("[data-clear]")

    assert len(shown(page)) == FEW
    assert page.evaluate("location.search.slice(1)") == ""


def test_an_old_address_says_which_words_are_gone(page, catalogs):
    """A tag that no plan has any more is told of, as letters, until the reader chooses anew."""
    page.goto(catalogs + "few.html?tag=%3Cb%3Eold%3C%2Fb%3E&room=entry")
    wanted = [found.title for found in fitting(lambda found: found.room == "entry")]

    assert shown(page) == wanted
    assert page.inner_text("[data-say]") == (
        f"{len(wanted)} of {FEW} plans. Nothing here is called '<b>old</b>' any more."
    )

    tick(page, "room", "garden")

    assert "any more" not in page.inner_text("[data-say]")


def test_a_tool_that_is_missing_takes_its_plans_away(page, catalogs):
    """Without a router its plans go; without a brad nailer those that a hammer does as well stay."""
    page.goto(catalogs + "few.html")
    tick(page, "have", "router")
    tick(page, "have", "brad nailer")
    wanted = [found.title for found in fitting(lambda found: ("router",) not in found.tools)]

    assert shown(page) == wanted
    without = [("without", "brad nailer"), ("without", "router")]
    assert parse_qsl(page.evaluate("location.search.slice(1)")) == without

    tick(page, "have", "hammer")

    assert shown(page) == [
        found.title
        for found in fitting(lambda found: not {("router",), ("brad nailer", "hammer")} & set(found.tools))
    ]

    page.click('[data-none="have"]')
    tick(page, "have", "saw")

    assert parse_qsl(page.evaluate("location.search.slice(1)")) == [("have", "saw")]
    assert shown(page) == [found.title for found in fitting(lambda found: found.tools == (("saw",),))]


def test_each_choice_counts_what_it_would_leave(page, catalogs):
    """With one room chosen, skills count within it, and other rooms go on counting without it."""
    page.goto(catalogs + "few.html")
    tick(page, "room", "kitchen")
    counts = dict(
        page.eval_on_selector_all(
            ".sc-find label:has(input)",
            "found => found.map((one) => [one.control.value, one.querySelector('small').textContent])",
        )
    )

    def count(keep) -> str:
        return str(len(fitting(keep)))

    assert counts["garden"] == count(lambda found: found.room == "garden")
    assert counts["experienced"] == count(
        lambda found: found.room == "kitchen" and found.skill == "experienced"
    )
    assert counts["plane"] == count(lambda found: found.room == "kitchen" and ("plane",) in found.tools)
    option = page.locator('[name="sheets"] option[value="1"]').text_content()
    assert option == f"1 at most ({count(lambda found: found.room == 'kitchen' and found.sheets <= 1)})"


@pytest.mark.parametrize(
    ("order", "key"),
    [
        ("cost", lambda found: found.cents),
        ("width", lambda found: (found.width is None, found.width or 0)),
        ("new", lambda found: [-int(part) for part in found.revised.split("-")]),
        ("title", lambda found: found.title),
    ],
)
def test_cards_stand_in_the_order_that_is_asked_for(page, catalogs, order, key):
    """By cost, width, day of the last revision and title; equals as they were listed."""
    page.goto(f"{catalogs}few.html?order={order}")

    assert shown(page) == [found.title for found in sorted(fitting(lambda _: True), key=key)]


def test_nothing_that_fits_is_said(page, catalogs):
    """Where no plan is left a screen reader hears of it as well; an unknown choice is left alone."""
    page.goto(catalogs + "few.html?tag=tag+1&tag=no+such&budget=7&skill=experienced&have=plane")

    assert shown(page) == []
    assert page.inner_text('[role="status"][aria-live="polite"]').startswith("No plan fits")


def test_all_is_done_by_key(page, catalogs):
    """Tab leads to a group, Enter opens it, Tab and Space tick its first choice."""
    page.goto(catalogs + "few.html")
    page.locator("summary").first.focus()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.press("Space")

    assert parse_qsl(page.evaluate("location.search.slice(1)")) == [("room", "bedroom")]
    assert len(shown(page)) == FEW // 5


def test_without_a_script_every_plan_is_listed(browser, catalogs):
    """Without JavaScript the choices are not seen, and all cards are."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(catalogs + "few.html")

    assert page.locator(".sc-card:visible").count() == FEW
    assert not page.locator("form.sc-find").is_visible()
    context.close()


TIME_EACH = """async () => {
  const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  const took = {};
  const change = async (name, act) => {
    await frame();
    const start = performance.now();
    act();
    document.body.getBoundingClientRect();
    took[name] = performance.now() - start;
  };
  const box = (name, word) => document.querySelector(`input[name="${name}"][value="${word}"]`);
  const pick = (name, value) => {
    const select = document.querySelector(`select[name="${name}"]`);
    select.value = value;
    select.dispatchEvent(new Event("change", { bubbles: true }));
  };
  for (const [name, word] of [
    ["room", "entry"], ["room", "garden"], ["skill", "experienced"], ["time", "a weekend"],
    ["material", "Lumber"], ["have", "router"], ["tag", "tag 1"],
  ]) {
    await change(`${name} ${word} on`, () => box(name, word).click());
    await change(`${name} ${word} off`, () => box(name, word).click());
  }
  for (const value of ["150", ""]) await change(`budget ${value}`, () => pick("budget", value));
  for (const value of ["24in", ""]) await change(`width ${value}`, () => pick("width", value));
  for (const value of ["cost", "new", ""]) await change(`order ${value}`, () => pick("order", value));
  return took;
}"""
AT_ONCE = 100
"""Milliseconds within which an answer seems to come at once."""


def test_a_thousand_plans_answer_at_once(page, catalogs):
    """Every change on a page of 1,000 cards, layout included, is done within a tenth of a second."""
    page.goto(catalogs + "many.html")

    assert page.locator(".sc-card").count() == MANY

    took = page.evaluate(TIME_EACH)
    for _ in range(4):  # other work shares the machine: what was slow once is tried again
        if max(took.values()) >= AT_ONCE:
            again = page.evaluate(TIME_EACH)
            took = {name: min(time, again[name]) for name, time in took.items()}
    slow = {name: time for name, time in took.items() if time >= AT_ONCE}

    assert slow == {}
    assert len(shown(page)) == MANY
