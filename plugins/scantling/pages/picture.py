"""The picture at the head of a plan: the author's photo, or a drawing at the size that was chosen."""

from __future__ import annotations

from scantling.drawing import is_drawable
from scantling.pages.diagrams import figure
from scantling.pages.drawings import Drawing
from scantling.pages.html import escape, tag
from scantling.pages.look import Look
from scantling.pages.photo import CARD, HEAD, photo
from scantling.report import Report
from scantling.words import mark, say

UNUSUAL = mark("The picture shows the usual size.")


def picture(report: Report, drawing: Drawing | None, look: Look, *, on_card: bool = False) -> str:
    """Return the head picture, or nothing where there is none.

    A photo shows the usual size; at another one the piece is drawn, if the plan says where its parts are.

    Args:
        on_card: whether it waits until it comes into sight, and has no caption.
    """
    fitted = report.fitted
    shown = fitted.plan.photo
    if shown is None or (is_drawable(fitted) and not fitted.is_usual):
        return figure(drawing, look, lazy=on_card) if drawing is not None else ""
    image = photo(look, shown.file, shown.alt, sizes=CARD if on_card else HEAD, lazy=on_card)
    words = " ".join(filter(None, (shown.caption, "" if fitted.is_usual else say(UNUSUAL))))
    caption = tag("figcaption", escape(words)) if words and not on_card else ""
    return tag("figure", image + caption, class_="sc-photo")
