"""In which order sections, strips and pieces stand on a board: alike side by side, the large ones first.

Their order changes nothing about what fits. The narrowest strip stands last, where it is what stays of the
board rather than what runs between fence and blade. Sections of a board that is too long to be carried are
put together so that few cuts at the store part them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from scantling.cutting.family import Family
from scantling.cutting.layout import Layout, Section, Strip
from scantling.cutting.problem import Rules


def arranged(layout: Layout, family: Family, rules: Rules, *, spread: bool = False) -> Layout:
    """Return a layout in the order in which it is best cut.

    Args:
        spread: leave room between sections where a cut at the store can then go through.
    """
    sections = sorted([_section(section) for section in layout.sections], key=_section_key)
    item = layout.sort.item
    if rules.longest_piece is not None and item.length > rules.longest_piece and not layout.across:
        room = (rules.longest_piece + family.kerf - item.trim_ends) // family.scale
        loads = _in_loads(sections, room)
        if spread:
            loads = _spread(loads, layout, family, rules.longest_piece)
        sections = [section for load in loads for section in load]
    elif not item.trim_ends and _is_full(layout, sections):
        sections = _lone_last(sections)
    return replace(layout, sections=tuple(sections))


def _section(section: Section) -> Section:
    strips = [
        replace(strip, pieces=tuple(sorted(strip.pieces, key=lambda laid: (-laid[2], -laid[3], laid))))
        for strip in section.strips
    ]
    return replace(section, strips=tuple(sorted(strips, key=_strip_key)))


def _strip_key(strip: Strip) -> tuple[int, int, tuple[tuple[int, ...], ...]]:
    return -strip.width, -sum([laid[2] for laid in strip.pieces]), strip.pieces


def _section_key(section: Section) -> tuple[int, int, list[tuple[int, int, tuple[tuple[int, ...], ...]]]]:
    return -section.length, -sum([s.width for s in section.strips]), [_strip_key(s) for s in section.strips]


def _is_full(layout: Layout, sections: Sequence[Section]) -> bool:
    length = layout.sort.width if layout.across else layout.sort.length
    return sum([section.length for section in sections]) == length


def _lone_last(sections: list[Section]) -> list[Section]:
    """Put last a section of a length that no other has: there it needs no cut of its own."""
    counts = Counter(section.length for section in sections)
    lone = [section for section in sections if counts[section.length] == 1]
    return [section for section in sections if section is not lone[-1]] + lone[-1:] if lone else sections


def _in_loads(sections: Sequence[Section], room: int) -> list[list[Section]]:
    """Return sections in loads no longer than a room, filled one after another with the longest that fits."""
    loads: list[list[Section]] = []
    for section in sections:
        for load in loads:
            if sum([one.length for one in load]) + section.length <= room:
                load.append(section)
                break
        else:
            loads.append([section])
    return loads


def _spread(loads: list[list[Section]], layout: Layout, family: Family, longest: int) -> list[list[Section]]:
    """Lengthen the last section of each load as far as the loads after it must begin, to be short enough.

    What is too much for the board is left as it is.
    """
    item, spare = layout.sort.item, layout.sort.length - sum(s.length for load in loads for s in load)
    end, found = 0, []
    for number, load in enumerate(loads):
        after = len(loads) - 1 - number
        end += sum(section.length for section in load)
        latest = item.length - item.trim_ends - after * (longest + family.kerf) + family.kerf
        more = -(-latest // family.scale) - end if after else 0
        if 0 < more <= spare:
            load = [*load[:-1], replace(load[-1], length=load[-1].length + more)]
            end, spare = end + more, spare - more
        found.append(load)
    return found
