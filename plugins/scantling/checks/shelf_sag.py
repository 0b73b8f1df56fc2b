"""Does a shelf sag, loaded and in the long run?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import about, about_up, length, load_on_shelf
from scantling.checks.statics import CREEP, shelf_sag
from scantling.fault import Severity
from scantling.formula import Value
from scantling.measure import Length
from scantling.plan import FittedPart
from scantling.shop import WOODS, Shop, Wood, wood_named
from scantling.words import say

BOOKS = 50
"""Pounds on a square foot of a shelf for books (AWS edition 1, 2009, 1.2.21)."""
THINGS = 40
"""Pounds on a square foot of any other shelf (the same)."""
LIMIT = 144
"""The span divided by this is the sag that casework shelves are allowed (AWS edition 1, 1.2.21.3.1.1)."""
LOAD, SPAN = "shelf load", "span"
_SHELF = re.compile(r"\bshel(?:f|ves)\b")
_ABOUT_SHELVES = re.compile(
    r"\b(?:support|rail|slat rail|edge|edging|pin|back|trim|cleat|nosing|side|strip)s?\b"
)
_RAIL = re.compile(r"\b(?:rail|stretcher|bearer|cleat|apron|batten|runner)s?\b")
_BOOKS = re.compile(r"\bbook|\blibrar")


def _examine(subject: Subject) -> Iterator[Finding]:
    for part in subject.fitted.parts:
        if not is_shelf(part.id):
            continue
        wood = _wood(part, subject.shop)
        if wood is None:
            continue
        values = subject.fitted.values
        span = _named(values.get(f"{part.id} {SPAN}"), _between_supports(subject, part))
        load = _load(subject)
        at_once = shelf_sag(span, part.thick, Fraction(wood.stiffness), load)
        later = at_once * CREEP
        if later > span / LIMIT:
            yield _finding(part, span, later, load)


def is_shelf(name: str) -> bool:
    """Return whether a part's name says that it is a shelf, and not something on one."""
    words = name.casefold()
    found = _SHELF.search(words)
    return bool(found) and not _ABOUT_SHELVES.search(words[found.end() :] if found else "")


def _wood(part: FittedPart, shop: Shop) -> Wood | None:
    """Return the least stiff wood that a part may be cut from; None where none is known."""
    stocks = (shop.stocks[name] for name in part.part.source.stocks if name in shop.stocks)
    woods = [wood for stock in stocks if (wood := wood_named(stock.wood)) and wood.stiffness]
    return min(woods, key=lambda wood: wood.stiffness, default=None)


def _between_supports(subject: Subject, part: FittedPart) -> Length:
    """Return a shelf's length, or its width where it lies on two rails as long as itself."""
    for join in subject.fitted.joins:
        pair = join.join.first, join.join.second
        other = subject.fitted.part(pair[1] if pair[0] == part.id else pair[0]) if part.id in pair else None
        is_rail = other is not None and other.count > 1 and _RAIL.search(other.id.casefold())
        if other is not None and is_rail and _runs_along(part, other):
            return min(part.width, part.length)
    return part.length


def _runs_along(part: FittedPart, other: FittedPart) -> bool:
    """Return whether a rail lies along a shelf: as placed, or, without places, if it is about as long."""
    if part.placed and other.placed:
        return part.placed[0].axes[0] == other.placed[0].axes[0]
    return part.length * 3 <= other.length * 4 and other.length * 3 <= part.length * 4


def _named(value: Value | None, otherwise: Length) -> Length:
    return value if isinstance(value, Length) else otherwise


def _load(subject: Subject) -> Fraction:
    """Return pounds on a square foot: as the plan names it, or by what the shelf is for."""
    stated = subject.fitted.values.get(LOAD)
    if isinstance(stated, Fraction):
        return stated
    words = " ".join((subject.plan.title, *subject.plan.tags)).casefold()
    return Fraction(BOOKS if _BOOKS.search(words) else THINGS)


def _finding(part: FittedPart, span: Length, later: Length, load: Fraction) -> Finding:
    return Finding(
        say(
            "'{part}' spans {span} and sags about {later} in the end, under {load}; "
            "cabinet shelves are allowed {allowed}",
            part=part.id,
            span=length(span),
            later=about_up(later),
            load=load_on_shelf(load),
            allowed=about(span / LIMIT),
        ),
        part.part.place.at("length"),
        "shorten the span, use thicker stock, or stiffen the front edge; name 'shelf load' (a number, in "
        "lb on "
        f"the square foot) or '{part.id} {SPAN}' under 'lengths:' if they are others",
    )


STIFF_WOODS = tuple(name for name, wood in WOODS.items() if wood.stiffness)
"""Woods whose stiffness is known, so that a shelf of them is checked."""
SHELF_SAG = Check(
    name="shelf-sag",
    group="Strength and use",
    title="Does a shelf sag?",
    meaning="A part whose name says 'shelf' is taken to rest on its two ends, or on rails that it is "
    "joined to and that "
    "are as long as itself, with 50 lb on each square foot in "
    "a piece for books and 40 lb in any other, and to sag half as much again in the years to come. What "
    "it sags is compared with the span over 144. This is guidance about looks; it proves no strength.",
    mend="shorten the span, use thicker stock, or stiffen the front edge",
    severity=Severity.WARNING,
    examine=_examine,
    source="Formula: FPL-GTR-190, Wood Handbook (2010), Eq. 9-2 and Table 9-1; stiffness: Table 5-3. "
    "Loads and "
    "span over 144: Architectural Woodwork Standards, edition 1 (2009), 1.2.21. Creep: NDS 3.5.2, from "
    "memory.",
)
"""Computes the sag of each shelf."""
