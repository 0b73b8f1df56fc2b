"""Does each step have at hand the tools that its glue, screws and nails take?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.checks.building import Need, building, is_glue, kind_of
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Severity


@dataclass(frozen=True, slots=True)
class _Takes:
    """A word in the kind of a ware or work, and the tools of which one is needed."""

    word: str
    tools: tuple[str, ...]
    said: str
    """What is proposed."""


_FASTENERS = (
    _Takes("screw", ("drill", "driver"), "drill"),
    _Takes("brad", ("nailer", "hammer"), "hammer"),
    _Takes("nail", ("nailer", "hammer"), "hammer"),
    _Takes("staple", ("stapler", "staple gun"), "staple gun"),
)
"""They also hold while the glue sets, so that a step with them needs no clamps."""
_WARES = (
    *_FASTENERS,
    _Takes("edge banding", ("iron", "hot air"), "household iron"),
)
_GLUE = _Takes("glue", ("clamp", "press", "weight"), "clamps")
_WORKS = (
    _Takes("pocket holes", ("pocket",), "pocket-hole jig"),
    _Takes("shelf pin holes", ("drill",), "drill"),
    _Takes("holes", ("drill",), "drill"),
    _Takes("groove", ("router", "table saw", "plane"), "router"),
    _Takes("dado", ("router", "saw"), "router"),
    _Takes("rabbet", ("router", "saw", "plane"), "router"),
    _Takes("roundover", ("router", "sand", "plane", "file"), "router"),
    _Takes("half-lap", ("saw", "chisel", "router"), "hand saw and chisel"),
    _Takes("curve", ("jigsaw", "band saw", "coping saw"), "jigsaw"),
    _Takes("notch", ("saw", "chisel"), "jigsaw"),
    _Takes("taper", ("saw", "plane"), "hand saw and plane"),
)


_RIP = _Takes(
    "rip", ("table saw", "circular saw", "track saw", "band saw", "rip saw", "hand saw", "plane"), "table saw"
)


def _examine(subject: Subject) -> Iterator[Finding]:
    for needs in building(subject).needs:
        told: set[str] = set()
        is_held = any((takes := _of_need(subject, need)) and takes in _FASTENERS for need in needs)
        for need in needs:
            takes = _of_need(subject, need)
            if takes is _GLUE and is_held:
                continue
            if takes and takes.said not in told and not _has(need.step.step.tools, takes):
                told.add(takes.said)
                yield Finding(
                    f"this step needs {need.use.name}, but has no {takes.said} among its tools",
                    need.use.place,
                    f"add 'tools: {takes.said}' to the step",
                )
    yield from _for_work(subject)
    yield from _for_rips(subject)


def _of_need(subject: Subject, need: Need) -> _Takes | None:
    if is_glue(subject, need.ware):
        return _GLUE
    kind = kind_of(subject, need.ware)
    return next((takes for takes in _WARES if takes.word in kind), None)


def _for_work(subject: Subject) -> Iterator[Finding]:
    if not subject.plan.tools:
        return
    everywhere = _everywhere(subject)
    for part in subject.fitted.parts:
        for work in part.work:
            takes = next((takes for takes in _WORKS if takes.word == work.work.kind), None)
            if takes and not _has(everywhere, takes):
                yield Finding(
                    f"'{part.id}' has {_shown(work.work.kind)}, but no tool of the plan makes any",
                    work.work.place.at("kind"),
                    f"add a tool for it to the plan's 'tools:', such as a {takes.said}",
                )


def _for_rips(subject: Subject) -> Iterator[Finding]:
    """Yield a finding for the first part of a width that no yard sells, where nothing rips it."""
    if not subject.plan.tools or _has(_everywhere(subject), _RIP):
        return
    for part in subject.fitted.parts:
        stocks = [
            subject.shop.stocks[name] for name in part.part.source.stocks if name in subject.shop.stocks
        ]
        boards = [stock for stock in stocks if not stock.is_sheet]
        if boards and all(part.blank.across < stock.widest for stock in boards):
            yield Finding(
                f"'{part.id}' is ripped to {length(part.blank.across)} from {boards[0].key}, "
                "but no tool of the plan rips",
                part.part.place.at("width"),
                "add a table saw to the plan's 'tools:', or take the board as wide as it is",
            )
            return


def _everywhere(subject: Subject) -> tuple[str, ...]:
    return (*subject.plan.tools, *(tool for step in subject.plan.steps for tool in step.tools))


def _shown(kind: str) -> str:
    return kind if kind.endswith("s") else f"a {kind}"


def _has(tools: tuple[str, ...], takes: _Takes) -> bool:
    return any(word in tool.casefold() for tool in tools for word in takes.tools)


TOOLS_NEEDED = Check(
    name="tools-needed",
    group="Counts",
    title="Is every tool that a step takes at hand?",
    meaning="Clamps that are fetched when the glue is open come too late; and a board of a width that no "
    "yard "
    "sells takes a saw that rips.",
    mend="add the tool to the step's 'tools:'",
    severity=Severity.WARNING,
    examine=_examine,
    source="common practice, no source",
)
"""Looks for the tools that glue, screws, nails, rips and the work on parts take."""
