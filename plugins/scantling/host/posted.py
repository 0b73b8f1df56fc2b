"""Pages with a date as entries of the feed: posts of the theme's blog, and what else an author dates."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import UTC, date, datetime
from html import unescape
from pathlib import Path
from typing import Any
from urllib.parse import urljoin

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.pages import Page

from scantling.pages import FEED, Entry, Site, atom, moved

_UNFED = ("script", "style", "iframe", "svg", "form", "h1")
"""What no feed reader shows, and the title, which an entry tells by itself."""


def entry_of(page: Page, html: str) -> Entry | None:
    """Return a page as an entry, or None for one without a date in its front matter or without an address.

    Args:
        html: the page's words as they were rendered.
    """
    created, updated = _days(page.meta.get("date"))
    whole = page.canonical_url
    if not created or not whole or page.meta.get("draft"):
        return None
    return Entry(
        path=page.url,
        title=unescape(str(page.title or "")),
        updated=updated or created,
        published=created,
        summary=str(page.meta.get("description") or ""),
        content=moved(html, lambda address: urljoin(whole, address), without=_UNFED).strip(),
        words=tuple(str(word) for word in page.meta.get("categories") or ()),
    )


def _days(written: Any) -> tuple[str, str]:
    """Return when a page was written and when it was changed, "" for what is not said."""
    if isinstance(written, Mapping):
        return _moment(written.get("created")), _moment(written.get("updated"))
    return _moment(written), ""


def _moment(day: Any) -> str:
    if isinstance(day, datetime):
        whole = day if day.tzinfo is not None else day.replace(tzinfo=UTC)
        return whole.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
    return day.isoformat() if isinstance(day, date) else ""


def write_feed(entries: Sequence[Entry], config: MkDocsConfig) -> None:
    """Write the feed of a site that was just built; none where it has nothing with a date."""
    path = Path(config.site_dir, FEED)
    if not entries:
        path.unlink(missing_ok=True)
        return
    site = Site(
        url=config.site_url or "",
        title=config.site_name,
        subtitle=config.site_description or "",
        author=config.site_author or "",
        rights=unescape(re.sub(r"<[^>]*>", "", config.copyright or "")),
    )
    path.write_bytes(atom(entries, site))
