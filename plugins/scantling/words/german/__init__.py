"""German: the site's words, as joiners say them."""

from __future__ import annotations

from scantling.words.german.angles import ANGLES
from scantling.words.german.buying import BUYING
from scantling.words.german.cautions import CAUTIONS
from scantling.words.german.checks import CHECKS
from scantling.words.german.cutting_up import CUTTING_UP
from scantling.words.german.drawers import DRAWERS
from scantling.words.german.findings import FINDINGS
from scantling.words.german.finishing import FINISHING
from scantling.words.german.laying_out import LAYING_OUT
from scantling.words.german.live import LIVE
from scantling.words.german.making import MAKING
from scantling.words.german.numbers import NUMBERS
from scantling.words.german.pages import PAGES
from scantling.words.german.prices import PRICES
from scantling.words.german.publishing import PUBLISHING
from scantling.words.german.reading import READING
from scantling.words.german.trade import TRADE
from scantling.words.german.wood import WOOD
from scantling.words.language import Language

TABLES = (
    PAGES,
    LIVE,
    MAKING,
    PRICES,
    CAUTIONS,
    TRADE,
    PUBLISHING,
    BUYING,
    CUTTING_UP,
    LAYING_OUT,
    ANGLES,
    DRAWERS,
    WOOD,
    FINISHING,
    NUMBERS,
    CHECKS,
    FINDINGS,
    READING,
)
"""The tables, each for a part of what a site says; no wording stands in two."""
GERMAN = Language(
    "de", "Deutsch", "de-DE", ",", ".", {key: told for table in TABLES for key, told in table.items()}
)
"""The language."""

__all__ = ["GERMAN", "TABLES"]
