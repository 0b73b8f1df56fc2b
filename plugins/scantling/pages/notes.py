"""Errata and build notes, newest first as the author wrote them."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.words import line_of
from scantling.plan import FittedErratum, FittedPlan
from scantling.report import Report
from scantling.words import say


def notes(report: Report, look: Look) -> str:
    """Return what was wrong and is mended, and what the author would do differently."""
    return _dated(say("Mended"), report.fitted.errata, look) + _dated(
        say("From the build"), report.fitted.notes, look
    )


def _dated(title: str, dated: Iterable[FittedErratum], look: Look) -> str:
    rows = "".join(
        tag(
            "div",
            tag("dt", tag("time", escape(note.erratum.day), datetime=note.erratum.day))
            + " "
            + tag("dd", _text(note, look)),
        )
        for note in dated
    )
    return tag("p", tag("b", title)) + tag("dl", rows, class_="sc-notes") if rows else ""


def _text(note: FittedErratum, look: Look) -> str:
    parts = ", ".join(note.erratum.parts)
    head = tag("b", escape(f"{parts}: ")) if parts else ""
    return head + line_of(note.text, look.words, look.display)


def changes_since(fitted: FittedPlan, day: str, look: Look) -> str:
    """Return what was mended in a plan after a day, as a list of dated notes; "" where nothing was."""
    if not day:
        return ""
    later = [note for note in fitted.errata if note.erratum.day > day]
    if later:
        return _dated(say("Changed since you saved it"), later, look)
    if fitted.plan.last_change > day:
        words = say("This plan was revised on {day}, after you saved it.", day=fitted.plan.last_change)
        return tag("p", tag("b", escape(words)))
    return ""
