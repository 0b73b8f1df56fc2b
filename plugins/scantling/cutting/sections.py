"""The best three-stage pattern for a board, when each kind of part is worth something.

A strip is a row of parts; it is as wide as the widest. A section is a stack of strips; it is as long as
the longest. A board is a row of sections. A kind may be taken as often in each strip as it is wanted in
all: the patterns found may hold too many of it, but none that is possible is worth more.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family

Worth = float | int
Chain = tuple  # (kind, copies, rest) or ()


class Grid:
    """The ways in which a family's parts may lie in strips that run one way."""

    def __init__(self, family: Family, across: bool) -> None:
        self.across = across
        self.counts = [kind.count for kind in family.kinds]
        self.kinds = len(family.kinds)
        options: dict[int, list[tuple[int, int, int]]] = {}
        for number, kind in enumerate(family.kinds):
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
    grid: Grid, worths: Sequence[Worth], rooms: Sequence[tuple[int, int]], targets: Sequence[Worth]
) -> list[tuple[Worth, list[int], tuple] | None]:
    """Return for each room (length, width) the best worth above its target and the counts, or None."""
    strips = _strips(grid, worths, max(room[0] for room in rooms), max(room[1] for room in rooms))
    sides = sorted({room[1] for room in rooms})
    sections = _sections(strips, sides)
    found = []
    for (length, side), target in zip(rooms, targets, strict=True):
        best = _board(sections[side], length, target)
        found.append(None if best is None else (best[0], _counts(best[1], grid.kinds), (grid.across, best[1])))
    return found


def _strips(grid: Grid, worths: Sequence[Worth], longest: int, widest: int):
    """Return for each width of strip (width, how many at most, [(length, worth, chain)])."""
    entries = [(0, 0, ())]
    found = []
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
                merged = merged + [(at + used, value + gain, ((kind, turned, along, side), copies, chain))
                                   for at, value, chain in entries if at <= top]
            merged.sort(key=_rank)
            entries, best = [], -1
            for entry in merged:
                if entry[1] > best:
                    best = entry[1]
                    entries.append(entry)
        if copies_here:
            found.append((side, copies_here, entries))
    return found


def _rank(entry) -> tuple:
    return entry[0], -entry[1]


def _sections(strips, sides: Sequence[int]):
    """Return for each side of board the undominated sections [(length, worth, chain of strips)]."""
    events = []
    for row, (_, _, entries) in enumerate(strips):
        for entry in entries:
            if entry[0]:
                events.append((entry[0], row, entry))
    events.sort(key=lambda event: event[:2])
    values = [0] * len(strips)
    chains = [()] * len(strips)
    found = {side: [] for side in sides}
    tops = {side: 0 for side in sides}
    position, size = 0, len(events)
    widths = [strip[0] for strip in strips]
    most = [strip[1] for strip in strips]
    while position < size:
        length = events[position][0]
        changed = []
        while position < size and events[position][0] == length:
            _, row, entry = events[position]
            values[row], chains[row] = entry[1], entry[2]
            changed.append(row)
            position += 1
        useful, last = [], 0
        rate = 0.0
        for row, value in enumerate(values):
            if value > last:
                last = value
                useful.append(row)
                if value > rate * widths[row]:
                    rate = value / widths[row]
        changed = [row for row in changed if row in useful]
        rate *= 1 + 1e-12
        for side in sides:
            top = tops[side]
            if not any(values[row] + rate * (side - widths[row]) > top for row in changed if widths[row] <= side):
                continue
            stack = _stack([(widths[row], values[row], most[row], chains[row]) for row in useful], side, top)
            if stack is not None:
                tops[side] = stack[0]
                found[side].append((length, *stack))
    return found


def _stack(strips, side: int, target):
    """Return the best stack of strips within `side` worth more than `target` as (worth, chain), or None."""
    strips.sort(key=lambda strip: -strip[1] / strip[0])
    size = len(strips)
    best = None

    def deeper(at: int, room: int, worth, chain) -> None:
        nonlocal target, best
        if worth > target:
            target, best = worth, (worth, chain)
        for index in range(at, size):
            width, value, most, inside = strips[index]
            if worth + value * room / width * (1 + 1e-12) <= target:
                return
            for copies in range(min(most, room // width), 0, -1):
                deeper(index + 1, room - copies * width, worth + copies * value, (inside, copies, chain))

    deeper(0, side, 0, ())
    return best


def _board(sections, length: int, target):
    """Return the best row of sections worth more than `target` as (worth, chain), or None."""
    ranked = sorted(sections, key=lambda section: -section[1] / section[0])
    entries = [(0, 0, ())]
    best = None
    for place, (used, worth, inside) in enumerate(ranked):
        if used > length:
            continue
        rate = (ranked[place + 1][1] / ranked[place + 1][0] if place + 1 < len(ranked) else 0) * (1 + 1e-12)
        fresh = entries
        merged = entries
        while True:
            top = length - used
            fresh = [(at + used, value + worth, ((inside, 1), chain)) for at, value, chain in fresh if at <= top]
            if not fresh:
                break
            merged = merged + fresh
        merged.sort(key=_rank)
        entries, high = [], -1
        for entry in merged:
            value = entry[1]
            if value > high:
                high = value
                if value > target:
                    target, best = value, (value, entry[2])
                if value + rate * (length - entry[0]) > target:
                    entries.append(entry)
        if not entries:
            break
    return best


def _counts(chain, kinds: int) -> list[int]:
    counts = [0] * kinds
    while chain:
        (section, _), chain = chain
        while section:
            strip, copies, section = section
            while strip:
                laid, number, strip = strip
                counts[laid[0]] += number * copies
    return counts


def laid_out(chain) -> list[list[list[tuple[int, int, int, int]]]]:
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
