"""What others read of a site besides its pages: posts that show plans, the feed, the pictures of links."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File
from mkdocs.structure.pages import Page
from mkdocs.utils.templates import TemplateContext

from scantling.build import Cache
from scantling.host.page_cards import PageCards
from scantling.host.posted import entry_of, write_feed
from scantling.host.posts import PlansInPosts
from scantling.pages import FEED, Entry, Finished

_ROBOTS = "User-agent: *\nAllow: /\n\nSitemap: {}sitemap.xml\n"


class Publishing:
    """Looks on while the host makes a site, and adds to it."""

    def __init__(self, complain: Callable[[str], None]) -> None:
        self._complain = complain
        self._posts = PlansInPosts(self._of_page)
        self._page = ""
        self._entries: list[Entry] = []
        self._cards = PageCards()
        self.has_feed = False
        self.has_cards = False

    def prepare(self, config: MkDocsConfig, *, feed: bool, cards: bool) -> None:
        """Let posts show plans.

        Args:
            feed: whether the author wants a feed; it takes an address of the site.
            cards: whether pictures of links are wanted; they take one as well.
        """
        self.has_feed = feed and bool(config.site_url)
        self.has_cards = cards and bool(config.site_url)
        config.markdown_extensions.append(self._posts)  # type: ignore[arg-type]

    def begin(self, finished: Finished) -> None:
        """Learn which plans there are."""
        self._posts.cards = {plan.slug: plan for plan in finished.cards}
        self._entries = list(finished.entries)

    def files(self, config: MkDocsConfig) -> list[File]:
        """Return what is there besides the pages; pages may link to the feed, which is written at the end."""
        made = [File.generated(config, FEED, content="")] if self.has_feed else []
        if urlsplit(config.site_url or "").path == "/":
            # robots read it at the root of a host alone
            made.append(File.generated(config, "robots.txt", content=_ROBOTS.format(config.site_url)))
        return made

    def open(self, page: Page) -> None:
        """Remember which page is being made, to name it where something is wrong in it."""
        self._page = page.file.src_uri

    def read(self, page: Page, html: str) -> None:
        """Take a page with a date into the feed."""
        entry = entry_of(page, html) if self.has_feed else None
        if entry is not None:
            self._entries.append(entry)

    def dress(self, page: Page, context: TemplateContext, config: MkDocsConfig) -> None:
        """Tell the head of a page where the feed is, and which picture links to it show."""
        if self.has_cards:
            self._cards.give(page, config)
        context["feed"] = FEED if self.has_feed and self._entries else ""  # type: ignore[typeddict-unknown-key]

    def finish(self, config: MkDocsConfig, cache: Cache | None) -> None:
        """Write the feed and the pictures of a site that was just built."""
        if self.has_feed:
            write_feed(self._entries, config)
        if self.has_cards:
            self._cards.write(Path(config.site_dir), cache or Cache(None))

    def _of_page(self, message: str) -> None:
        self._complain(f"{self._page}: {message}")
