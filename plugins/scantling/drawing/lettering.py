"""How much room words take, near enough to place them without a font at hand."""

from __future__ import annotations

import re
from functools import lru_cache

_NARROW = dict.fromkeys("iljI.,:;'|! ", 0.32) | dict.fromkeys("tfr()[]/", 0.4)
_WIDE = dict.fromkeys("mwMW@%", 0.95) | dict.fromkeys("ABCDEFGHKLNOPQRSTUVXYZ&", 0.72)
_FIGURES = dict.fromkeys("0123456789", 0.64) | {"×": 0.84, "–": 0.55}
_WIDTHS = _NARROW | _WIDE | _FIGURES
_USUAL = 0.61
"""Widths as parts of the size, those of the widest letters in common use: a machine may have no others."""
_BOLD = 1.15
"""How much wider bold letters run."""


_KEPT = re.compile(r"(?<!\d) |(?<=\d) (?!\d+/\d|in\b|ft\b|mm\b)")
"""Where a line may end: not inside a measure such as 15 1/2 in."""


def text_width(words: str, size: float, *, bold: bool = False) -> float:
    """Return about how wide words of a size are, rather too much than too little."""
    return size * _width(words) * (_BOLD if bold else 1.0)


@lru_cache(maxsize=2048)
def _width(words: str) -> float:
    """Return the width at size one; pictures of one plan show the same words again and again."""
    return sum(_WIDTHS.get(letter, _USUAL) for letter in words)


def shorten(words: str, size: float, room: float) -> str:
    """Return the words, cut off with an ellipsis where they do not fit into `room`."""
    if text_width(words, size) <= room:
        return words
    kept = words
    while kept and text_width(kept + "…", size) > room:
        kept = kept[:-1].rstrip()
    return kept + "…" if kept else ""


def wrap(words: str, size: float, room: float) -> list[str]:
    """Return the words in lines that fit into `room`; a single word that does not is cut off."""
    lines: list[str] = []
    for word in _KEPT.split(" ".join(words.split())):
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(joined, size) <= room:
            lines[-1] = joined
        else:
            lines.append(shorten(word, size, room))
    return lines
