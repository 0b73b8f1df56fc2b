"""Words that no line end parts: a measure, a count and what is counted, the number of a board."""

from __future__ import annotations

import re

NO_BREAK_SPACE = "\u00a0"
"""Where no line ends."""
_UNITS = "in⁴?|ft|mm[²⁴]?|cm|m[²³]?|lb|psi|N|kg|g|fl oz|qt|ml|l|bd ft|sq ft|cu ft|°F|°C|deg"
_HELD = re.compile(
    rf"(?<=\d) (?=\d+/\d|[×%]|(?:{_UNITS})\b)"
    r"|(?<=\d ×) "  # 4 × wood screw
    r"|(?<=\bno\.) (?=\d)|(?<=\bNr\.) (?=\d)"
    r"|(?<=\d) (?=altogether\b)"
    r"| (?=·)"  # no line begins with what parts two facts
    r"|(?<=\b(?:bd|sq|cu|fl)) (?=(?:ft|oz)\b)"
)


def hold(words: str) -> str:
    """Return words in which no line ends inside a measure, such as `15 1/2 in` or `37.5 bd ft`.

    Nor does one end between a count and what is counted (`4 × wood screw`, `1x6 no. 2`), nor begin with
    the dot between two facts.
    """
    return _HELD.sub(NO_BREAK_SPACE, words)
