"""Which cuts free the pieces of a board, where they lie as they do.

A panel is parted by cuts right through it, crosscuts or rips. Where there is a choice, the cuts are those
that need least of the store, then those that a hand can make safely, then those that leave the offcut most
worth keeping, then those with fewest settings of the saw. Crosscuts that would leave short lengths to be
ripped wait, where one rip goes through several of them: rip long, then crosscut.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from scantling.cutting.answer import Piece
from scantling.cutting.problem import Rules, worth_keeping
from scantling.words import mark

Rect = tuple[int, int, int, int]
"""Left end, lower edge, length and width."""
Score = tuple[int, int, int, int, int]
"""Cuts at the store, unsafe cuts, the best offcut's worth below nothing, settings, cuts: less is better."""
_NONE: frozenset[tuple[bool, int]] = frozenset()
SHORT = mark("the piece is shorter than is safe to rip: rip a longer one first, then crosscut")
NARROW = mark(
    "the strip is narrower than is safe to rip: set the fence for the wide side, or use another saw"
)
FEW = 6
"""Of no more neighbours than this, every number of them is tried as one."""
MANY = 12
"""Likewise, where freeing one after another would not be safe, or would leave the store more to cut."""


Grouped = tuple[list[tuple[int, ...]], list[int]]
"""Groups of pieces between which a blade can pass, and how far each reaches."""


@dataclass(slots=True)
class Sawn:
    """How a panel is cut. It is not changed, but made too often to be frozen."""

    score: Score
    settings: frozenset[tuple[bool, int]] = _NONE
    is_rip: bool = False
    setting: int | None = None
    """None where the panel is not cut."""
    freed: Sawn | None = None
    rest: Sawn | None = None


class Saw:
    """The search for the cuts of one board."""

    def __init__(
        self,
        pieces: Sequence[Piece],
        kerf: int,
        stages: int,
        rules: Rules,
        trims: tuple[int, int] = (0, 0),
    ) -> None:
        """Set the search up.

        Args:
            trims: how much is trimmed off an end and off an edge because it is rough.
        """
        self.boxes = [(piece.x, piece.y, piece.length, piece.width) for piece in pieces]
        self.kerf, self.stages, self.rules, self.trims = kerf, stages, rules, trims
        self.known: dict[tuple[Rect, int, int], Sawn | None] = {}
        self.grouped: dict[tuple[tuple[int, ...], int], Grouped] = {}

    def board(self, length: int, width: int) -> Sawn:
        """Return how a whole board is cut.

        Raises:
            ValueError: where through-cuts in so many stages do not free its pieces.
        """
        sawn = self.best((0, 0, length, width), tuple(range(len(self.boxes))), -1, self.stages)
        if sawn is None:
            raise ValueError("these pieces cannot be cut free in so many stages")
        return sawn

    def best(self, panel: Rect, ids: tuple[int, ...], last: int, stages: int) -> Sawn | None:
        """Return how a panel is best cut, or None where its pieces cannot be freed.

        Args:
            ids: which pieces lie on it.
            last: 0 if a crosscut made it, 1 if a rip did, -1 for a whole board.
            stages: how often the direction may still change before only lone pieces are left.
        """
        if not ids:
            return self._left_over(panel)
        if len(ids) == 1:
            if self.boxes[ids[0]] == panel:
                return Sawn((0, 0, 0, 0, 0))
            last, stages = -1, 1
        key = panel, last, stages
        if key not in self.known:
            options = self._options(panel, ids, last, stages)
            self.known[key] = min(options, key=lambda sawn: sawn.score, default=None)
        return self.known[key]

    def _left_over(self, panel: Rect) -> Sawn:
        """Return how a panel without pieces is cut: not at all, unless it is too long to be carried."""
        longest = self.rules.longest_piece
        for way in (0, 1):
            if longest is not None and panel[2 + way] > longest:
                cut = self._cut(panel, way, longest, (), (), 1)
                if cut is not None:
                    return cut
        return Sawn((0, 0, -worth_keeping(panel[2], panel[3], self.rules), 0, 0))

    def _options(self, panel: Rect, ids: tuple[int, ...], last: int, stages: int) -> Iterator[Sawn]:
        lone = len(ids) == 1
        for way in (1, 0):
            left = stages if lone else stages - (way != last)
            if left < 0:
                continue
            for setting, freed, rest in self._places(panel, ids, way, last):
                cut = self._cut(panel, way, setting, freed, rest, left)
                if cut is not None:
                    yield cut

    def _places(
        self, panel: Rect, ids: tuple[int, ...], way: int, last: int
    ) -> Iterator[tuple[int, tuple[int, ...], tuple[int, ...]]]:
        """Yield where a panel may be cut next in one direction: setting, pieces freed, pieces that stay."""
        begin, end = panel[way], panel[way] + panel[2 + way]
        start = min([self.boxes[i][way] for i in ids])
        if start > begin:
            yield start - self.kerf - begin, (), ids
            if begin == 0 and self.trims[way]:
                return  # the rough edge goes first: it does not run along a fence
        if len(ids) == 1:
            reach = start + self.boxes[ids[0]][2 + way]
            if reach < end:
                yield reach - begin, ids, ()
            return
        groups, reaches = self._groups(ids, way)
        for count in self._counts(panel, groups, reaches, way, last):
            if reaches[count - 1] < end:
                freed = (
                    groups[0] if count == 1 else tuple(sorted(i for group in groups[:count] for i in group))
                )
                rest = tuple([i for i in ids if i not in freed])
                yield reaches[count - 1] - begin, freed, rest
                if rest and self._is_too_long(panel):
                    last_place = min([self.boxes[i][way] for i in rest]) - self.kerf
                    if last_place > reaches[count - 1]:
                        yield last_place - begin, freed, rest

    def _groups(self, ids: tuple[int, ...], way: int) -> Grouped:
        """Return the pieces in groups between which a blade can pass, and how far each reaches."""
        if (ids, way) not in self.grouped:
            groups: list[list[int]] = []
            reaches: list[int] = []
            for start, end, i in sorted(
                [(self.boxes[i][way], self.boxes[i][way] + self.boxes[i][2 + way], i) for i in ids]
            ):
                if not groups or start >= reaches[-1] + self.kerf:
                    groups.append([i])
                    reaches.append(end)
                else:
                    groups[-1].append(i)
                    reaches[-1] = max(reaches[-1], end)
            self.grouped[ids, way] = [tuple(sorted(group)) for group in groups], reaches
        return self.grouped[ids, way]

    def _counts(
        self, panel: Rect, groups: Sequence[Sequence[int]], reaches: Sequence[int], way: int, last: int
    ) -> Sequence[int]:
        """Return how many neighbours may be freed as one: the first, all of them, or any number.

        More than one only before any are cut off in this direction, unless that may be safer.
        """
        count = len(groups)
        if count == 1:
            return (1,)
        far = self._is_too_long(panel)
        if not far and all(
            len(group) == 1 and self.boxes[group[0]][3 - way] == panel[3 - way] for group in groups
        ):
            return (
                range(1, count + 1)
                if way == 1 and count <= MANY and self._is_narrow(panel, reaches)
                else (1,)
            )
        if count <= MANY and (far or self._is_risky(panel, groups, reaches, way)):
            return range(1, count + 1)
        if last == way:
            return (1,)
        return range(1, count + 1) if count <= FEW else (1, count)

    def _is_risky(
        self, panel: Rect, groups: Sequence[Sequence[int]], reaches: Sequence[int], way: int
    ) -> bool:
        """Return whether freeing one neighbour after another may ask for cuts that are not safe."""
        if way == 1:
            return self._is_narrow(panel, reaches)
        least, begin = self.rules.least_rip_length or 0, panel[0]
        for group, reach in zip(groups, reaches, strict=True):
            if reach - begin < least and (len(group) > 1 or self.boxes[group[0]][3] < panel[3]):
                return True
            begin = reach + self.kerf
        return False

    def _is_narrow(self, panel: Rect, reaches: Sequence[int]) -> bool:
        """Return whether any strip would be narrower than is safe to rip."""
        least, begin = self.rules.least_strip_width or 0, panel[1]
        for reach in reaches:
            if reach - begin < least:
                return True
            begin = reach + self.kerf
        return False

    def _is_too_long(self, panel: Rect) -> bool:
        return self.rules.longest_piece is not None and max(panel[2:]) > self.rules.longest_piece

    def _cut(
        self,
        panel: Rect,
        way: int,
        setting: int,
        freed: tuple[int, ...],
        rest: tuple[int, ...],
        stages: int,
    ) -> Sawn | None:
        """Return a panel cut so, and what it is parted into cut at its best."""
        one, two = parts_of(panel, way, setting, self.kerf)
        store = int(self._is_too_long(panel))
        unsafe, offcut, cuts = int(way == 1 and warning(panel, way, one, freed, self.rules) != ""), 0, 1
        settings = _NONE if setting <= 0 else frozenset(((way == 1, setting),))
        made: list[Sawn | None] = [None, None]
        for place, (part, ids, there) in enumerate(
            ((one, freed, setting > 0), (two, rest, two[2 + way] > 0))
        ):
            if not there:
                continue
            if place == 0 and rest and not freed and panel[way] == 0 and self.trims[way]:
                sawn: Sawn | None = Sawn((0, 0, 0, 0, 0))  # the rough edge of the board: never an offcut
            else:
                sawn = self.best(part, ids, way, stages)
            if sawn is None:
                return None
            made[place] = sawn
            score = sawn.score
            store, unsafe, cuts = store + score[0], unsafe + score[1], cuts + score[4]
            offcut = min(offcut, score[2])
            settings |= sawn.settings
        return Sawn((store, unsafe, offcut, len(settings), cuts), settings, way == 1, setting, *made)


def parts_of(panel: Rect, way: int, setting: int, kerf: int) -> tuple[Rect, Rect]:
    """Return what a cut frees of a panel and what stays beyond the kerf; either may be less than nothing."""
    x, y, length, width = panel
    if way:
        return (x, y, length, setting), (x, y + setting + kerf, length, width - setting - kerf)
    return (x, y, setting, width), (x + setting + kerf, y, length - setting - kerf, width)


def warning(panel: Rect, way: int, freed: Rect, wanted: Sequence[int], rules: Rules) -> str:
    """Return why a person should not make a cut as it is, or "".

    Args:
        wanted: the pieces on what falls off; waste may be as narrow as it is.
    """
    if not way:
        return ""
    if rules.least_rip_length is not None and panel[2] < rules.least_rip_length:
        return SHORT
    if rules.least_strip_width is not None and wanted and freed[3] < rules.least_strip_width:
        return NARROW
    return ""
