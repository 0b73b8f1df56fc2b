"""Filling given boards piece by piece: each piece goes where it wastes least."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.family import Family, Sort
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.steps import Steps

Lie = tuple[int, int, int]
"""A way for a piece to lie: 1 if turned, its length and width as the strip runs."""


def lies(family: Family, sort: Sort, across: bool) -> list[list[Lie]]:  # noqa: FBT001
    """Return, for each kind, the ways in which it may lie on a sort of stock."""
    full = sort.item.width
    found = []
    for kind in family.kinds:
        ways = []
        for turned in (0, 1) if kind.may_turn else (0,):
            length, width = (kind.width, kind.length) if turned else (kind.length, kind.width)
            if width * family.scale - family.kerf == full:
                width = sort.width
            if length <= sort.length and width <= sort.width:
                ways.append((turned, width, length) if across else (turned, length, width))
        found.append(ways)
    return found


Place = tuple[Any, int, Lie, Any, Any, int, int]
"""A place for a piece: cost, board, way to lie, section, strip, new length and new width."""


class _Open:
    """A board that is being filled."""

    def __init__(self, sort: Sort, across: bool, ways: list[list[Lie]]) -> None:  # noqa: FBT001
        self.sort, self.across, self.ways = sort, across, ways
        self.length, self.width = (sort.width, sort.length) if across else (sort.length, sort.width)
        self.spare = self.length
        self.sections: list[list[Any]] = []

    def close(self) -> Layout:
        sections = tuple(
            Section(length, tuple(Strip(width, tuple(pieces)) for width, _, pieces in strips))
            for length, _, strips in self.sections
        )
        return Layout(self.sort, self.across, sections)


def _best_place(boards: list[_Open], kind: int, steps: Steps, weights: tuple[int, int, int]) -> Place | None:
    """Return the cheapest place as (cost, board, way, section, strip, new length, new width)."""
    best: Place | None = None
    grow, fresh, tight = weights
    for number, board in enumerate(boards):
        steps.done += 1
        for way in board.ways[kind]:
            _, length, width = way
            if length <= board.spare:
                cost = length * board.width * fresh - 8 * width * length
                if best is None or cost < best[0]:
                    best = (cost, number, way, None, None, length, width)
            for section in board.sections:
                slen, spare, strips = section
                longer = max(0, length - slen)
                if longer <= board.spare and width <= spare:
                    new = max(length, slen)
                    cost = (
                        longer * (board.width - spare) * grow
                        + (new - length) * width * tight
                        + width * new // 4
                    )
                    if best is None or cost < best[0]:
                        best = (cost, number, way, section, None, new, width)
                for strip in strips:
                    swidth, used, _ = strip
                    longer = max(0, used + length - slen)
                    wider = max(0, width - swidth)
                    if longer > board.spare or wider > spare:
                        continue
                    new = max(used + length, slen)
                    cost = longer * (board.width - spare) * grow + wider * used * grow
                    cost += max(0, swidth - width) * length * tight + wider * (new - used) // 4
                    if best is None or cost < best[0]:
                        best = (cost, number, way, section, strip, new, max(swidth, width))
    return best


def _put(board: _Open, kind: int, place: Place) -> None:
    _, _, (turned, length, width), section, strip, new_length, new_width = place
    laid = (kind, turned, length, width)
    if section is None:
        board.spare -= length
        board.sections.append([length, board.width - width, [[width, length, [laid]]]])
        return
    board.spare -= new_length - section[0]
    section[0] = new_length
    if strip is None:
        section[1] -= width
        section[2].append([width, length, [laid]])
        return
    section[1] -= new_width - strip[0]
    strip[0] = new_width
    strip[1] += length
    strip[2].append(laid)


def fill(
    family: Family,
    sorts: Sequence[Sort],
    acrosses: Sequence[bool],
    order: Sequence[int],
    steps: Steps,
    weights: tuple[int, int, int],
) -> tuple[list[Layout], list[int]]:
    """Place pieces in the order given; return the layouts and the kinds of pieces that found no place."""
    boards = [
        _Open(sort, across, lies(family, sort, across)) for sort, across in zip(sorts, acrosses, strict=True)
    ]
    left = []
    for kind in order:
        place = _best_place(boards, kind, steps, weights)
        if place is None:
            left.append(kind)
        else:
            _put(boards[place[1]], kind, place)
    return [board.close() for board in boards], left


def orders(family: Family) -> list[list[int]]:
    """Return some orders in which pieces may be placed: longest, widest, largest first."""
    every = [number for number, kind in enumerate(family.kinds) for _ in range(kind.count)]
    kinds = family.kinds
    keys = [
        lambda k: (-kinds[k].length, -kinds[k].width, k),
        lambda k: (-kinds[k].width, -kinds[k].length, k),
        lambda k: (-kinds[k].length * kinds[k].width, k),
        lambda k: (-kinds[k].length - kinds[k].width, k),
    ]
    return [sorted(every, key=key) for key in keys]
