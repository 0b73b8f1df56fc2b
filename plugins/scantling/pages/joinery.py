"""Joints and what holds them, and the hardware with its notes."""

from __future__ import annotations

from collections.abc import Iterator

from scantling.measure import write_number
from scantling.pages.facts import small_measure
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.words import line_of
from scantling.plan import FittedHardware, FittedJoin
from scantling.report import Report


def joinery(report: Report, look: Look) -> str:
    """Return the joints of the plan and what it takes of hardware."""
    joins = "".join(tag("li", _join(join, look)) for join in report.fitted.joins)
    wares = "".join(tag("li", words) for words in _hardware(report, look))
    return (tag("ul", joins, class_="sc-joins") if joins else "") + (
        tag("ul", wares, class_="sc-wares") if wares else ""
    )


def _join(join: FittedJoin, look: Look) -> str:
    written = join.join
    words = [f"{tag('b', f'{escape(written.first)} to {escape(written.second)}')}: {escape(written.how)}"]
    if written.glue and "glue" not in written.how:
        words.append("with glue")
    if join.depth is not None:
        words.append(f"{small_measure(join.depth, look)} deep")
    if join.joints:
        words.append(f"{join.joints} {'joint' if join.joints == 1 else 'joints'}")
    if join.fasteners:
        words.append(f"{join.each} × {escape(join.fastener)} each, {join.fasteners} in all")
    return ", ".join(words)


def _hardware(report: Report, look: Look) -> Iterator[str]:
    for item in report.fitted.hardware:
        if item.hardware is None:
            continue
        yield _ware(item, report, look)


def _ware(item: FittedHardware, report: Report, look: Look) -> str:
    ware = report.shop.wares[item.ware]
    count = f"{escape(write_number(item.count))} × " if item.count else ""
    words = [tag("b", count + escape(item.ware))]
    if item.note:
        words.append(line_of(item.note, look.words, look.display))
    rooms = [f"{escape(name)} {small_measure(length, look)}" for name, length in ware.clearances.items()]
    if rooms:
        words.append("its maker asks for " + ", ".join(rooms))
    return ": ".join((words[0], "; ".join(words[1:]))) if words[1:] else words[0]
