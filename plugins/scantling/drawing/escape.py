"""The one place where words from a plan become safe to stand in a drawing."""

from __future__ import annotations

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


def escape(words: str) -> str:
    """Return words as they may stand between tags or inside an attribute.

    Characters that XML forbids are left out, line ends become spaces.
    """
    return words.translate(_FORBIDDEN | _ESCAPES)
