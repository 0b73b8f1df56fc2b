"""The best three-stage pattern for a board, when each kind of part is worth something.

A strip is a row of parts, a section a stack of strips, a board a row of sections. A kind may be taken as
often in each strip as it is wanted in all: the patterns found may hold too many of it, but none that is
possible is worth more.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.chain import Chain, counts_of
from scantling.cutting.grid import Grid
from scantling.cutting.stacks import Best, best_stack, most_in
from scantling.cutting.steps import Steps
from scantling.cutting.strips import Entry, Profile, Worth, profiles_of, strips_of

Place = tuple[int, int]
"""Which room, and its length."""


def best_boards(
    grid: Grid,
    worths: Sequence[Worth],
    rooms: Sequence[tuple[int, int]],
    targets: Sequence[Worth],
    steps: Steps,
) -> list[tuple[Worth, list[int], tuple[bool, Chain]] | None]:
    """Return for each room (length, width) the best worth above its target and the counts, or None."""
    strips = strips_of(grid, worths, steps, max(room[0] for room in rooms), max(room[1] for room in rooms))
    profiles = profiles_of(strips)
    steps.done += 12 * len(profiles)
    best: list[Best | None] = [None] * len(rooms)
    for side in sorted({room[1] for room in rooms}):
        places = [place for place, room in enumerate(rooms) if room[1] == side]
        _fill_rooms(profiles, side, [(place, rooms[place][0]) for place in places], targets, best, steps)
    return [
        None if one is None else (one[0], counts_of(one[1], grid.kinds), (grid.across, one[1]))
        for one in best
    ]


def _fill_rooms(
    profiles: list[Profile],
    side: int,
    places: list[Place],
    targets: Sequence[Worth],
    best: list[Best | None],
    steps: Steps,
) -> None:
    """Find the best board for each of the places, all `side` wide.

    The best rate of worth for length is found first. A section is then only of interest if it loses less
    against that rate than the whole board may.
    """
    longest = max(length for _, length in places)
    profiles = [profile for profile in profiles if profile[0] <= longest]
    bounds = [
        max([strip[2] + most_in(strips, side - strip[1]) for strip in fresh if strip[1] <= side], default=0)
        for _, strips, fresh in profiles
    ]
    ranked = sorted(range(len(bounds)), key=lambda number: -bounds[number] / profiles[number][0])
    known: dict[int, Best] = {}
    top = 0.0
    for number in ranked:
        length, strips, fresh = profiles[number]
        if bounds[number] <= top * length:
            break
        stack = best_stack(strips, fresh, steps, side, top * length)
        if stack is not None:
            known[number] = stack
            top = stack[0] / length
    if not known:
        return
    top *= 1 + 1e-12
    goals: list[Any] = [targets[place] for place, _ in places]
    first = [(profiles[number][0], *stack) for number, stack in sorted(known.items())]
    for index, (place, length) in enumerate(places):
        found = _board(first, steps, length, goals[index])
        if found is not None:
            goals[index], best[place] = found[0], found
    sections: list[Entry] = []
    high: Any = 0
    for number, bound in enumerate(bounds):
        length, strips, fresh = profiles[number]
        least = min(
            goal - top * (room - length)
            for goal, (_, room) in zip(goals, places, strict=False)
            if room >= length
        )
        least = max(least, high)
        if bound <= least:
            continue
        stack = best_stack(strips, fresh, steps, side, least)
        if stack is not None:
            high = stack[0]
            sections.append((length, *stack))
    for index, (place, length) in enumerate(places):
        found = _board(sections, steps, length, goals[index])
        if found is not None:
            best[place] = found


def _board(sections: list[Entry], steps: Steps, length: int, target: Worth) -> Best | None:
    """Return the best row of sections worth more than `target` as (worth, chain), or None."""
    ranked = sorted(sections, key=lambda section: -section[1] / section[0])
    entries: list[Entry] = [(0, 0, ())]
    best: Best | None = None
    for place, (used, worth, inside) in enumerate(ranked):
        if used > length:
            continue
        rate = (ranked[place + 1][1] / ranked[place + 1][0] if place + 1 < len(ranked) else 0) * (1 + 1e-12)
        fresh = entries
        merged = entries
        while True:
            top = length - used
            fresh = [
                (at + used, value - worth, ((inside, 1), chain)) for at, value, chain in fresh if at <= top
            ]
            if not fresh:
                break
            merged = merged + fresh
        steps.done += len(merged)
        merged.sort()
        entries = []
        high: Worth = -1
        for entry in merged:
            value = -entry[1]
            if value > high:
                high = value
                if value > target:
                    target, best = value, (value, entry[2])
                if value + rate * (length - entry[0]) > target:
                    entries.append(entry)
        if not entries:
            break
    return best
