"""A plan in a post of the same site: its card, or what to buy for it, as they are now."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.pages.addresses import moved
from scantling.pages.framed import frame, frame_script
from scantling.pages.html import escape, tag
from scantling.words import say


@dataclass(frozen=True, slots=True)
class PostCard:
    """What a post may show of a plan."""

    slug: str
    title: str
    """On one line, not escaped."""
    card: str
    """The card of the catalog, its addresses as they are there."""


def card_in_post(plan: PostCard, catalog: str) -> str:
    """Return the plan's card as HTML.

    Args:
        catalog: the address of the catalog from the post, ending in a slash.
    """
    card = moved(plan.card, lambda address: catalog + address)
    return tag("section", card, class_="sc-card sc-in-post", data_search_exclude="true")


def materials_in_post(plan: PostCard, catalog: str) -> str:
    """Return a frame with the plan's picture and what to buy for it, and a link for who sees no frame.

    Args:
        catalog: the address of the catalog from the post, ending in a slash.
    """
    source = f"{catalog}{plan.slug}/embed/"
    shown = frame(source, say("{plan}: what it takes", plan=plan.title), class_="sc-in-post")
    link = tag("p", tag("a", escape(plan.title), href=f"{catalog}{plan.slug}/"))
    return f"<section>{shown}{link}{frame_script(source)}</section>"
