"""Many pieces from boards of one length: then only the number of boards matters."""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.crosscuts import LengthPatterns, longest_first
from scantling.cutting.least_boards import least_boards
from scantling.cutting.lengths import Lengths
from scantling.cutting.needs import whole
from scantling.cutting.packing import Filled
from scantling.cutting.refill import Pieces, Refill, fullest_first
from scantling.cutting.relaxation import Relaxation
from scantling.cutting.rounding import Rounding, Stand
from scantling.cutting.steps import DEFAULT_STEPS, Chance, Steps

QUICK = 3_000
"""So many rounds of refilling come before the linear programme."""
PATIENT = 10 * QUICK
"""So many come, again and again, where more work is allowed than for a plan: up to half of what is beyond."""


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
        patience = (steps.most - DEFAULT_STEPS) // 2
        while self._open() and steps.done < patience:
            self._refilled(PATIENT, patience)
        if self._open():
            self._round()
        filled = [(0, self._pattern(board)) for board in self.best]
        price = self.lengths.prices[0]
        return (None if len(filled) > self.lengths.most[0] else filled), self.low * price

    def _open(self) -> bool:
        return len(self.best) > self.low and self.steps.left > 0

    def _round(self) -> None:
        """Prove more by a linear programme, and take boards as it says; between tries, refill boards."""
        lengths, steps = self.lengths, self.steps
        rounding = Rounding(lengths, steps, [(0, self._pattern(board)) for board in self.best])
        rounding.solve(rounding.root, lengths.counts, steps.done + steps.left // 2)
        proof = Relaxation(LengthPatterns(lengths, lengths.counts, steps), steps)
        need = proof.need(whole(rounding.root.shadow[: len(lengths.counts)]))
        self.low = max(self.low, -(-need.least_cost(lengths.prices, lengths.most) // lengths.prices[0]))
        rounds = 4 * QUICK
        while self._open():
            before = steps.done
            found = rounding.dive((len(self.best) - 1) * lengths.prices[0], steps.done + steps.left // 2)
            if isinstance(found, list):
                self.best = [self._pieces(pattern) for _, pattern in found]
                continue
            self._mended(found, rounds)
            while self._open() and self._refilled(rounds, steps.most):
                pass
            if steps.done - before < steps.left // 2:
                rounds *= 2
            rounding.stir(self.chance)

    def _mended(self, stand: Stand, rounds: int) -> None:
        """Refill the boards that were taken until all pieces lie on one board fewer."""
        boards = [self._pieces(pattern) for _, pattern in stand.taken][: len(self.best) - 1]
        rest = [self._pieces(pattern) for _, pattern in stand.taken][len(self.best) - 1 :]
        loose = self._pieces(stand.left) + [length for board in rest for length in board]
        boards += [[] for _ in range(len(self.best) - 1 - len(boards))]
        self._try(Refill(boards, loose, self.room, self.steps, self.chance), rounds, self.steps.most)

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
