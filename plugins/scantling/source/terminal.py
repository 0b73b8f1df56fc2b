"""Diagnostics for a terminal: with excerpt and caret, or one line each."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from scantling.fault import Severity
from scantling.source.diagnostic import Diagnostic, Spot, count_severities

TAB = 4
WIDEST = 160
"""Columns of an excerpt; a longer line is shown around the fault."""
_BESIDE = 60
_COLOURS = {Severity.FAULT: "31", Severity.WARNING: "33", Severity.HINT: "36"}


@dataclass(frozen=True, slots=True)
class _Paint:
    """Puts colour on words, or leaves them as they are."""

    is_on: bool

    def __call__(self, words: str, code: str) -> str:
        return f"\x1b[{code}m{words}\x1b[0m" if self.is_on and words else words


def render_full(diagnostics: Iterable[Diagnostic], *, colour: bool = False) -> str:
    """Return each diagnostic with its line of the file, a caret under the place, notes and help."""
    paint = _Paint(colour)
    return "\n".join("".join(f"{line}\n" for line in _full(one, paint)) for one in diagnostics)


def _full(one: Diagnostic, paint: _Paint) -> Iterator[str]:
    colour = _COLOURS[one.severity]
    kind = paint(one.severity.value, colour)
    yield f"{paint(_where(one.spot), '1')}: {kind}: {visible(one.message)} [{one.code}]"
    yield from _excerpt(one.spot, paint, colour)
    for note in one.notes:
        where = f" ({_where(note.spot)})" if note.spot is not None else ""
        yield f"  {paint('note', '36')}: {visible(note.message)}{where}"
        if note.spot is not None:
            yield from _excerpt(note.spot, paint, "36")
    if one.help:
        yield f"  {paint('help', '32')}: {visible(one.help)}"


def render_concise(diagnostics: Iterable[Diagnostic]) -> str:
    """Return one line a diagnostic: `file:line:column: code message`."""
    return "".join(f"{_where(one.spot)}: {one.code} {visible(one.message)}\n" for one in diagnostics)


def _where(spot: Spot) -> str:
    return f"{visible(spot.path)}:{spot.line}:{spot.column}"


def summarize(diagnostics: Iterable[Diagnostic]) -> str:
    """Return how many there are, in words: "2 faults, 1 warning"; nothing where there is none."""
    counts = count_severities(diagnostics)
    return ", ".join(
        f"{count} {severity.value}{'' if count == 1 else 's'}" for severity, count in counts.items() if count
    )


def visible(text: str) -> str:
    """Return text in which no character can move the cursor or colour the terminal."""
    return "".join(letter if letter.isprintable() else _stand_in(letter) for letter in text)


def _stand_in(letter: str) -> str:
    return " " if letter in "\n\r\t" or letter.isspace() else "\N{REPLACEMENT CHARACTER}"


def columns_of(letter: str) -> int:
    """Return how many columns of a terminal a character takes."""
    if unicodedata.combining(letter) or unicodedata.category(letter) in {"Mn", "Me", "Cf"}:
        return 0
    return 2 if unicodedata.east_asian_width(letter) in {"W", "F"} else 1


def _expanded(text: str) -> tuple[str, list[int]]:
    """Return a line with its tabs as spaces, and the column at which each character (and the end) stands."""
    shown: list[str] = []
    starts: list[int] = []
    column = 0
    for letter in text:
        starts.append(column)
        words = " " * (TAB - column % TAB) if letter == "\t" else visible(letter)
        shown.append(words)
        column += len(words) if letter == "\t" else columns_of(words)
    return "".join(shown), [*starts, column]


def _excerpt(spot: Spot, paint: _Paint, colour: str) -> Iterator[str]:
    if not spot.excerpt.strip():
        return
    text, begins = spot.excerpt, spot.column - 1
    ends = spot.end_column - 1 if spot.end_line == spot.line else len(text)
    text, begins, ends = _shortened(text, begins, max(ends, begins))
    shown, columns = _expanded(text)
    start = columns[min(begins, len(text))]
    width = max(1, columns[min(ends, len(text))] - start)
    number = str(spot.line)
    edge = " " * len(number)
    yield f"  {number} | {shown.rstrip()}"
    yield f"  {edge} | {' ' * start}{paint('^' * width, colour)}"


def _shortened(text: str, begins: int, ends: int) -> tuple[str, int, int]:
    """Return the stretch of a long line around the fault."""
    if len(text) <= WIDEST:
        return text, begins, ends
    first = max(0, begins - _BESIDE)
    last = min(len(text), max(first + WIDEST, begins + _BESIDE))
    lead = "…" if first else ""
    tail = "…" if last < len(text) else ""
    moved = len(lead) - first
    return f"{lead}{text[first:last]}{tail}", begins + moved, min(ends, last) + moved
