"""The picture at the head of a plan: the author's photo, or a drawing made from the overall sizes."""

from __future__ import annotations

from scantling.pages.diagrams import figure
from scantling.pages.drawings import Drawing
from scantling.pages.html import tag
from scantling.pages.look import Look
from scantling.pages.photo import CARD, HEAD, photo
from scantling.report import Report


def picture(report: Report, drawing: Drawing | None, look: Look, *, lazy: bool = False) -> str:
    """Return the head picture, or nothing where there is none.

    Args:
        lazy: whether it waits until it comes into sight, as on a card.
    """
    shown = report.fitted.plan.photo
    if shown is not None:
        image = photo(look, shown.file, shown.alt, sizes=CARD if lazy else HEAD, lazy=lazy)
        return tag("figure", image, class_="sc-photo")
    return figure(drawing, look, lazy=lazy) if drawing is not None else ""
