"""Joints and what holds them, and the hardware with its notes."""

from __future__ import annotations

from collections.abc import Iterator

from scantling.measure import write_number
from scantling.pages.facts import small_measure
from scantling.pages.held import NO_BREAK, held
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.words import line_of
from scantling.plan import FittedHardware, FittedJoin
from scantling.report import Report
from scantling.words import counted, say


def joinery(report: Report, look: Look) -> str:
    """Return the joints of the plan and what it takes of hardware."""
    joins = "".join(
        tag("li", held(_join(join, look)), data_row=f"{join.join.first} {join.join.second}")
        for join in report.fitted.joins
    )
    wares = "".join(tag("li", held(words), data_row=name) for name, words in _hardware(report, look))
    return (tag("ul", joins, class_="sc-joins") if joins else "") + (
        tag("ul", wares, class_="sc-wares") if wares else ""
    )


def _join(join: FittedJoin, look: Look) -> str:
    written = join.join
    pair = say("{one} to {other}", one=escape(written.first), other=escape(written.second))
    words = [f"{tag('b', pair)}: {escape(say(written.how))}"]
    if written.glue and "glue" not in written.how:
        words.append(say("with glue"))
    if join.depth is not None:
        words.append(say("{size} deep", size=small_measure(join.depth, look)))
    if join.joints:
        words.append(counted("{count} joint", "{count} joints", join.joints).replace(" ", NO_BREAK))
    if join.fasteners:
        words.append(
            say(
                "{each} × {what} each, {all} altogether",
                each=join.each,
                what=escape(join.fastener),
                all=join.fasteners,
            )
        )
    return ", ".join(words)


def _hardware(report: Report, look: Look) -> Iterator[tuple[str, str]]:
    """Yield each piece of hardware by name, and what is said of it."""
    for item in report.fitted.hardware:
        if item.hardware is None:
            continue
        yield item.ware, _ware(item, report, look)


def _ware(item: FittedHardware, report: Report, look: Look) -> str:
    ware = report.shop.wares[item.ware]
    count = f"{escape(write_number(item.count))} × " if item.count else ""
    words = [tag("b", count + escape(item.ware))]
    if item.note:
        words.append(line_of(item.note, look.words, look.display))
    rooms = [f"{escape(name)} {small_measure(length, look)}" for name, length in ware.clearances.items()]
    if rooms:
        words.append(say("its maker asks for {room}", room=", ".join(rooms)))
    return ": ".join((words[0], "; ".join(words[1:]))) if words[1:] else words[0]
