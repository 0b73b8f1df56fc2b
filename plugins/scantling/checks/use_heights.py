"""Is a seat, a desk or a table of a height that people use?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Place, Severity
from scantling.measure import Length
from scantling.words import mark, say

_ADA = "ADA Standards (2010)"
_PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Use:
    """A use, the words by which a plan is known to have it, and the heights that suit it."""

    name: str
    words: re.Pattern[str]
    low: Length
    high: Length
    source: str


def _use(name: str, words: str, low: int, high: int, source: str) -> Use:
    return Use(name, re.compile(words), Length(low), Length(high), source)


USES = (
    _use("a child's table", r"\bchild(?:ren)?(?:'s|s)? (?:table|desk)\b", 26, 30, f"{_ADA} 902.4.2"),
    _use("a coffee table", r"\bcoffee table\b", 16, 18, _PRACTICE),
    _use("an end table", r"\b(?:end|side|bedside) table\b|\bnight ?stand\b", 20, 26, _PRACTICE),
    _use("a bar", r"\bbar(?: table| counter)?\b", 40, 42, _PRACTICE),
    _use("a workbench", r"\bwork ?bench\b", 30, 40, _PRACTICE),
    _use("a desk", r"\bdesk\b", 28, 30, f"{_PRACTICE}; {_ADA} 902.3 allows 28 to 34 in"),
    _use("a table", r"\b(?:dining|kitchen) table\b", 28, 30, f"{_PRACTICE}; {_ADA} 902.3 allows 28 to 34 in"),
    _use(
        "a counter", r"\bcounter\b|\bkitchen island\b", 34, 36, f"{_ADA} 904.4.1 (at most 36 in; from memory)"
    ),
    _use("a stool", r"\bstool\b", 17, 31, f"10 to 12 in below a table or a bar; {_PRACTICE}"),
    _use("a seat", r"\b(?:seating|seat|chair)\b", 17, 19, f"{_ADA} 903.5 (from memory), and common practice"),
)
"""Uses with their heights; the first whose words a plan's title or tags hold is taken."""
SEAT = "seat"


def use_of(subject: Subject) -> Use | None:
    """Return what a plan is for, by its tags and title; one with a part called 'seat' is a seat."""
    words = " | ".join((*subject.plan.tags, subject.plan.title)).casefold()
    for use in USES:
        if use.words.search(words):
            return use
    return USES[-1] if SEAT in subject.plan.parts else None


def _examine(subject: Subject) -> Iterator[Finding]:
    use = subject.once("use", use_of)
    if use is None:
        return
    named = subject.plan.overall.get("height", "height")
    name = next(
        (f"{word} height" for word in (SEAT, "desk", "table") if f"{word} height" in subject.fitted.values),
        named,
    )
    height = subject.fitted.values.get(name)
    if isinstance(height, Length) and not use.low <= height <= use.high:
        told = (
            mark("{height} is low for {name}; {low} to {high} is usual")
            if height < use.low
            else mark("{height} is high for {name}; {low} to {high} is usual")
        )
        section = "sizes" if name in subject.plan.sizes else "lengths"
        yield Finding(
            say(told, height=length(height), name=say(use.name), low=length(use.low), high=length(use.high)),
            Place((section, name)).key(),
            "narrow the range of heights, or name the height of the seat or the top 'seat height', "
            "'desk height' or 'table height'",
        )


USE_HEIGHTS = Check(
    name="use-height",
    group="Strength and use",
    title="Is it of a height that people use?",
    meaning="Plans whose title or tags say seat, desk, table, counter, bar or workbench are compared "
    "with the "
    "heights that suit most grown people. Guidance only: build to the person.",
    mend="narrow the range of heights",
    severity=Severity.WARNING,
    examine=_examine,
    source="; ".join(f"{use.name} {length(use.low)} to {length(use.high)}: {use.source}" for use in USES),
)
"""Compares the height of what is sat on or worked at with usual ones."""
