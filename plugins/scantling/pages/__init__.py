"""The finished pages of a catalog: Markdown, fragments of HTML, side files and style. It knows no host.

The fragments lean on the engine alone, since a reader's browser runs them too; the rest (Markdown, files)
is loaded when it is first asked for. So no file in here may be called like a name of the door.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from scantling.pages.board_pictures import alike
from scantling.pages.drawings import Drawing, Drawings
from scantling.pages.facts import chosen_options, overall_size
from scantling.pages.fragments import FRAGMENTS, plan_drawings, plan_fragments
from scantling.pages.look import Look
from scantling.pages.words import Words, markdown_of, prose_of

if TYPE_CHECKING:
    from scantling.pages.addresses import moved
    from scantling.pages.all_sizes import PlanPages, plan_pages
    from scantling.pages.around_plan import around
    from scantling.pages.catalog import PAGE_MAKERS, PageMaker, PlanMade, gather_pages, make_pages
    from scantling.pages.choices import Choices
    from scantling.pages.content import Content, Kept, raw
    from scantling.pages.credit_line import credit
    from scantling.pages.drafting import Drafting
    from scantling.pages.faults import fault_page
    from scantling.pages.feed import FEED, Entry, Site, atom
    from scantling.pages.finished import Finished, Page, SideFile
    from scantling.pages.folder import write_folder
    from scantling.pages.front_matter import with_front_matter
    from scantling.pages.in_post import PostCard, card_in_post, materials_in_post
    from scantling.pages.link_card import LinkCard, draw_card, draw_card_with
    from scantling.pages.live.runtime import ready_engine
    from scantling.pages.live.site import LIVE_SCRIPTS, LIVE_STYLES, TRIP
    from scantling.pages.live.viewer import ready_viewer
    from scantling.pages.markdown_words import render_words
    from scantling.pages.photo_sizing import sized
    from scantling.pages.pieces import as_one, pieces_of, put_back, set_aside, whole
    from scantling.pages.price_list import prices_page
    from scantling.pages.prose_link import ProseLink, prose_links
    from scantling.pages.sections import SECTIONS
    from scantling.pages.spare_fonts import font_folder
    from scantling.pages.theme import (
        FEATURES,
        PALETTE,
        SCRIPTS,
        STYLES,
        TEMPLATES,
        THEME,
        palette,
        template_words,
    )

__all__ = [
    "FEATURES",
    "FEED",
    "FRAGMENTS",
    "LIVE_SCRIPTS",
    "LIVE_STYLES",
    "PAGE_MAKERS",
    "PALETTE",
    "SCRIPTS",
    "SECTIONS",
    "STYLES",
    "TEMPLATES",
    "THEME",
    "TRIP",
    "Choices",
    "Content",
    "Drafting",
    "Drawing",
    "Drawings",
    "Entry",
    "Finished",
    "Kept",
    "LinkCard",
    "Look",
    "Page",
    "PageMaker",
    "PlanMade",
    "PlanPages",
    "PostCard",
    "ProseLink",
    "SideFile",
    "Site",
    "Words",
    "alike",
    "around",
    "as_one",
    "atom",
    "card_in_post",
    "chosen_options",
    "credit",
    "draw_card",
    "draw_card_with",
    "fault_page",
    "font_folder",
    "gather_pages",
    "make_pages",
    "markdown_of",
    "materials_in_post",
    "moved",
    "overall_size",
    "palette",
    "pieces_of",
    "plan_drawings",
    "plan_fragments",
    "plan_pages",
    "prices_page",
    "prose_links",
    "prose_of",
    "put_back",
    "raw",
    "ready_engine",
    "ready_viewer",
    "render_words",
    "set_aside",
    "sized",
    "template_words",
    "whole",
    "with_front_matter",
    "write_folder",
]

_LATER = {
    "ProseLink": "prose_link",
    "prose_links": "prose_link",
    "TEMPLATES": "theme",
    "materials_in_post": "in_post",
    "card_in_post": "in_post",
    "PostCard": "in_post",
    "moved": "addresses",
    "atom": "feed",
    "Site": "feed",
    "Entry": "feed",
    "FEED": "feed",
    "draw_card": "link_card",
    "draw_card_with": "link_card",
    "LinkCard": "link_card",
    "PAGE_MAKERS": "catalog",
    "credit": "credit_line",
    "Choices": "choices",
    "Content": "content",
    "Drafting": "drafting",
    "Kept": "content",
    "PageMaker": "catalog",
    "PlanMade": "catalog",
    "gather_pages": "catalog",
    "PlanPages": "all_sizes",
    "plan_pages": "all_sizes",
    "around": "around_plan",
    "sized": "photo_sizing",
    "font_folder": "spare_fonts",
    "make_pages": "catalog",
    "fault_page": "faults",
    "Finished": "finished",
    "Page": "finished",
    "SideFile": "finished",
    "write_folder": "folder",
    "with_front_matter": "front_matter",
    "render_words": "markdown_words",
    "SECTIONS": "sections",
    "LIVE_SCRIPTS": "live.site",
    "LIVE_STYLES": "live.site",
    "TRIP": "live.site",
    "ready_engine": "live.runtime",
    "ready_viewer": "live.viewer",
    "as_one": "pieces",
    "pieces_of": "pieces",
    "put_back": "pieces",
    "set_aside": "pieces",
    "whole": "pieces",
    "raw": "content",
    "prices_page": "price_list",
    "FEATURES": "theme",
    "PALETTE": "theme",
    "SCRIPTS": "theme",
    "STYLES": "theme",
    "THEME": "theme",
    "palette": "theme",
    "template_words": "theme",
}


def __getattr__(name: str) -> Any:
    """Load what only a build needs when it is first asked for."""
    if name not in _LATER:
        raise AttributeError(name)
    return getattr(import_module(f"scantling.pages.{_LATER[name]}"), name)
