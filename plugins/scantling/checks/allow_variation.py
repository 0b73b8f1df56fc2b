"""Do parts of pickets and rough boards allow for boards that are not all alike?"""

from __future__ import annotations

import re
from collections.abc import Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import length, words_of
from scantling.fault import Severity
from scantling.measure import Length
from scantling.plan import FittedPart, Prose
from scantling.shop import Stock
from scantling.words import say

SAID = re.compile(
    r"\b(?:var(?:y|ies)|equally wide|sort|uneven|share out|narrower|true width|widest|not all alike)\b"
)

_GAP = re.compile(r"\b(?:gap|space|spacing)s?\b")
"""A length of that name, reckoned from the width of a part, takes up what its boards differ by."""


def _examine(subject: Subject) -> Iterator[Finding]:
    for part in subject.fitted.parts:
        stock = _varying(part, subject)
        if stock is None or part.part.cut_to_fit is not None:
            continue
        narrowest = stock.widest - stock.varies
        if part.blank.least_across > narrowest and not _is_said(subject, part):
            yield Finding(
                say(
                    "a {stock} may be {varies} narrower than {widest}, and '{part}' takes its whole width",
                    stock=stock.key,
                    varies=length(stock.varies),
                    widest=length(stock.widest),
                    part=part.id,
                ),
                part.part.place.key(),
                "say in its step that the pieces are laid out and measured, or give it a 'least width'",
            )


def _varying(part: FittedPart, subject: Subject) -> Stock | None:
    stocks = (subject.shop.stocks[name] for name in part.part.source.stocks if name in subject.shop.stocks)
    return next((stock for stock in stocks if stock.varies > Length(0)), None)


def _is_said(subject: Subject, part: FittedPart) -> bool:
    said = subject.once("varying parts", _said)
    return part.id in said


def _said(subject: Subject) -> set[str]:
    """Return the parts in whose note or step the author speaks of boards that differ."""

    def speaks(*proses: Prose) -> bool:
        return any(SAID.search(words_of(prose)) for prose in proses)

    plan = subject.plan
    if speaks(plan.intro, *plan.cautions, *(step.text for step in plan.steps if not step.uses)):
        return set(plan.parts)
    found = {part.id for part in plan.parts.values() if speaks(part.note)}
    for name, formula in plan.lengths.items():
        if _GAP.search(name):
            found |= {used.removesuffix(".width") for used in formula.names if used.endswith(".width")}
    for step in plan.steps:
        if speaks(step.text, *step.cautions):
            found |= {use.name for use in step.uses}
    return found


ALLOW_VARIATION = Check(
    name="allow-variation",
    group="Wood",
    title="Is there room for boards that are not all alike?",
    meaning="Pickets, rough and reclaimed boards are not all as wide as the rack says. A step that lays "
    "them out and "
    "measures what is left, or a 'least width', keeps the last one from not fitting.",
    mend="say in the step that the pieces are measured, or give the part a 'least width'",
    severity=Severity.WARNING,
    examine=_examine,
    source="how much they vary: 'varies' in the shop file; common practice, no source",
)
"""Looks for words or a least width for parts that take the whole width of boards that vary."""
