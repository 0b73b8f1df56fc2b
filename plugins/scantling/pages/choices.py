"""What the author of a site chooses about its pages."""

from __future__ import annotations

from dataclasses import dataclass, field

from scantling.measure import Display
from scantling.words import mark

TITLE = mark("Plans")
INTRO = mark("Every plan comes in several sizes, each with its materials, its cut list and its diagrams.")


@dataclass(frozen=True, slots=True)
class Choices:
    """What the author of a site chooses about its pages."""

    folder: str = "plans"
    """Where the plans stand on the site."""
    title: str = TITLE
    """Heading of the catalog page, in plain words."""
    intro: str = INTRO
    """A sentence below it, in plain words."""
    display: Display = field(default_factory=Display)
    """How lengths are written."""
    engine: str = ""
    """What works out other sizes in a reader's browser, by the digest of its files; "" for a site without."""
    viewer: str = ""
    """What turns a piece around in a reader's browser, by the digest of its files; "" for a site without."""
    papers: bool = False
    """Whether printable plans lie beside the pages, which then link to them."""
    language: str = "en"
    """The language of the site's own words, by its code; see `scantling.words`."""
    site_name: str = ""
    """What the site is called, in plain words."""
    link_cards: bool = False
    """Whether a picture is made of each plan for links to it elsewhere; it takes `site_url` to be found."""
    site_url: str = ""
    """Where the site is on the web; "" if nowhere. Printed plans lead back to it."""
