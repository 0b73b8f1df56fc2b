"""Shopping lists: how many of each stock, tried from the cheapest up."""

from __future__ import annotations

from scantling.cutting.boards import solve_boards
from scantling.cutting.panels import PanelCutter
from scantling.cutting.search import Search
from scantling.cutting.family import Family, Sort
from scantling.cutting.insertion import fill, orders, shuffled
from scantling.cutting.layout import Layout
from scantling.cutting.steps import Chance, Steps
from scantling.fault import Fault, Faulty


def solve_family(family: Family, steps: Steps) -> tuple[list[Layout], int]:
    """Return layouts for all pieces of a family, and a bound on the cost."""
    if family.one_width is not None:
        return solve_boards(family, steps)
    return Search(PanelCutter(family, steps), steps).run()


def area_bound(family: Family) -> int:
    """Return the cost of as much area as the parts have, at the best price for area."""
    area = sum(kind.length * kind.width * kind.count for kind in family.kinds)
    cost_num = 0
    ranked = sorted(family.sorts, key=lambda sort: sort.price / (sort.length * sort.width))
    total = 0
    for sort in ranked:
        size = sort.length * ((sort.item.width + family.kerf) // family.scale)
        take = min(sort.most, -(-area // size))
        if take * size >= area:
            return total + -(-sort.price * area // size)
        area -= take * size
        total += take * sort.price
    return total


def greedy(family: Family, steps: Steps) -> list[Layout]:
    """Fill one board after another with the sort that costs least for what it takes up."""
    best = None
    chance = Chance()
    for turn in range(1):
        for base in orders(family):
            order = shuffled(base, chance, 0 if turn == 0 else 4)
            found = _one_by_one(family, order, steps, ((8, 8, 8), (8, 4, 8), (4, 8, 4))[turn % 3])
            if found is not None:
                key = (sum(layout.sort.price for layout in found), len(found))
                if best is None or key < best[0]:
                    best = (key, found)
    if best is None:
        raise Faulty([Fault("not-enough", "the parts cannot be cut from as much stock as is to be had")])
    return best[1]


def _one_by_one(family: Family, order: list[int], steps: Steps, weights) -> list[Layout] | None:
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
                area = sum(n * kind.length * kind.width for n, kind in zip(counts, family.kinds))
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
