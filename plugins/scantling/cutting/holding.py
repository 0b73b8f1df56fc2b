"""What a board or sheet can hold."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family
from scantling.cutting.relaxation import Held
from scantling.cutting.sections import Grid, best_boards


class PanelPatterns:
    """What a board or sheet can hold in three stages of cuts."""

    def __init__(self, family: Family) -> None:
        self.family = family
        self.counts = tuple(kind.count for kind in family.kinds)
        self.sizes = tuple(kind.length * kind.width for kind in family.kinds)
        self.prices = tuple(sort.price for sort in family.sorts)
        self.most = tuple(sort.most for sort in family.sorts)
        self.limited = tuple(sort.limited for sort in family.sorts)
        self.grids = [Grid(family, False), Grid(family, True)]

    def best(self, worths: Sequence[float], sorts: Sequence[int], targets: Sequence[float]) -> list[list[Held]]:
        """Return for each of the sorts its best patterns, one for each direction of the first cuts."""
        found: list[list[Held]] = [[] for _ in sorts]
        for grid in self.grids:
            rooms = [(self.family.sorts[j].length, self.family.sorts[j].width) for j in sorts]
            rooms = [room[::-1] for room in rooms] if grid.across else rooms
            for place, held in enumerate(best_boards(grid, worths, rooms, targets)):
                if held is not None:
                    found[place].append(held)
        for held in found:
            held.sort(key=lambda one: -one[0])
        return found
