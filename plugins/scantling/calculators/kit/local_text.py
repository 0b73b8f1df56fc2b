"""What stands in a field until a reader types, written as the language that is spoken writes it."""

from __future__ import annotations

import re

from scantling.words import say, spoken

_POINT = re.compile(r"(?<=\d)\.(?=\d)")
_OF = re.compile(r"(?<=\d) of (?=\d)")


def local_text(text: str) -> str:
    """Return the text of an answer with the language's decimal mark, and its word for `4 of 720 mm`."""
    if spoken().decimal == ",":
        # a list whose items have commas of their own is easier to read with another sign between them
        text = _POINT.sub(",", text.replace(", ", "; "))
    return _OF.sub(say(" of "), text)
