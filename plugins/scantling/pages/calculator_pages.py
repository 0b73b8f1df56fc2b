"""The pages of the calculators: a list by question, and a page for each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby
from urllib.parse import quote_plus

from scantling.calculators import SUBJECTS, Answer, Calculator, calculators, run_example
from scantling.measure import Display, Length, hold, other_display, plain_money, write_fraction, write_money
from scantling.pages.calculator_form import calculator_form, terminal_command
from scantling.pages.calculator_fragment import answer_drawings, answer_html
from scantling.pages.check_page import link_to_check
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.front_matter import in_front_matter
from scantling.pages.html import escape, tag
from scantling.pages.linked_plan import Ladder, LinkedPlan
from scantling.pages.markdown_words import escape_markdown
from scantling.shop import Shop
from scantling.words import mark, say

FOLDER, SCALING = "calculators", "scale-plan"
INTRO = mark(
    "Questions that come up at the bench, away from any plan, each with its picture, its formula "
    "and where that is from."
)


def calculator_pages(shop: Shop | None, plans: Iterable[LinkedPlan], choices: Choices) -> Finished:
    """Return the list of calculators and a page for each, with the drawings beside it."""
    known = tuple(plans)
    every = calculators()
    currency = shop.currency if shop is not None else "$"
    made = [_page(one, known, choices, currency) for one in every]
    pages = (_index(every), *(page for page, _ in made))
    return Finished(pages, tuple(file for _, files in made for file in files))


def _index(every: tuple[Calculator, ...]) -> Page:
    blocks = [f"# {say('Calculators')}", say(INTRO)]
    for subject, group in groupby(
        sorted(every, key=lambda one: list(SUBJECTS).index(one.subject)), key=lambda one: one.subject
    ):
        blocks.append(f"## {say(SUBJECTS[subject])}")
        blocks.append(
            "\n".join(
                f"- [{say(one.question)}]({one.slug}/index.md) {escape_markdown(say(one.title))}"
                for one in group
            )
        )
    meta = {"title": say("Calculators"), "description": in_front_matter(say(INTRO))}
    return Page(f"{FOLDER}/index.md", "\n\n".join(blocks) + "\n", meta, in_nav=True)


def _page(
    one: Calculator, plans: tuple[LinkedPlan, ...], choices: Choices, currency: str
) -> tuple[Page, list[SideFile]]:
    answer = run_example(one.slug, choices.display, currency)
    form = ""
    if choices.engine:
        form = calculator_form(
            one,
            folder=choices.folder,
            engine=choices.engine,
            display=choices.display,
            currency=currency,
        )
    title = say(one.title)
    found = (title, *(word.strip() for word in say(one.words).split(",")))
    shown = tag(
        "div", answer_html(answer, lambda drawing: drawing.file), data_fragment="answer", class_="sc-answer"
    )
    blocks = [
        f"# {escape_markdown(title)}",
        f"**{escape_markdown(say(one.question))}**",
        form,
        f"## {say('The answer')}",
        tag(
            "p",
            tag("b", say("A worked example. ")) + _story(one, answer, choices.display, currency),
            data_calc_story=True,
        ),
        tag("section", shown, data_search_exclude="true"),
        *_behind(one),
        *(_costs(plans, choices, currency) if one.slug == SCALING else _links(one, plans, choices.folder)),
        tag(
            "div",
            tag("p", say("Found under: {words}", words=escape(", ".join(found))), class_="sc-found"),
            class_="sc-ending",
        ),
    ]
    meta: dict[str, object] = {
        "title": in_front_matter(title),
        "description": in_front_matter(say(one.question)),
        "tags": [say("calculator"), in_front_matter(_as_tag(SUBJECTS[one.subject]))],
    }
    path = f"{FOLDER}/{one.slug}"
    if choices.link_cards:
        meta["card_drawing"] = f"{path}/{answer_drawings(answer)[0].file}"
    page = Page(f"{path}/index.md", "\n\n".join(block for block in blocks if block) + "\n", meta, found)
    return page, [SideFile(f"{path}/{drawing.file}", drawing.svg) for drawing in answer_drawings(answer)]


def _story(one: Calculator, answer: Answer, display: Display, currency: str) -> str:
    """Return the words of the example; for readers of the other unit, those with their numbers as well."""
    words = hold(answer.story())
    other = hold(run_example(one.slug, other_display(display), currency).story())
    return escape(words) if other == words else tag("span", escape(words), data_other=other)


def _as_tag(subject: str) -> str:
    """Return a subject as a tag: in lower case, where the language does not write nouns large."""
    told = say(subject)
    return told.lower() if told == subject else told


def _behind(one: Calculator) -> Iterator[str]:
    """Yield the formula, how far it can be trusted, its source, and what can hurt."""
    yield f"## {say('The formula')}"
    yield "\n".join(f"- {escape_markdown(line)}" for line in one.told_formula())
    yield escape_markdown(say(one.exactness))
    yield f"## {say('Where it comes from')}"
    yield "\n".join(f"- {escape_markdown(line)}" for line in one.told_source())
    if one.caution:
        yield f"## {say('Take care')}"
        yield tag("div", tag("p", escape(say(one.caution))), class_="sc-caution")
    yield say("In a terminal: ") + terminal_command(one)


def _links(one: Calculator, plans: tuple[LinkedPlan, ...], folder: str) -> Iterator[str]:
    fits = [plan for plan in plans if any(plan.has(feature) for feature in one.features)]
    if fits:
        yield f"## {say('Plans that ask this question')}"
        yield "\n".join(
            f"- [{escape_markdown(plan.title)}](../../{folder}/{plan.slug}/index.md)" for plan in fits
        )
    if one.checks:
        asked = " ".join(link_to_check(name, "../../") for name in one.checks)
        yield say(
            "Every plan here is checked with the same formula, at each of its sizes: {checks}", checks=asked
        )


def _costs(plans: tuple[LinkedPlan, ...], choices: Choices, currency: str) -> Iterator[str]:
    """Yield the plans whose cost at several sizes is known, each with a link that fills the fields."""
    lines = [
        f"- [{escape_markdown(plan.title)}](../../{choices.folder}/{plan.slug}/index.md), "
        f"{escape_markdown(ladder.name)}: {_ladder(plan, ladder, choices, currency)}"
        for plan in plans
        for ladder in plan.ladders
    ]
    if lines:
        yield f"## {say('Plans that come in several sizes')}"
        yield "\n".join(lines)


def _ladder(plan: LinkedPlan, ladder: Ladder, choices: Choices, currency: str) -> str:
    sizes = [(choices.display.length(size), write_money(cost, currency)) for size, cost in ladder.costs]
    words = escape(", ".join(say("{size} for {cost}", size=size, cost=cost) for size, cost in sizes))
    if not choices.engine:
        return words
    usual = _typed(ladder.usual)
    pairs = (f"{_typed(size)} = {plain_money(cost)}" for size, cost in ladder.costs)
    costs = ", ".join(pairs)
    query = f"?usual={quote_plus(usual)}&wanted={quote_plus(usual)}&costs={quote_plus(costs)}"
    whole = say("put these in: {plan}, {size}", plan=plan.title, size=ladder.name)
    return f"{words} ({tag('a', say('put these in'), href=query, aria_label=whole)})"


def _typed(length: Length) -> str:
    """Return a length as a reader would type it, exactly."""
    return f"{write_fraction(length.inches)} in"
