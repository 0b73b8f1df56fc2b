"""From layouts in the solver's units to boards with pieces at their places."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.answer import Board, Piece
from scantling.cutting.family import Family
from scantling.cutting.layout import Layout


def place(family: Family, layouts: Sequence[Layout]) -> list[Board]:
    """Return a board for each layout, with parts of equal size given their names in order."""
    names = [iter([name for name, count in kind.names for _ in range(count)]) for kind in family.kinds]
    ordered = sorted(
        layouts, key=lambda layout: (-layout.sort.length, -layout.sort.width, layout.sort.item.id)
    )
    return [
        Board(
            layout.sort.item.id,
            tuple(Piece(next(names[kind]), *rest) for kind, *rest in _places(family, layout)),
        )
        for layout in ordered
    ]


def _places(family: Family, layout: Layout) -> list[tuple[int, int, int, int, int]]:
    scale, kerf, item = family.scale, family.kerf, layout.sort.item
    found = []
    along = 0
    for section in layout.sections:
        side = 0
        for strip in section.strips:
            at = along
            for kind, turned, length, _ in strip.pieces:
                x, y = (side, at) if layout.across else (at, side)
                size = family.kinds[kind].length * scale - kerf, family.kinds[kind].width * scale - kerf
                real = size[::-1] if turned else size
                top = 0 if real[1] == item.width else item.trim_edges + y * scale
                found.append((kind, item.trim_ends + x * scale, top, *real))
                at += length
            side += strip.width
        along += section.length
    return found
