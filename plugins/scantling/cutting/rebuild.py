"""Filling the boards of a list by taking some pieces out and putting them back better.

What is free on a board is worth most while it is a whole length of board, less when it is the side of a
section, least when it is the end of a strip. Each piece goes where it leaves most.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import inf
from typing import Any

from scantling.cutting.family import Family
from scantling.cutting.insertion import lies
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.steps import FACTOR, MASK, SUMMAND, Chance, Steps

OpenBoard = list[Any]
"""[sort, across, spare length, length, width, sections]; a section is [length, spare width, strips], a strip
[width, used length, pieces]. Lists, because this is where most of the time is spent."""

PATIENCE = 50
"""By so many hundredths what is left may be more than the least that was left, for a while."""

LOT = 15 << 33
"""One place in sixteen is passed over: where these bits of the chance are all clear (written out in `put`,
where most of the time is spent)."""


class Rebuilder:
    """Boards of one shopping list, and the search for a way to lay all pieces on them."""

    def __init__(self, family: Family, sorts: Sequence[int], steps: Steps, chance: Chance) -> None:
        self.family, self.sorts, self.steps, self.chance = family, list(sorts), steps, chance
        self.ways = {
            (number, across): lies(family, family.sorts[number], across)
            for number in set(sorts)
            for across in (False, True)
        }
        self.areas = [kind.length * kind.width for kind in family.kinds]
        self.keys = [
            self.areas,
            [kind.length for kind in family.kinds],
            [kind.width for kind in family.kinds],
            [max(kind.length, kind.width) * 2 + min(kind.length, kind.width) for kind in family.kinds],
        ]
        """By which pieces may be put in order: the largest first."""
        self.boards = [self.empty(number, bool(chance.below(2))) for number in self.sorts]
        self.left: list[int] = []

    def empty(self, number: int, across: bool) -> OpenBoard:  # noqa: FBT001
        """Return a board with nothing on it."""
        sort = self.family.sorts[number]
        length, width = (sort.width, sort.length) if across else (sort.length, sort.width)
        return [number, across, length, length, width, []]

    def run(self, rounds: int) -> list[Layout] | None:
        """Return layouts that hold every piece, or None where none was found."""
        every = [k for k, kind in enumerate(self.family.kinds) for _ in range(kind.count)]
        self.boards, self.left = self.recreate(self.boards, every)
        return self.improve(rounds)

    def improve(self, rounds: int) -> list[Layout] | None:
        """Go on from the boards as they are."""
        chance, areas = self.chance, self.areas
        worst = sum(areas[k] for k in self.left)
        best = worst
        for _turn in range(rounds):
            if not self.left:
                return self.layouts()
            if self.steps.left == 0:
                return None
            boards, loose = self.ruin()
            self.steps.done += 10
            limit = max(worst, best * (1 + chance.below(PATIENCE) / 100))
            boards, left = self.recreate(boards, loose, limit)
            area = sum([areas[k] for k in left])
            if area <= limit:
                self.boards, self.left, worst = boards, left, area
                best = min(best, area)
        return self.layouts() if not self.left else None

    def opened(self, layout: Layout) -> OpenBoard:
        """Return a layout as a board on which more may be put."""
        board = self.empty(number_of(layout, self.family), layout.across)
        for section in layout.sections:
            strips: list[list[Any]] = [
                [strip.width, sum([p[2] for p in strip.pieces]), strip.pieces] for strip in section.strips
            ]
            board[5].append([section.length, board[4] - sum([strip[0] for strip in strips]), strips])
            board[2] -= section.length
        return board

    def layouts(self) -> list[Layout]:
        """Return the boards as layouts."""
        return self.layouts_of(self.boards)

    def layouts_of(self, boards: Sequence[OpenBoard]) -> list[Layout]:
        """Return any boards as layouts."""
        return [
            Layout(
                self.family.sorts[number],
                across,
                tuple(
                    Section(length, tuple(Strip(width, tuple(pieces)) for width, _, pieces in strips))
                    for length, _, strips in sections
                ),
            )
            for number, across, _, _, _, sections in boards
        ]

    def ruin(self) -> tuple[list[OpenBoard], list[int]]:
        """Return the boards with some sections or strips taken out, and the loose pieces."""
        chance = self.chance
        boards = list(self.boards)
        loose = list(self.left)
        how = chance.below(8)
        if how == 0:
            at = chance.below(len(boards))
            loose += [p[0] for s in boards[at][5] for t in s[2] for p in t[2]]
            boards[at] = self.empty(boards[at][0], bool(chance.below(2)))
            return boards, loose
        for _ in range(1 + chance.below(8)):
            at = chance.below(len(boards))
            number, across, spare, length, width, sections = boards[at]
            if not sections:
                continue
            sections = list(sections)
            which = chance.below(len(sections))
            slen, sspare, strips = sections[which]
            if how < 4 or len(strips) == 1:
                loose += [p[0] for t in strips for p in t[2]]
                del sections[which]
                spare += slen
                if not sections and chance.below(2):
                    boards[at] = self.empty(number, not across)
                    continue
            else:
                gone = chance.below(len(strips))
                loose += [p[0] for p in strips[gone][2]]
                strips = strips[:gone] + strips[gone + 1 :]
                new = max([t[1] for t in strips])
                sections[which] = [new, sspare, strips]
                sections[which][1] = width - sum([t[0] for t in strips])
                spare += slen - new
            boards[at] = [number, across, spare, length, width, sections]
        return boards, loose

    def recreate(
        self, boards: list[OpenBoard], loose: list[int], limit: float = 1e300
    ) -> tuple[list[OpenBoard], list[int]]:
        """Put the loose pieces where they leave most; return the boards and what found no place.

        Args:
            limit: when more area than this has found no place, the rest is not tried.
        """
        chance, areas = self.chance, self.areas
        boards = [
            [number, across, spare, length, width, [[s[0], s[1], [t[:] for t in s[2]]] for s in sections]]
            for number, across, spare, length, width, sections in boards
        ]
        strip_value = (30 + chance.below(60)) / 100
        side_value = strip_value + (1 - strip_value) * (chance.below(100) / 100)
        keys = self.keys[chance.below(4)]
        loose = sorted(loose, key=lambda k: (-keys[k] * (80 + chance.below(40)), k))
        left: list[int] = []
        for place, kind in enumerate(loose):
            if kind in left or not self.put(boards, kind, strip_value, side_value):
                left.append(kind)
                limit -= areas[kind]
                if limit < 0:
                    return boards, left + loose[place + 1 :]
        return boards, left

    def put(self, boards: list[OpenBoard], kind: int, strip_value: float, side_value: float) -> bool:  # noqa: PLR0915
        """Put a piece where it leaves most; return whether there was a place."""
        best = inf
        where: tuple[OpenBoard, tuple[int, int, int], Any, Any] | None = None
        state = self.chance.state
        work = 3
        for board in boards:
            number, across, spare, _, wide, sections = board
            work += 1
            for way in self.ways[number, across][kind]:
                _, length, width = way
                if length <= spare:
                    state = (state * FACTOR + SUMMAND) & MASK
                    cost = length * (wide - side_value * (wide - width))
                    if cost < best and state & LOT:
                        best, where = cost, (board, way, None, None)
                for section in sections:
                    slen, free, strips = section
                    work += len(strips)
                    longer = length - slen
                    if longer > spare:
                        continue
                    most_used, least_width = spare - longer, width - free
                    if least_width <= 0:
                        if longer <= 0:
                            cost = side_value * width * slen + strip_value * width * longer
                        else:
                            cost = (
                                longer * (wide - side_value * free - strip_value * (wide - free))
                                + side_value * width * length
                            )
                        if cost < best:
                            best, where = cost, (board, way, section, None)
                    for strip in strips:
                        swidth, used, _ = strip
                        if used > most_used or swidth < least_width:
                            continue
                        state = (state * FACTOR + SUMMAND) & MASK
                        if not state & LOT:
                            continue
                        cost = strip_value * swidth * length
                        more = used + longer
                        if more > 0:
                            cost += more * (wide - side_value * free - strip_value * (wide - free))
                        if width > swidth:
                            wider = width - swidth
                            new = slen + more if more > 0 else slen
                            cost += side_value * wider * new - strip_value * wider * (new - used - length)
                        if cost < best:
                            best, where = cost, (board, way, section, strip)
        self.chance.state = state
        self.steps.done += work // 2
        if where is None:
            return False
        board, (turned, length, width), section, strip = where
        laid = (kind, turned, length, width)
        if section is None:
            board[2] -= length
            board[5].append([length, board[4] - width, [[width, length, (laid,)]]])
            return True
        if strip is None:
            if length > section[0]:
                board[2] -= length - section[0]
                section[0] = length
            section[1] -= width
            section[2].append([width, length, (laid,)])
            return True
        strip[1] += length
        if strip[1] > section[0]:
            board[2] -= strip[1] - section[0]
            section[0] = strip[1]
        if width > strip[0]:
            section[1] -= width - strip[0]
            strip[0] = width
        strip[2] += (laid,)
        return True


def number_of(layout: Layout, family: Family) -> int:
    """Return which sort of the family a board is."""
    return next(at for at, sort in enumerate(family.sorts) if sort.item == layout.sort.item)
