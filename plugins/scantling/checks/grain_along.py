"""Does the grain run along the long side, unless the author says otherwise?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length
from scantling.fault import Severity
from scantling.plan import FittedPart


def _examine(subject: Subject) -> Iterator[Finding]:
    for part in subject.fitted.parts:
        if part.part.is_grain_said or part.width <= part.length or not _has_grain(part, subject):
            continue
        yield Finding(
            f"the grain of '{part.id}' runs along {length(part.length)}, its short side; "
            f"{length(part.width)} lies across it",
            part.part.place.at("length"),
            "write 'grain: width', or 'grain: length' if it is meant so",
        )


def _has_grain(part: FittedPart, subject: Subject) -> bool:
    stocks = (subject.shop.stocks[name] for name in part.part.source.stocks if name in subject.shop.stocks)
    return any(stock.has_grain for stock in stocks)


GRAIN_ALONG = Check(
    name="grain-along",
    group="Wood",
    title="Does the grain run along the long side?",
    meaning="A part is cut with its length along the grain, for strength and looks. Where it comes out wider than long, "
    "the author says which way is meant.",
    mend="write 'grain: width', or 'grain: length' if it is meant so",
    severity=Severity.WARNING,
    examine=_examine,
    source="common practice, no source",
)
"""Compares length and width of every part that says nothing of its grain."""
