"""Large problems: whole boards are taken from what fractions of boards would do, and the rest is searched."""

from __future__ import annotations

from dataclasses import replace

from scantling.cutting.diving import lay
from scantling.cutting.family import Family
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.rebuild import OpenBoard
from scantling.cutting.relaxation import Relaxation
from scantling.cutting.steps import Chance, Steps

FEW_PIECES = 40
"""So few pieces are left to the search of lists."""


class Taker:
    """Takes whole boards until few pieces are left."""

    def __init__(self, family: Family, steps: Steps, until: int) -> None:
        self.family, self.steps, self.until = family, steps, until
        self.chance = Chance()
        self.boards: list[OpenBoard] = []
        self.areas = [kind.length * kind.width for kind in family.kinds]

    def take(self, parent: Relaxation) -> Family:
        """Take boards; return what is left to be cut, and from what."""
        family = self.family
        while sum(kind.count for kind in family.kinds) > FEW_PIECES and self.steps.done < self.until:
            counts = [kind.count for kind in family.kinds]
            relaxation = Relaxation(PanelPatterns(family, self.steps, counts), self.steps)
            relaxation.learn(parent)
            relaxation.of_prices(until=self.until)
            taken = self._round(relaxation, family, counts)
            if taken is None:
                break
            family, parent = taken, relaxation
        return family

    def _round(self, relaxation: Relaxation, family: Family, counts: list[int]) -> Family | None:
        """Take the boards that are used whole, or else the best of those most used."""
        most = [sort.most for sort in family.sorts]
        taken = 0
        for amount, sort, pattern in self._ranked(relaxation, counts):
            copies = int(amount + 1e-6) or (not taken)
            for _ in range(min(copies, most[sort])):
                board, left = lay(
                    family, sort, relaxation.pool[sort, pattern], counts, self.steps, self.chance
                )
                if left == counts:
                    break
                self.boards.append(board)
                counts = left
                most[sort] -= 1
                taken += 1
        if not taken:
            return None
        kinds = tuple(replace(kind, count=count) for kind, count in zip(family.kinds, counts, strict=False))
        sorts = tuple(replace(sort, most=number) for sort, number in zip(family.sorts, most, strict=False))
        return replace(family, kinds=kinds, sorts=sorts)

    def _ranked(self, relaxation: Relaxation, counts: list[int]) -> list[tuple[float, int, tuple[int, ...]]]:
        def waste(base: tuple[float, int, tuple[int, ...]]) -> float:
            _, sort, pattern = base
            used = sum(
                [
                    min(n, counts[k]) * self.areas[k]
                    for n, k in zip(pattern, relaxation.patterns.rows, strict=False)
                ]
            )
            stock = self.family.sorts[sort]
            return 1 - used / (stock.length * stock.width)

        return sorted(
            relaxation.bases, key=lambda base: (-int(base[0] + 1e-6), waste(base) - base[0] / 2, base[1:])
        )
