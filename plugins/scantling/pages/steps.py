"""The steps of the building, each with what it takes and what can hurt."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.html import escape, items, tag
from scantling.pages.look import Look
from scantling.pages.words import line_of, prose_of
from scantling.plan import FittedPlan, FittedProse, FittedStep, FittedUse
from scantling.report import Report


def steps(report: Report, look: Look) -> str:
    """Return every step that there is at this size."""
    fitted = report.fitted
    return tag("ol", "".join(_step(step, fitted, look) for step in fitted.steps), class_="sc-steps")


def _step(step: FittedStep, fitted: FittedPlan, look: Look) -> str:
    title = tag("h3", line_of(step.title, look.words, look.display), id=f"step-{step.number}")
    takes = _takes(step, fitted)
    text = tag("div", prose_of(step.text, look.words, look.display), class_="sc-text")
    return tag(
        "li", title + takes + _picture(step, look) + text + cautions(step.cautions, look), class_="sc-step"
    )


def _takes(step: FittedStep, fitted: FittedPlan) -> str:
    rows = [
        ("Parts", ", ".join(_use(use, fitted) for use in step.uses)),
        ("Needs", ", ".join(_use(use, fitted) for use in step.needs)),
        ("Tools", escape(" · ".join(step.step.tools))),
    ]
    inner = "".join(tag("div", tag("dt", name) + " " + tag("dd", words)) for name, words in rows if words)
    return tag("dl", inner, class_="sc-takes", data_search_exclude="true") if inner else ""


def _use(use: FittedUse, fitted: FittedPlan) -> str:
    part = fitted.part(use.name)
    mark = tag("b", escape(part.letter), class_="sc-mark") + " " if part else ""
    count = f"{use.count} × " if use.count else ""
    return f"{count}{mark}{escape(use.name)}"


def _picture(step: FittedStep, look: Look) -> str:
    if not step.step.picture:
        return ""
    picture = tag(
        "img", src=look.photo(step.step.picture), alt=step.step.picture_alt, loading="lazy", decoding="async"
    )
    return tag("figure", picture, class_="sc-photo")


def cautions(prose: Iterable[FittedProse], look: Look) -> str:
    """Return what can hurt, or nothing."""
    told = [line_of(caution, look.words, look.display) for caution in prose]
    return tag("div", tag("b", "Caution") + items(told), class_="sc-caution", role="note") if told else ""
