"""Does a number typed in the words stay true when the plan is resized?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Faulty, Place, Severity
from scantling.formula import Formula, Value
from scantling.measure import Length, read_length
from scantling.plan import FittedPart, Part, Prose, Quote
from scantling.shop import Shop

_NUMBER = r"\d+(?:[ -]\d+/\d+|/\d+|\.\d+)?"
_LENGTH = re.compile(
    rf"(?<![\w./–-])(?P<number>{_NUMBER})(?:\s*(?P<mark>[\"″'′])(?!\w)|\s*-?(?P<unit>inch(?:es)?|in|feet|foot|ft|mm|cm)\b)"
)
_NOT_A_UNIT = re.compile(
    r"\s+(?:each|every|the|a|an|one|both|all|any|its|their|his|her|your|this|that|these|those|front|place|line|turn|pairs?)\b"
)
"""What follows "in" where it is no inch: "2 in each rail"."""
_COUNT = r"(?<![\w./-])(?P<count>\d+)\s+(?:of\s+the\s+)?(?P<part>{names})(?:e?s)?\b"
_IN_NAMES = re.compile(rf"{_NUMBER}")


@dataclass(frozen=True, slots=True)
class Typed:
    """A number typed in prose."""

    text: str
    length: Length | None
    count: int
    part: str
    """The part that is counted, or "" for a length."""
    place: Place


def _examine(subject: Subject) -> Iterator[Finding]:
    typed = subject.once("typed numbers", _typed)
    if not typed:
        return
    known = _known(subject)
    rounded = {round(float(value.inches * 16)) for value in known}
    counts = _counts(subject)
    for one in typed:
        if one.length is not None:
            sixteenths = one.length.inches * 16
            if one.length in known or (sixteenths.denominator == 1 and int(sixteenths) in rounded):
                continue
            yield Finding(
                f"{one.text} is typed here, but no length of the plan is {one.text} at this size",
                one.place,
                f"quote the length by its name, or write {{{_written(one.length)}}} if it stays the same "
                "at every size",
            )
        elif one.part in counts and one.count not in counts[one.part]:
            count = subject.fitted.part(one.part)
            there = count.count if count else 0
            yield Finding(
                f"'{one.text}' is typed here, but there are {there} of '{one.part}'",
                one.place,
                f"write {{{one.part}.count}}",
            )


def _written(value: Length) -> str:
    number = value.inches
    whole, rest = divmod(number, 1)
    return f"{f'{whole} ' if whole and rest else whole or ''}{rest or ''} in".replace("  ", " ")


def _typed(subject: Subject) -> tuple[Typed, ...]:
    """Return every number typed in the words of a plan that can be resized."""
    plan = subject.plan
    if not plan.options and all(size.least == size.most for size in plan.sizes.values()):
        return ()
    proses = [plan.summary, plan.intro, *plan.cautions, *(part.note for part in plan.parts.values())]
    for step in plan.steps:
        proses += [step.title, step.text, *step.cautions]
    names = "|".join(re.escape(name) for name in sorted(plan.parts, key=len, reverse=True))
    counting = re.compile(_COUNT.format(names=names), re.IGNORECASE) if names else None
    return tuple(one for prose in proses for one in _in_prose(prose, counting, tuple(plan.parts)))


def _in_prose(prose: Prose, counting: re.Pattern[str] | None, parts: tuple[str, ...]) -> Iterator[Typed]:
    at = 0
    for piece in prose.pieces:
        if isinstance(piece, Quote):
            at = (piece.place.end or 0) - (prose.place.start or 0) + 1
            continue
        yield from _lengths(piece, at, prose.place)
        yield from _part_counts(piece, at, prose.place, counting, parts)
        at += len(piece)


def _lengths(text: str, at: int, place: Place) -> Iterator[Typed]:
    for found in _LENGTH.finditer(text):
        whole_inches = found["unit"] == "in" and found["number"].isdigit()
        if whole_inches and _NOT_A_UNIT.match(text, found.end()):
            continue
        try:
            value = read_length(found[0].replace("-inch", " inch").replace("-in", " in"))
        except Faulty:
            continue
        yield Typed(found[0], value, 0, "", place.part(at + found.start(), at + found.end()))


def _part_counts(
    text: str, at: int, place: Place, counting: re.Pattern[str] | None, parts: tuple[str, ...]
) -> Iterator[Typed]:
    for found in counting.finditer(text) if counting else ():
        part = next((name for name in parts if name.casefold() == found["part"].casefold()), "")
        here = place.part(at + found.start(), at + found.end())
        yield Typed(found[0], None, int(found["count"]), part, here)


def _counts(subject: Subject) -> dict[str, set[int]]:
    """Return the numbers that may stand before each part's name: all, its pieces, a step's share."""
    counts = {part.id: {part.count, part.count * part.blank.pieces} for part in subject.fitted.parts}
    for step in subject.fitted.steps:
        for use in step.uses:
            counts.setdefault(use.name, set()).add(use.count)
    return counts


def _known(subject: Subject) -> set[Length]:
    """Return every length of the plan at this size."""
    plan, values = subject.plan, subject.fitted.values
    named = (values.get(name) for name in (*plan.sizes, *plan.lengths))
    found = {value for value in named if isinstance(value, Length)}
    for part in subject.fitted.parts:
        found |= set(_of_part(part))
    found |= {join.depth for join in subject.fitted.joins if join.depth is not None}
    return found | subject.once("lengths of the shop", _of_shop) | subject.once("lengths written", _literals)


def _of_part(part: FittedPart) -> Iterator[Length]:
    yield from (part.length, part.width, part.thick, part.layer_thick, part.blank.along, part.blank.across)
    for work in part.work:
        yield from (one for one in (work.width, work.depth, work.length, work.from_end, work.apart) if one)
        if work.from_end is not None and work.apart is not None:
            yield from (work.from_end + work.apart * index for index in range(1, min(work.count or 1, 12)))


def _of_shop(subject: Subject) -> set[Length]:
    """Return what the stock and hardware that the plan names measure, and the numbers in their names."""
    shop, plan = subject.shop, subject.plan
    found = {shop.kerf}
    stocks = {name for part in plan.parts.values() for name in part.source.stocks if name in shop.stocks}
    for name in sorted(stocks):
        stock = shop.stocks[name]
        found |= {stock.thick, stock.widest, stock.varies, *_in_name(name)}
        found |= {side for sale in stock.sales for side in (sale.length, sale.width)}
    wares = {item.ware for item in subject.fitted.hardware} | set(plan.hardware) | _fasteners(subject)
    for name in sorted(wares):
        found |= {*_in_name(name), *_of_ware(shop, name)}
    return found


def _fasteners(subject: Subject) -> set[str]:
    return {use.name for step in subject.plan.steps for use in step.needs}


def _of_ware(shop: Shop, name: str) -> Iterator[Length]:
    ware = shop.wares.get(name)
    if ware is not None:
        yield from ware.clearances.values()
        if ware.long is not None:
            yield ware.long


def _in_name(name: str) -> Iterator[Length]:
    for found in _IN_NAMES.finditer(name):
        yield Length(sum((Fraction(word) for word in re.split(r"[ -]", found[0])), Fraction(0)))


def _literals(subject: Subject) -> set[Length]:
    """Return every length that the author typed in a formula."""
    plan = subject.plan
    formulas = [*plan.lengths.values(), *(one for part in plan.parts.values() for one in _formulas(part))]
    texts = (formula.text for formula in formulas if formula is not None)
    found: set[Length] = set()
    for text in texts:
        for match in _LENGTH.finditer(text):
            try:
                found.add(read_length(match[0]))
            except Faulty:
                continue
    return found | {
        value for size in plan.sizes.values() for value in _ends(size.usual) if size.least == size.most
    }


def _ends(value: Value) -> Iterator[Length]:
    if isinstance(value, Length):
        yield value


def _formulas(part: Part) -> Iterator[Formula | None]:
    yield from (
        part.length,
        part.width,
        part.thick,
        part.longer,
        part.wider,
        part.cut_to_fit,
        part.least_width,
    )
    for work in part.work:
        yield from (work.width, work.depth, work.length, work.from_end, work.apart)


NUMBER_IN_PROSE = Check(
    name="number-in-prose",
    group="Words",
    title="Does every number in the words belong to the plan?",
    meaning="“Cut it at 34 in” is wrong as soon as the plan is resized. A typed length must be a length "
    "of the "
    "plan at that size, or be written in braces, which says that it stays the same.",
    mend="quote the number by its name: {rail.length}",
    severity=Severity.WARNING,
    examine=_examine,
)
"""Compares lengths and counts typed in prose with those of the plan."""
