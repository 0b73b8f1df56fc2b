"""Measures that no line end parts."""

from __future__ import annotations

import re

NO_BREAK_SPACE = "\u00a0"
_UNITS = "in|ft|mm|cm|m|lb|kg|g|fl oz|qt|ml|l|bd ft|sq ft|cu ft|F|C|deg"
_MEASURE = re.compile(rf"(?<=\d) (?=\d+/\d|(?:{_UNITS})\b)")
_DOUBLE = re.compile(r"\b(bd|sq|cu|fl) (?=ft\b|oz\b)")


def hold(words: str) -> str:
    """Return words in which no line ends inside a measure, such as `15 1/2 in` or `37.5 bd ft`."""
    return _DOUBLE.sub(rf"\1{NO_BREAK_SPACE}", _MEASURE.sub(NO_BREAK_SPACE, words))
