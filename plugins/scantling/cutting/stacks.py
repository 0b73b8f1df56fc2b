"""The best stack of strips for a section: it is as long as the longest of them."""

from __future__ import annotations

from typing import Any

from scantling.cutting.chain import Chain
from scantling.cutting.steps import Steps
from scantling.cutting.strips import Rated, Worth

Best = tuple[Any, Chain]
"""A worth, and how it is made up."""


def most_in(strips: list[Rated], side: int) -> float:
    """Return a bound on what a stack within `side` can be worth; strips by falling rate."""
    bound, left = 0.0, side
    for fall, width, _, most, _ in strips:
        room = min(most, side // width) * width
        if room >= left:
            return bound - fall * left
        bound -= fall * room
        left -= room
    return bound


def best_stack(
    strips: list[Rated], fresh: list[Rated], steps: Steps, side: int, target: Worth
) -> Best | None:
    """Return the best stack of strips within `side` worth more than `target` as (worth, chain), or None.

    One strip must be fresh: with none as long as the section, a shorter section would do.
    """
    best: Best | None = None
    narrowest = 0
    for strip in fresh:
        _, width, value, most, inside = strip
        if width <= side and value + most_in(strips, side - width) > target:
            rest = strips.copy()
            rest[rest.index(strip)] = (*strip[:3], most - 1, inside)
            narrowest = narrowest or min([one[1] for one in strips])
            found = _fullest(rest, narrowest, steps, side - width, target, (value, (inside, 1, ())))
            if found is not None:
                target, best = found[0], found
    return best


def _fullest(
    strips: list[Rated], narrowest: int, steps: Steps, side: int, target: Worth, begun: Best
) -> Best | None:
    """Return the best that a stack that is begun can become with what else fits within `side`, or None."""
    size = len(strips)
    best: Best | None = None
    nodes = 4

    # told of itself: a function that kept itself would be left for the collector of garbage at every call
    def deeper(again: Any, at: int, room: int, worth: Any, chain: Chain) -> None:
        nonlocal target, best, nodes
        nodes += 1
        if worth > target:
            target, best = worth, (worth, chain)
        for index in range(at, size):
            fall, width, value, most, inside = strips[index]
            copies = room // width
            if copies >= most:
                if worth - fall * room <= target:
                    return
                copies = most
            elif index + 1 < size:
                if worth + copies * value - (room - copies * width) * strips[index + 1][0] <= target:
                    return
            elif worth + copies * value <= target:
                return
            while copies:
                left, total = room - copies * width, worth + copies * value
                if left >= narrowest:
                    again(again, index + 1, left, total, (inside, copies, chain))
                elif total > target:
                    target, best = total, (total, (inside, copies, chain))
                copies -= 1

    deeper(deeper, 0, side, *begun)
    steps.done += nodes * 3 // 2
    return best
