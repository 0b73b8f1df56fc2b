"""The pictures that links to pages show elsewhere: a plan has its own, any other page one of its words.

A calculator's shows its drawing as well. Pages without a description share one for the whole site.
"""

from __future__ import annotations

from html import unescape
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.pages import Page

from scantling.build import Cache, code_digest, digest
from scantling.pages import LinkCard, draw_card, draw_card_with

FOLDER = "assets/scantling/cards"
"""Where they lie, from the root of the site."""
KIND = "link-cards"


class PageCards:
    """The cards of one build."""

    def __init__(self) -> None:
        self._cards: dict[str, tuple[LinkCard, str]] = {}
        """By path: what a card says, and the drawing on it, from the root of the site; "" for none."""

    def give(self, page: Page, config: MkDocsConfig) -> None:
        """Name a card in a page's front matter, unless it names a picture itself."""
        if page.meta.get("image"):
            return
        card, drawing = _card(page, config), str(page.meta.get("card_drawing") or "")
        path = f"{FOLDER}/{digest(card.title, card.site, drawing, *card.facts)[:16]}.png"
        self._cards[path] = card, drawing
        page.meta["image"] = path
        page.meta["image_words"] = card.title

    def write(self, site: Path, cache: Cache) -> None:
        """Write the cards that pages name; one that is as in an earlier build is found again."""
        for path, (card, drawing) in self._cards.items():
            svg = (site / drawing).read_bytes() if drawing else b""
            name = digest(code_digest(), card.title, card.site, svg, *card.facts)
            made = cache.get(KIND, name)
            if made is None:
                made = draw_card_with(card, svg) if svg else draw_card(card)
                cache.put(KIND, name, made)
            place = site / path
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(made)
        self._cards.clear()


def _card(page: Page, config: MkDocsConfig) -> LinkCard:
    made_without_words = page.file.generated_by and not page.meta.get("description")
    is_own = not made_without_words and not page.is_homepage
    title = unescape(str(page.meta.get("title") or page.title or "")) if is_own else ""
    words = page.meta.get("description") if is_own else config.site_description
    facts = tuple(str(words).split("\n")) if words else ()
    return LinkCard(title or config.site_name, config.site_name if title else "", facts)
