"""The cuts of a board as its diagram shows them, read from the tree of cuts of the cutting plan."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from fractions import Fraction

from scantling.cutting import Cut, Panel, cuts_in_order
from scantling.drawing.board_picture import CutPicture
from scantling.measure import Length
from scantling.words import say


def cut_order(
    root: Panel,
    kerf: int,
    letters: Sequence[str],
    length: Callable[[int], Length],
    show: Callable[[Length], str],
) -> tuple[CutPicture, ...]:
    """Return the cuts of a board in order, each along the middle of its kerf, with the saw's setting.

    Args:
        root: the whole board, as the root of its tree of cuts.
        kerf: in the units of the tree.
        letters: of each piece of the board.
        length: makes a length of units.
        show: writes a length.
    """
    made = []
    for cut, panel in cuts_in_order(root):
        start = panel.y if cut.is_rip else panel.x
        end = start + (panel.width if cut.is_rip else panel.length)
        at = start + cut.setting
        middle = Fraction(max(at, start) + min(at + kerf, end), 2)
        right, top = panel.x + panel.length, panel.y + panel.width
        place = (panel.x, middle, right, middle) if cut.is_rip else (middle, panel.y, middle, top)
        x1, y1, x2, y2 = (float(length(1).inches * Fraction(value)) for value in place)
        made.append(
            CutPicture(
                x1,
                y1,
                x2,
                y2,
                cut.number,
                _setting(cut, panel, length, show),
                freed=_held(panel.freed, letters),
                rest=_held(panel.rest, letters),
                warning=cut.warning,
            )
        )
    return tuple(made)


def _setting(cut: Cut, panel: Panel, length: Callable[[int], Length], show: Callable[[Length], str]) -> str:
    if _is_waste(panel.freed) and panel.rest is not None:
        return say("trim the edge straight") if cut.is_rip else say("trim the end square")
    size = show(length(cut.setting))
    return say("rip, fence at {size}", size=size) if cut.is_rip else say("crosscut at {size}", size=size)


def _is_waste(panel: Panel | None) -> bool:
    return panel is None or (panel.cut is None and panel.piece is None and not panel.is_kept)


def _held(panel: Panel | None, letters: Sequence[str]) -> tuple[str, ...]:
    """Return what a panel holds: the letters of its pieces, else that it is an offcut or waste."""
    if panel is None:
        return ()
    pieces = list(_pieces(panel))
    if not pieces:
        return (say("waste") if _is_waste(panel) else say("offcut"),)
    return tuple(sorted(letters[piece] for piece in pieces))


def _pieces(panel: Panel | None) -> list[int]:
    if panel is None:
        return []
    if panel.cut is None:
        return [] if panel.piece is None else [panel.piece]
    return [*_pieces(panel.freed), *_pieces(panel.rest)]


def steps_told(cuts: Sequence[CutPicture]) -> list[tuple[str, str]]:
    """Return numbers with what is done, cuts with one setting together: `6-9`, and what that frees."""
    runs: list[list[CutPicture]] = []
    for cut in cuts:
        if runs and runs[-1][-1].setting == cut.setting and runs[-1][-1].number == cut.number - 1:
            runs[-1].append(cut)
        else:
            runs.append([cut])
    return [(_numbers(run), _told(run)) for run in runs]


def _numbers(run: Sequence[CutPicture]) -> str:
    return str(run[0].number) if len(run) == 1 else f"{run[0].number}\N{EN DASH}{run[-1].number}"


def _told(run: Sequence[CutPicture]) -> str:
    """Return the setting of some cuts, what falls off, and what stays of the last of them."""
    freed = Counter(what for cut in run for what in cut.freed)
    listed = ", ".join(what if count == 1 else f"{what} ×{count}" for what, count in freed.items())
    setting, rest = run[0].setting, ", ".join(dict.fromkeys(run[-1].rest))
    if not listed:
        return setting
    one_after_another = len({(cut.y1, cut.y2) if cut.x1 == cut.x2 else (cut.x1, cut.x2) for cut in run}) == 1
    if not rest or not one_after_another:
        return say("{setting}: {freed} off", setting=setting, freed=listed)
    return say("{setting}: {freed} off, leaves {rest}", setting=setting, freed=listed, rest=rest)
