"""What a board can hold when only lengths matter, and rounding what fractions of boards would do."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.knapsack import best_patterns
from scantling.cutting.lengths import Lengths
from scantling.cutting.relaxation import Held, Relaxation
from scantling.cutting.steps import Steps

NEARLY = 1 - 1e-6


class LengthPatterns:
    """What boards can hold of the parts that are left."""

    def __init__(self, lengths: Lengths, counts: Sequence[int]) -> None:
        self.lengths = lengths
        self.rows = [number for number, count in enumerate(counts) if count]
        self.counts = tuple(counts[number] for number in self.rows)
        self.sizes = tuple(lengths.wanted[number] for number in self.rows)
        self.prices, self.most, self.limited = lengths.prices, lengths.most, lengths.limited

    def best(self, worths: Sequence[float], sorts: Sequence[int], targets: Sequence[float]) -> list[list[Held]]:
        """Return the best pattern for each sort, where one is worth more than its target."""
        rooms = [self.lengths.rooms[j] for j in sorts]
        found: list[list[Held]] = [[] for _ in sorts]
        for excess, place, counts in best_patterns(self.sizes, self.counts, worths, rooms, targets):
            found[place].append((excess + targets[place], counts, None))
        return found


class Plunge:
    """Takes whole boards from what fractions of boards would do, again and again."""

    def __init__(self, lengths: Lengths, steps: Steps) -> None:
        self.lengths, self.steps = lengths, steps

    def of_prices(self, first: Relaxation) -> list[tuple[int, tuple[int, ...]]] | None:
        """Return boards for all parts, or None where there is not enough stock."""
        return None
