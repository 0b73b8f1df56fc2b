"""The choice among equally cheap answers with equally many pieces of stock.

First the cuts: none more at the store than it makes, as few as possible that a hand should not make. Then the
offcut most worth keeping: of the offcuts that the shop keeps, the largest. Then the fewest settings of fence
and stop, boards that are cut alike counted once.
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.answer import Board, Panel
from scantling.cutting.arranging import arranged
from scantling.cutting.family import Family
from scantling.cutting.gather_lengths import LengthAims, gathered, shared_out
from scantling.cutting.gather_panels import Gatherer
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.lengths import lengths_of
from scantling.cutting.packing import Filled
from scantling.cutting.placing import place
from scantling.cutting.problem import Problem, worth_keeping
from scantling.cutting.steps import Steps
from scantling.cutting.tree import with_cuts
from scantling.cutting.turns import cuts_in_order

LENGTH_STEPS = 600
"""How much work the choice among crosscut boards may be."""

Aims = tuple[int, ...]
"""Cost, pieces of stock, cuts too many at the store, unsafe cuts, the best offcut's worth, settings."""


class Chooser:
    """Chooses among answers for one family of stock."""

    def __init__(self, family: Family, problem: Problem) -> None:
        self.family, self.problem = family, problem
        self.stock = {sort.item.id: sort.item for sort in family.sorts}
        self.made: dict[object, Board] = {}

    def boards(self, layouts: Sequence[Layout]) -> list[Board]:
        """Return boards with their cuts: those of the layouts, or better ones that cost as much."""
        choices = [self.placed(layouts)]
        if self.family.one_width is None:
            changed = Gatherer(self.family, layouts, self.problem.rules).run()
            choices += [self.placed(changed)] if changed is not None else []
        else:
            choices.append(self.placed(self._crosscut(layouts)))
        if self.problem.rules.first_cuts is not None and self.problem.rules.longest_piece is not None:
            choices.append(self.placed(layouts, spread=True))
        return min(choices, key=lambda boards: aims_of(boards, self.problem))

    def _crosscut(self, layouts: Sequence[Layout]) -> list[Layout]:
        family = self.family
        lengths, steps = lengths_of(family), Steps(LENGTH_STEPS)
        where = {family.sorts[number].item.id: j for j, number in enumerate(lengths.sorts)}
        boards: list[Filled] = [
            (where[layout.sort.item.id], tuple(layout.counts(len(family.kinds)))) for layout in layouts
        ]
        aims = LengthAims(family, lengths, self.problem.rules)
        first = shared_out(aims, boards, Steps(LENGTH_STEPS))
        best = gathered(aims, first, steps)
        if best is not first:
            best = shared_out(aims, best, Steps(LENGTH_STEPS))
        return [lengthwise(family, lengths.sorts[j], pattern) for j, pattern in best]

    def placed(self, layouts: Sequence[Layout], *, spread: bool = False) -> list[Board]:
        """Return layouts as boards with their cuts, each kind of board cut once."""
        ordered = [arranged(layout, self.family, self.problem.rules, spread=spread) for layout in layouts]
        return [self._cut(board) for board in place(self.family, ordered)]

    def _cut(self, board: Board) -> Board:
        key = board.stock, board.pieces
        if key not in self.made:
            self.made[key] = with_cuts(board, self.stock[board.stock], self.problem)
        return self.made[key]


def lengthwise(family: Family, number: int, counts: Sequence[int]) -> Layout:
    """Return a board of a sort from which so many of each kind are crosscut."""
    sort = family.sorts[number]
    pieces = [(kind, family.kinds[kind].length) for kind, count in enumerate(counts) for _ in range(count)]
    sections = (Section(size, (Strip(sort.width, ((kind, 0, size, sort.width),)),)) for kind, size in pieces)
    return Layout(sort, False, tuple(sections))


def aims_of(boards: Sequence[Board], problem: Problem) -> Aims:
    """Return how good boards with cuts are; the less the better, from the first number on."""
    prices = {item.id: item.price for item in problem.stock}
    rules, most = problem.rules, problem.rules.first_cuts
    cut = [cuts_in_order(board.cuts) for board in boards if board.cuts is not None]
    offcuts = [worth_keeping(o.length, o.width, rules) for board in boards for o in board.offcuts]
    return (
        sum([prices[board.stock] for board in boards]),
        len(boards),
        0 if most is None else sum([max(0, len(store_cuts(board, problem)) - most) for board in boards]),
        sum([bool(one.warning) for cuts in cut for one, _ in cuts]),
        -max(offcuts, default=0),
        settings_of(boards),
    )


def settings_of(boards: Sequence[Board]) -> int:
    """Return how often fence or stop are set: each board's settings, boards cut alike once."""
    alike = {
        (board.stock, tuple((p.x, p.y, p.length, p.width) for p in board.pieces)): board for board in boards
    }
    return sum([len(_settings(board)) for board in alike.values()])


def _settings(board: Board) -> set[tuple[bool, int]]:
    cuts = [] if board.cuts is None else cuts_in_order(board.cuts)
    return {(cut.is_rip, cut.setting) for cut, _ in cuts if cut.setting > 0}


def store_cuts(board: Board, problem: Problem) -> list[Panel]:
    """Return the panels of a board that are too long to be carried and are cut at the store, in order."""
    longest = problem.rules.longest_piece
    if longest is None or board.cuts is None:
        return []
    return [panel for _, panel in cuts_in_order(board.cuts) if max(panel.length, panel.width) > longest]
