"""What a catalog becomes: pages and the files beside them, for any host."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from scantling.pages.content import Content, Kept
from scantling.pages.feed import Entry
from scantling.pages.in_post import PostCard
from scantling.pages.prose_link import ProseLink
from scantling.source import Diagnostic


@dataclass(frozen=True, slots=True)
class Page:
    """A page in Markdown."""

    path: str
    """Where it stands below the site's source, with forward slashes: `plans/bench/index.md`."""
    markdown: str
    """Without front matter."""
    meta: Mapping[str, Any]
    """Front matter; words in it are HTML already, since hosts put them into pages as they are."""
    search_words: tuple[str, ...] = ()
    """What a reader may look for; also on the page, under "Found under"."""
    made_from: str = ""
    """The author's file, from the folder above the plans, for an edit link; "" for none."""
    in_nav: bool = False
    pieces: tuple[str, ...] | Kept = ()
    """Large pieces of HTML, each with a mark in its place in `markdown`; see `set_aside`."""


@dataclass(frozen=True, slots=True)
class SideFile:
    """A file beside a page."""

    path: str
    source: Content

    @property
    def content(self) -> str | bytes:
        """Return what is in it."""
        return self.source if isinstance(self.source, str | bytes) else self.source.read()


@dataclass(frozen=True, slots=True)
class Finished:
    """A whole catalog, finished; with faults, whatever could be finished."""

    pages: tuple[Page, ...]
    files: tuple[SideFile, ...]
    diagnostics: tuple[Diagnostic, ...] = field(default=())
    cards: tuple[PostCard, ...] = ()
    """What posts may show of each plan."""
    entries: tuple[Entry, ...] = ()
    """What a feed tells of the plans."""
    links: tuple[ProseLink, ...] = ()
    """Where the prose of plans leads to on the site."""

    @property
    def faults(self) -> tuple[Diagnostic, ...]:
        """Return what keeps the catalog from being published."""
        return tuple(one for one in self.diagnostics if one.is_fault)
