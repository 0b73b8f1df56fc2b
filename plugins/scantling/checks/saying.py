"""How findings name lengths, parts and numbers."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from scantling.measure import Display, Length, round_length
from scantling.plan import FittedProse, Prose
from scantling.words import say

EXACT = Display("in", 64)
ROUGH = Display("in", 32)


def length(value: Length) -> str:
    """Write a length as a formula gives it."""
    return EXACT.length(value)


def about(value: Length) -> str:
    """Write an estimated length: to 1/32 in."""
    return ROUGH.length(value)


def about_up(value: Length) -> str:
    """Write an estimated length to 1/32 in, never less than it is."""
    return round_length(value, denominator=32, way="up").text


def whole(number: Fraction) -> str:
    """Write an estimate as a whole number, halves up."""
    return str(int(number + Fraction(1, 2)))


def quoted(names: Iterable[str]) -> str:
    """List names: 'side', 'top' and 'bottom'."""
    listed = [f"'{name}'" for name in names]
    return (
        listed[0]
        if len(listed) == 1
        else say("{listed} and {listed2}", listed=", ".join(listed[:-1]), listed2=listed[-1])
    )


def words_of(prose: Prose | FittedProse) -> str:
    """Return the author's own words in prose, in lower case, with a blank where a number is quoted."""
    return " ".join(piece for piece in prose.pieces if isinstance(piece, str)).casefold()
