"""An answer by filling one board after another."""

from __future__ import annotations

from scantling.cutting.family import Family
from scantling.cutting.insertion import fill, orders
from scantling.cutting.layout import Layout
from scantling.cutting.steps import Steps

SHARE = 4
"""No further order of pieces is tried once an answer took this part of the work allowed."""

WEIGHTS = (8, 8, 8)
"""What a longer section, a new one, and room beside a piece weigh."""


def greedy(family: Family, steps: Steps) -> list[Layout] | None:
    """Fill one board after another with the sort that costs least for what it takes up."""
    best = None
    enough = steps.done + steps.most // SHARE
    for order in orders(family):
        if best is not None and steps.done > enough:
            break
        found = _one_by_one(family, order, steps, WEIGHTS)
        if found is not None:
            key = (sum(layout.sort.price for layout in found), len(found))
            if best is None or key < best[0]:
                best = (key, found)
    return None if best is None else best[1]


def _one_by_one(
    family: Family, order: list[int], steps: Steps, weights: tuple[int, int, int]
) -> list[Layout] | None:
    left, layouts = order, []
    used = [0] * len(family.sorts)
    while left:
        best = None
        for number, sort in enumerate(family.sorts):
            if used[number] >= sort.most:
                continue
            for across in (False, True):
                (layout,), rest = fill(family, [sort], [across], left, steps, weights)
                counts = layout.counts(len(family.kinds))
                area = sum(
                    n * kind.length * kind.width for n, kind in zip(counts, family.kinds, strict=False)
                )
                if area:
                    key = (sort.price / area, -area)
                    if best is None or key < best[0]:
                        best = (key, number, layout, rest)
        if best is None:
            return None
        _, number, layout, left = best
        used[number] += 1
        layouts.append(layout)
    return layouts
