"""A family in which only lengths matter: parts crosscut from full-width boards."""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd

from scantling.cutting.family import Family


@dataclass(frozen=True, slots=True)
class Lengths:
    """Lengths wanted and lengths to be had, in the smallest whole numbers that will do."""

    wanted: tuple[int, ...]
    """The length of each kind, longest first."""
    counts: tuple[int, ...]
    """How many of each kind."""
    rooms: tuple[int, ...]
    """The length of each sort of stock, in rising order."""
    prices: tuple[int, ...]
    most: tuple[int, ...]
    """How many of each sort may be used."""
    limited: tuple[bool, ...]
    sorts: tuple[int, ...]
    """Which sort of the family each is."""


def lengths_of(family: Family) -> Lengths:
    """Return the family as lengths, without stock that another sort makes useless."""
    useful = [
        number
        for number, sort in enumerate(family.sorts)
        if not any(_beats(family, other, number) for other in range(len(family.sorts)))
    ]
    wanted = [kind.length for kind in family.kinds]
    unit = gcd(*wanted, *(family.sorts[number].length for number in useful))
    return Lengths(
        wanted=tuple(length // unit for length in wanted),
        counts=tuple(kind.count for kind in family.kinds),
        rooms=tuple(family.sorts[number].length // unit for number in useful),
        prices=tuple(family.sorts[number].price for number in useful),
        most=tuple(family.sorts[number].most for number in useful),
        limited=tuple(family.sorts[number].limited for number in useful),
        sorts=tuple(useful),
    )


def _beats(family: Family, other: int, number: int) -> bool:
    """Return whether as many as wanted of `other` are to be had, as long and no dearer."""
    one, two = family.sorts[number], family.sorts[other]
    if other == number or two.limited or two.length < one.length or two.price > one.price:
        return False
    return (two.length, -two.price) != (one.length, -one.price) or other < number
