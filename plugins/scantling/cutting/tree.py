"""The tree of cuts of a board, taken from where its pieces lie.

A panel is parted by cuts right through it: crosscuts or rips, whichever can part it. Where crosscuts would
leave short lengths to be ripped and a rip through all of them does as well, the rip comes first: rip long,
then crosscut.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from scantling.cutting.answer import Board, Cut, Offcut, Panel, Piece
from scantling.cutting.problem import Rules, StockItem

Numbered = tuple[int, Piece]
SHORT = "this piece is shorter than is safe to rip: rip a longer one first, then crosscut"
NARROW = "this strip is narrower than is safe to rip: use a sled or another saw"


def with_cuts(board: Board, stock: StockItem, kerf: int, rules: Rules) -> Board:
    """Return a board with its tree of cuts, and with the offcuts that are worth keeping."""
    maker = _Maker(kerf, rules)
    whole = Panel(0, 0, stock.length, stock.width)
    root = maker.part(whole, list(enumerate(board.pieces)), None)
    root = _numbered(root)
    return replace(board, cuts=root, offcuts=tuple(_kept(root)))


@dataclass(frozen=True, slots=True)
class _Maker:
    kerf: int
    rules: Rules

    def part(self, panel: Panel, pieces: Sequence[Numbered], before: bool | None) -> Panel:  # noqa: FBT001
        """Return the panel with the cuts that free its pieces.

        Args:
            before: whether the cut that made this panel was a rip, None for a whole board.
        """
        if not pieces:
            return replace(panel, is_kept=self._worth_keeping(panel))
        if len(pieces) == 1 and _fills(pieces[0][1], panel):
            return replace(panel, piece=pieces[0][0])
        rip = self._rips_first(panel, pieces, before)
        groups = _groups(pieces, rip, self.kerf)
        if not rip and len(groups) > 1:
            groups = self._joined(groups)
        first = groups[0]
        start, reach = _span(first, rip)
        begin = panel.y if rip else panel.x
        if start > begin:
            return self._cut(panel, rip, start - self.kerf - begin, [], pieces)
        others = [numbered for group in groups[1:] for numbered in group]
        end = begin + (panel.width if rip else panel.length)
        if reach == end:
            # Nothing to part in this direction: the other one must.
            return self._other(panel, pieces, rip)
        return self._cut(panel, rip, reach - begin, first, others)

    def _other(self, panel: Panel, pieces: Sequence[Numbered], rip: bool) -> Panel:  # noqa: FBT001
        groups = _groups(pieces, not rip, self.kerf)
        start, reach = _span(groups[0], not rip)
        begin = panel.x if rip else panel.y
        if start > begin:
            return self._cut(panel, not rip, start - self.kerf - begin, [], pieces)
        others = [numbered for group in groups[1:] for numbered in group]
        return self._cut(panel, not rip, reach - begin, groups[0], others)

    def _cut(
        self,
        panel: Panel,
        rip: bool,  # noqa: FBT001
        setting: int,
        first: Sequence[Numbered],
        others: Sequence[Numbered],
    ) -> Panel:
        freed, rest = parted(panel, rip, setting, self.kerf)
        cut = Cut(0, rip, setting, self._warning(panel, rip, freed))
        return replace(
            panel,
            cut=cut,
            freed=self.part(freed, first, rip) if setting > 0 else None,
            rest=None if rest is None else self.part(rest, others, rip),
        )

    def _warning(self, panel: Panel, rip: bool, freed: Panel) -> str:  # noqa: FBT001
        if not rip:
            return ""
        if self.rules.least_rip_length is not None and panel.length < self.rules.least_rip_length:
            return SHORT
        if self.rules.least_strip_width is not None and freed.width < self.rules.least_strip_width:
            return NARROW
        return ""

    def _rips_first(self, panel: Panel, pieces: Sequence[Numbered], before: bool | None) -> bool:  # noqa: ARG002, FBT001
        """Return whether the next cut is a rip."""
        across, along = len(_groups(pieces, True, self.kerf)), len(_groups(pieces, False, self.kerf))
        if across > 1 and along > 1:
            return True
        if across == along:
            return before is False
        return across > along

    def _joined(self, groups: list[list[Numbered]]) -> list[list[Numbered]]:
        """Join neighbours that would be short to rip and can be ripped as one."""
        least = self.rules.least_rip_length
        if least is None:
            return groups
        joined = [groups[0]]
        for group in groups[1:]:
            strips = len(_groups(group, True, self.kerf))
            both = [*joined[-1], *group]
            start, reach = _span(group, False)
            if strips > 1 and reach - start < least and len(_groups(both, True, self.kerf)) == strips:
                joined[-1] = both
            else:
                joined.append(group)
        return joined if len(joined) > 1 else groups

    def _worth_keeping(self, panel: Panel) -> bool:
        short, long = sorted((panel.length, panel.width))
        return long >= max(1, self.rules.keep_length) and short >= max(1, self.rules.keep_width)


def parted(panel: Panel, rip: bool, setting: int, kerf: int) -> tuple[Panel, Panel | None]:  # noqa: FBT001
    """Return what a cut frees of a panel and what stays beyond the kerf, if anything does."""
    if rip:
        left = panel.width - setting - kerf
        rest = Panel(panel.x, panel.y + setting + kerf, panel.length, left)
        return Panel(panel.x, panel.y, panel.length, setting), rest if left > 0 else None
    left = panel.length - setting - kerf
    rest = Panel(panel.x + setting + kerf, panel.y, left, panel.width)
    return Panel(panel.x, panel.y, setting, panel.width), rest if left > 0 else None


def _fills(piece: Piece, panel: Panel) -> bool:
    return (piece.x, piece.y, piece.length, piece.width) == (panel.x, panel.y, panel.length, panel.width)


def _span(group: Sequence[Numbered], rip: bool) -> tuple[int, int]:  # noqa: FBT001
    """Return where a group of pieces begins and ends, across the board or along it."""
    if rip:
        return min(p.y for _, p in group), max(p.y + p.width for _, p in group)
    return min(p.x for _, p in group), max(p.x + p.length for _, p in group)


def _groups(pieces: Sequence[Numbered], rip: bool, kerf: int) -> list[list[Numbered]]:  # noqa: FBT001
    """Return the pieces in groups between which a blade can pass."""
    ordered = sorted(pieces, key=lambda one: (one[1].y, one[1].x) if rip else (one[1].x, one[1].y))
    groups: list[list[Numbered]] = []
    reach = 0
    for one in ordered:
        start, end = _span([one], rip)
        if not groups or start >= reach + kerf:
            groups.append([])
            reach = end
        groups[-1].append(one)
        reach = max(reach, end)
    return groups


def _kept(panel: Panel) -> list[Offcut]:
    if panel.cut is None:
        return [Offcut(panel.x, panel.y, panel.length, panel.width)] if panel.is_kept else []
    return [offcut for part in (panel.freed, panel.rest) if part is not None for offcut in _kept(part)]


def _numbered(root: Panel) -> Panel:
    """Return the tree with its cuts numbered: outer cuts first, equal settings together."""
    ready: list[tuple[int, Panel]] = [(0, root)]
    numbers: dict[tuple[int, ...], int] = {}
    while ready:
        ready.sort(key=lambda one: _turn(*one))
        depth, panel = ready.pop(0)
        if panel.cut is None:
            continue
        numbers[_place(panel)] = len(numbers) + 1
        ready += [
            (depth + (part.cut.is_rip != panel.cut.is_rip), part)
            for part in (panel.freed, panel.rest)
            if part is not None and part.cut is not None
        ]

    def renumber(panel: Panel) -> Panel:
        if panel.cut is None:
            return panel
        return replace(
            panel,
            cut=replace(panel.cut, number=numbers[_place(panel)]),
            freed=None if panel.freed is None else renumber(panel.freed),
            rest=None if panel.rest is None else renumber(panel.rest),
        )

    return renumber(root)


def _place(panel: Panel) -> tuple[int, ...]:
    """Return what tells a panel from every other that is cut: a part of it is smaller."""
    return panel.x, panel.y, panel.length, panel.width


def _turn(depth: int, panel: Panel) -> tuple[int, bool, int, int, int]:
    """Return when a cut's turn comes among those that could be made."""
    cut = panel.cut
    return depth, bool(cut and cut.is_rip), -(cut.setting if cut else 0), panel.x, panel.y


def cuts_in_order(root: Panel) -> list[tuple[Cut, Panel]]:
    """Return the cuts of a board in order, each with the panel that it parts."""
    found: list[tuple[Cut, Panel]] = []

    def collect(panel: Panel | None) -> None:
        if panel is not None and panel.cut is not None:
            found.append((panel.cut, panel))
            collect(panel.freed)
            collect(panel.rest)

    collect(root)
    return sorted(found, key=lambda one: one[0].number)


def replay(root: Panel, kerf: int) -> list[Panel]:
    """Make the cuts one after another, knowing only the board's size and the settings; return what is left.

    The panels carry which piece each is and what is kept, as the tree says; where they are and how large
    they are comes from the cutting.
    """
    done: list[Panel] = []

    def make(place: Panel, told: Panel | None) -> None:
        if told is None or told.cut is None:
            done.append(place if told is None else replace(place, piece=told.piece, is_kept=told.is_kept))
            return
        freed, rest = parted(place, told.cut.is_rip, told.cut.setting, kerf)
        if told.cut.setting > 0:
            make(freed, told.freed)
        if rest is not None:
            make(rest, told.rest)

    make(Panel(0, 0, root.length, root.width), root)
    return done
