"""The one place where words from a plan become safe to stand in a drawing."""

from __future__ import annotations

import re

_ESCAPES = {ord("&"): "&amp;", ord("<"): "&lt;", ord(">"): "&gt;", ord('"'): "&quot;", ord("'"): "&#39;"}
_ESCAPES |= dict.fromkeys((9, 10, 13), " ")
_FORBIDDEN = dict.fromkeys(
    [
        *(code for code in range(0x20) if code not in {0x09, 0x0A, 0x0D}),
        *range(0xD800, 0xE000),
        0xFFFE,
        0xFFFF,
    ]
)
_TABLE = _FORBIDDEN | _ESCAPES
_SPECIAL = re.compile("[&<>\"'\x00-\x1f\ud800-\udfff\ufffe\uffff]")
"""Most words have none of these, and are as safe as they come."""


def escape(words: str) -> str:
    """Return words as they may stand between tags or inside an attribute.

    Characters that XML forbids are left out, line ends become spaces.
    """
    return words.translate(_TABLE) if _SPECIAL.search(words) else words
