"""Boards that are only crosscut: the longest offcut among equally cheap answers, then the fewest settings.

The offcut is found exactly: that a board of some sort can leave so much is the same as that all parts fit
when one such board is that much shorter, which the search for fillings answers. It is then not the longest
only where that search ran out of steps.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from scantling.cutting.family import Family
from scantling.cutting.lengths import Lengths
from scantling.cutting.packing import Filled, OutOfSteps, pack
from scantling.cutting.problem import Rules, worth_keeping
from scantling.cutting.steps import Steps

LEAVE = 500
"""How many steps one question may take whether a board can leave so much."""
MOST_SUMS = 4_000
"""More sums of lengths than about so many are not looked at."""
LISTS = 400
"""How many steps the search for other lists may take."""


@dataclass(frozen=True, slots=True)
class LengthAims:
    """Measures fillings by what they leave and how often the saw is set."""

    family: Family
    lengths: Lengths
    rules: Rules

    def left(self, filled: Filled) -> int:
        """Return how much of a board's room is free, in the units of the lengths."""
        sort, pattern = filled
        used = sum([n * length for n, length in zip(pattern, self.lengths.wanted, strict=True)])
        return self.lengths.rooms[sort] - used

    def worth(self, filled: Filled) -> int:
        """Return what a board's offcut is worth."""
        return self.worth_of(filled[0], self.left(filled))

    def worth_of(self, number: int, free: int) -> int:
        """Return what the offcut of a board of some sort is worth that has so much free."""
        sort = self.family.sorts[self.lengths.sorts[number]]
        unit = sort.length // self.lengths.rooms[number] * self.family.scale
        length = free * unit - self.family.kerf + sort.item.trim_ends
        return worth_keeping(length, sort.item.width, self.rules) if length > 0 else 0

    def best(self, boards: Sequence[Filled]) -> int:
        """Return what the best offcut is worth."""
        return max([self.worth(filled) for filled in boards], default=0)

    def settings(self, filled: Filled) -> int:
        """Return how many settings of the stop a board needs: a part that ends with the board needs none."""
        kinds = [count for count in filled[1] if count]
        trims = self.family.sorts[self.lengths.sorts[filled[0]]].item.trim_ends
        return len(kinds) - (not trims and 1 in kinds and self.left(filled) == 0)


def gathered(aims: LengthAims, boards: list[Filled], steps: Steps) -> list[Filled]:
    """Return boards of the same cost and number, with the longest offcut that was found."""
    best = boards
    for amounts in _equal_lists(aims.lengths, boards, steps):
        for sort, amount in enumerate(amounts):
            if amount:
                best = _roomiest(aims, amounts, sort, best, steps)
    return best


def _equal_lists(lengths: Lengths, boards: Sequence[Filled], steps: Steps) -> Iterator[tuple[int, ...]]:
    """Yield this list of boards, then others that cost as much, are as many, and are long enough together."""
    prices, most, rooms = lengths.prices, lengths.most, lengths.rooms
    own = tuple([sum([sort == j for sort, _ in boards]) for j in range(len(rooms))])
    cost = sum([prices[sort] for sort, _ in boards])
    need = sum([a * b for a, b in zip(lengths.wanted, lengths.counts, strict=True)])
    end = steps.done + LISTS

    def deeper(sort: int, left: int, money: int, room: int) -> Iterator[tuple[int, ...]]:
        steps.done += 1
        if sort == len(rooms):
            if left == money == 0 and room >= need:
                yield ()
            return
        low, high = min(prices[sort:]), max(prices[sort:])
        if not left * low <= money <= left * high or room + left * rooms[-1] < need or steps.done > end:
            return
        amounts: Sequence[int] = range(min(left, most[sort]), -1, -1)
        if sort == len(rooms) - 2 and prices[sort] != prices[sort + 1]:
            amounts = [(money - left * prices[sort + 1]) // (prices[sort] - prices[sort + 1])]
        for amount in amounts:
            if not 0 <= amount <= min(left, most[sort]):
                continue
            more = room + amount * rooms[sort]
            for rest in deeper(sort + 1, left - amount, money - amount * prices[sort], more):
                yield amount, *rest

    yield own
    yield from [found for found in deeper(0, len(boards), cost, 0) if found != own]


def _roomiest(
    aims: LengthAims, amounts: Sequence[int], sort: int, best: list[Filled], steps: Steps
) -> list[Filled]:
    """Return the boards with the most free on one of a sort, or `best` where that offcut is worth no less."""
    lengths = aims.lengths
    room = lengths.rooms[sort]
    slack = sum([n * r for n, r in zip(amounts, lengths.rooms, strict=True)])
    slack -= sum([n * w for n, w in zip(lengths.counts, lengths.wanted, strict=True)])
    goal = aims.best(best)
    frees = sorted([room - used for used in _sums(lengths, room) if used < room <= used + slack])
    frees = [free for free in frees if aims.worth_of(sort, free) > goal]
    low, high, middle = 0, len(frees), 0
    while low < high and steps.left:
        found = _shortened(lengths, amounts, sort, frees[middle], steps)
        if found is None:
            high = middle
            middle = (low + high) // 2
            continue
        best = found
        most = max([aims.left(filled) for filled in found if filled[0] == sort], default=0)
        low = max(middle + 1, bisect_right(frees, most))
        middle = (low + high) // 2
    return best


def _sums(lengths: Lengths, room: int) -> set[int]:
    """Return the sums of lengths that parts can make, up to a room; of very many, some are left out."""
    sums = {0}
    for length, count in zip(lengths.wanted, lengths.counts, strict=True):
        for _ in range(min(count, room // length)):
            more = {used + length for used in sums if used + length <= room}
            if more <= sums or len(sums) > MOST_SUMS:
                break
            sums |= more
    return sums


def _shortened(
    lengths: Lengths, amounts: Sequence[int], sort: int, free: int, steps: Steps
) -> list[Filled] | None:
    """Return a filling that leaves so much free on one board of a sort, or None where none was found."""
    short = lengths.rooms[sort] - free
    order = sorted(
        [(room, j, amounts[j] - (j == sort)) for j, room in enumerate(lengths.rooms)] + [(short, sort, 1)]
    )
    changed = replace(
        lengths,
        rooms=tuple(room for room, _, _ in order),
        prices=tuple(lengths.prices[j] for _, j, _ in order),
        most=tuple(amount for *_, amount in order),
        limited=(True,) * len(order),
        sorts=tuple(lengths.sorts[j] for _, j, _ in order),
    )
    try:
        found = pack(changed, changed.most, [], steps, min(LEAVE, steps.left))
    except OutOfSteps:
        return None
    return None if found is None else [(order[place][1], pattern) for place, pattern in found]


def shared_out(aims: LengthAims, boards: list[Filled], steps: Steps) -> list[Filled]:
    """Share out the parts of two boards anew, again and again, where that leaves more or sets less often."""
    boards = sorted(boards)
    better = True
    while better and steps.left:
        better = False
        for p, q in combinations(range(len(boards)), 2):
            steps.done += 1 + len(boards) // 8
            if steps.left == 0:
                break
            shared = _shared(aims, boards, p, q, steps)
            if shared is not None:
                boards, better = sorted(shared), True
                break
    return boards


def _shared(aims: LengthAims, boards: list[Filled], p: int, q: int, steps: Steps) -> list[Filled] | None:
    """Return the boards with the parts of two of them shared out in the best way, if that is any better."""
    one, two = boards[p], boards[q]
    if one == two:
        return None
    both = tuple([a + b for a, b in zip(one[1], two[1], strict=True)])
    rest = [board for i, board in enumerate(boards) if i not in (p, q)]
    others, offcut = set(rest), aims.best(rest)
    best = max(offcut, aims.worth(one), aims.worth(two)), -_settings_of(aims, others, one, two)
    found = None
    for pattern in _splits(aims.lengths, both, one[0], two[0], steps):
        first = one[0], pattern
        second = two[0], tuple([a - b for a, b in zip(both, pattern, strict=True)])
        worth = max(offcut, aims.worth(first), aims.worth(second))
        if worth < best[0]:
            continue
        goal = worth, -_settings_of(aims, others, first, second)
        if goal > best:
            best, found = goal, [*rest, first, second]
    return found


def _splits(
    lengths: Lengths, both: tuple[int, ...], one: int, two: int, steps: Steps
) -> Iterator[tuple[int, ...]]:
    """Yield what of some parts can lie on a board of one sort so that the others lie on one of another."""
    wanted = lengths.wanted
    total = sum([n * length for n, length in zip(both, wanted, strict=True)])
    low, high = max(1, total - lengths.rooms[two]), min(total - 1, lengths.rooms[one])
    after = [0] * (len(wanted) + 1)
    for kind in range(len(wanted) - 1, -1, -1):
        after[kind] = after[kind + 1] + both[kind] * wanted[kind]

    def deeper(kind: int, used: int) -> Iterator[tuple[int, ...]]:
        steps.done += 1
        if used > high or used + after[kind] < low or steps.left == 0:
            return
        if kind == len(wanted):
            yield ()
            return
        for count in range(both[kind], -1, -1):
            for rest in deeper(kind + 1, used + count * wanted[kind]):
                yield count, *rest

    yield from deeper(0, 0)


def _settings_of(aims: LengthAims, others: set[Filled], one: Filled, two: Filled) -> int:
    """Return how many settings two boards add to those of others; boards cut alike count once."""
    return sum([aims.settings(board) for board in {one, two} - others])
