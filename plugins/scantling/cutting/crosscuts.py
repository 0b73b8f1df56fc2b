"""What a board can hold when only lengths matter, and rounding what fractions of boards would do."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from scantling.cutting.knapsack import best_patterns
from scantling.cutting.lengths import Lengths
from scantling.cutting.needs import Need, remaining
from scantling.cutting.packing import Filled, OutOfSteps, pack
from scantling.cutting.relaxation import Held, Relaxation, Unfinished
from scantling.cutting.steps import Steps

FEW_PIECES = 24
"""So few pieces are left to the search that tries everything."""


class LengthPatterns:
    """What boards can hold of the parts that are left."""

    def __init__(self, lengths: Lengths, counts: Sequence[int], steps: Steps) -> None:
        self.lengths, self.steps = lengths, steps
        self.rows = [number for number, count in enumerate(counts) if count]
        self.counts = tuple(counts[number] for number in self.rows)
        self.sizes = tuple(lengths.wanted[number] for number in self.rows)
        self.prices, self.most, self.limited = lengths.prices, lengths.most, lengths.limited

    def best(
        self, worths: Sequence[float], sorts: Sequence[int], targets: Sequence[float]
    ) -> list[list[Held]]:
        """Return the best pattern for each sort, where one is worth more than its target."""
        rooms = [self.lengths.rooms[j] for j in sorts]
        found: list[list[Held]] = [[] for _ in sorts]
        for excess, place, counts in best_patterns(
            self.sizes, self.counts, worths, rooms, targets, self.steps
        ):
            found[place].append((excess + targets[place], counts, None))
        return found


class Plunge:
    """Takes whole boards from what fractions of boards would do, again and again."""

    def __init__(self, lengths: Lengths, steps: Steps, until: int, eager: float) -> None:
        """Set the search up.

        Args:
            until: at so many steps it is broken off.
            eager: a board is taken where at least this fraction of it would be used.
        """
        self.lengths, self.steps, self.until, self.eager = lengths, steps, until, eager

    def of_list(
        self, amounts: Sequence[int], needs: Sequence[Need], parent: Relaxation
    ) -> list[Filled] | None:
        """Return how to fill the boards of a list, or None where that was not found."""
        counts, boards = list(self.lengths.counts), list(amounts)
        filled: list[Filled] = []
        while sum(counts) > FEW_PIECES:
            relaxation = Relaxation(LengthPatterns(self.lengths, counts, self.steps), self.steps)
            relaxation.learn(parent)
            try:
                if relaxation.of_list(boards, until=self.until) is not None:
                    return None
            except Unfinished:
                return None
            for sort, pattern in self._taken(relaxation, counts, boards):
                filled.append((sort, pattern))
                boards[sort] -= 1
                for kind, count in enumerate(pattern):
                    counts[kind] -= count
            parent = relaxation
        left = replace(self.lengths, counts=tuple(counts))
        try:
            rest = pack(
                left,
                boards,
                [remaining(need, counts) for need in needs],
                self.steps,
                self.until - self.steps.done,
            )
        except OutOfSteps:
            return None
        return None if rest is None else filled + rest

    def _taken(self, relaxation: Relaxation, counts: Sequence[int], boards: Sequence[int]) -> list[Filled]:
        """Return the boards to take: whole ones, or else the fullest of those most used."""
        rows = relaxation.patterns.rows
        left, free = list(counts), list(boards)
        taken: list[Filled] = []
        ranked = sorted(
            relaxation.bases, key=lambda base: (-round(base[0], 6), -self._used(base[2], rows), base[1:])
        )
        for amount, sort, pattern in ranked:
            copies = int(amount - self.eager + 1)
            if not taken and not copies:
                copies = 1
            for _ in range(min(copies, free[sort])):
                whole = [0] * len(counts)
                for row, count in zip(rows, pattern, strict=False):
                    whole[row] = min(count, left[row])
                self._top_up(whole, left, self.lengths.rooms[sort])
                if not any(whole):
                    break
                left = [a - b for a, b in zip(left, whole, strict=False)]
                free[sort] -= 1
                taken.append((sort, tuple(whole)))
        return taken

    def _used(self, pattern: Sequence[int], rows: Sequence[int]) -> int:
        return sum([count * self.lengths.wanted[row] for row, count in zip(rows, pattern, strict=False)])

    def _top_up(self, pattern: list[int], left: Sequence[int], room: int) -> None:
        """Add the longest parts that still fit."""
        wanted = self.lengths.wanted
        room -= sum([count * length for count, length in zip(pattern, wanted, strict=False)])
        for kind, length in enumerate(wanted):
            more = min(left[kind] - pattern[kind], room // length)
            if more > 0:
                pattern[kind] += more
                room -= more * length


def longest_first(lengths: Lengths) -> list[Filled] | None:
    """Fill one board after another, the longest parts first, always the one that costs least for its load.

    Returns:
        The boards, or None where there is not enough stock.
    """
    left, free = list(lengths.counts), list(lengths.most)
    filled: list[Filled] = []
    while any(left):
        best: tuple[float, int, int, tuple[int, ...]] | None = None
        for sort, room in enumerate(lengths.rooms):
            if not free[sort]:
                continue
            space, pattern = room, []
            for length, count in zip(lengths.wanted, left, strict=False):
                taken = min(count, space // length)
                pattern.append(taken)
                space -= taken * length
            if space < room:
                choice = lengths.prices[sort] / (room - space), space - room, sort, tuple(pattern)
                best = choice if best is None else min(best, choice)
        if best is None:
            return None
        filled.append(best[2:])
        free[best[2]] -= 1
        left = [a - b for a, b in zip(left, best[3], strict=False)]
    return filled
