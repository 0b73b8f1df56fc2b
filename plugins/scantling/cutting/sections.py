"""The best three-stage pattern for a board, when each kind of part is worth something.

A strip is a row of parts; it is as wide as the widest. A section is a stack of strips; it is as long as
the longest. A board is a row of sections. A kind may be taken as often in each strip as it is wanted in
all: the patterns found may hold too many of it, but none that is possible is worth more.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.family import Family
from scantling.cutting.steps import Steps

Worth = float | int
Chain = tuple[Any, ...]
"""How something is made up: (part, copies, rest), or nothing."""
Entry = tuple[int, Any, Chain]
"""A length, minus the worth that it holds, and how."""
Strips = list[tuple[int, int, list[Entry]]]
"""For each width of strip: how many there may be, and what it can hold at each length."""
Rated = tuple[float, int, Any, int, Chain]
"""A strip of some length: minus its rate of worth for width, width, worth, how many at most, how made up."""
Profile = tuple[int, list[Rated], list[Rated]]
"""A length of section, the strips that it can have, by falling rate, and those that are just so long."""
Best = tuple[Any, Chain]
"""A worth, and how it is made up."""
Place = tuple[int, int]
"""Which room, and its length."""


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


def best_boards(
    grid: Grid,
    worths: Sequence[Worth],
    rooms: Sequence[tuple[int, int]],
    targets: Sequence[Worth],
    steps: Steps,
) -> list[tuple[Worth, list[int], tuple[bool, Chain]] | None]:
    """Return for each room (length, width) the best worth above its target and the counts, or None."""
    strips = _strips(grid, worths, steps, max(room[0] for room in rooms), max(room[1] for room in rooms))
    profiles = _profiles(strips)
    steps.done += 12 * len(profiles)
    best: list[Best | None] = [None] * len(rooms)
    for side in sorted({room[1] for room in rooms}):
        places = [place for place, room in enumerate(rooms) if room[1] == side]
        _fill_rooms(profiles, side, [(place, rooms[place][0]) for place in places], targets, best, steps)
    return [
        None if one is None else (one[0], _counts(one[1], grid.kinds), (grid.across, one[1])) for one in best
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
        max([strip[2] + _most_in(strips, side - strip[1]) for strip in fresh if strip[1] <= side], default=0)
        for _, strips, fresh in profiles
    ]
    ranked = sorted(range(len(bounds)), key=lambda number: -bounds[number] / profiles[number][0])
    known: dict[int, Best] = {}
    top = 0.0
    for number in ranked:
        length, strips, fresh = profiles[number]
        if bounds[number] <= top * length:
            break
        stack = _stack(strips, fresh, steps, side, top * length)
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
        stack = _stack(strips, fresh, steps, side, least)
        if stack is not None:
            high = stack[0]
            sections.append((length, *stack))
    for index, (place, length) in enumerate(places):
        found = _board(sections, steps, length, goals[index])
        if found is not None:
            best[place] = found


def _strips(grid: Grid, worths: Sequence[Worth], steps: Steps, longest: int, widest: int) -> Strips:
    """Return for each width of strip (width, how many at most, [(length, minus its worth, chain)])."""
    entries: list[Entry] = [(0, 0, ())]
    found: Strips = []
    for side, options in grid.classes:
        if side > widest:
            break
        copies_here = 0
        for along, kind, turned in options:
            worth = worths[kind]
            if worth <= 0 or along > longest:
                continue
            copies_here += grid.counts[kind]
            merged = entries
            for copies in range(1, min(grid.counts[kind], longest // along) + 1):
                used, gain, top = along * copies, worth * copies, longest - along * copies
                merged = merged + [
                    (at + used, value - gain, ((kind, turned, along, side), copies, chain))
                    for at, value, chain in entries
                    if at <= top
                ]
            steps.done += len(merged) // 2
            merged.sort()
            entries = []
            best: Worth = 1
            for entry in merged:
                if entry[1] < best:
                    best = entry[1]
                    entries.append(entry)
        if copies_here:
            found.append((side, copies_here, entries))
    return found


def _profiles(strips: Strips) -> list[Profile]:
    """Return for each length at which a section can have a strip worth more than before what it can have.

    A strip is of no use where a narrower one is worth as much.
    """
    events: list[tuple[int, int, Entry]] = [
        (entry[0], row, entry) for row, (_, _, entries) in enumerate(strips) for entry in entries if entry[0]
    ]
    events.sort(key=_place_of)
    rows: list[Rated] = [(0.0, width, 0, most, ()) for width, most, _ in strips]
    worths: list[Any] = [0] * len(rows)
    found: list[Profile] = []
    position, size = 0, len(events)
    while position < size:
        length = events[position][0]
        changed = []
        while position < size and events[position][0] == length:
            _, row, (_, loss, chain) = events[position]
            _, width, _, most, _ = rows[row]
            rows[row] = (loss / width * (1 + 1e-12), width, -loss, most, chain)
            worths[row] = -loss
            changed.append(row)
            position += 1
        fresh = [rows[row] for row in changed if worths[row] > max(worths[:row], default=0)]
        if fresh:
            found.append((length, _useful(rows), fresh))
    return found


def _useful(rows: list[Rated]) -> list[Rated]:
    """Return the strips worth more than all narrower ones, by falling rate."""
    useful: list[Rated] = []
    most: Any = 0
    for strip in rows:
        if strip[2] > most:
            most = strip[2]
            useful.append(strip)
    useful.sort()
    return useful


def _place_of(event: tuple[int, int, Entry]) -> tuple[int, int]:
    return event[:2]


def _most_in(strips: list[Rated], side: int) -> float:
    """Return a bound on what a stack within `side` can be worth; strips by falling rate."""
    bound, left = 0.0, side
    for fall, width, _, most, _ in strips:
        room = min(most, side // width) * width
        if room >= left:
            return bound - fall * left
        bound -= fall * room
        left -= room
    return bound


def _stack(strips: list[Rated], fresh: list[Rated], steps: Steps, side: int, target: Worth) -> Best | None:
    """Return the best stack of strips within `side` worth more than `target` as (worth, chain), or None.

    One strip must be fresh: with none as long as the section, a shorter section would do.
    """
    best: Best | None = None
    narrowest = 0
    for strip in fresh:
        _, width, value, most, inside = strip
        if width <= side and value + _most_in(strips, side - width) > target:
            rest = strips.copy()
            rest[rest.index(strip)] = (*strip[:3], most - 1, inside)
            narrowest = narrowest or min([one[1] for one in strips])
            found = _fullest(rest, narrowest, steps, side - width, target, (value, (inside, 1, ())))
            if found is not None:
                target, best = found[0], found
    return best


def _fullest(
    strips: list[Rated], narrowest: int, steps: Steps, side: int, target: Worth, begun: Best
) -> Best | None:
    """Return the best that a stack that is begun can become with what else fits within `side`, or None."""
    size = len(strips)
    best: Best | None = None
    nodes = 4

    # told of itself: a function that kept itself would be left for the collector of garbage at every call
    def deeper(again: Any, at: int, room: int, worth: Any, chain: Chain) -> None:
        nonlocal target, best, nodes
        nodes += 1
        if worth > target:
            target, best = worth, (worth, chain)
        for index in range(at, size):
            fall, width, value, most, inside = strips[index]
            copies = room // width
            if copies >= most:
                if worth - fall * room <= target:
                    return
                copies = most
            elif index + 1 < size:
                if worth + copies * value - (room - copies * width) * strips[index + 1][0] <= target:
                    return
            elif worth + copies * value <= target:
                return
            while copies:
                left, total = room - copies * width, worth + copies * value
                if left >= narrowest:
                    again(again, index + 1, left, total, (inside, copies, chain))
                elif total > target:
                    target, best = total, (total, (inside, copies, chain))
                copies -= 1

    deeper(deeper, 0, side, *begun)
    steps.done += nodes * 3 // 2
    return best


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


def _counts(chain: Chain, kinds: int) -> list[int]:
    counts = [0] * kinds
    while chain:
        (section, _), chain = chain
        while section:
            strip, copies, section = section
            while strip:
                laid, number, strip = strip
                counts[laid[0]] += number * copies
    return counts


def laid_out(chain: Chain) -> list[list[list[tuple[int, int, int, int]]]]:
    """Return the sections of a pattern, each a list of strips, each a list of pieces."""
    sections = []
    while chain:
        (section, _), chain = chain
        strips = []
        while section:
            strip, copies, section = section
            pieces = []
            while strip:
                laid, number, strip = strip
                pieces += [laid] * number
            strips += [pieces] * copies
        sections.append(strips)
    return sections
