"""German: the site's words, as joiners say them."""

from __future__ import annotations

from scantling.words.german.cautions import CAUTIONS
from scantling.words.german.live import LIVE
from scantling.words.german.making import MAKING
from scantling.words.german.pages import PAGES
from scantling.words.german.prices import PRICES
from scantling.words.german.publishing import PUBLISHING
from scantling.words.german.trade import TRADE
from scantling.words.language import Language

TABLES = (PAGES, LIVE, MAKING, PRICES, CAUTIONS, TRADE, PUBLISHING)
"""The tables, each for a part of what a site says; no wording stands in two."""
GERMAN = Language(
    "de", "Deutsch", "de-DE", ",", ".", {key: told for table in TABLES for key, told in table.items()}
)
"""The language."""

__all__ = ["GERMAN", "TABLES"]
