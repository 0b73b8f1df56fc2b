"""How many boards of one length are needed at least, without a linear programme.

A dual-feasible function maps lengths so that what fits on a board still adds up to no more than the board
is mapped to; so the mapped lengths, added up, show how many boards are needed. The three families used are
those of Martello and Toth, of Fekete and Schepers, and of Carlier, Clautiaux and Moukrim.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.steps import Steps

MOST_THRESHOLDS = 60
"""So many thresholds are tried at most."""
MOST_PARTS = 6
"""Into so many equal parts a board is parted at most."""


def least_boards(wanted: Sequence[int], counts: Sequence[int], room: int, steps: Steps) -> int:
    """Return a proven bound on the number of boards, each `room` long; lengths longest first."""
    room = fullest(wanted, counts, room)
    total = sum([length * count for length, count in zip(wanted, counts, strict=True)])
    best = -(-total // room)
    for threshold in _thresholds(wanted, room):
        kept = [(length, count) for length, count in zip(wanted, counts, strict=True) if length >= threshold]
        steps.done += 3 * len(kept)
        raised = [room if length > room - threshold else length for length, _ in kept]
        best = max(best, -(-sum([one * n for one, (_, n) in zip(raised, kept, strict=True)]) // room))
        for parts in range(2, MOST_PARTS + 1):
            steps.done += len(kept)
            worth = sum([_in_parts(one, parts, room) * n for one, (_, n) in zip(raised, kept, strict=True)])
            best = max(best, -(-worth // (room * parts)))
        best = max(best, _halves(kept, threshold, room))
    return best


def fullest(wanted: Sequence[int], counts: Sequence[int], room: int) -> int:
    """Return the greatest length within `room` that any of the pieces add up to."""
    mask, bits = (2 << room) - 1, 1
    for length, count in zip(wanted, counts, strict=True):
        for _ in range(min(count, room // length)):
            bits |= (bits << length) & mask
    return bits.bit_length() - 1


def _thresholds(wanted: Sequence[int], room: int) -> list[int]:
    every = sorted({1, *(length for length in wanted if length * 2 <= room)})
    every = sorted({*every, *(room - length + 1 for length in wanted if length * 2 > room)})
    every = [one for one in every if 0 < one * 2 <= room]
    return every[:: 1 + len(every) // MOST_THRESHOLDS]


def _in_parts(length: int, parts: int, room: int) -> int:
    """Return a length rounded to equal parts of the board, one more than `parts`; times `parts`."""
    scaled = length * (parts + 1)
    return length * parts if scaled % room == 0 else scaled // room * room


def _halves(kept: Sequence[tuple[int, int]], unit: int, room: int) -> int:
    """Count how many of the unit each piece takes up, long pieces by what they leave."""
    whole = room // unit
    worth = 0
    for length, count in kept:
        if length * 2 > room:
            worth += 2 * (whole - (room - length) // unit) * count
        elif length * 2 == room:
            worth += whole * count
        else:
            worth += 2 * (length // unit) * count
    return -(-worth // (2 * whole))
