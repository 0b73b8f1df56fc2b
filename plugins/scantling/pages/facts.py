"""The facts of a plan, as in the title block of a drawing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from scantling.measure import Length, other_display, write_money, write_weight
from scantling.pages.held import NO_BREAK, held
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.report import Report, percent, write_thick, write_value
from scantling.words import mark, say

_AXES = (
    ("width", mark("{size} wide")),
    ("depth", mark("{size} deep")),
    ("height", mark("{size} high")),
)


def facts(report: Report, look: Look) -> str:
    """Return cost, size, tools and the rest as a list of terms."""
    return tag("dl", "".join(_fact(*fact) for fact in _facts(report, look)), class_="sc-facts")


def chosen_options(report: Report) -> list[tuple[str, str]]:
    """Return what the reader was asked and what was chosen: the question, and the name of the choice."""
    fitted = report.fitted
    return [
        (option.question, fitted.options.get(name, option.usual))
        for name, option in fitted.plan.options.items()
    ]


def _fact(name: str, value: str, note: str = "") -> str:
    small = tag("small", note) if note else ""
    return tag(
        "div",
        tag("dt", say(name)) + tag("dd", held(value + small)),
        class_=f"sc-fact sc-fact--{name.split(maxsplit=1)[0].lower()}",
    )


def _facts(report: Report, look: Look) -> Iterator[tuple[str, str, str]]:
    plan, totals = report.fitted.plan, report.totals
    day = report.shop.prices_of
    yield (
        mark("Cost"),
        escape(write_money(totals.cost, report.shop.currency)),
        escape(say("prices of {day}", day=day)) if day else "",
    )
    if plan.skill:
        yield mark("Skill"), escape(say(plan.skill)), ""
    size = overall_size(report, look)
    if size:
        yield mark("Size"), size, ""
    tools = all_tools(report)
    if tools:
        yield mark("Tools"), escape(" · ".join(tools)), ""
    if plan.build_time:
        yield mark("Time"), escape(plan.build_time), ""
    if totals.weight is not None:
        weight = escape(write_weight(totals.weight, system=look.display.system))
        yield mark("Weight"), weight, say("without hardware")
    if totals.yield_ is not None:
        yield mark("Wood used"), escape(percent(totals.yield_)), say("of what is bought")


def overall_size(report: Report, look: Look) -> str:
    """Return width, depth and height of the whole piece, as far as they are known."""
    found = report.fitted.overall()
    return f" ×{NO_BREAK}".join(
        say(told, size=look.display.length(length)).replace(" ", NO_BREAK)
        for axis, told in _AXES
        if (length := found.get(axis))
    )


def both_sizes(report: Report, look: Look) -> str:
    """Return the size of the whole piece with its other writing beside it."""
    words = overall_size(report, look)
    other = overall_size(report, replace(look, display=other_display(look.display)))
    return tag("span", words, data_other=other.replace(NO_BREAK, "\u00a0")) if words else ""


def _spaced(words: str) -> str:
    """Return a measure that no line end parts."""
    return escape(words).replace(" ", NO_BREAK)


def all_tools(report: Report) -> list[str]:
    """Return the tools of the whole plan and of its steps, each once."""
    steps = [step.step.tools for step in report.fitted.steps]
    return list(dict.fromkeys(tool for tools in (report.fitted.plan.tools, *steps) for tool in tools))


def measure(length: Length, look: Look) -> str:
    """Return a length as HTML that no line end parts."""
    return _spaced(look.display.length(length))


def thickness(length: Length, look: Look) -> str:
    """Return a thickness likewise, fine enough for sheets."""
    return _spaced(write_thick(length, look.display))


def small_measure(length: Length, look: Look) -> str:
    """Return the measure of a groove or a clearance likewise, fine enough for what goes in."""
    return _spaced(write_value(length, look.display))
