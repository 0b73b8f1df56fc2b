"""What the author of a site may set for the plugin in `mkdocs.yml`."""

from __future__ import annotations

from typing import Literal

from mkdocs.config import base
from mkdocs.config import config_options as c

from scantling.words import LANGUAGES


class ScantlingConfig(base.Config):  # type: ignore[no-untyped-call]
    """Options of the plugin."""

    enabled = c.Type(bool, default=True)
    """Whether it does anything."""
    plans = c.Type(str, default="plans")
    """The folder of plans and the shop file, beside `mkdocs.yml`; also where they stand on the site."""
    title = c.Type(str, default="Plans")
    """The heading of the catalog page."""
    intro = c.Optional(c.Type(str))
    """A sentence below it."""
    units: c.Choice[Literal["in", "mm"]] = c.Choice(("in", "mm"), default="in")
    """What lengths are shown in."""
    fraction = c.Choice((2, 4, 8, 16, 32, 64), default=16)
    """The finest fraction of an inch that is shown."""
    language = c.Optional(c.Choice(LANGUAGES))
    """The language of the site's own words; if not said, that of the theme where its words are there."""
    style = c.Type(bool, default=True)
    """Whether pages get the notebook look; without it they take the theme's."""
    live = c.Type(bool, default=True)
    """Whether readers can choose a size of their own, worked out in their browser."""
    paper = c.Type(bool, default=True)
    """Whether a build makes printable PDFs; a preview never does."""
    link_cards = c.Type(bool, default=True)
    """Whether a build makes the pictures that links to pages show elsewhere; it takes `site_url`."""
    feed = c.Type(bool, default=True)
    """Whether readers can follow the site's plans and posts; it takes `site_url`."""
    keep_prices = c.Type(bool, default=True)
    """Whether a build keeps its prices in the folder of plans, for the report after the next change."""
    cache = c.Type(str, default=".cache/scantling")
    """The folder, beside `mkdocs.yml`, where results are remembered; empty to remember none."""
    workers = c.Type(int, default=0)
    """Processes that make plans side by side; 0 for one a core."""
    cluster = c.Type(str, default="")
    """Address of a dask scheduler that makes plans instead, `tcp://host:port`."""
