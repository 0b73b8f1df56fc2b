"""In which order a board or sheet is cut, and what the saw is set to for each cut.

A layout that can be cut is taken apart from the outside: through all of a rectangle, then through each
of its pieces. Where a rectangle could be ripped or crosscut, it is ripped: a long rip is safer than several
short ones (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.drawing.board_picture import CutPicture
from scantling.measure import Length
from scantling.words import say as tell

Box = tuple[Length, Length, Length, Length]
"""Where a piece or an offcut lies: from the left end, from the upper edge, along the board, across it."""


@dataclass(frozen=True, slots=True)
class _Rect:
    """A rectangle by its ends along the board and across it, in inches."""

    ends: tuple[tuple[Fraction, Fraction], tuple[Fraction, Fraction]]


@dataclass(frozen=True, slots=True)
class _Cut:
    """A cut through all of a rectangle."""

    way: int
    """0: a crosscut, parting along the length; 1: a rip."""
    at: Fraction
    """Where its kerf begins."""
    room: _Rect
    setting: Fraction
    """Width or length of what the cut frees."""
    is_trim: bool


def cut_order(
    length: Length,
    width: Length,
    kerf: Length,
    pieces: Sequence[Box],
    kept: Sequence[Box],
    say: Callable[[Length], str],
) -> tuple[CutPicture, ...]:
    """Return the cuts of a board in order, each along the middle of its kerf, with the saw's setting.

    Args:
        kept: offcuts that are kept whole; the rest is waste.
        say: writes a length.
    """
    rects = [_rect(box) for box in (*pieces, *kept)]
    whole = _Rect(((Fraction(0), length.inches), (Fraction(0), width.inches)))
    free = kerf.inches
    made = []
    for number, cut in enumerate(_take_apart(whole, rects, free), 1):
        start, end = cut.room.ends[cut.way]
        middle = (max(cut.at, start) + min(cut.at + free, end)) / 2
        low, high = cut.room.ends[1 - cut.way]
        place = (middle, low, middle, high) if cut.way == 0 else (low, middle, high, middle)
        x1, y1, x2, y2 = (float(value) for value in place)
        made.append(CutPicture(x1, y1, x2, y2, number, _setting(cut, say)))
    return tuple(made)


def _setting(cut: _Cut, say: Callable[[Length], str]) -> str:
    if cut.is_trim:
        return tell("trim the end square") if cut.way == 0 else tell("trim the edge straight")
    shown = say(Length(cut.setting))
    return tell("crosscut at {size}" if cut.way == 0 else "rip, fence at {size}", size=shown)


def _rect(box: Box) -> _Rect:
    x, y, length, width = (side.inches for side in box)
    return _Rect(((x, x + length), (y, y + width)))


def _take_apart(room: _Rect, rects: list[_Rect], kerf: Fraction) -> Iterator[_Cut]:
    """Yield the cuts that free every rectangle in a room: first those through all of it."""
    if not rects or (len(rects) == 1 and rects[0] == room):
        return
    for way in (1, 0):
        stops = _stops(room, rects, way, kerf)
        if way == 0:
            stops = _without_short_rips(stops, room, rects, kerf)
        if stops:
            yield from _cuts_at(stops, room, way, kerf)
            for part, inside in _parts(stops, room, rects, way, kerf):
                yield from _take_apart(part, inside, kerf)
            return


def _stops(room: _Rect, rects: list[_Rect], way: int, kerf: Fraction) -> list[tuple[Fraction, bool]]:
    """Return where cuts can go through all of a room: the start of each kerf, and whether it only trims."""
    low, high = room.ends[way]
    first = min(rect.ends[way][0] for rect in rects)
    stops = [(first - kerf, True)] if first > low else []
    ends = sorted({rect.ends[way][1] for rect in rects})
    return stops + [(end, False) for end in ends if end < high and not _is_in_the_way(end, rects, way, kerf)]


def _without_short_rips(
    stops: list[tuple[Fraction, bool]], room: _Rect, rects: list[_Rect], kerf: Fraction
) -> list[tuple[Fraction, bool]]:
    """Return the crosscuts without those between neighbours that are ripped alike: they are ripped as one."""
    parts = list(_parts(stops, room, rects, 0, kerf))
    alike = {
        before.ends[0][1]
        for (before, inside), (after, beside) in pairwise(parts)
        if after.ends[0][0] == before.ends[0][1] + kerf
        and (rips := _stops(before, inside, 1, kerf))
        and rips == _stops(after, beside, 1, kerf)
    }
    return [(at, is_trim) for at, is_trim in stops if at not in alike]


def _is_in_the_way(end: Fraction, rects: list[_Rect], way: int, kerf: Fraction) -> bool:
    """Return whether a cut whose kerf begins at `end` would go through a rectangle."""
    return any(rect.ends[way][0] < end + kerf and rect.ends[way][1] > end for rect in rects)


def _cuts_at(stops: list[tuple[Fraction, bool]], room: _Rect, way: int, kerf: Fraction) -> Iterator[_Cut]:
    before = room.ends[way][0]
    for at, is_trim in stops:
        yield _Cut(way, at, room, at - before, is_trim)
        before = at + kerf


def _parts(
    stops: list[tuple[Fraction, bool]], room: _Rect, rects: list[_Rect], way: int, kerf: Fraction
) -> Iterator[tuple[_Rect, list[_Rect]]]:
    """Yield what the cuts leave, with what lies in each."""
    low, high = room.ends[way]
    ends = [*(at for at, _ in stops), high]
    start = low
    for end in ends:
        inside = [rect for rect in rects if start <= rect.ends[way][0] and rect.ends[way][1] <= end]
        span = (start, end)
        part = _Rect((span, room.ends[1]) if way == 0 else (room.ends[0], span))
        if inside:
            yield part, inside
        start = end + kerf
