"""The languages that there are, loaded when they are first spoken."""

from __future__ import annotations

from functools import lru_cache

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.words.language import ENGLISH, Language

LANGUAGES = ("en", "de")
"""Their codes."""


@lru_cache(maxsize=8)
def language_of(code: str) -> Language:
    """Return a language by its code.

    Raises:
        Faulty: where the site's words are not there in it.
    """
    if code == "en":
        return ENGLISH
    if code == "de":
        from scantling.words.german import GERMAN  # noqa: PLC0415 - read by those who speak it alone

        return GERMAN
    help_line = did_you_mean(code, LANGUAGES, kind="languages")
    raise Faulty(
        [Fault("unknown-language", f"the site's words are not there in '{code}'", Place(), help_line)]
    )


def spoken_by(code: str) -> Language:
    """Return a language by its code, English for one that is not there."""
    return language_of(code) if code in LANGUAGES else ENGLISH
