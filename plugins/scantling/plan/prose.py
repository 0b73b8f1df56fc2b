"""Prose that quotes the plan's numbers.

`Cut the rail to **{rail.length}**` holds the formula `rail.length` between braces; `{{` and `}}`
are braces that stay. What stands between backticks is left alone.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.fault import Fault, Faulty, Place
from scantling.formula import Formula, read_formula

MOST_QUOTES = 500
_NOWHERE = Place()


@dataclass(frozen=True, slots=True)
class Quote:
    """A formula quoted in prose."""

    formula: Formula
    place: Place


@dataclass(frozen=True, slots=True)
class Prose:
    """Markdown with quotes: literal text and formulas in turn."""

    pieces: tuple[str | Quote, ...]
    place: Place = _NOWHERE

    @property
    def quotes(self) -> tuple[Quote, ...]:
        """Return the quoted formulas, in order."""
        return tuple(piece for piece in self.pieces if isinstance(piece, Quote))

    def __bool__(self) -> bool:
        """Return whether there is any text."""
        return bool(self.pieces)


EMPTY = Prose(())


def read_prose(text: str, place: Place, faults: list[Fault]) -> Prose:
    """Return the prose in `text`, adding a fault for each quote that is no formula."""
    pieces: list[str | Quote] = []
    for kind, start, end in _stretches(text):
        if kind == "text":
            _add_text(pieces, text[start:end])
        elif kind == "brace":
            _add_text(pieces, text[start])
        elif kind == "open":
            faults.append(
                Fault(
                    "open-brace",
                    "this brace is never closed",
                    place.part(start, start + 1),
                    "close it with }, or write {{ for a brace",
                )
            )
        elif len(pieces) > MOST_QUOTES:
            faults.append(
                Fault(
                    "too-many-quotes",
                    f"more than {MOST_QUOTES} numbers are quoted here",
                    place.part(start, end),
                )
            )
            break
        else:
            _add_quote(pieces, text[start:end], place.part(start, end), faults)
    return Prose(tuple(pieces), place)


def _add_text(pieces: list[str | Quote], text: str) -> None:
    if pieces and isinstance(pieces[-1], str):
        pieces[-1] += text
    elif text:
        pieces.append(text)


def _add_quote(pieces: list[str | Quote], text: str, place: Place, faults: list[Fault]) -> None:
    try:
        pieces.append(Quote(read_formula(text), place))
    except Faulty as faulty:
        faults.extend(fault.under(place) for fault in faulty.faults)


def _stretches(text: str) -> Iterator[tuple[str, int, int]]:
    """Yield (kind, start, end): text, brace (a doubled brace), quote (inside braces), open."""
    at = start = 0
    while at < len(text):
        letter = text[at]
        if letter == "`":
            at = _after_code(text, at)
        elif text.startswith(("{{", "}}"), at):
            yield "text", start, at
            yield "brace", at, at + 2
            at = start = at + 2
        elif letter == "{":
            yield "text", start, at
            close = text.find("}", at)
            if close < 0 or "\n\n" in text[at:close]:
                yield "open", at, at + 1
                at = start = at + 1
            else:
                yield "quote", at + 1, close
                at = start = close + 1
        else:
            at += 1
    yield "text", start, len(text)


def _after_code(text: str, at: int) -> int:
    """Return where the code span that opens at `at` ends, or the place after its ticks if it never does."""
    ticks = at
    while ticks < len(text) and text[ticks] == "`":
        ticks += 1
    fence = text[at:ticks]
    close = text.find(fence, ticks)
    while close >= 0 and text[close + len(fence) : close + len(fence) + 1] == "`":
        longer = close
        while longer < len(text) and text[longer] == "`":
            longer += 1
        close = text.find(fence, longer)
    return ticks if close < 0 else close + len(fence)
