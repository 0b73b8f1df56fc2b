"""What a reader has at home, as they write it: "1 sheet 3/4 plywood", "six 2x4 8 ft"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.measure import Length, in_plain_marks, read_length
from scantling.shop.model import Shop, Stock
from scantling.words import say

MOST_LINES = 40
MOST_PIECES = 500
_NUMBERS = {"no": 0, "a": 1, "an": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_NUMBERS |= {"seven": 7, "eight": 8, "nine": 9, "ten": 10, "twelve": 12}
_BEFORE = re.compile(
    r"(?:(?P<count>[0-9]+|[a-z]+)(?:\s*[x×])?)??\s*"
    r"(?:sheets?|boards?|pieces?|lengths?|planks?|pickets?|platten?|bretter|brett|latten?|stück)?\s*(?:of)?",
)
"""What may stand before the name of a stock."""


@dataclass(frozen=True, slots=True)
class Owned:
    """So many pieces of one size of a stock."""

    stock: str
    length: Length
    width: Length
    count: int

    @property
    def size(self) -> str:
        """Return the size as a reader's settings write it."""
        return f"{self.length.inches} in x {self.width.inches} in"


def read_owned(text: str, shop: Shop) -> tuple[tuple[Owned, ...], tuple[Fault, ...]]:
    """Return what is understood of a list, parted by lines or commas, and a fault for each other line.

    A sheet without a size is a whole one, the largest that the shop sells; a board says how long it is.
    """
    found: list[Owned] = []
    faults: list[Fault] = []
    try:
        text = in_plain_marks(text)
    except Faulty as faulty:
        return (), faulty.faults
    lines = [line.strip() for line in re.split(r"[\n,;]", text)]
    for line in [line for line in lines if line][:MOST_LINES]:
        try:
            found += _line(line, shop)
        except Faulty as faulty:
            faults += faulty.faults
    return tuple(found), tuple(faults)


def _line(line: str, shop: Shop) -> Iterator[Owned]:
    stock, at = _stock(line, shop)
    count = _count(line[:at].strip())
    size = line[at + len(stock.key) :].strip(" :")
    length, width = _size(size, stock)
    if count:
        yield Owned(stock.key, length, width, count)


def _stock(line: str, shop: Shop) -> tuple[Stock, int]:
    """Return the stock that a line names, the longest name that fits, and where its name begins."""
    folded = line.casefold()
    for key in sorted(shop.stocks, key=len, reverse=True):
        found = re.search(rf"(?<![\w/]){re.escape(key.casefold())}(?![\w/])", folded)
        if found:
            return shop.stocks[key], found.start()
    name = re.sub(r"^[0-9]+\s*(?:[x×]\s+)?(?:sheets?|boards?|pieces?)?\s*(?:of\s+)?", "", line)
    message = say("there is no stock called '{name}'", name=name[:40])
    help_line = did_you_mean(name, shop.stocks, kind=say("stocks"), tell=say)
    raise Faulty([Fault("unknown-stock", message, Place(), help_line)])


def _count(words: str) -> int:
    found = _BEFORE.fullmatch(words.casefold())
    word = (found["count"] or "one") if found else ""
    count = _NUMBERS.get(word, int(word) if word.isdigit() and len(word) < 5 else MOST_PIECES + 1)
    if count > MOST_PIECES:
        message = say("'{words}' does not say how many", words=words[:40])
        raise Faulty([Fault("not-a-count", message, Place(), say("write it like: 6 2x4 8 ft"))])
    return count


def _size(text: str, stock: Stock) -> tuple[Length, Length]:
    if not text and stock.is_sheet:
        whole = max(stock.sales, key=lambda sale: (sale.length * sale.width, sale.id))
        return whole.length, whole.width
    sides = [read_length(part.strip()) for part in re.split(r"[x×]", text.casefold())] if text else []
    if len(sides) == 1 and stock.width is not None:
        sides.append(stock.width)
    if len(sides) != 2 or min(sides) <= Length(0):
        message = say("it is not said how long the {stock} is", stock=stock.key)
        if stock.is_sheet:
            message = say("'{size}' is no size of a sheet", size=text[:40])
        help_line = say("write it like: 1 {stock} 48 in x 24 in", stock=stock.key)
        if not stock.is_sheet:
            help_line = say("write it like: 6 {stock} 8 ft", stock=stock.key)
        raise Faulty([Fault("not-a-size", message, Place(), help_line)])
    return (max(sides), min(sides)) if stock.is_sheet else (sides[0], sides[1])
