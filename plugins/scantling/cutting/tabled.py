"""Many good patterns for one board from one table.

The table of Gilmore and Gomory (A linear programming approach to the cutting stock problem, part II,
Operations Research 11, 1963): for each length, the greatest worth of pieces that fit in it. Piece after
piece is allowed into it, so that for each piece it also knows the best pattern in which that piece is the
last one allowed: patterns that differ, as many as are asked for, for the work of one.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.steps import Steps

CELLS = 16
"""So many cells of a table are one step."""


def good_patterns(
    sizes: Sequence[int],
    most: Sequence[int],
    worths: Sequence[float],
    room: int,
    many: int,
    steps: Steps,
) -> list[tuple[float, tuple[int, ...]]]:
    """Return up to `many` patterns and their worths: the best one of all, then those next to it.

    Args:
        sizes: the length of each kind; what one of it is worth and how many there are beside it.
        room: the length of the board.
    """
    table = [0.0] * (room + 1)
    allowed: list[tuple[int, list[float]]] = []
    tops: list[tuple[float, int]] = []
    order = [kind for kind in range(len(sizes)) if worths[kind] > 0]
    for kind in sorted(order, key=lambda kind: (-worths[kind] / sizes[kind], kind)):
        size, worth = sizes[kind], worths[kind]
        for _ in range(min(most[kind], room // size)):
            tops.append((-table[room - size] - worth, len(allowed)))
            allowed.append((kind, table))
            steps.done += (room - size) // CELLS
            more = [value + worth for value in table[: room - size + 1]]
            pairs = zip(table[size:], more, strict=True)
            table = table[:size] + [a if a > b else b for a, b in pairs]  # noqa: FURB136 - max is slower
    tops.sort()
    return [(-worth, _traced(allowed, last, sizes, worths, room)) for worth, last in tops[:many]]


def _traced(
    allowed: Sequence[tuple[int, list[float]]],
    last: int,
    sizes: Sequence[int],
    worths: Sequence[float],
    room: int,
) -> tuple[int, ...]:
    """Return the best pattern with the piece that was the last one allowed."""
    counts = [0] * len(sizes)
    kind = allowed[last][0]
    counts[kind] = 1
    room -= sizes[kind]
    for kind, table in reversed(allowed[:last]):
        size = sizes[kind]
        if size <= room and table[room - size] + worths[kind] > table[room]:
            counts[kind] += 1
            room -= size
    return tuple(counts)
