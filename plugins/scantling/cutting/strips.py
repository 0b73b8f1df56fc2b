"""What strips can hold, and which strips a section of some length can have, when parts are worth something.

A strip is a row of parts; it is as wide as the widest. A kind may be taken as often in each strip as it is
wanted in all.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.chain import Chain
from scantling.cutting.grid import Grid
from scantling.cutting.steps import Steps

Worth = float | int
Entry = tuple[int, Any, Chain]
"""A length, minus the worth that it holds, and how."""
Strips = list[tuple[int, int, list[Entry]]]
"""For each width of strip: how many there may be, and what it can hold at each length."""
Rated = tuple[float, int, Any, int, Chain]
"""A strip of some length: minus its rate of worth for width, width, worth, how many at most, how made up."""
Profile = tuple[int, list[Rated], list[Rated]]
"""A length of section, the strips that it can have, by falling rate, and those that are just so long."""


def strips_of(grid: Grid, worths: Sequence[Worth], steps: Steps, longest: int, widest: int) -> Strips:
    """Return for each width of strip (width, how many at most, [(length, minus its worth, chain)])."""
    entries: list[Entry] = [(0, 0, ())]
    found: Strips = []
    for side, options in grid.classes:
        if side > widest:
            break
        copies_here = 0
        for along, kind, turned in options:
            worth = worths[kind]
            if worth <= 0 or along > longest:
                continue
            copies_here += grid.counts[kind]
            merged = entries
            for copies in range(1, min(grid.counts[kind], longest // along) + 1):
                used, gain, top = along * copies, worth * copies, longest - along * copies
                merged = merged + [
                    (at + used, value - gain, ((kind, turned, along, side), copies, chain))
                    for at, value, chain in entries
                    if at <= top
                ]
            steps.done += len(merged) // 2
            merged.sort()
            entries = []
            best: Worth = 1
            for entry in merged:
                if entry[1] < best:
                    best = entry[1]
                    entries.append(entry)
        if copies_here:
            found.append((side, copies_here, entries))
    return found


def profiles_of(strips: Strips) -> list[Profile]:
    """Return for each length at which a section can have a strip worth more than before what it can have.

    A strip is of no use where a narrower one is worth as much.
    """
    events: list[tuple[int, int, Entry]] = [
        (entry[0], row, entry) for row, (_, _, entries) in enumerate(strips) for entry in entries if entry[0]
    ]
    events.sort(key=_place_of)
    rows: list[Rated] = [(0.0, width, 0, most, ()) for width, most, _ in strips]
    worths: list[Any] = [0] * len(rows)
    found: list[Profile] = []
    position, size = 0, len(events)
    while position < size:
        length = events[position][0]
        changed = []
        while position < size and events[position][0] == length:
            _, row, (_, loss, chain) = events[position]
            _, width, _, most, _ = rows[row]
            rows[row] = (loss / width * (1 + 1e-12), width, -loss, most, chain)
            worths[row] = -loss
            changed.append(row)
            position += 1
        fresh = [rows[row] for row in changed if worths[row] > max(worths[:row], default=0)]
        if fresh:
            found.append((length, _useful(rows), fresh))
    return found


def _useful(rows: list[Rated]) -> list[Rated]:
    """Return the strips worth more than all narrower ones, by falling rate."""
    useful: list[Rated] = []
    most: Any = 0
    for strip in rows:
        if strip[2] > most:
            most = strip[2]
            useful.append(strip)
    useful.sort()
    return useful


def _place_of(event: tuple[int, int, Entry]) -> tuple[int, int]:
    return event[:2]
