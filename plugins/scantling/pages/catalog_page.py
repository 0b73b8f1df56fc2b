"""The catalog: a card for each plan, and what narrows them down."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.pages.catalog_filters import card_facts, filters
from scantling.pages.choices import INTRO, TITLE, Choices
from scantling.pages.finding import Finding
from scantling.pages.finished import Page
from scantling.pages.front_matter import in_front_matter
from scantling.pages.html import tag
from scantling.pages.markdown_words import escape_markdown
from scantling.pages.structured import item_list
from scantling.words import say

AT_ONCE = 4
"""Cards whose pictures are fetched at once; the others' when they come into sight."""


@dataclass(frozen=True, slots=True)
class Carded:
    """A plan's card, and what it is found by."""

    card: str
    finding: Finding


def catalog_page(cards: Sequence[Carded], choices: Choices, *, currency: str = "$") -> Page:
    """Return the page with a card for each plan, as HTML."""
    inner = "".join(_card(one, is_first=place < AT_ONCE) for place, one in enumerate(cards))
    title = say(TITLE) if choices.title == TITLE else choices.title
    intro = say(INTRO) if choices.intro == INTRO else choices.intro
    form = filters([one.finding for one in cards], choices.display, currency)
    if choices.engine:
        have = tag("a", say("What can I build from what I have?"), href="../from-stock/")
        form = tag("p", have, class_="sc-have") + form
    block = tag("section", form + tag("ul", inner, class_="sc-cards"), data_search_exclude="true")
    meta = {
        "title": in_front_matter(title),
        "description": in_front_matter(intro),
        "template": "scantling-catalog.html",
        "hide": ["toc", "navigation"],
        "structured": item_list([one.finding for one in cards], choices),
    }
    words = f"# {escape_markdown(title)}\n\n{escape_markdown(intro)}\n\n{block}\n"
    return Page(f"{choices.folder}/index.md", words, meta, in_nav=True)


def _card(one: Carded, *, is_first: bool) -> str:
    card = one.card.replace(' loading="lazy"', "", 1) if is_first else one.card
    return tag("li", card, class_="sc-card", **card_facts(one.finding))
