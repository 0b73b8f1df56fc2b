"""The words of scripts in the site's language: put into them at build, so that no reader waits for any."""

from __future__ import annotations

import json
import re

from scantling.words import ENGLISH, say, spoken

_TOLD = re.compile(r'(?<![\w.])t\(("(?:[^"\\\\]|\\\\.)*")')
"""`t("words")`, as scripts mark what a reader reads."""


def words_in(script: str) -> list[str]:
    """Return the English words that a script tells."""
    return [json.loads(found) for found in _TOLD.findall(script)]


def in_language(script: str) -> str:
    """Return a script with its words in the language that is spoken."""
    if spoken() is ENGLISH:
        return script
    return _TOLD.sub(lambda found: "t(" + json.dumps(say(json.loads(found[1])), ensure_ascii=False), script)


def known_words(script: str) -> str | None:
    """Return what a script is handed that every language shares: its words as JSON; None in English."""
    if spoken() is ENGLISH:
        return None
    return json.dumps({words: say(words) for words in words_in(script)}, ensure_ascii=False)
