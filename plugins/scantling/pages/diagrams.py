"""Pictures in a page: each a figure on paper, shown from a file of its own."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.drawings import Drawing
from scantling.pages.html import escape, tag
from scantling.pages.look import Look


def diagrams(drawings: Iterable[Drawing], look: Look) -> str:
    """Return cut diagrams as figures."""
    return _figures(drawings, look, "sc-diagrams")


def views(drawings: Iterable[Drawing], look: Look) -> str:
    """Return the views of the whole piece as figures."""
    return _figures(drawings, look, "sc-diagrams sc-views")


def details(drawings: Iterable[Drawing], look: Look) -> str:
    """Return the joinery of single parts as figures."""
    return _figures(drawings, look, "sc-diagrams sc-details")


def _figures(drawings: Iterable[Drawing], look: Look, class_: str) -> str:
    inner = "".join(figure(drawing, look) for drawing in drawings)
    return tag("div", inner, class_=class_) if inner else ""


def figure(drawing: Drawing, look: Look, *, lazy: bool = True) -> str:
    """Return one drawing on paper."""
    picture = tag(
        "img",
        src=look.drawing(drawing),
        alt=drawing.alt,
        width=drawing.width,
        height=drawing.height,
        loading="lazy" if lazy else None,
        decoding="async",
    )
    words = tag("figcaption", escape(drawing.caption)) if drawing.caption else ""
    return tag("figure", picture + words, class_="sc-paper")
