"""Plans named by their titles, each a link to its page, in lines that know a plan by its folder."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from scantling.pages.html import escape, tag

_HELD = re.compile("\ue000([^\ue001]*)\ue001")
"""A plan's folder between two signs that no text has: what a line holds until it is HTML."""


@dataclass(frozen=True, slots=True)
class PlanNames:
    """The plans of a catalog as a page one folder below the site's root names them."""

    titles: Mapping[str, str]
    """By folder; a plan that is not there any more is called by its folder, without a link."""
    folder: str
    """Where the plans stand on the site."""

    def link(self, slug: str) -> str:
        """Return a plan's title as a link, as HTML."""
        if slug not in self.titles:
            return escape(slug.replace("-", " "))
        return tag("a", escape(self.titles[slug] or slug), href=f"../{self.folder}/{slug}/")

    def held(self, slug: str) -> str:
        """Return what stands for a plan in a line of plain text until `filled` is asked."""
        return f"\ue000{slug}\ue001"

    def filled(self, line: str) -> str:
        """Return a line of plain text as HTML, with the links in their places."""
        return _HELD.sub(lambda held: self.link(held[1]), escape(line))
