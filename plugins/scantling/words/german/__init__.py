"""German: the site's words, as German joiners say them."""

from __future__ import annotations

from scantling.words.language import Language

GERMAN = Language("de", "Deutsch", "de-DE", ",", ".", {})
