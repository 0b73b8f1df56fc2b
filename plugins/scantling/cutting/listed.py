"""Many good patterns for one board of very many units, for which a table would be too long.

As in a table, piece after piece is allowed (see tabled.py); but only lengths at which something is worth more
than at every shorter one are listed, and only while the best that might be added would reach a whole board.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence

from scantling.cutting.knapsack import Chain
from scantling.cutting.steps import Steps

ENTRIES = 4
"""So many entries of a list are one step."""

Entry = tuple[int, float, Chain]
"""A length, what it is worth (below nothing, so that lists sort), and how that came about."""


def worthy_patterns(
    sizes: Sequence[int],
    most: Sequence[int],
    worths: Sequence[float],
    room: int,
    many: int,
    least: float,
    steps: Steps,
) -> list[tuple[float, tuple[int, ...]]]:
    """Return up to `many` patterns worth more than `least`: the best one of all, then those next to it.

    Args:
        sizes: the length of each kind; what one of it is worth and how many there are beside it.
        room: the length of the board.
    """
    order = [kind for kind in range(len(sizes)) if worths[kind] > 0]
    order.sort(key=lambda kind: (-worths[kind] / sizes[kind], kind))
    entries: list[Entry] = [(0, 0.0, ())]
    tops: list[tuple[float, int, Chain]] = []
    for place, kind in enumerate(order):
        size, worth = sizes[kind], worths[kind]
        merged = list(entries)
        for copies in range(1, min(most[kind], room // size) + 1):
            used, gain = size * copies, worth * copies
            at = bisect_left(entries, (room - used + 1,)) - 1
            if at < 0:
                break
            tops.append((entries[at][1] - gain, len(tops), (kind, copies, entries[at][2])))
            merged += [(n + used, v - gain, (kind, copies, chain)) for n, v, chain in entries[: at + 1]]
        following = order[place + 1] if place + 1 < len(order) else kind
        steps.done += len(merged) // ENTRIES
        entries = _promising(merged, worths[following] / sizes[following], room, least)
        if not entries:
            break
    tops.sort(key=lambda one: one[:2])
    return [(-worth, _counts(chain, len(sizes))) for worth, _, chain in tops[:many] if -worth > least]


def _promising(merged: list[Entry], density: float, room: int, least: float) -> list[Entry]:
    """Return what is worth more than all shorter entries, and may come to be worth more than the least."""
    merged.sort()
    kept, best = [], 1.0
    for entry in merged:
        if entry[1] < best:
            best = entry[1]
            if density * (room - entry[0]) - best > least:
                kept.append(entry)
    return kept


def _counts(chain: Chain, kinds: int) -> tuple[int, ...]:
    counts = [0] * kinds
    while chain:
        counts[chain[0]] = chain[1]
        chain = chain[2]
    return tuple(counts)
