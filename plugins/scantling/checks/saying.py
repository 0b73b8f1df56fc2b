"""How findings name lengths, parts and numbers."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from scantling.measure import Display, Length, Weight, round_length, told_system
from scantling.plan import FittedProse, Prose
from scantling.words import say

_SQUARE_FOOT = (Length(12).mm / 1000) ** 2
"""In square metres."""


def length(value: Length) -> str:
    """Write a length as a formula gives it."""
    return Display(told_system(), 64).length(value)


def about(value: Length) -> str:
    """Write an estimated length: to 1/32 in."""
    return Display(told_system(), 32).length(value)


def about_up(value: Length) -> str:
    """Write an estimated length to 1/32 in, never less than it is."""
    return round_length(value, system=told_system(), denominator=32, way="up").text


def about_weight(weight: Weight) -> str:
    """Write an estimated weight in whole pounds or kilograms, at least one."""
    if told_system() == "mm":
        return f"{max(1, int(weight.kilograms))} kg"
    return f"{max(1, int(weight.pounds))} lb"


def load_on_shelf(pounds: Fraction) -> str:
    """Write what lies on a square foot of a shelf; on a square metre for those who measure in millimetres."""
    if told_system() == "mm":
        return say("{load} kg on the square metre", load=whole(Weight(pounds).kilograms / _SQUARE_FOOT))
    return say("{load} lb on the square foot", load=whole(pounds))


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
