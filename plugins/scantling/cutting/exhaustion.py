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
    """Keeps what the boards of each sort can hold, so that one list helps the next."""

    def __init__(self, family: Family, area: Need, steps: Steps) -> None:
        self.family, self.area, self.steps = family, area, steps
        self.known: dict[int, tuple[int, list[Laid]]] = {}

    def choose(self, amounts: Sequence[int], needs: Sequence[Need], until: int) -> Chosen | None:
        """Return what the boards of a list are to hold, or None where they cannot hold all pieces.

        Raises:
            Unfinished: when the steps have reached `until`.
        """
        spare = self.area.slack(amounts)
        choices: dict[int, list[Laid]] = {}
        for sort in [j for j, amount in enumerate(amounts) if amount]:
            choices[sort] = [
                laid
                for laid in self._boards(sort, self.area.holds[sort] - spare, until)
                if all(_worth(need, laid[0]) >= need.holds[sort] - need.slack(amounts) for need in needs)
            ]
        order = [
            sort for sort in sorted(choices, key=lambda j: len(choices[j])) for _ in range(amounts[sort])
        ]
        search = _Search(order, choices, needs, self.steps, until)
        return search.chosen if search.deeper(0, tuple(kind.count for kind in self.family.kinds)) else None

    def _boards(self, sort: int, least: int, until: int) -> list[Laid]:
        """Return all that a board of a sort can hold of at least so much area."""
        if sort not in self.known or self.known[sort][0] > least:
            boards = every_board(self.family, sort, self.area.worths, least, self.steps, until)
            self.known[sort] = least, boards
        return self.known[sort][1]


class _Search:
    """Fills one board after another; what cannot be held by the boards left is remembered."""

    def __init__(
        self,
        order: Sequence[int],
        choices: dict[int, list[Laid]],
        needs: Sequence[Need],
        steps: Steps,
        until: int,
    ) -> None:
        self.order, self.choices, self.needs, self.steps, self.until = order, choices, needs, steps, until
        self.holds = [
            [sum(need.holds[sort] for sort in order[at:]) for need in needs] for at in range(len(order) + 1)
        ]
        self.failed: set[tuple[int, tuple[int, ...]]] = set()
        self.chosen: Chosen = []

    def deeper(self, at: int, left: tuple[int, ...]) -> bool:
        """Return whether the boards from one on can hold what is left; they are then chosen."""
        if not any(left):
            return True
        if at == len(self.order) or (at, left) in self.failed:
            return False
        self.failed.add((at, left))
        holds = zip(self.needs, self.holds[at], strict=True)
        self.steps.done += 2 * len(self.needs)
        if any(_worth(need, left) > most for need, most in holds):
            return False
        boards = self.choices[self.order[at]]
        self.steps.done += len(boards)
        if self.steps.done > self.until:
            raise Unfinished
        for laid in boards:
            rest = tuple([a - b if a > b else 0 for a, b in zip(left, laid[0], strict=True)])
            self.chosen.append((self.order[at], laid))
            if self.deeper(at + 1, rest):
                return True
            self.chosen.pop()
        return False


def _worth(need: Need, counts: Sequence[int]) -> int:
    return sum([worth * count for worth, count in zip(need.worths, counts, strict=True)])
