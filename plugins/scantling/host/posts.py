"""Plans in posts: a link to a plan that stands alone and says so becomes its card, or its materials list.

    [Ferry Steps entry bench](../../plans/entry-bench/index.md){ .plan-card }
    [Ferry Steps entry bench](../../plans/entry-bench/index.md){ .plan-materials }

The link stays one that the host checks, and that any other reader of the Markdown can follow.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from xml.etree.ElementTree import Element

from markdown import Markdown
from markdown.extensions import Extension
from markdown.treeprocessors import Treeprocessor

from scantling.pages import PostCard, card_in_post, materials_in_post

SHOWN: Mapping[str, Callable[[PostCard, str], str]] = {
    "plan-card": card_in_post,
    "plan-materials": materials_in_post,
}
"""What a link may ask for by its class."""
_PLAN = re.compile(r"(?P<catalog>(?:.*/)?)(?P<slug>[^/]+)/(?:index\.html)?")
_AFTER_LINKS = -5
"""The host turns links between files into addresses at 0."""
_EXCERPT = "excerpt"
"""What the theme's blog calls its own step, where it shows the beginning of a post on another page."""


class PlansInPosts(Extension):
    """Let a page show a plan.

    Attributes:
        cards: each plan that may be shown, by its folder.
        complain: told of a link that asks for a plan and leads to none.
    """

    def __init__(self, complain: Callable[[str], None]) -> None:
        super().__init__()
        self.cards: dict[str, PostCard] = {}
        self.complain = complain

    def extendMarkdown(self, md: Markdown) -> None:  # noqa: N802 - the name is the base class's
        """Look at the links of a page once they are addresses."""
        md.treeprocessors.register(_Shower(md, self), "plans-in-posts", _AFTER_LINKS)


class _Shower(Treeprocessor):
    def __init__(self, md: Markdown, plans: PlansInPosts) -> None:
        super().__init__(md)
        self._markdown = md
        self._plans = plans

    def run(self, root: Element) -> None:
        """Change the tree in place; at the beginning of a post on another page a link stays a link."""
        if _EXCERPT in self._markdown.treeprocessors:
            return
        for paragraph in root.iter("p"):
            link = _alone(paragraph)
            asked = next((name for name in SHOWN if link is not None and name in _classes(link)), None)
            if link is not None and asked is not None:
                self._show(paragraph, link.get("href", ""), asked)

    def _show(self, paragraph: Element, address: str, asked: str) -> None:
        found = _PLAN.fullmatch(address)
        plan = self._plans.cards.get(found["slug"]) if found else None
        if found is None or plan is None:
            self._plans.complain(f"'{{ .{asked} }}' stands at a link to no plan: {address}")
            return
        html = SHOWN[asked](plan, found["catalog"])
        paragraph.clear()
        paragraph.text = self._markdown.htmlStash.store(html)


def _alone(paragraph: Element) -> Element | None:
    """Return the link that is all of a paragraph, if that is so."""
    words = (paragraph.text or "") + "".join(child.tail or "" for child in paragraph)
    return paragraph[0] if len(paragraph) == 1 and paragraph[0].tag == "a" and not words.strip() else None


def _classes(link: Element) -> list[str]:
    return link.get("class", "").split()
