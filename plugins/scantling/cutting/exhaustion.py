"""Whether given boards can hold all pieces, decided by trying everything that each board can hold.

What a board must at least hold follows from what the others can hold. Few pieces leave few choices then.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.every_board import Laid, every_board
from scantling.cutting.family import Family
from scantling.cutting.needs import Need
from scantling.cutting.relaxation import Unfinished
from scantling.cutting.steps import Steps

Chosen = list[tuple[int, Laid]]
"""Sorts of stock, and what one board of each holds."""


class Exhaustion:
    """One list: fills one board after another; what cannot be held by the boards left is remembered.

    It may be broken off and taken up again.
    """

    def __init__(self, family: Family, amounts: Sequence[int], needs: Sequence[Need], steps: Steps) -> None:
        """Set the search up.

        Args:
            needs: the first of them, by which all that a board can hold is found, is best one that leaves
                the list little room.
        """
        self.family, self.amounts, self.needs, self.steps = family, amounts, needs, steps
        self.until = 0
        self.slacks = [need.slack(amounts) for need in needs]
        self.counts = [kind.count for kind in family.kinds]
        """How many of each kind a board that is still to be looked at can hold at most."""
        self.areas = [kind.length * kind.width for kind in family.kinds]
        sorts = sorted(
            [j for j, amount in enumerate(amounts) if amount],
            key=lambda j: family.sorts[j].length * family.sorts[j].width,
        )
        self.order = [sort for sort in sorts for _ in range(amounts[sort])]
        self.holds = [
            [sum(need.holds[sort] for sort in self.order[at:]) for need in needs]
            for at in range(len(self.order) + 1)
        ]
        self.choices: dict[int, list[Laid]] = {}
        self.failed: set[tuple[int, tuple[int, ...]]] = set()
        self.chosen: Chosen = []

    def run(self, until: int) -> Chosen | None:
        """Return what each board is to hold, or None where they cannot hold all pieces.

        Raises:
            Unfinished: when the steps have reached `until`.
        """
        self.until, self.chosen = until, []
        if not all(self._can_hold(sort) for sort in dict.fromkeys(self.order[:-1])):
            return None
        return self.chosen if self._deeper(0, tuple(kind.count for kind in self.family.kinds)) else None

    def _can_hold(self, sort: int) -> bool:
        """Find what the boards of a sort can hold; return whether there is anything.

        What the boards of one sort waste at least, those of the others cannot.
        """
        if sort in self.choices:
            return bool(self.choices[sort])
        tight, steps = self.needs[0], self.steps
        least = tight.holds[sort] - self.slacks[0]
        found = every_board(self.family, self.counts, sort, tight.worths, least, steps, self.until)
        kept = []
        for laid in found:
            wastes = [need.holds[sort] - _worth(need, laid[0]) for need in self.needs]
            if all(waste <= slack for waste, slack in zip(wastes, self.slacks, strict=True)):
                kept.append((laid, wastes))
        kept.sort(key=lambda one: -sum([a * n for a, n in zip(self.areas, one[0][0], strict=True)]))
        self.choices[sort] = [laid for laid, _ in kept]
        if not kept:
            return False
        amount = self.amounts[sort]
        least_wastes = [min(wastes) for wastes in zip(*[wastes for _, wastes in kept], strict=True)]
        self.slacks = [s - amount * waste for s, waste in zip(self.slacks, least_wastes, strict=True)]
        fewest = [min(n) for n in zip(*[held for held, _ in self.choices[sort]], strict=True)]
        self.counts = [max(0, a - amount * b) for a, b in zip(self.counts, fewest, strict=True)]
        return True

    def _deeper(self, at: int, left: tuple[int, ...]) -> bool:
        """Return whether the boards from one on can hold what is left; they are then chosen."""
        if not any(left):
            return True
        if at == len(self.order) or (at, left) in self.failed:
            return False
        self.steps.done += 2 * len(self.needs)
        if any(_worth(need, left) > most for need, most in zip(self.needs, self.holds[at], strict=True)):
            return False
        if self.steps.done > self.until:
            raise Unfinished
        held = self._last(left) if at == len(self.order) - 1 else self._one_of(at, left)
        if not held:
            self.failed.add((at, left))
        return held

    def _one_of(self, at: int, left: tuple[int, ...]) -> bool:
        """Return whether a board can hold something such that the boards after it can hold the rest."""
        sort = self.order[at]
        self.steps.done += len(self.choices[sort])
        for laid in self.choices[sort]:
            rest = tuple([a - b if a > b else 0 for a, b in zip(left, laid[0], strict=True)])
            self.chosen.append((sort, laid))
            if self._deeper(at + 1, rest):
                return True
            self.chosen.pop()
        return False

    def _last(self, left: tuple[int, ...]) -> bool:
        """Return whether the last board can hold all that is left."""
        sort, tight = self.order[-1], self.needs[0]
        least = _worth(tight, left)
        boards = every_board(self.family, left, sort, tight.worths, least, self.steps, self.until)
        self.chosen += [(sort, laid) for laid in boards[:1]]
        return bool(boards)


def _worth(need: Need, counts: Sequence[int]) -> int:
    return sum([worth * count for worth, count in zip(need.worths, counts, strict=True)])
