"""Whether given boards can hold all pieces, decided by trying everything that each board can hold.

What a board must at least hold follows from what the others can hold. Few pieces leave few choices then.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.every_board import Laid, every_board
from scantling.cutting.family import Family
from scantling.cutting.needs import Need
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.steps import Steps
from scantling.cutting.tightness import tight_need

Chosen = list[tuple[int, Laid]]
"""Sorts of stock, and what one board of each holds."""


def choose(
    family: Family, relaxation: Relaxation, amounts: Sequence[int], needs: Sequence[Need], until: int
) -> Chosen | None:
    """Return what the boards of a list are to hold, or None where they cannot hold all pieces.

    Raises:
        Unfinished: when the steps have reached `until`.
    """
    tight = tight_need(relaxation, amounts, until)
    if tight.slack(amounts) < 0:
        return None
    return _Exhaustion(family, amounts, [tight, *needs], relaxation.steps, until).run()


class _Exhaustion:
    """Fills one board after another; what cannot be held by the boards left is remembered."""

    def __init__(
        self, family: Family, amounts: Sequence[int], needs: Sequence[Need], steps: Steps, until: int
    ) -> None:
        self.family, self.amounts, self.needs, self.steps, self.until = family, amounts, needs, steps, until
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

    def run(self) -> Chosen | None:
        """Return what each board is to hold, or None."""
        counts = tuple(kind.count for kind in self.family.kinds)
        return self.chosen if self._choices_are(counts) and self._deeper(0, counts) else None

    def _choices_are(self, counts: Sequence[int]) -> bool:
        """Find what the boards of each sort can hold, without the last board; return whether all can."""
        slacks = [need.slack(self.amounts) for need in self.needs]
        for sort in dict.fromkeys(self.order[:-1]):
            tight = self.needs[0]
            found = every_board(
                self.family, counts, sort, tight.worths, tight.holds[sort] - slacks[0], self.steps, self.until
            )
            wastes = [[need.holds[sort] - _worth(need, held) for need in self.needs] for held, _ in found]
            kept = [
                (laid, waste)
                for laid, waste in zip(found, wastes, strict=True)
                if all(a <= b for a, b in zip(waste, slacks, strict=True))
            ]
            if not kept:
                return False
            kept.sort(key=lambda one: -sum([a * n for a, n in zip(self.areas, one[0][0], strict=True)]))
            self.choices[sort] = [laid for laid, _ in kept]
            amount = self.amounts[sort]
            slacks = [
                slack - amount * min(waste)
                for slack, *waste in zip(slacks, *[waste for _, waste in kept], strict=True)
            ]
            fewest = [min(n) for n in zip(*[held for held, _ in self.choices[sort]], strict=True)]
            counts = [max(0, a - amount * b) for a, b in zip(counts, fewest, strict=True)]
        return True

    def _deeper(self, at: int, left: tuple[int, ...]) -> bool:
        """Return whether the boards from one on can hold what is left; they are then chosen."""
        if not any(left):
            return True
        if at == len(self.order) or (at, left) in self.failed:
            return False
        self.failed.add((at, left))
        self.steps.done += 2 * len(self.needs)
        if any(_worth(need, left) > most for need, most in zip(self.needs, self.holds[at], strict=True)):
            return False
        sort = self.order[at]
        if at == len(self.order) - 1:
            worths = self.needs[0].worths
            least = _worth(self.needs[0], left)
            boards = every_board(self.family, left, sort, worths, least, self.steps, self.until)
            self.chosen += [(sort, laid) for laid in boards[:1]]
            return bool(boards)
        self.steps.done += len(self.choices[sort])
        if self.steps.done > self.until:
            raise Unfinished
        for laid in self.choices[sort]:
            rest = tuple([a - b if a > b else 0 for a, b in zip(left, laid[0], strict=True)])
            self.chosen.append((sort, laid))
            if self._deeper(at + 1, rest):
                return True
            self.chosen.pop()
        return False


def _worth(need: Need, counts: Sequence[int]) -> int:
    return sum([worth * count for worth, count in zip(need.worths, counts, strict=True)])
