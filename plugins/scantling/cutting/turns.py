"""In which order the cuts of a board are made: what the store cuts first, then equal settings together."""

from __future__ import annotations

from dataclasses import replace

from scantling.cutting.answer import Cut, Panel

Setting = tuple[bool, int]


def numbered(root: Panel, longest: int | None) -> Panel:
    """Return a tree with its cuts numbered from 1.

    A panel is cut after the cut that made it. Cuts of panels too long to be carried come first, since the
    store makes them; then cuts from the outside in. While the saw is set, all that can be cut so is cut.

    Args:
        longest: the longest piece that can be carried, or None.
    """
    ready: list[tuple[int, Panel]] = [(0, root)] if root.cut is not None else []
    numbers: dict[tuple[int, ...], int] = {}
    last: Setting | None = None
    while ready:
        ready.sort(key=lambda one: _turn(one[0], one[1], last, longest))
        depth, panel = ready.pop(0)
        cut = _cut_of(panel)
        numbers[_place(panel)] = len(numbers) + 1
        last = cut.is_rip, cut.setting
        ready += [
            (depth + (part.cut.is_rip != cut.is_rip), part)
            for part in (panel.freed, panel.rest)
            if part is not None and part.cut is not None
        ]
    return _renumbered(root, numbers)


def _turn(depth: int, panel: Panel, last: Setting | None, longest: int | None) -> tuple[int | bool, ...]:
    """Return when a cut's turn comes among those that could be made."""
    cut = _cut_of(panel)
    carried = longest is None or max(panel.length, panel.width) <= longest
    same = (cut.is_rip, cut.setting) == last
    return carried, not same, depth, cut.is_rip, -cut.setting, panel.x, panel.y


def _cut_of(panel: Panel) -> Cut:
    if panel.cut is None:
        raise ValueError("this panel is not cut")
    return panel.cut


def _place(panel: Panel) -> tuple[int, ...]:
    """Return what tells a panel from every other that is cut: a part of it is smaller."""
    return panel.x, panel.y, panel.length, panel.width


def _renumbered(panel: Panel, numbers: dict[tuple[int, ...], int]) -> Panel:
    if panel.cut is None:
        return panel
    return replace(
        panel,
        cut=replace(panel.cut, number=numbers[_place(panel)]),
        freed=None if panel.freed is None else _renumbered(panel.freed, numbers),
        rest=None if panel.rest is None else _renumbered(panel.rest, numbers),
    )


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
