"""The pictures that links to pages show elsewhere: a plan has its own, an author's page one of its words.

Pages that come with the product, such as the calculators, share one for the whole site.
"""

from __future__ import annotations

from html import unescape
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.pages import Page

from scantling.build import Cache, code_digest, digest
from scantling.pages import LinkCard, draw_card

FOLDER = "assets/scantling/cards"
"""Where they lie, from the root of the site."""
KIND = "link-cards"


class PageCards:
    """The cards of one build."""

    def __init__(self) -> None:
        self._cards: dict[str, LinkCard] = {}

    def give(self, page: Page, config: MkDocsConfig) -> None:
        """Name a card in a page's front matter, unless it names a picture itself."""
        if page.meta.get("image"):
            return
        card = _card(page, config)
        path = f"{FOLDER}/{digest(card.title, card.site, *card.facts)[:16]}.png"
        self._cards[path] = card
        page.meta["image"] = path
        page.meta["image_words"] = card.title

    def write(self, site: Path, cache: Cache) -> None:
        """Write the cards that pages name; one whose words are those of an earlier build is found again."""
        for path, card in self._cards.items():
            name = digest(code_digest(), card.title, card.site, *card.facts)
            made = cache.get(KIND, name)
            if made is None:
                made = draw_card(card)
                cache.put(KIND, name, made)
            place = site / path
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(made)
        self._cards.clear()


def _card(page: Page, config: MkDocsConfig) -> LinkCard:
    is_own = not page.file.generated_by and not page.is_homepage
    title = unescape(str(page.meta.get("title") or page.title or "")) if is_own else ""
    words = page.meta.get("description") if is_own else config.site_description
    facts = tuple(str(words).split("\n")) if words else ()
    return LinkCard(title or config.site_name, config.site_name if title else "", facts)
