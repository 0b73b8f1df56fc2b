"""Every board that there can be: all that one board can hold in three stages, when few pieces are wanted.

Strips, stacks and boards are put together as in `strips`, `stacks` and `sections`, but each carries the
tally of its pieces: none holds more of a kind than is wanted, and two that hold different pieces are both
kept.
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Iterable, Sequence
from typing import Any

from scantling.cutting.chain import Chain
from scantling.cutting.family import Family
from scantling.cutting.grid import Grid
from scantling.cutting.relaxation import Unfinished
from scantling.cutting.steps import Steps

Entry = tuple[int, int, int, Chain]
"""A length, minus the worth that it holds, its tally, and how it is made up."""
Strip = tuple[float, int, int, int, Chain]
"""A strip: minus its rate of worth for width, width, worth, tally, and how it is made up."""
Profile = tuple[int, list[Strip], list[Strip]]
"""A length of section, the strips it can have by falling rate, and those of them that are just so long."""
Laid = tuple[tuple[int, ...], tuple[bool, Chain]]
"""How many of each kind a board holds; in which direction it is cut first, and how it is made up."""

SLIGHTLY = 1 + 1e-12
"""Bounds are rounded up by this, so that floats do not exclude what is possible."""


def every_board(
    family: Family,
    counts: Sequence[int],
    sort: int,
    worths: Sequence[int],
    least: int,
    steps: Steps,
    until: int,
) -> list[Laid]:
    """Return all that a board of a sort can hold worth at least `least`, without what another holds too.

    Args:
        counts: how many of each kind there are.
        worths: of each kind, none of them nothing.

    Raises:
        Unfinished: when the steps have reached `until`.
    """
    stock = family.sorts[sort]
    found: dict[tuple[int, ...], tuple[bool, Chain]] = {}
    for across in (False, True):
        room = (stock.width, stock.length) if across else (stock.length, stock.width)
        search = _EveryBoard(Grid(family, counts, across), worths, steps, until)
        for tally, chain in search.run(*room, least - 1):
            found.setdefault(search.tally.counts(tally), (across, chain))
    kept: list[Laid] = []
    for held in sorted(found, key=lambda held: (-sum(held), held)):
        search.work(len(kept) // 4)
        if not any(all(a >= b for a, b in zip(other, held, strict=True)) for other, _ in kept):
            kept.append((held, found[held]))
    return kept


class Tally:
    """How many pieces of each kind something holds, as the digits of one number.

    Above each digit one bit is free, which makes it possible to compare and to test all digits at once.
    """

    def __init__(self, counts: Sequence[int]) -> None:
        self.places: list[tuple[int, int]] = []
        """Of each digit, by how much it is shifted, and its bits."""
        self.guard = self.spare = shift = 0
        for count in counts:
            size = count.bit_length()
            self.places.append((shift, (1 << size) - 1))
            self.guard |= 1 << (shift + size)
            self.spare |= ((1 << size) - 1 - count) << shift
            shift += size + 1

    def counts(self, tally: int) -> tuple[int, ...]:
        """Return how many of each kind a tally is."""
        return tuple([(tally >> shift) & bits for shift, bits in self.places])


def shortest(entries: Iterable[Entry]) -> list[Entry]:
    """Return of entries with the same tally the shortest."""
    best: dict[int, Entry] = {}
    for entry in entries:
        known = best.get(entry[2])
        if known is None or entry[0] < known[0]:
            best[entry[2]] = entry
    return list(best.values())


class _EveryBoard:
    """The search for boards with the first cuts in one direction."""

    def __init__(self, grid: Grid, worths: Sequence[int], steps: Steps, until: int) -> None:
        self.grid, self.worths, self.steps, self.until = grid, worths, steps, until
        self.tally = Tally(grid.counts)

    def work(self, count: int) -> None:
        self.steps.done += count
        if self.steps.done > self.until:
            raise Unfinished

    def run(self, length: int, side: int, target: int) -> list[tuple[int, Chain]]:
        """Return the boards worth more than a target, as tallies and how they are made up."""
        profiles = [one for one in self.profiles(self.strips(length, side)) if one[0] <= length]
        bounds = [
            max([one[2] - strips[0][0] * (side - one[1]) for one in fresh if one[1] <= side], default=0)
            for _, strips, fresh in profiles
        ]
        top = self.best_rate(profiles, bounds, side) * SLIGHTLY
        sections: list[Entry] = []
        for profile, bound in zip(profiles, bounds, strict=True):
            least = max(0, target - top * (length - profile[0]))
            if bound > least:
                sections += self.stacks(profile, side, least)
        return self.rows(shortest(sections), length, target)

    def best_rate(self, profiles: Sequence[Profile], bounds: Sequence[float], side: int) -> float:
        """Return the greatest worth for its length that a section can have."""
        top = 0.0
        for number in sorted(range(len(bounds)), key=lambda number: -bounds[number] / profiles[number][0]):
            length = profiles[number][0]
            if bounds[number] <= top * length:
                break
            stacks = self.stacks(profiles[number], side, top * length)
            top = max([top, *(-loss / length for _, loss, _, _ in stacks)])
        return top

    def strips(self, longest: int, widest: int) -> list[tuple[int, list[Entry]]]:
        """Return for each width of strip what it can hold at each length."""
        guard, spare = self.tally.guard, self.tally.spare
        entries: list[Entry] = [(0, 0, 0, ())]
        found = []
        for side, options in self.grid.classes:
            if side > widest:
                break
            for along, kind, turned in options:
                worth, one = self.worths[kind], 1 << self.tally.places[kind][0]
                if worth <= 0 or along > longest:
                    continue
                merged = entries
                laid = kind, turned, along, side
                for copies in range(1, min(self.grid.counts[kind], longest // along) + 1):
                    used, gain, more = along * copies, worth * copies, one * copies
                    merged = merged + [
                        (at + used, loss - gain, tally + more, (laid, copies, chain))
                        for at, loss, tally, chain in entries
                        if at + used <= longest and not (more and (tally + more + spare) & guard)
                    ]
                self.work(len(merged) // 2)
                entries = shortest(merged)
            found.append((side, entries))
        return found

    def profiles(self, strips: list[tuple[int, list[Entry]]]) -> list[Profile]:
        """Return for each length at which there is a strip narrower than before what a section can have."""
        events = [(entry[0], side, entry) for side, entries in strips for entry in entries if entry[0]]
        events.sort(key=lambda event: (event[:2], event[2][2]))
        useful: list[Strip] = []
        fresh: list[Strip] = []
        found: list[Profile] = []
        narrowest: dict[int, Strip] = {}
        last = 0
        for length, side, (_, loss, tally, chain) in events:
            if length != last:
                if fresh:
                    found.append((last, list(useful), fresh))
                    self.work(len(useful) // 12 + 5)
                fresh, last = [], length
            known = narrowest.get(tally)
            if known is not None:
                if known[1] <= side:
                    continue
                useful.remove(known)
            strip = narrowest[tally] = (loss / side * SLIGHTLY, side, -loss, tally, chain)
            insort(useful, strip)
            fresh.append(strip)
        if fresh:
            found.append((last, list(useful), fresh))
        return found

    def stacks(self, profile: Profile, side: int, target: float) -> list[Entry]:
        """Return stacks of strips within `side` worth more than `target`, one of each tally.

        One strip must be fresh: with none as long as the section, a shorter section would do.
        """
        length, strips, fresh = profile
        guard, spare = self.tally.guard, self.tally.spare
        size, nodes, allowed = len(strips), 12, 3 * max(0, self.until - self.steps.done)
        narrowest = min([strip[1] for strip in strips])
        best: dict[int, Entry] = {}

        # told of itself, as in `stacks`
        def deeper(again: Any, at: int, room: int, worth: int, tally: int, chain: Chain) -> None:
            nonlocal nodes
            if nodes > allowed:
                raise Unfinished
            if worth > target and tally not in best:
                best[tally] = length, -worth, tally, chain
            for index in range(at, size):
                nodes += 1
                fall, width, value, more, inside = strips[index]
                if worth - fall * room <= target:
                    return
                left, total, sum_of, copies = room - width, tally + more, worth + value, 1
                while left >= 0 and not (total + spare) & guard:
                    if left >= narrowest:
                        again(again, index + 1, left, sum_of, total, (inside, copies, chain))
                    elif sum_of > target and total not in best:
                        best[total] = length, -sum_of, total, (inside, copies, chain)
                    left, total, sum_of, copies = left - width, total + more, sum_of + value, copies + 1

        for _, width, value, tally, inside in fresh:
            if width <= side:
                deeper(deeper, 0, side - width, value, tally, (inside, 1, ()))
        self.work(nodes // 3)
        return list(best.values())

    def rows(self, sections: list[Entry], length: int, target: int) -> list[tuple[int, Chain]]:
        """Return the rows of sections worth more than a target."""
        guard, spare = self.tally.guard, self.tally.spare
        ranked = sorted(sections, key=lambda section: section[1] / section[0])
        entries: list[Entry] = [(0, 0, 0, ())]
        for number, (used, loss, more, inside) in enumerate(ranked):
            rate = ranked[number + 1][1] / ranked[number + 1][0] * SLIGHTLY if number + 1 < len(ranked) else 0
            merged = fresh = entries
            while fresh:
                fresh = [
                    (at + used, sum_of + loss, tally + more, ((inside, 1), chain))
                    for at, sum_of, tally, chain in fresh
                    if at + used <= length and not (tally + more + spare) & guard
                ]
                merged = merged + fresh
                self.work(len(fresh) // 3)
            self.work(len(entries) // 3)
            # of a tally the shortest has the best hopes, so that this leaves each tally that matters
            entries = shortest([one for one in merged if -one[1] - rate * (length - one[0]) > target])
        return [(tally, chain) for _, loss, tally, chain in entries if -loss > target]
