"""The ways in which parts may lie in strips."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family


class Grid:
    """The ways in which a family's parts may lie in strips that run one way."""

    def __init__(self, family: Family, counts: Sequence[int], across: bool) -> None:  # noqa: FBT001
        self.across = across
        self.counts = counts
        self.kinds = len(family.kinds)
        options: dict[int, list[tuple[int, int, int]]] = {}
        for number, kind in enumerate(family.kinds):
            if not counts[number]:
                continue
            for turned in (0, 1) if kind.may_turn else (0,):
                length, width = (kind.width, kind.length) if turned else (kind.length, kind.width)
                width = least_width(family, width)
                along, side = (width, length) if across else (length, width)
                options.setdefault(side, []).append((along, number, turned))
        self.classes = [(side, sorted(options[side])) for side in sorted(options)]


def least_width(family: Family, width: int) -> int:
    """Return the least that a width takes up on any sort: a full width is not trimmed at its edges."""
    real = width * family.scale - family.kerf
    return min([width] + [sort.width for sort in family.sorts if sort.item.width == real])
