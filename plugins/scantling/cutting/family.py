"""One family of stock and the parts cut from it, in the form in which the solver works.

A kerf is modelled exactly by growing each part and the usable size of each stock by one kerf: then
pieces may touch. Sizes are divided by their greatest common divisor, parts of equal size are one kind,
and everything is put in an order of its own, so that neither the unit nor the order of the input matters.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd

from scantling.cutting.problem import PartItem, Problem, StockItem


@dataclass(frozen=True, slots=True)
class Sort:
    """A kind of stock; sizes are usable sizes, grown by a kerf and divided by the common divisor."""

    item: StockItem
    length: int
    width: int
    price: int
    most: int
    """How many may be used: what is to be had, or one for each piece."""
    limited: bool
    """Whether fewer are to be had than might be used."""


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of part: all parts of one size that may be turned or may not."""

    names: tuple[tuple[str, int], ...]
    """Which parts these are, and how many of each."""
    length: int
    width: int
    count: int
    may_turn: bool


@dataclass(frozen=True, slots=True)
class Family:
    """Stock and parts that can only be cut from each other."""

    sorts: tuple[Sort, ...]
    kinds: tuple[Kind, ...]
    kerf: int
    stages: int
    scale: int
    """What one unit of the solver is in units of the problem."""
    one_width: int | None
    """The width of all stock, where every part has it too: then only lengths matter."""


def _grown_width(part: PartItem, kerf: int) -> int:
    return part.width + kerf


def _divisor(stock: list[StockItem], parts: list[PartItem], kerf: int) -> int:
    return gcd(
        *(item.length - 2 * item.trim_ends + kerf for item in stock),
        *(item.width - 2 * item.trim_edges + kerf for item in stock),
        *(item.width + kerf for item in stock),
        *(part.length + kerf for part in parts),
        *(part.width + kerf for part in parts),
    )


def _kinds(parts: list[PartItem], kerf: int, scale: int) -> tuple[Kind, ...]:
    grouped: dict[tuple[int, int, bool], list[PartItem]] = {}
    for part in parts:
        turn = part.may_turn and part.length != part.width
        length, width = part.length, part.width
        if turn and width > length:
            length, width = width, length
        grouped.setdefault((length, width, turn), []).append(part)
    kinds = [
        Kind(
            names=tuple(sorted((part.id, part.count) for part in same)),
            length=(length + kerf) // scale,
            width=(width + kerf) // scale,
            count=sum(part.count for part in same),
            may_turn=turn,
        )
        for (length, width, turn), same in grouped.items()
    ]
    return tuple(sorted(kinds, key=lambda kind: (-kind.length, -kind.width, kind.may_turn)))


def families(problem: Problem) -> list[Family]:
    """Split a problem into families, each of which can be solved alone."""
    names = sorted({part.family for part in problem.parts})
    return [_family(problem, name) for name in names]


def _family(problem: Problem, name: str) -> Family:
    kerf = problem.kerf
    parts = [part for part in problem.parts if part.family == name]
    stock = [
        item
        for item in problem.stock
        if item.family == name
        and item.available != 0
        and item.length > 2 * item.trim_ends
        and item.width > 2 * item.trim_edges
    ]
    scale = _divisor(stock, parts, kerf) or 1
    pieces = sum(part.count for part in parts)
    sorts = [
        Sort(
            item=item,
            length=(item.length - 2 * item.trim_ends + kerf) // scale,
            width=(item.width - 2 * item.trim_edges + kerf) // scale,
            price=item.price,
            most=pieces if item.available is None else min(item.available, pieces),
            limited=item.available is not None and item.available < pieces,
        )
        for item in stock
    ]
    sorts.sort(key=lambda sort: (sort.length, sort.width, sort.price, sort.item.id))
    widths = {item.width for item in stock} | {part.width for part in parts}
    return Family(
        sorts=tuple(sorts),
        kinds=_kinds(parts, kerf, scale),
        kerf=kerf,
        stages=problem.stages,
        scale=scale,
        one_width=widths.pop() if len(widths) == 1 else None,
    )
