"""The best that one board can hold, when each kind of part is worth something.

A list of (length used, worth) is kept in which each entry is worth more than every shorter one; entries
that cannot reach what is asked for are dropped. All numbers are whole, so that the result is exact.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.steps import Steps

Chain = tuple[int, int, "Chain"] | tuple[()]
"""How an entry came about: a kind, how many of it, and the entry before."""


def best_worths(
    lengths: Sequence[int], most: Sequence[int], worths: Sequence[int], rooms: Sequence[int]
) -> list[int]:
    """Return the greatest worth that fits in each of the rooms (given in rising order)."""
    entries = [(0, 0)]
    longest = rooms[-1]
    for length, count, worth in zip(lengths, most, worths, strict=True):
        if worth <= 0:
            continue
        merged = entries
        for copies in range(1, count + 1):
            used, gain = length * copies, worth * copies
            if used > longest:
                break
            merged = merged + [(at + used, value + gain) for at, value in entries if at + used <= longest]
        entries = _undominated(merged)
    return _at_rooms(entries, rooms)


def _undominated(entries: list[tuple[int, int]]) -> list[tuple[int, int]]:
    entries.sort()
    kept: list[tuple[int, int]] = []
    best = -1
    for entry in entries:
        if entry[1] > best:
            best = entry[1]
            if kept and kept[-1][0] == entry[0]:
                kept[-1] = entry
            else:
                kept.append(entry)
    return kept


def _at_rooms(entries: list[tuple[int, int]], rooms: Sequence[int]) -> list[int]:
    found, index, best = [], 0, 0
    for room in rooms:
        while index < len(entries) and entries[index][0] <= room:
            best = entries[index][1]
            index += 1
        found.append(best)
    return found


def best_patterns(
    lengths: Sequence[int],
    most: Sequence[int],
    worths: Sequence[float],
    rooms: Sequence[int],
    targets: Sequence[float],
    steps: Steps,
) -> list[tuple[float, int, list[int]]]:
    """Return the best pattern for each room in which something is worth more than its target.

    Args:
        rooms: in rising order.
        targets: for each room, what a pattern must exceed.

    Returns:
        (excess over the target, index of the room, how many of each kind), best first.
    """
    order = sorted(
        (k for k in range(len(lengths)) if worths[k] > 0), key=lambda k: (-worths[k] / lengths[k], k)
    )
    longest = rooms[-1]
    entries: list[tuple[int, float, Chain]] = [(0, 0.0, ())]
    for place, kind in enumerate(order):
        length, worth = lengths[kind], worths[kind]
        merged = list(entries)
        for copies in range(1, min(most[kind], longest // length) + 1):
            used, gain = length * copies, worth * copies
            top = longest - used
            merged += [
                (at + used, value - gain, (kind, copies, chain)) for at, value, chain in entries if at <= top
            ]
        density = worths[order[place + 1]] / lengths[order[place + 1]] if place + 1 < len(order) else 0.0
        least = min(target - density * room for room, target in zip(rooms, targets, strict=True))
        steps.done += len(merged) // 3
        merged.sort()
        entries, best = [], 1.0
        for entry in merged:
            if entry[1] < best:
                best = entry[1]
                if -best - density * entry[0] > least:
                    entries.append(entry)
    return _patterns_at_rooms(entries, rooms, targets, len(lengths))


def _patterns_at_rooms(
    entries: list[tuple[int, float, Chain]], rooms: Sequence[int], targets: Sequence[float], kinds: int
) -> list[tuple[float, int, list[int]]]:
    found: list[tuple[float, int, list[int]]] = []
    index, best = 0, None
    for number, (room, target) in enumerate(zip(rooms, targets, strict=True)):
        while index < len(entries) and entries[index][0] <= room:
            best = entries[index]
            index += 1
        if best is not None and -best[1] > target:
            counts, chain = [0] * kinds, best[2]
            while chain:
                counts[chain[0]] = chain[1]
                chain = chain[2]
            found.append((-best[1] - target, number, counts))
    found.sort(key=lambda one: (-one[0], one[1]))
    return found
