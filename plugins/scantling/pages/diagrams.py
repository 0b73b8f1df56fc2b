"""Pictures in a page: each a figure on paper, shown from a file of its own."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.pages.drawings import Drawing
from scantling.pages.html import escape, tag
from scantling.pages.look import Look


def diagrams(drawings: Iterable[Drawing], look: Look) -> str:
    """Return cut diagrams as figures."""
    return tag("div", "".join(figure(drawing, look) for drawing in drawings), class_="sc-diagrams")


def figure(drawing: Drawing, look: Look, caption: str = "", *, lazy: bool = True) -> str:
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
    words = tag("figcaption", escape(caption)) if caption else ""
    return tag("figure", picture + words, class_="sc-paper")
