"""The catalog: a card for each plan."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.pages.choices import Choices
from scantling.pages.finished import Page
from scantling.pages.front_matter import in_front_matter
from scantling.pages.html import tag
from scantling.pages.markdown_words import escape_markdown


def catalog_page(cards: Sequence[str], choices: Choices) -> Page:
    """Return the page with a card for each plan, as HTML."""
    inner = "".join(tag("li", card, class_="sc-card") for card in cards)
    block = tag("section", tag("ul", inner, class_="sc-cards"), data_search_exclude="true")
    meta = {
        "title": in_front_matter(choices.title),
        "description": in_front_matter(choices.intro),
        "template": "scantling-catalog.html",
        "hide": ["toc", "navigation"],
    }
    words = f"# {escape_markdown(choices.title)}\n\n{escape_markdown(choices.intro)}\n\n{block}\n"
    return Page(f"{choices.folder}/index.md", words, meta, in_nav=True)
