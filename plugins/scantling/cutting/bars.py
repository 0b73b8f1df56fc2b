"""Needs that hold for any way of cutting: sheets seen as bundles of thin bars.

Slice every sheet and every part into bars one unit wide along one direction: then parts are lengths cut
from bars, and what holds for cutting lengths holds for the parts (the bar relaxation of Scheithauer). The
worth of a part is that of its length times its width; where it may be turned, the lesser of both ways.
Instead of plain widths, any scale may be used that keeps what fits side by side within what a sheet is
counted to hold (the conservative scales of Fekete and Schepers).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.cutting.family import Family
from scantling.cutting.grid import least_width
from scantling.cutting.knapsack import best_patterns, best_worths
from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.needs import Need, whole
from scantling.cutting.steps import Steps


@dataclass(frozen=True, slots=True)
class Bars:
    """A family seen as bars along one direction."""

    lengths: tuple[int, ...]
    """The different lengths of bars that parts need, longest first."""
    most: tuple[int, ...]
    """How many parts can lie one after another with each length."""
    ways: tuple[tuple[tuple[int, int], ...], ...]
    """For each kind, the ways it may lie: (index of its length or -1, its other size)."""
    rooms: tuple[int, ...]
    """The length of the bars of each sort of stock."""
    breadths: tuple[int, ...]
    """How many bars a sheet of each sort has."""
    order: tuple[int, ...]
    """The sorts by rising length of bars."""


def bars_of(family: Family, across: bool) -> Bars:  # noqa: FBT001
    """Return a family as bars along its stock's length, or across."""
    sizes = []
    for kind in family.kinds:
        ways = [(kind.length, least_width(family, kind.width))]
        if kind.may_turn:
            ways.append((kind.width, least_width(family, kind.length)))
        sizes.append([way[::-1] if across else way for way in ways])
    rooms = [sort.width if across else sort.length for sort in family.sorts]
    breadths = [sort.length if across else sort.width for sort in family.sorts]
    lengths = sorted({way[0] for ways in sizes for way in ways if way[0] <= max(rooms)}, reverse=True)
    index = {length: place for place, length in enumerate(lengths)}
    most = [0] * len(lengths)
    for kind, ways in zip(family.kinds, sizes, strict=True):
        for length, _ in ways:
            if length in index:
                most[index[length]] += kind.count
    return Bars(
        lengths=tuple(lengths),
        most=tuple(most),
        ways=tuple(tuple((index.get(length, -1), side) for length, side in ways) for ways in sizes),
        rooms=tuple(rooms),
        breadths=tuple(breadths),
        order=tuple(sorted(range(len(rooms)), key=lambda j: (rooms[j], j))),
    )


def bar_need(
    family: Family, bars: Bars, steps: Steps, *, amounts: Sequence[int] | None = None
) -> Need | None:
    """Return the need that excludes most: all cheap lists, or the list `amounts` if it can be excluded."""
    size = len(bars.lengths)
    wanted = [0] * size
    turns: list[tuple[int, int, int, int, int]] = []
    for kind, ways in zip(family.kinds, bars.ways, strict=True):
        usable = [way for way in ways if way[0] >= 0]
        wanted[usable[0][0]] += usable[0][1] * kind.count
        if len(usable) == 2:
            turns.append((*usable[0], *usable[1], kind.count))
    caps: list[int | None] = [
        None if amounts is None else a * b for a, b in zip(amounts or bars.rooms, bars.breadths, strict=False)
    ]
    prices = (
        [0.0] * len(caps)
        if amounts is not None
        else [s.price / b for s, b in zip(family.sorts, bars.breadths, strict=False)]
    )
    dear = [float(length) for length in bars.lengths]
    if amounts is None:
        top = max(prices) * 4 + 1
        dear = [top] * size
    mixture = Mixture(wanted, [*caps, *(turn[4] for turn in turns)], dear)
    pool: list[Column] = []
    for number, (index, side, other, its_side, _) in enumerate(turns):
        column = [0] * size
        column[index] += side
        column[other] -= its_side
        pool.append(mixture.column(0.0, len(caps) + number, tuple(column)))

    def find(shadow: list[float]) -> list[Column]:
        steps.done += 10 * size
        targets = [mixture.target(j, prices[j]) + 1e-9 for j in bars.order]
        rooms = [bars.rooms[j] for j in bars.order]
        found = best_patterns(bars.lengths, bars.most, shadow[:size], rooms, targets, steps)
        return [
            mixture.column(prices[bars.order[at]], bars.order[at], tuple(counts)) for _, at, counts in found
        ]

    shadow = mixture.solve(pool, find, 10)[:size]
    largest = max(shadow)
    if largest <= 0:
        return None
    return need_of_bars(family, bars, whole([price / largest for price in shadow]))


def need_of_bars(family: Family, bars: Bars, worths: Sequence[int]) -> Need:
    """Return the need that follows from worths of lengths."""
    rooms = [bars.rooms[j] for j in bars.order]
    held = best_worths(bars.lengths, bars.most, worths, rooms)
    holds = [0] * len(rooms)
    for j, value in zip(bars.order, held, strict=True):
        holds[j] = value * bars.breadths[j]
    each = tuple(min(worths[index] * side for index, side in ways if index >= 0) for ways in bars.ways)
    return Need(each, tuple(holds), sum(w * kind.count for w, kind in zip(each, family.kinds, strict=False)))
