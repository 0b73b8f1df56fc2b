"""From fractions of boards of one length to whole ones, down a tree of choices.

A board that the programme uses whole is taken, or else the one it uses most; the programme goes on with
what is left. Where that needs more boards than the goal, an earlier choice is made otherwise; the search
does not go back far enough to try everything (Sadykov, Vanderbeck, Pessoa, Tahiri and Uchoa, Primal
heuristics for branch and price: the assets of diving methods, INFORMS Journal on Computing 31, 2019).
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from scantling.cutting.cover import SHARP, Cover, Pattern
from scantling.cutting.lengths import Lengths
from scantling.cutting.packing import OutOfSteps, pack
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.taking import forbid, left_of, narrowed, take

FEW_PIECES = 30
"""So few pieces are left to the search that tries everything."""
LEAVE = 100_000
"""How many steps that search may take."""
MOST_DEAD_ENDS = 12
"""After so many dead ends the taking of boards is given up."""
OMIT = 4
"""One of so many boards used whole is not to be used when boards are taken once more."""
NARROW = 5
"""The programme is set up anew when one of so many rows has nothing left."""


@dataclass(slots=True)
class Stand:
    """How far the taking of boards has come."""

    cover: Cover
    taken: list[Pattern]
    tried: frozenset[Pattern]
    """What is not to be taken next, since that came to nothing."""


class Descent:
    """Takes boards one after another."""

    def __init__(self, lengths: Lengths, root: Cover, steps: Steps) -> None:
        self.lengths, self.root, self.steps = lengths, root, steps
        self.chance: Chance | None = None
        self.trail: list[Stand] = []

    def stir(self, chance: Chance) -> None:
        """Make other choices from now on."""
        self.chance = chance

    def run(self, goal: int, until: int) -> list[Pattern] | None:
        """Return patterns of `goal` boards that hold all pieces, or None where none were found."""
        stand = Stand(self._beginning(goal, until), [], frozenset())
        self.trail, dead_ends = [], 0
        while self.steps.done <= until:
            alive = self._taken(stand)
            if alive and sum(stand.cover.left) <= FEW_PIECES:
                rest = self._last(stand, goal, until)
                if rest is not None:
                    return stand.taken + rest
                alive = False
            if alive and self._goes_on(stand, goal, until):
                stand.tried = frozenset()
                continue
            dead_ends += 1
            if not self.trail or dead_ends == MOST_DEAD_ENDS:
                return None
            del self.trail[len(self.trail) - min(dead_ends // 2, len(self.trail) - 1) :]
            stand = self.trail.pop()
        return None

    def _beginning(self, goal: int, until: int) -> Cover:
        """Return the programme before any board is taken, later without some of the boards it used whole."""
        if self.chance:
            cover = self.root.copy()
            forbid(
                cover, {one[2] for one in cover.used() if one[0] >= 1 - SHARP and not self.chance.below(OMIT)}
            )
            if cover.solve(goal, until):
                return cover
        return self.root.copy()

    def _taken(self, stand: Stand) -> bool:
        """Take the boards used whole, or else the one used most; return whether there was one."""
        used = [one for one in stand.cover.used() if one[2] not in stand.tried]
        whole = [] if stand.tried else [one for one in used if one[0] >= 1 - SHARP]
        if whole:
            for amount, row, _ in whole:
                copies = int(amount + SHARP)
                stand.taken += [take(stand.cover, row, copies)] * copies
            return True
        if not used:
            return False
        ranked = [(self._rank(stand.cover, amount, pattern), row) for amount, row, pattern in used]
        row = max(ranked, key=lambda one: (one[0], -one[1]))[1]
        column = stand.cover.mixture.basis[row]
        if not stand.tried and column is not None:
            self.trail.append(Stand(stand.cover.copy(), list(stand.taken), frozenset({column.counts})))
        stand.taken.append(take(stand.cover, row, 1))
        return True

    def _rank(self, cover: Cover, amount: float, pattern: Pattern) -> tuple[float, int]:
        """Return how soon a board is to be taken: how often it is used, then how full it is."""
        much = amount * (80 + self.chance.below(40)) / 100 if self.chance else amount
        return round(much, 4), sum([n * size for n, size in zip(pattern, cover.sizes, strict=True)])

    def _goes_on(self, stand: Stand, goal: int, until: int) -> bool:
        """Return whether fractions of the boards left can hold what is left."""
        if len(stand.taken) >= goal:
            return False
        live = len([count for count in stand.cover.left if count])
        if (len(stand.cover.left) - live) * NARROW > len(stand.cover.left):
            stand.cover = narrowed(stand.cover)
        return stand.cover.solve(goal - len(stand.taken), until)

    def _last(self, stand: Stand, goal: int, until: int) -> list[Pattern] | None:
        """Return boards for the last pieces, or None where none were found within the goal."""
        counts = left_of(stand.cover)
        boards, leave = goal - len(stand.taken), min(LEAVE, until - self.steps.done)
        try:
            found = pack(replace(self.lengths, counts=tuple(counts)), [boards], [], self.steps, leave)
        except OutOfSteps:
            return None
        return None if found is None else [pattern for _, pattern in found]
