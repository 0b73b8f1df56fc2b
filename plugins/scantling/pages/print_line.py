"""The line at the head of a printed plan: size, day of the prices, whose plan it is."""

from __future__ import annotations

from scantling.pages.facts import chosen_options, overall_size
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.report import Report
from scantling.words import say


def print_line(report: Report, look: Look) -> str:
    """Return what a sheet of paper must say of itself."""
    plan, day = report.fitted.plan, report.shop.prices_of
    words = [
        overall_size(report, look),
        *(escape(f"{question} {choice}") for question, choice in chosen_options(report)),
        escape(say("prices of {day}", day=day)) if day else "",
        escape(say("plan of {day}", day=plan.revised)) if plan.revised else "",
        escape(plan.author),
    ]
    return "".join(tag("span", word) for word in words if word)
