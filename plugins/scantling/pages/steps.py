"""The steps of the building, each with what it takes and what can hurt."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.diagrams import figure
from scantling.pages.drawings import Drawing, Drawings
from scantling.pages.held import NO_BREAK, held
from scantling.pages.html import escape, items, tag
from scantling.pages.look import Look
from scantling.pages.photo import STEP, photo
from scantling.pages.words import line_of, prose_of
from scantling.plan import FittedPlan, FittedProse, FittedStep, FittedUse
from scantling.report import Report
from scantling.words import say


def steps(report: Report, look: Look, drawings: Drawings) -> str:
    """Return every step that there is at this size."""
    fitted = report.fitted
    inner = "".join(_step(step, fitted, look, drawings.steps.get(step.number)) for step in fitted.steps)
    return tag("ol", inner, class_="sc-steps") if inner else ""


def step_anchor(step: FittedStep) -> str:
    """Return by what a link finds a step on its page."""
    return f"step-{step.number}"


def _step(step: FittedStep, fitted: FittedPlan, look: Look, drawing: Drawing | None) -> str:
    title = tag("h3", line_of(step.title, look.words, look.display), id=step_anchor(step))
    takes = _takes(step, fitted)
    text = tag("div", prose_of(step.text, look.words, look.display), class_="sc-text")
    return tag(
        "li",
        title + takes + _picture(step, look, drawing) + text + cautions(step.cautions, look),
        class_="sc-step",
    )


def _takes(step: FittedStep, fitted: FittedPlan) -> str:
    rows = [
        (say("Parts"), ", ".join(_use(use, fitted) for use in step.uses)),
        (say("Needs"), ", ".join(_use(use, fitted) for use in step.needs)),
        (say("Tools"), escape(" · ".join(step.step.tools))),
    ]
    inner = "".join(
        tag("div", tag("dt", name) + " " + tag("dd", held(words))) for name, words in rows if words
    )
    return tag("dl", inner, class_="sc-takes", data_search_exclude="true") if inner else ""


def _use(use: FittedUse, fitted: FittedPlan) -> str:
    part = fitted.part(use.name)
    count = f"{use.count} ×{NO_BREAK}" if use.count else ""
    if part is None:
        return count + escape(use.name)
    first, *rest = escape(use.name).split(" ")
    mark = tag("b", escape(part.letter), class_="sc-mark")
    # the letter is a box, beside which a line may end whatever the space: its words are held by their style
    return " ".join((tag("span", f"{count}{mark} {first}", class_="sc-whole"), *rest))


def _picture(step: FittedStep, look: Look, drawing: Drawing | None) -> str:
    """Return the author's photo of the step, else the drawing of what it adds."""
    if step.step.picture:
        picture = photo(look, step.step.picture, step.step.picture_alt, sizes=STEP, lazy=True)
        return tag("figure", picture, class_="sc-photo")
    return figure(drawing, look) if drawing is not None else ""


def cautions(prose: Iterable[FittedProse], look: Look) -> str:
    """Return what can hurt, or nothing."""
    told = [line_of(caution, look.words, look.display) for caution in prose]
    return (
        tag("div", tag("b", say("Caution")) + items(told), class_="sc-caution", role="note") if told else ""
    )
