"""The best three-stage pattern that holds no kind more often than it is wanted.

Patterns are found as in `sections`, and tallies of some kinds are carried along: of those that the best
pattern would otherwise hold too often. Kinds are added to them until it holds none too often; often a few are
enough (decremental state space relaxation, of Righini and Salani).
"""

from __future__ import annotations

from bisect import insort
from collections.abc import Iterable, Sequence
from typing import Any

from scantling.cutting.relaxation import Unfinished
from scantling.cutting.sections import Chain, Full, Grid, Worth, counts_of
from scantling.cutting.steps import Steps

Entry = tuple[int, Any, int, Chain]
"""A length, minus the worth that it holds, its tally, and how it is made up."""
Strip = tuple[float, int, Any, int, Chain]
"""A strip: minus its rate of worth for width, width, worth, tally, and how it is made up."""
Profile = tuple[int, list[Strip], list[Strip]]
"""A length of section, the strips it can have by falling rate, and those of them that are just so long."""
Best = tuple[Any, Chain]
"""A worth, and how it is made up."""

SLIGHTLY = 1 + 1e-12
"""Bounds are rounded up by this, so that floats do not exclude what is possible."""


class Tally:
    """How many pieces of some kinds something holds, as the digits of one number.

    Above each digit one bit is free, which makes it possible to compare and to test all digits at once.
    """

    def __init__(self, counts: Sequence[int], tallied: Iterable[int]) -> None:
        self.one = [0] * len(counts)
        """What one piece of each kind adds."""
        self.guard = self.spare = shift = 0
        for kind in sorted(tallied):
            size = counts[kind].bit_length()
            self.one[kind] = 1 << shift
            self.guard |= 1 << (shift + size)
            self.spare |= ((1 << size) - 1 - counts[kind]) << shift
            shift += size + 1

    def undominated(self, entries: list[Entry]) -> list[Entry]:
        """Return the entries without those that a shorter one is worth as much as with no larger a tally."""
        guard = self.guard
        entries.sort(key=_without_chain)
        kept: list[Entry] = []
        best: dict[int, Any] = {}
        for entry in entries:
            _, loss, tally, _ = entry
            guarded = tally | guard
            for other, least in best.items():
                if least <= loss and (guarded - other) & guard == guard:
                    break
            else:
                best[tally] = loss
                kept.append(entry)
        return kept


def _without_chain(entry: Entry) -> tuple[int, Any, int]:
    return entry[:3]


class Tallied:
    """Finds patterns for the ways in which parts may lie in strips that run one way."""

    def __init__(self, grid: Grid, steps: Steps) -> None:
        self.grid, self.steps = grid, steps
        self.kinds: set[int] = set()
        """The kinds that are tallied so far."""

    def best_boards(
        self, worths: Sequence[Worth], rooms: Sequence[tuple[int, int]], targets: Sequence[Worth], until: int
    ) -> list[Full | None]:
        """Return for each room (length, width) the best worth above its target and the counts, or None.

        Raises:
            Unfinished: when the steps have reached `until`.
        """
        grid = self.grid
        while True:
            best = _Call(grid, self.kinds, worths, self.steps, until).run(rooms, targets)
            found = [None if one is None else (one[0], counts_of(one[1], grid.kinds)) for one in best]
            more = {
                kind
                for one in found
                if one is not None
                for kind, (count, most) in enumerate(zip(one[1], grid.counts, strict=True))
                if count > most
            }
            if not more:
                return [
                    None if one is None or held is None else (*held, (grid.across, one[1]))
                    for one, held in zip(best, found, strict=True)
                ]
            self.kinds |= more


class _Call:
    """One search for patterns, with some kinds tallied."""

    def __init__(
        self, grid: Grid, kinds: Iterable[int], worths: Sequence[Worth], steps: Steps, until: int
    ) -> None:
        self.grid, self.worths, self.steps, self.until = grid, worths, steps, until
        self.tally = Tally(grid.counts, kinds)

    def work(self, count: int) -> None:
        self.steps.done += count
        if self.steps.done > self.until:
            raise Unfinished

    def run(self, rooms: Sequence[tuple[int, int]], targets: Sequence[Worth]) -> list[Best | None]:
        longest, widest = max(room[0] for room in rooms), max(room[1] for room in rooms)
        profiles = self.profiles(self.strips(longest, widest))
        best: list[Best | None] = [None] * len(rooms)
        for side in sorted({room[1] for room in rooms}):
            places = [(place, room[0]) for place, room in enumerate(rooms) if room[1] == side]
            self.fill(profiles, side, places, targets, best)
        return best

    def strips(self, longest: int, widest: int) -> list[tuple[int, list[Entry]]]:
        """Return for each width of strip what it can hold at each length."""
        guard, spare = self.tally.guard, self.tally.spare
        entries: list[Entry] = [(0, 0, 0, ())]
        found = []
        for side, options in self.grid.classes:
            if side > widest:
                break
            for along, kind, turned in options:
                worth, one = self.worths[kind], self.tally.one[kind]
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
                self.work(len(merged))
                entries = self.tally.undominated(merged)
            found.append((side, entries))
        return found

    def profiles(self, strips: list[tuple[int, list[Entry]]]) -> list[Profile]:
        """Return for each length at which there is a strip better than before what a section can have."""
        guard = self.tally.guard
        events = [(entry[0], side, entry) for side, entries in strips for entry in entries if entry[0]]
        events.sort(key=lambda event: (event[:2], event[2][:3]))
        useful: list[Strip] = []
        found: list[Profile] = []
        fresh: list[Strip] = []
        last = 0
        tests = 0
        for length, side, (_, loss, tally, chain) in events:
            if length != last:
                if fresh:
                    found.append((last, list(useful), fresh))
                fresh, last = [], length
            guarded, worth = tally | guard, -loss
            tests += len(useful)
            for _, width, value, other, _ in useful:
                if width <= side and value >= worth and (guarded - other) & guard == guard:
                    break
            else:
                worse = [
                    one
                    for one in useful
                    if one[1] >= side and one[2] <= worth and ((one[3] | guard) - tally) & guard == guard
                ]
                if worse:
                    useful = [one for one in useful if one not in worse]
                    fresh = [one for one in fresh if one not in worse]
                strip = (loss / side * SLIGHTLY, side, worth, tally, chain)
                insort(useful, strip)
                fresh.append(strip)
        if fresh:
            found.append((last, list(useful), fresh))
        self.work(tests // 8 + 10 * len(found))
        return found

    def fill(
        self,
        profiles: list[Profile],
        side: int,
        places: list[tuple[int, int]],
        targets: Sequence[Worth],
        best: list[Best | None],
    ) -> None:
        """Find the best board for each of the places, all `side` wide."""
        longest = max(length for _, length in places)
        profiles = [profile for profile in profiles if profile[0] <= longest]
        bounds = [
            max([one[2] - strips[0][0] * (side - one[1]) for one in fresh if one[1] <= side], default=0)
            for _, strips, fresh in profiles
        ]
        known: list[Entry] = []
        top = 0.0
        for number in sorted(range(len(bounds)), key=lambda number: -bounds[number] / profiles[number][0]):
            length = profiles[number][0]
            if bounds[number] <= top * length:
                break
            known += self.stacks(profiles[number], side, top * length)
            top = max([top, *(-entry[1] / entry[0] for entry in known)])
        if not known:
            return
        top *= SLIGHTLY
        goals: list[Any] = [targets[place] for place, _ in places]
        self.rows(known, places, goals, best)
        sections: list[Entry] = []
        for profile, bound in zip(profiles, bounds, strict=True):
            length = profile[0]
            least = min(
                goal - top * (room - length)
                for goal, (_, room) in zip(goals, places, strict=True)
                if room >= length
            )
            if bound > least:
                sections += self.stacks(profile, side, least)
        self.rows(self.tally.undominated(sections), places, goals, best)

    def stacks(self, profile: Profile, side: int, target: Worth) -> list[Entry]:
        """Return stacks of strips within `side`, one of them fresh, that are worth more than `target`.

        None of them is worth less than another of no larger a tally.
        """
        length, strips, fresh = profile
        guard, spare = self.tally.guard, self.tally.spare
        size, nodes, tests = len(strips), 4, 0
        best: dict[int, Best] = {}

        def deeper(at: int, room: int, worth: Any, tally: int, chain: Chain) -> None:
            nonlocal nodes, tests
            nodes += 1
            if worth - (strips[at][0] * room if at < size else 0) <= target:
                return
            least, guarded = target, tally | guard
            tests += len(best)
            for other, (value, _) in best.items():
                if value > least and (guarded - other) & guard == guard:
                    least = value
            if worth > least:
                least, best[tally] = worth, (worth, chain)
            for index in range(at, size):
                fall, width, value, more, inside = strips[index]
                if worth - fall * room <= least:
                    return
                left, total, sum_of, link = room - width, tally + more, worth + value, chain
                copies = 0
                while left >= 0 and not (total + spare) & guard:
                    copies += 1
                    link = (inside, copies, chain)
                    deeper(index + 1, left, sum_of, total, link)
                    left, total, sum_of = left - width, total + more, sum_of + value

        for _, width, value, tally, inside in fresh:
            if width <= side:
                deeper(0, side - width, value, tally, (inside, 1, ()))
        self.work(2 * nodes + tests // 8)
        return self.tally.undominated(
            [(length, -worth, tally, chain) for tally, (worth, chain) in best.items()]
        )

    def rows(
        self,
        sections: list[Entry],
        places: list[tuple[int, int]],
        goals: list[Any],
        best: list[Best | None],
    ) -> None:
        """Find the best row of sections for each place, where it is worth more than its goal."""
        ranked = sorted(sections, key=lambda section: section[1] / section[0])
        for index, (place, length) in enumerate(places):
            found = self.row(ranked, length, goals[index])
            if found is not None:
                goals[index], best[place] = found[0], found

    def row(self, ranked: list[Entry], length: int, target: Worth) -> Best | None:
        """Return the best row of sections worth more than `target`; sections by falling rate."""
        guard, spare = self.tally.guard, self.tally.spare
        entries: list[Entry] = [(0, 0, 0, ())]
        best: Best | None = None
        for number, (used, loss, more, inside) in enumerate(ranked):
            rate = ranked[number + 1][1] / ranked[number + 1][0] * SLIGHTLY if number + 1 < len(ranked) else 0
            merged = fresh = entries
            while fresh:
                fresh = [
                    (at + used, sum_of + loss, tally + more, ((inside, 1), chain))
                    for at, sum_of, tally, chain in fresh
                    if at + used <= length and not (more and (tally + more + spare) & guard)
                ]
                merged = merged + fresh
            self.work(len(merged))
            entries = []
            for entry in self.tally.undominated(merged):
                worth = -entry[1]
                if worth > target:
                    target, best = worth, (worth, entry[3])
                if worth - rate * (length - entry[0]) > target:
                    entries.append(entry)
            if not entries:
                break
        return best
