"""Writing a page's front matter."""

from __future__ import annotations

import yaml

from scantling.pages.finished import Page
from scantling.pages.pieces import whole


def with_front_matter(page: Page) -> str:
    """Return the page as a Markdown file with YAML front matter."""
    meta = yaml.safe_dump(dict(page.meta), allow_unicode=True, sort_keys=False, width=10_000)
    return f"---\n{meta}---\n\n{whole(page)}"


def in_front_matter(words: str) -> str:
    """Return words for front matter: on one line, safe where a host puts them into HTML as they are."""
    line = " ".join(words.split())
    return line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace('"', "&quot;")
