"""Sheets and rips: the largest offcut, then the fewest settings, by rearranging a few boards of an answer.

One board after another is emptied; its pieces, and a few from the other boards, are put back where they
leave most, on the other boards first. What is then left free on the emptied board lies together. This finds
better offcuts; it does not prove that there are no better ones.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.family import Family, Sort
from scantling.cutting.layout import Layout
from scantling.cutting.problem import Rules, worth_keeping
from scantling.cutting.rebuild import OpenBoard, Rebuilder
from scantling.cutting.steps import Chance, Steps

STEPS = 12_000
"""How much work the choice may be."""
ROUNDS = 6
"""How often each board is emptied."""
MOST_EMPTIED = 3
"""So many boards are emptied: those with most left over."""
MOST_OTHERS = 4
"""So many others are filled from them: those with most left over."""

Goal = tuple[int, int]
"""What the best offcut is worth, and below nothing how many settings there are: more is better."""


class Gatherer:
    """Gathers what is left over on one board."""

    def __init__(self, family: Family, layouts: Sequence[Layout], rules: Rules) -> None:
        self.family, self.rules = family, rules
        self.steps, self.chance = Steps(STEPS), Chance()
        numbers = {sort.item.id: number for number, sort in enumerate(family.sorts)}
        self.boards = [_opened(layout, numbers[layout.sort.item.id]) for layout in layouts]
        self.builder = Rebuilder(family, [board[0] for board in self.boards], self.steps, self.chance)

    def run(self) -> list[Layout] | None:
        """Return better layouts on the same boards, or None where none were found."""
        first = best = self._goal(self.boards)
        emptied = sorted(range(len(self.boards)), key=lambda i: (-self._free(self.boards[i]), i))
        for i in emptied[:MOST_EMPTIED]:
            others = [j for j in emptied if j != i][:MOST_OTHERS]
            for _ in range(ROUNDS):
                if self.steps.left == 0:
                    break
                boards = self._emptied(i, others)
                goal = best if boards is None else self._goal(boards)
                if boards is not None and goal > best:
                    best, self.boards = goal, boards
        return self.builder.layouts_of(self.boards) if best > first else None

    def _emptied(self, i: int, others: Sequence[int]) -> list[OpenBoard] | None:
        """Return the boards with one emptied and filled again, or None where not all pieces found a place."""
        one = self.boards[i]
        loose = _pieces(one[5])
        rest = [self.boards[j] for j in others]
        if rest and self.chance.below(3):
            rest, taken = self._thinned(rest)
            loose += taken
        rest, left = self.builder.recreate(rest, loose)
        across = one[1] if self.chance.below(3) else not one[1]
        again, left = self.builder.recreate([self.builder.empty(one[0], across)], left)
        if left:
            return None
        boards = list(self.boards)
        boards[i] = again[0]
        for j, board in zip(others, rest, strict=True):
            boards[j] = board
        return boards

    def _thinned(self, boards: list[OpenBoard]) -> tuple[list[OpenBoard], list[int]]:
        """Return boards with a section taken out of one of them, and the pieces of that section."""
        at = self.chance.below(len(boards))
        number, across, spare, length, width, sections = boards[at]
        if not sections:
            return boards, []
        gone = self.chance.below(len(sections))
        kept = sections[:gone] + sections[gone + 1 :]
        thin = [number, across, spare + sections[gone][0], length, width, kept]
        return [*boards[:at], thin, *boards[at + 1 :]], _pieces([sections[gone]])

    def _free(self, board: OpenBoard) -> int:
        used = sum([self.builder.areas[kind] for kind in _pieces(board[5])])
        return int(board[3] * board[4]) - used

    def _goal(self, boards: Sequence[OpenBoard]) -> Goal:
        settings = {(board[0], _settings(board)) for board in boards}
        return (
            max([self._worth(board) for board in boards]),
            -sum([len(found) for _, found in settings]),
        )

    def _worth(self, board: OpenBoard) -> int:
        """Return the worth of a board's best offcut: its end, the side of a section or the end of a strip."""
        number, across, spare, _, _, sections = board
        sort = self.family.sorts[number]
        end, side = _trims(sort, across)
        whole = sort.item.length if across else sort.item.width
        best = self._area(spare, end, whole)
        for length, free, strips in sections:
            long = length * self.family.scale - self.family.kerf
            best = max(best, self._area(free, side, long))
            for width, used, _ in strips:
                best = max(best, self._area(length - used, 0, width * self.family.scale - self.family.kerf))
        return best

    def _area(self, free: int, trim: int, over: int) -> int:
        """Return the worth of so many of the solver's units with a trim, over so many of the problem's."""
        size = free * self.family.scale - self.family.kerf + trim
        return worth_keeping(size, over, self.rules) if size > 0 and over > 0 else 0


def _trims(sort: Sort, across: bool) -> tuple[int, int]:  # noqa: FBT001
    ends, edges = sort.item.trim_ends, sort.item.trim_edges
    return (edges, ends) if across else (ends, edges)


def _opened(layout: Layout, number: int) -> OpenBoard:
    """Return a layout as an open board, every strip and section no larger than its pieces."""
    sort = layout.sort
    length, width = (sort.width, sort.length) if layout.across else (sort.length, sort.width)
    sections: list[list[Any]] = []
    for section in layout.sections:
        strips: list[list[Any]] = [
            [max(laid[3] for laid in strip.pieces), sum(laid[2] for laid in strip.pieces), strip.pieces]
            for strip in section.strips
        ]
        size, free = max(strip[1] for strip in strips), width - sum(strip[0] for strip in strips)
        sections.append([size, free, strips])
    return [number, layout.across, length - sum(s[0] for s in sections), length, width, sections]


def _pieces(sections: Sequence[list[Any]]) -> list[int]:
    """Return the kind of every piece in some sections."""
    return [laid[0] for section in sections for strip in section[2] for laid in strip[2]]


def _settings(board: OpenBoard) -> frozenset[tuple[int, int]]:
    """Return about what the saw is set to for a board, by direction and size."""
    along, found = int(board[1]), set()
    for length, _, strips in board[5]:
        found.add((along, length))
        for width, _, pieces in strips:
            found.add((1 - along, width))
            for _, _, long, wide in pieces:
                found |= {(along, long), (1 - along, wide)}
    return frozenset(found)
