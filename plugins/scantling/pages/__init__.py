"""The finished pages of a catalog: Markdown, fragments of HTML, side files and style. It knows no host.

The fragments lean on the engine alone, since a reader's browser runs them too; the rest (Markdown, files)
is loaded when it is first asked for.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

from scantling.pages.drawings import Drawing
from scantling.pages.fragments import FRAGMENTS, plan_drawings, plan_fragments
from scantling.pages.look import Look
from scantling.pages.words import Words, markdown_of, prose_of

if TYPE_CHECKING:
    from scantling.pages.catalog import PAGE_MAKERS, PageMaker, Remembered, make_pages
    from scantling.pages.choices import Choices
    from scantling.pages.fault_page import fault_page
    from scantling.pages.finished import Finished, Page, SideFile
    from scantling.pages.folder import write_folder
    from scantling.pages.front_matter import with_front_matter
    from scantling.pages.markdown_words import render_words
    from scantling.pages.plan_page import SECTIONS
    from scantling.pages.theme import FEATURES, PALETTE, SCRIPTS, STYLES, THEME

__all__ = [
    "FEATURES",
    "FRAGMENTS",
    "PAGE_MAKERS",
    "PALETTE",
    "SCRIPTS",
    "SECTIONS",
    "STYLES",
    "THEME",
    "Choices",
    "Drawing",
    "Finished",
    "Look",
    "Page",
    "PageMaker",
    "Remembered",
    "SideFile",
    "Words",
    "fault_page",
    "make_pages",
    "markdown_of",
    "plan_drawings",
    "plan_fragments",
    "prose_of",
    "render_words",
    "with_front_matter",
    "write_folder",
]

_LATER = {
    "PAGE_MAKERS": "catalog",
    "Choices": "choices",
    "PageMaker": "catalog",
    "Remembered": "catalog",
    "make_pages": "catalog",
    "fault_page": "fault_page",
    "Finished": "finished",
    "Page": "finished",
    "SideFile": "finished",
    "write_folder": "folder",
    "with_front_matter": "front_matter",
    "render_words": "markdown_words",
    "SECTIONS": "plan_page",
    "FEATURES": "theme",
    "PALETTE": "theme",
    "SCRIPTS": "theme",
    "STYLES": "theme",
    "THEME": "theme",
}


def __getattr__(name: str) -> Any:
    """Load what only a build needs when it is first asked for."""
    if name not in _LATER:
        raise AttributeError(name)
    return getattr(import_module(f"scantling.pages.{_LATER[name]}"), name)
