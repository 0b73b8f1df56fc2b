"""What a board or sheet can hold."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family
from scantling.cutting.grid import Grid
from scantling.cutting.relaxation import Held
from scantling.cutting.sections import best_boards
from scantling.cutting.steps import Steps


class PanelPatterns:
    """What a board or sheet can hold in three stages of cuts."""

    def __init__(self, family: Family, steps: Steps, counts: Sequence[int] | None = None) -> None:
        """Take the counts of the family, or as many as are left."""
        self.family, self.steps = family, steps
        wanted = [kind.count for kind in family.kinds] if counts is None else counts
        self.rows = [number for number, count in enumerate(wanted) if count]
        self.counts = tuple(wanted[number] for number in self.rows)
        self.sizes = tuple(family.kinds[number].length * family.kinds[number].width for number in self.rows)
        self.prices = tuple(sort.price for sort in family.sorts)
        self.most = tuple(sort.most for sort in family.sorts)
        self.limited = tuple(sort.limited for sort in family.sorts)
        self.grids = [Grid(family, wanted, False), Grid(family, wanted, True)]

    def best(
        self, worths: Sequence[float], sorts: Sequence[int], targets: Sequence[float]
    ) -> list[list[Held]]:
        """Return for each of the sorts its best patterns, one for each direction of the first cuts."""
        found: list[list[Held]] = [[] for _ in sorts]
        each: list[float] = [0] * len(self.family.kinds)
        for row, worth in zip(self.rows, worths, strict=True):
            each[row] = worth
        for grid in self.grids:
            rooms = [(self.family.sorts[j].length, self.family.sorts[j].width) for j in sorts]
            rooms = [room[::-1] for room in rooms] if grid.across else rooms
            for place, held in enumerate(best_boards(grid, each, rooms, targets, self.steps)):
                if held is not None:
                    found[place].append((held[0], [held[1][row] for row in self.rows], held[2]))
        for patterns in found:
            patterns.sort(key=lambda one: -one[0])
        return found
