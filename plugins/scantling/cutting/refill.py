"""Filling boards of one length as full as can be, and emptying a few to fill them better.

Which sums some pieces can make is held as the bits of one large number: a piece shifts them.

Of two ways that leave as much over, the one with the greater sum of squared loads is better (Falkenauer's
measure for bin packing): what is unused then gathers on few boards, until a loose piece finds room there.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.steps import Chance, Steps

Pieces = list[int]
"""The lengths of some pieces."""


def filled(pieces: Sequence[int], room: int) -> tuple[Pieces, Pieces]:
    """Return the pieces that fill a board best, and the rest; earlier pieces are taken rather than later."""
    mask, bits = (2 << room) - 1, 1
    before = [1]
    for length in pieces:
        bits |= (bits << length) & mask
        before.append(bits)
    load = bits.bit_length() - 1
    taken, rest = [], []
    for at in range(len(pieces) - 1, -1, -1):
        if before[at] >> load & 1:
            rest.append(pieces[at])
        else:
            taken.append(pieces[at])
            load -= pieces[at]
    rest.reverse()
    return taken, rest


def fullest_first(pieces: Sequence[int], room: int, steps: Steps) -> list[Pieces]:
    """Fill board after board: each holds the longest piece left, and is filled as full as can be."""
    left = sorted(pieces, reverse=True)
    boards = []
    while left:
        steps.done += 1 + len(left) * (64 + room // 64) // 256
        taken, rest = filled(left[1:], room - left[0])
        boards.append([left[0], *taken])
        left = rest
    return boards


class Refill:
    """Boards of one length, and the pieces that found no place on them yet."""

    def __init__(
        self, boards: Sequence[Pieces], loose: Pieces, room: int, steps: Steps, chance: Chance
    ) -> None:
        self.boards, self.loose, self.room = [list(board) for board in boards], list(loose), room
        self.steps, self.chance = steps, chance
        self.loads = [sum(board) for board in self.boards]

    def run(self, rounds: int, until: int) -> bool:
        """Refill a few boards at a time; return whether every piece has found its place."""
        chance, steps, room = self.chance, self.steps, self.room
        unused = sum(self.loose)
        words = 64 + room // 64
        for _ in range(rounds):
            if not self.loose:
                return True
            if steps.done > until:
                return False
            chosen = self._some()
            pool = self.loose + [length for at in chosen for length in self.boards[at]]
            steps.done += 4 + len(pool) * (len(chosen) * words // 200 + 1)
            noisy = [(length * (850 + chance.below(300)), length) for length in pool]
            noisy.sort(reverse=True)
            pool = [length for _, length in noisy]
            fresh: list[Pieces] = []
            for _ in chosen:
                if pool:
                    taken, rest = filled(pool[1:], room - pool[0])
                    fresh.append([pool[0], *taken])
                    pool = rest
                else:
                    fresh.append([])
            left, loads = sum(pool), [sum(board) for board in fresh]
            if left < unused or (left == unused and self._gathers(chosen, loads)):
                unused, self.loose = left, pool
                for at, board, load in zip(chosen, fresh, loads, strict=True):
                    self.boards[at], self.loads[at] = board, load
        return not self.loose

    def _gathers(self, chosen: Sequence[int], loads: Sequence[int]) -> bool:
        """Return whether what is unused on the chosen boards lies together at least as much as before."""
        return sum([load * load for load in loads]) >= sum([self.loads[at] ** 2 for at in chosen])

    def _some(self) -> list[int]:
        """Return two to four boards, most often one of them not full."""
        chance, size = self.chance, len(self.boards)
        chosen: dict[int, None] = {}
        if chance.below(10) < 8:
            at = chance.below(size)
            for step in range(size):
                if self.loads[(at + step) % size] < self.room:
                    chosen[(at + step) % size] = None
                    break
        wanted = min(size, 2 + chance.below(3))
        while len(chosen) < wanted:
            chosen[chance.below(size)] = None
        return list(chosen)
