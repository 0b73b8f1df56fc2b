"""Reading lists as a carpenter writes them on the back of a board: `4 of 22 1/2 in, 2 of 30 in`."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import NoReturn, TypeVar

from scantling.calculators.kit.local_text import local_text
from scantling.fault import Fault, Faulty, Place
from scantling.formula import Value, read_formula
from scantling.measure import Length, LongUnit, Money, read_length, read_money
from scantling.words import say

LONGEST_LIST = 1_000
MOST_EACH = 200
_APART = re.compile(r"[^,;\n]+")
_COUNT = re.compile(r"\s*(\d{1,4})\s*(?:of|@|pcs|off|mal|stück|stk\.?)\s+(?=\S)", re.IGNORECASE)
_BY = re.compile(r"\s*(?:[x×X]|\bby\b)\s*")
_PRICE = re.compile(r"\s*(?P<length>.+?)\s*(?:=|:|\bat\b)\s*(?P<price>[^=:]+?)\s*\Z")
_UNIT = re.compile(r"\b(mm|cm|m|in|ft)\b|(\")")

_CURRENCY = r"(?:[$¢-¥₠-⃀]|[A-Z]{3}\b|kr\b\.?)"
_SIGN = re.compile(rf"\A\s*{_CURRENCY}\s*(?=\d)|(?<=\d)\s*{_CURRENCY}\s*\Z")

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Batch:
    """So many pieces of one length."""

    count: int
    length: Length


@dataclass(frozen=True, slots=True)
class Panel:
    """So many rectangles of one size."""

    count: int
    length: Length
    """Along the grain."""
    width: Length


@dataclass(frozen=True, slots=True)
class Offer:
    """What one board of a length costs, or one size of a plan."""

    length: Length
    price: Money


def read_lengths(text: str, unit: LongUnit) -> tuple[Batch, ...]:
    """Read lengths, each with a count before it or alone: `4 of 22 1/2 in, 30 in`.

    Raises:
        Faulty: with every item that is no length.
    """
    return _each(text, say("lengths"), lambda item: _batch(item, unit))


def read_rectangles(text: str, unit: LongUnit) -> tuple[Panel, ...]:
    """Read rectangles, length along the grain first: `4 of 30 x 12 in, 8 x 5 in`.

    Raises:
        Faulty: with every item that is no rectangle.
    """
    return _each(text, say("rectangles"), lambda item: _rectangle(item, unit))


def read_prices(text: str, unit: LongUnit) -> tuple[Offer, ...]:
    """Read lengths with a price each: `8 ft = 4.28, 10 ft = 5.60`.

    Raises:
        Faulty: with every item that is no length and price.
    """
    return _each(text, say("prices"), lambda item: _offer(item, unit))


def read_formula_text(text: str, unit: LongUnit) -> tuple[str, Value]:
    """Read a sum of lengths and numbers and return its words and its worth.

    Raises:
        Faulty: where it cannot be read or reckoned.
    """
    del unit
    if not text.strip():
        _wrong(
            "empty",
            say("nothing is written here; {wanted} is wanted", wanted=say("a sum")),
            text,
            say("write 3 1/2 in + 3/4 in"),
        )
    if len(text) > LONGEST_LIST:
        _wrong("too-long", say("this sum is too long"), text, say("write a shorter one"))
    return local_text(" ".join(text.split())), read_formula(text).evaluate({})


def _each(text: str, noun: str, read: Callable[[str], T]) -> tuple[T, ...]:
    """Read item after item, collecting what is wrong with each."""
    if len(text) > LONGEST_LIST:
        _wrong(
            "too-long",
            say("this is more than {most} letters", most=LONGEST_LIST),
            text,
            say("leave some out"),
        )
    found: list[T] = []
    faults: list[Fault] = []
    for start, item in _items(text):
        try:
            found.append(read(item))
        except Faulty as faulty:
            faults += [fault.under(Place(start=start, end=start + len(item))) for fault in faulty.faults]
    if faults:
        raise Faulty(faults)
    if not found:
        _wrong("empty", say("nothing is written here; {noun} are wanted", noun=noun), text, "")
    return tuple(found)


def _items(text: str) -> Iterator[tuple[int, str]]:
    for match in _APART.finditer(text):
        if match[0].strip():
            yield match.start(), match[0]


def _counted(item: str) -> tuple[int, str]:
    match = _COUNT.match(item)
    if not match:
        return 1, item
    count = int(match[1])
    if not 1 <= count <= MOST_EACH:
        _wrong(
            "how-many",
            say("{count} is no count that works", count=count),
            item,
            say("from 1 to {most} of each", most=MOST_EACH),
        )
    return count, item[match.end() :]


def _positive(text: str, unit: LongUnit) -> Length:
    length = read_length(text, unit)
    if length <= Length(0):
        _wrong(
            "too-small",
            say("{text} is too small", text=text.strip()),
            text,
            say("write a length above nothing"),
        )
    return length


def _batch(item: str, unit: LongUnit) -> Batch:
    count, rest = _counted(item)
    sides = _BY.split(rest)
    if len(sides) == 2 and sides[0].strip().isdigit() and count == 1:
        count, rest = _counted(f"{sides[0].strip()} of {sides[1]}")
    return Batch(count, _positive(rest, unit))


def _rectangle(item: str, unit: LongUnit) -> Panel:
    count, rest = _counted(item)
    sides = _BY.split(rest.strip())
    if len(sides) == 3 and sides[0].strip().isdigit():
        count = _counted(f"{sides[0].strip()} of {sides[1]}")[0]
        sides = sides[1:]
    if len(sides) != 2:
        _wrong(
            "not-a-rectangle",
            say("'{item}' is no rectangle", item=item.strip()[:40]),
            item,
            say("write 4 of 30 x 12 in"),
        )
    said = _UNIT.search(rest)
    named: LongUnit = unit if said is None else _named(said)
    return Panel(count, _positive(sides[0], named), _positive(sides[1], named))


def _named(match: re.Match[str]) -> LongUnit:
    units: tuple[LongUnit, ...] = ("mm", "cm", "m", "ft")
    return next((unit for unit in units if match[1] == unit), "in")


def without_currency(text: str) -> str:
    """Return a price without the sign or the code of its currency: the site has one, whoever types it."""
    return _SIGN.sub("", text)


def _offer(item: str, unit: LongUnit) -> Offer:
    match = _PRICE.match(item)
    if not match:
        _wrong(
            "not-a-price",
            say("'{item}' has no price", item=item.strip()[:40]),
            item,
            say("write 8 ft = 4.28"),
        )
    return Offer(_positive(match["length"], unit), read_money(without_currency(match["price"])))


def _wrong(code: str, message: str, text: str, mend: str) -> NoReturn:
    raise Faulty([Fault(code, message, Place(start=0, end=len(text)), mend)])
