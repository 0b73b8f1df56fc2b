"""What can hurt in a plan, and to whom to defer."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.checks import Caution, cautions_for
from scantling.pages.html import escape, items, tag
from scantling.pages.look import Look
from scantling.pages.steps import cautions
from scantling.report import Report
from scantling.words import mark, say

ALWAYS = mark(
    "Wear eye and ear protection, keep guards on, and follow the manual of each tool. "
    "Where something here differs from the manual, from your local code or from the advice of a licensed "
    "tradesperson, they are right."
)


def safety(report: Report, look: Look) -> str:
    """Return the plan's own cautions, those that its work calls for, and the one that always holds."""
    own = cautions(report.fitted.cautions, look)
    called = cautions_for(report.fitted, report.shop, report.cutting)
    return own + _called(called) + tag("p", say(ALWAYS), class_="sc-always")


def _called(called: Iterable[Caution]) -> str:
    told = [escape(_words(caution)) for caution in called]
    return (
        tag("div", tag("b", say("Caution")) + items(told), class_="sc-caution", role="note") if told else ""
    )


def _words(caution: Caution) -> str:
    step = say("In step {number}: ", number=caution.where) if caution.where else ""
    return f"{step}{say(caution.text)} " + say("(See: {source}.)", source=say(caution.source))
