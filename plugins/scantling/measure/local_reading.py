"""Reading numbers with the marks of the language that is spoken: `1,5` in German."""

from __future__ import annotations

import re
from functools import lru_cache

from scantling.fault import Fault, Faulty, Place
from scantling.words import Language, say, spoken


def in_plain_marks(text: str) -> str:
    """Return a reader's text with a point before the decimals and nothing between thousands.

    A point is understood as well where it can only stand before decimals, as in `61.20`: so addresses that
    were made in another language stay good. Text in a language that writes a point is returned as it is.

    Raises:
        Faulty: for a number that can be read in two ways, such as `1.200` in German.
    """
    language = spoken()
    if language.decimal == ".":
        return text
    grouped, doubtful, decimal = _patterns(language.decimal, language.thousands)
    text = grouped.sub(lambda found: found[0].replace(language.thousands, ""), text)
    found = doubtful.search(text)
    if found is not None:
        _two_ways(found, language)
    return decimal.sub(".", text)


@lru_cache(maxsize=4)
def _patterns(decimal: str, thousands: str) -> tuple[re.Pattern[str], re.Pattern[str], re.Pattern[str]]:
    comma, point = re.escape(decimal), re.escape(thousands)
    group = rf"(?<![\d{comma}{point}])[1-9]\d{{0,2}}(?:{point}\d{{3}})"
    return (
        re.compile(rf"{group}+(?={comma}\d)|{group}{{2,}}(?!\d)"),
        re.compile(rf"{group}(?![\d{comma}{point}])"),
        re.compile(rf"(?<=\d){comma}(?=\d)"),
    )


def _two_ways(found: re.Match[str], language: Language) -> None:
    number = found[0]
    message = say("{number} can be read in two ways", number=number)
    whole, part = number.replace(language.thousands, ""), number.replace(language.thousands, language.decimal)
    help_line = say("write {whole} or {part}", whole=whole, part=part)
    raise Faulty([Fault("two-ways", message, Place(start=found.start(), end=found.end()), help_line)])
