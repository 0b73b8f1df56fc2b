"""Every piece of a plan page that changes with the size, by name.

This file and all that it imports lean on the engine alone: the build and the reader's browser call the
same functions, and the browser puts each piece where `data-fragment` says.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping

from scantling.pages.cut_list import cut_list
from scantling.pages.diagrams import details, diagrams, views
from scantling.pages.drawings import Drawing, Drawings
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

Maker = Callable[[Report, Look, Drawings], str]

_MAKERS: Mapping[str, Maker] = {
    "print": lambda report, look, _: print_line(report, look),
    "summary": lambda report, look, _: line_of(report.fitted.summary, look.words, look.display),
    "picture": lambda report, look, drawings: picture(report, drawings.head, look),
    "facts": lambda report, look, _: facts(report, look),
    "intro": lambda report, look, _: prose_of(report.fitted.intro, look.words, look.display),
    "materials": lambda report, look, _: materials(report, look),
    "cut-list": lambda report, look, _: cut_list(report, look),
    "diagrams": lambda _, look, drawings: diagrams(drawings.cuts, look),
    "joinery": lambda report, look, _: joinery(report, look),
    "details": lambda _, look, drawings: details(drawings.details, look),
    "views": lambda _, look, drawings: views(drawings.views, look),
    "steps": steps,
    "safety": lambda report, look, _: safety(report, look),
    "notes": lambda report, look, _: notes(report, look),
}

FRAGMENTS = tuple(_MAKERS)
"""Their names, in the order of the page."""


def plan_fragments(
    report: Report,
    look: Look,
    *,
    drawings: Drawings | None = None,
    names: Collection[str] = FRAGMENTS,
) -> dict[str, str]:
    """Return pieces of the page as HTML, "" for one that a plan has nothing for.

    Args:
        drawings: the plan's drawings, where they have been made already.
        names: the pieces that are wanted; those with drawings take longest.
    """
    drawn = drawings or Drawings(report, look.display)
    return {name: make(report, look, drawn) for name, make in _MAKERS.items() if name in names}


def plan_drawings(report: Report, look: Look) -> tuple[Drawing, ...]:
    """Return every drawing that the fragments show."""
    return tuple(Drawings(report, look.display))
