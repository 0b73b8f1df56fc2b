"""What can hurt in a plan, and to whom to defer."""

from __future__ import annotations

from scantling.pages.html import tag
from scantling.pages.look import Look
from scantling.pages.steps import cautions
from scantling.report import Report

ALWAYS = (
    "Wear eye and ear protection, keep guards on, and follow the manual of each tool. "
    "Where something here differs from the manual, from your local code or from the advice of a licensed "
    "tradesperson, they are right."
)


def safety(report: Report, look: Look) -> str:
    """Return the plan's own cautions, and the one that always holds."""
    return cautions(report.fitted.cautions, look) + tag("p", ALWAYS, class_="sc-always")
