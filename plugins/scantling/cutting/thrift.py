"""Doing with cheaper boards than those of an answer: a search with a goal.

The emptiest boards are sold, so that what is left costs less than the answer did; their pieces are loose.
Then, turn by turn, a few boards are lightened or sold, others are bought for the money left, and the loose
pieces are put on these few again. What finds no place must not grow much. When nothing is left over, the
answer is cheaper, and the goal is set anew.

Ruin and recreate is due to Schrimpf, Schneider, Stamm-Wilbrandt and Dueck (2000); setting a goal and
counting what is left over, for sheets of several sizes, to Gardeyn and Wauters (2022). Here each turn
touches few boards, so that it takes no longer where there are many.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.family import Family
from scantling.cutting.layout import Layout
from scantling.cutting.rebuild import OpenBoard, Rebuilder
from scantling.cutting.steps import Chance, Steps

FEW = 4
"""So many boards are touched in a turn at most."""

TIRED = 3_000
"""After so many turns that left no less, other boards of the answer are sold."""

SLACK = 8
"""By so many hundredths of a board what is left over may be more than the least so far."""

MOST_LOOSE = 40
"""So many loose pieces are looked at in a turn at most."""


class Thrift:
    """An answer, and the search for a cheaper one."""

    def __init__(self, family: Family, answer: Sequence[Layout], steps: Steps, chance: Chance) -> None:
        self.family, self.steps, self.chance = family, steps, chance
        self.builder = Rebuilder(family, range(len(family.sorts)), steps, chance)
        self.prices = [sort.price for sort in family.sorts]
        self.areas = self.builder.areas
        self.best = [self.builder.opened(layout) for layout in answer]
        self.top = max(sort.length * sort.width for sort in family.sorts)

    def run(self, least: int, until: int) -> list[Layout]:
        """Return the cheapest answer found.

        Args:
            least: what no answer can cost less than.
            until: how many steps may be done.
        """
        tries = 0
        while self.cost(self.best) > least and self.steps.done < until:
            self._aim(tries)
            tries = 0 if self._reached(until) else tries + 1
        return self.builder.layouts_of(self.best)

    def cost(self, boards: Sequence[OpenBoard]) -> int:
        """Return what boards cost."""
        return sum([self.prices[board[0]] for board in boards])

    def _aim(self, tries: int) -> None:
        """Sell the emptiest boards of the answer (others on later tries) until a cheaper one is possible."""
        chance = self.chance
        worth = [
            sum([self.areas[kind] for kind in pieces_of(board)]) / (self.prices[board[0]] or 0.5)
            for board in self.best
        ]
        order = sorted(
            range(len(worth)), key=lambda at: (-worth[at] * (100 + chance.below(1 + 20 * tries)), at)
        )
        self.boards = [self.best[at] for at in order]
        self.loose: list[int] = []
        self.money = -1
        self.free = [sort.most for sort in self.family.sorts]
        for board in self.boards:
            self.free[board[0]] -= 1
        while self.money < 0:
            board = self.boards.pop()
            self._sell(board)
            self.loose += pieces_of(board)

    def _sell(self, board: OpenBoard) -> None:
        self.money += self.prices[board[0]]
        self.free[board[0]] += 1

    def _reached(self, until: int) -> bool:
        """Search until nothing is left over; return whether that came about before the search got tired."""
        now = least = sum([self.areas[kind] for kind in self.loose])
        idle = 0
        while self.steps.done < until and idle < TIRED:
            if not self.loose:
                self.best = self.boards
                return True
            limit = max(now, least + self.top * self.chance.below(SLACK) // 100)
            now = self._turn(limit, now)
            idle += 1
            if now < least:
                least, idle = now, 0
        return False

    def _turn(self, limit: int, now: int) -> int:
        """Rebuild a few boards unless that leaves more than the limit; return how much is left over."""
        chance, boards = self.chance, self.boards
        self.steps.done += 10
        before = self.money, list(self.free)
        loose, aside = self.loose, []
        if len(loose) > MOST_LOOSE:
            start = chance.below(len(loose))
            loose = loose[start:] + loose[:start]
            loose, aside = loose[:MOST_LOOSE], loose[MOST_LOOSE:]
            limit -= sum([self.areas[kind] for kind in aside])
        loose = list(loose)
        picked = self._picked()
        opened: list[OpenBoard] = []
        sells = chance.below(2)
        for at in picked:
            if chance.below(4) or sells:
                loose += pieces_of(boards[at])
                self._sell(boards[at])
            else:
                opened.append(self._lightened(boards[at], loose))
        opened += self._bought()
        opened, left = self.builder.recreate(opened, loose, limit)
        area = sum([self.areas[kind] for kind in left])
        if area > limit:
            self.money, self.free = before
            return now
        for at in sorted(picked, reverse=True):
            boards[at] = boards[-1]
            boards.pop()
        for board in opened:
            if board[5]:
                boards.append(board)
            else:
                self._sell(board)
        self.loose = left + aside
        return sum([self.areas[kind] for kind in self.loose])

    def _picked(self) -> set[int]:
        """Return which boards are touched."""
        size = len(self.boards)
        return {self.chance.below(size) for _ in range(1 + self.chance.below(FEW))} if size else set()

    def _lightened(self, board: OpenBoard, loose: list[int]) -> OpenBoard:
        """Return a board without some of its sections; their pieces are loose."""
        number, across, _, length, width, sections = board
        kept = []
        for section in sections:
            if self.chance.below(2):
                kept.append(section)
            else:
                loose += [piece[0] for strip in section[2] for piece in strip[2]]
        return [number, across, length - sum([section[0] for section in kept]), length, width, kept]

    def _bought(self) -> list[OpenBoard]:
        """Buy boards for the money left, any that it buys."""
        bought: list[OpenBoard] = []
        while True:
            able = [
                number
                for number, price in enumerate(self.prices)
                if price <= self.money and self.free[number] > 0
            ]
            if not able:
                return bought
            number = able[self.chance.below(len(able))]
            self.money -= self.prices[number]
            self.free[number] -= 1
            bought.append(self.builder.empty(number, bool(self.chance.below(2))))


def pieces_of(board: OpenBoard) -> list[int]:
    """Return the kinds of the pieces that lie on a board."""
    return [piece[0] for section in board[5] for strip in section[2] for piece in strip[2]]
