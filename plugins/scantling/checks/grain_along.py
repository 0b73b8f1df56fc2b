"""Does the grain run along the long side, unless the author says otherwise?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Severity
from scantling.words import say

SHORT, SHORT_SHEET = Fraction(5, 4), Fraction(2)
"""A part so many times as wide as long is looked at; panels at twice; nearly square ones are let be."""


def _examine(subject: Subject) -> Iterator[Finding]:
    for part in subject.fitted.parts:
        if part.part.is_grain_said or part.width < SHORT * part.length:
            continue
        stocks = [
            subject.shop.stocks[name] for name in part.part.source.stocks if name in subject.shop.stocks
        ]
        is_sheet = bool(stocks) and all(stock.is_sheet for stock in stocks)
        if is_sheet and (part.width < SHORT_SHEET * part.length or not any(one.has_grain for one in stocks)):
            continue
        yield Finding(
            say(
                "the grain of '{part}' runs along {length}, its short side; {width} lies across it",
                part=part.id,
                length=length(part.length),
                width=length(part.width),
            ),
            part.part.place.at("length"),
            "write 'grain: width', or 'grain: length' if it is meant so",
        )


GRAIN_ALONG = Check(
    name="grain-along",
    group="Wood",
    title="Does the grain run along the long side?",
    meaning="A part is cut with its length along the grain, for strength and looks. Where it comes out a "
    "quarter wider than "
    "long (a panel: twice as wide), the author says which way is meant.",
    mend="write 'grain: width', or 'grain: length' if it is meant so",
    severity=Severity.WARNING,
    examine=_examine,
    source="common practice, no source",
)
"""Compares length and width of every part that says nothing of its grain."""
