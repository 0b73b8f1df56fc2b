"""Many pieces from boards of one length: then only the number of boards matters."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.cover import Cover, Pattern
from scantling.cutting.crosscuts import LengthPatterns, longest_first
from scantling.cutting.descent import Descent
from scantling.cutting.least_boards import least_boards
from scantling.cutting.lengths import Lengths
from scantling.cutting.needs import whole
from scantling.cutting.packing import Filled
from scantling.cutting.refill import Pieces, Refill, fullest_first
from scantling.cutting.relaxation import Relaxation
from scantling.cutting.steps import Chance, Steps

QUICK = 3_000
"""So many rounds of refilling come before the linear programme."""
PATIENT = 10 * QUICK
"""So many come at a time after it."""


class OneLength:
    """The search for the least number of boards."""

    def __init__(self, lengths: Lengths, steps: Steps) -> None:
        self.lengths, self.steps = lengths, steps
        self.room, self.chance = lengths.rooms[0], Chance()
        pieces = [n for n, count in zip(lengths.wanted, lengths.counts, strict=True) for _ in range(count)]
        self.low = least_boards(lengths.wanted, lengths.counts, self.room, steps)
        self.best = fullest_first(pieces, self.room, steps)
        other = [self._pieces(pattern) for _, pattern in longest_first(lengths) or ()]
        if other and len(other) < len(self.best):
            self.best = other

    def run(self) -> tuple[list[Filled] | None, int]:
        """Return the boards (None where more are needed than are to be had), and a bound on their cost."""
        steps = self.steps
        while self._open() and self._refilled(QUICK, steps.most // 4):
            pass
        if self._open():
            self._round(steps.done + steps.left * 3 // 4)
        while self._open():
            self._refilled(PATIENT, steps.most)
        filled = [(0, self._pattern(board)) for board in self.best]
        price = self.lengths.prices[0]
        return (None if len(filled) > self.lengths.most[0] else filled), self.low * price

    def _open(self) -> bool:
        return len(self.best) > self.low and self.steps.left > 0

    def _round(self, until: int) -> None:
        """Prove more by a linear programme, and take boards as it says, again and again."""
        while self._open() and self.steps.done < until:
            root = Cover(self.lengths, self.lengths.counts, map(self._pattern, self.best), self.steps)
            if not root.solve(len(self.best) - 1, until):
                self._prove(root)
                return
            found = self._descended(root, len(self.best) - 1, until)
            if found is None:
                return
            self.best = [self._pieces(pattern) for pattern in found]

    def _prove(self, root: Cover) -> None:
        """Raise the bound to what the programme's prices prove in whole numbers."""
        lengths, steps = self.lengths, self.steps
        need = Relaxation(LengthPatterns(lengths, lengths.counts, steps), steps).need(whole(root.best))
        self.low = max(self.low, -(-need.least_cost(lengths.prices, lengths.most) // lengths.prices[0]))

    def _descended(self, root: Cover, goal: int, until: int) -> list[Pattern] | None:
        """Take boards from the programme again and again, each time with other choices."""
        descent = Descent(self.lengths, root, self.steps)
        while self.steps.done < until:
            found = descent.run(goal, until)
            if found is not None:
                return found
            descent.stir(self.chance)
        return None

    def _refilled(self, rounds: int, until: int) -> bool:
        """Take the emptiest board apart and try to find its pieces a place; return whether that was done."""
        boards = sorted(self.best, key=sum)
        refill = Refill(boards[1:], boards[0], self.room, self.steps, self.chance)
        return self._try(refill, rounds, until)

    def _try(self, refill: Refill, rounds: int, until: int) -> bool:
        done = refill.run(rounds, until)
        if done:
            self.best = [board for board in refill.boards if board]
        return done

    def _pieces(self, pattern: Sequence[int]) -> Pieces:
        return [n for n, count in zip(self.lengths.wanted, pattern, strict=True) for _ in range(count)]

    def _pattern(self, board: Pieces) -> tuple[int, ...]:
        return tuple([board.count(length) for length in self.lengths.wanted])
