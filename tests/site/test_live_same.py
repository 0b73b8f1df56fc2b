"""The same input gives the same answer: the browser's engine against the build's, byte for byte."""

from __future__ import annotations

from itertools import islice
from pathlib import Path

import pytest

from scantling.checks import sweep_choices
from scantling.fault import Faulty
from scantling.measure import Display, Length
from scantling.pages.data_file import data_file
from scantling.pages.live.choice import show, whole_choice
from scantling.plan import Choice, Plan, offered_choices
from scantling.report import report_on
from scantling.source import load_plan, load_shop
from tests.support.live_page import READY

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]
PLANS = Path(__file__).resolve().parents[2] / "plans"
SLUGS = sorted(path.parent.name for path in PLANS.glob("*/plan.md"))
LEAST = 50

ANSWERS = """async ([live, site, slug, choices]) => {
  const { ask } = await import(live + "engine.js");
  const answers = [];
  for (const chosen of choices) {
    const answer = await ask({ ask: "fit", slug, chosen, files: true, part: "words" }, site);
    answers.push(answer.ok ? answer.files["plan.json"] : null);
  }
  return answers;
}"""


@pytest.fixture(scope="module")
def engine(browser, site, serve_folder):
    """Return a function that lets the engine in a real browser answer many choices of a plan."""
    home = serve_folder(site)
    page = browser.new_page()
    page.set_default_timeout(READY)
    page.goto(home.url + "trip/")
    digest = page.get_attribute("[data-live]", "data-engine")
    where = {
        "engine": digest,
        "shop": f"{home.url}plans/live-shop.json",
        "display": {"units": "in", "fraction": 16},
    }

    def answers(slug: str, choices: list[dict[str, str]]) -> list[str | None]:
        there = {**where, "plans": {slug: f"{home.url}plans/{slug}/live.json"}}
        return page.evaluate(ANSWERS, [f"{home.url}assets/scantling/live/", there, slug, choices])

    yield answers
    page.close()


def choices(plan: Plan) -> list[Choice]:
    """Return the usual size, the offered ones, the ends, a spread over the range, and awkward fractions."""
    swept = list(sweep_choices(plan))
    offered = [one.choice for one in offered_choices(plan)]
    spread = [*swept[:: max(1, len(swept) // (LEAST + 20))], *swept[-6:]]
    return [Choice({}, {}), *offered, *spread, *islice(awkward(plan), 12)]


def awkward(plan: Plan):
    """Yield sizes that no tape shows: odd 64ths, tenths of a millimetre."""
    for size in plan.sizes.values():
        if isinstance(size.usual, Length) and size.least < size.most:
            middle = (size.least + size.most) / 2
            for odd in (
                Length.of_inches(1) * 7 / 64,
                Length.of_inches(1) * 31 / 64,
                Length.of_mm(1) * 3 / 10,
            ):
                if size.least <= middle + odd <= size.most:
                    yield Choice({size.name: middle + odd}, {})


def built(fitter, choice: Choice) -> str | None:
    """Return what the build writes for a choice, or None where the plan does not work."""
    try:
        return data_file(report_on(fitter, choice), Display())
    except Faulty:
        return None


@pytest.mark.parametrize("slug", SLUGS)
def test_the_browser_answers_what_the_build_answers(engine, site, slug):
    """At 50 sizes and more of each demo plan, plan.json from the browser is that of the build."""
    shop = load_shop(PLANS / "shop.yml").shop
    fitter = load_plan(PLANS / slug / "plan.md", shop).fitter
    tried = choices(fitter.plan)
    asked = []
    for choice in tried:
        whole = whole_choice(fitter.plan, choice)
        sizes = {name: show(value, Display()) for name, value in whole.sizes.items()}
        asked.append({**sizes, **whole.options})

    answers = engine(slug, asked)

    assert answers[0] == (site / "plans" / slug / "plan.json").read_text("utf-8")
    compared = [(choice, answer) for choice, answer in zip(tried, answers, strict=True) if answer is not None]
    assert len({answer for _, answer in compared}) >= LEAST
    for choice, answer in compared:
        assert answer == built(fitter, choice), choice
