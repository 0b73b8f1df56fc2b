"""Every piece of a plan page that changes with the size, by name.

This file and all that it imports lean on the engine alone: the build and the reader's browser call the
same functions, and the browser puts each piece where `data-fragment` says.
"""

from __future__ import annotations

from scantling.pages.cut_list import cut_list
from scantling.pages.diagrams import diagrams
from scantling.pages.drawings import Drawing, cut_drawings, overall_drawing
from scantling.pages.facts import facts
from scantling.pages.joinery import joinery
from scantling.pages.look import Look
from scantling.pages.materials import materials
from scantling.pages.notes import notes
from scantling.pages.picture import picture
from scantling.pages.print_line import print_line
from scantling.pages.safety import safety
from scantling.pages.steps import steps
from scantling.pages.words import line_of, prose_of
from scantling.report import Report

FRAGMENTS = (
    "print",
    "summary",
    "picture",
    "facts",
    "intro",
    "materials",
    "cut-list",
    "diagrams",
    "joinery",
    "steps",
    "safety",
    "notes",
)
"""Their names, in the order of the page."""


def plan_fragments(report: Report, look: Look) -> dict[str, str]:
    """Return each piece of the page as HTML, "" for one that a plan has nothing for."""
    fitted = report.fitted
    return {
        "print": print_line(report, look),
        "summary": line_of(fitted.summary, look.words, look.display),
        "picture": picture(report, overall_drawing(report, look.display), look),
        "facts": facts(report, look),
        "intro": prose_of(fitted.intro, look.words, look.display),
        "materials": materials(report, look),
        "cut-list": cut_list(report, look),
        "diagrams": diagrams(cut_drawings(report, look.display), look),
        "joinery": joinery(report, look),
        "steps": steps(report, look) if fitted.steps else "",
        "safety": safety(report, look),
        "notes": notes(report, look),
    }


def plan_drawings(report: Report, look: Look) -> tuple[Drawing, ...]:
    """Return every drawing that the fragments show."""
    overall = overall_drawing(report, look.display)
    return (*((overall,) if overall else ()), *cut_drawings(report, look.display))
