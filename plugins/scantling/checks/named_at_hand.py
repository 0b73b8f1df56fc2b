"""Is what the words of a step reach for on the plan's lists?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Place, Severity
from scantling.plan import Prose, Step


@dataclass(frozen=True, slots=True)
class _Thing:
    """Something that a builder takes in hand, and the words of a list that cover it."""

    name: str
    pattern: str
    covered_by: tuple[str, ...]


_TO_BUY = (
    _Thing("wood filler", r"(?:wood )?filler|wood putty", ("filler", "putty")),
    _Thing("double-sided tape", r"double-sided tape", ("tape",)),
    _Thing("edge banding", r"(?:edge )?banding", ("banding",)),
    _Thing("sandpaper", r"sandpaper", ("abrasive", "sand")),
    _Thing("staples", r"staples?", ("staple",)),
    _Thing("dowels", r"dowels?", ("dowel",)),
    _Thing("hinges", r"hinges?", ("hinge",)),
    _Thing("shelf pins", r"shelf pins?", ("shelf pin",)),
    _Thing("felt pads", r"felt pads?", ("felt", "foot")),
    _Thing("epoxy", r"epoxy", ("epoxy",)),
)
_TOOLS = (
    _Thing("chisel", r"chisels?", ("chisel",)),
    _Thing("hammer", r"hammer", ("hammer",)),
    _Thing("hacksaw", r"hacksaw", ("hacksaw",)),
    _Thing("jigsaw", r"jigsaw", ("jigsaw",)),
    _Thing("hand saw", r"hand ?saw|by hand with a saw", ("hand saw", "handsaw", "backsaw", "pull saw")),
    _Thing("staple gun", r"staple (?:it|them|the)|staple gun|stapler", ("staple gun", "stapler")),
    _Thing("utility knife", r"(?:utility|sharp) knife", ("knife",)),
    _Thing("spirit level", r"spirit level", ("level",)),
    _Thing(
        "plane",
        r"[Pp]lane (?:a|it|off|them|the (?:edges?|panel|tops?|board|upper))\b|block plane",
        ("plane",),
    ),
)
"""Nouns, and verbs with what they are done to, that can mean nothing else in a step."""
_NOT_TAKEN = re.compile(r"\b(?:no|not|never|without|instead of|nor)\b[^.;:]*$", re.IGNORECASE)
"""What comes before a thing that is named because it is not to be used."""


def _examine(subject: Subject) -> Iterator[Finding]:
    plan, shop = subject.plan, subject.shop
    lists = [item.ware for item in subject.fitted.hardware]
    lists += [shop.wares[name].kind for name in lists if name in shop.wares]
    bought = " ".join([*lists, *(join.fastener for join in subject.fitted.joins)]).casefold()
    tools = " ".join([*plan.tools, *(tool for step in plan.steps for tool in step.tools)]).casefold()
    for fitted in subject.fitted.steps:
        step = fitted.step
        for thing, place in _named(step, _TO_BUY, bought):
            what = f"this step takes {thing.name}, which is not on the materials list"
            help_line = f"add {thing.name} under 'hardware:', and to the step's 'needs:'"
            yield Finding(what, place, help_line)
        for thing, place in _named(step, _TOOLS, tools) if plan.tools else ():
            what = f"this step takes a tool that the plan does not list: {thing.name}"
            yield Finding(what, place, f"add '{thing.name}' to the 'tools:' of the step and of the plan")


def _named(step: Step, things: tuple[_Thing, ...], listed: str) -> Iterator[tuple[_Thing, Place]]:
    """Yield each thing that a step's words name and no list has, with the place of its first naming."""
    for thing in things:
        if any(word in listed for word in thing.covered_by):
            continue
        place = _first(step.text, re.compile(rf"\b(?:{thing.pattern})\b"))
        if place is not None:
            yield thing, place


def _first(prose: Prose, pattern: re.Pattern[str]) -> Place | None:
    at = 0
    for piece in prose.pieces:
        if not isinstance(piece, str):
            at = (piece.place.end or 0) - (prose.place.start or 0) + 1
            continue
        for found in pattern.finditer(piece):
            if not _NOT_TAKEN.search(piece[: found.start()]):
                return prose.place.part(at + found.start(), at + found.end())
        at += len(piece)
    return None


NAMED_AT_HAND = Check(
    name="named-at-hand",
    group="Counts",
    title="Is what a step reaches for on the lists?",
    meaning="A builder buys what the lists say. Filler, tape or a chisel that only the words of a step know "
    "of stops the work on a Sunday.",
    mend="add it to the plan's 'hardware:' or 'tools:', or leave it out of the step",
    severity=Severity.WARNING,
    examine=_examine,
)
"""Reads the words of the steps for things to buy and tools that no list has."""
