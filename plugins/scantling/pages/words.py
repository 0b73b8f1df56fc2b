"""An author's prose at one size, as HTML.

The Markdown is rendered once, with a mark where a number is quoted; filling in the numbers is then a
matter of replacing marks, which a browser does without a Markdown renderer.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping

from scantling.measure import Display
from scantling.pages.html import escape, tag
from scantling.plan import FittedProse, Prose
from scantling.report import write_value

OPEN, CLOSE = "\ue000", "\ue001"
"""What stands around the number of a quote in Markdown and in rendered HTML; no plan may hold these."""
_MARK = re.compile(f"{OPEN}(\\d+){CLOSE}")

Words = Mapping[str, str]
"""From the Markdown of each piece of prose, with marks for quotes, to its HTML with the same marks."""


_LINK_BELOW = re.compile(r'(<a href=")(?![#/]|[A-Za-z][A-Za-z0-9+.-]*:)')
"""A link that counts from the plan's own page."""


def words_from(words: Words, up: str) -> Words:
    """Return prose as another page has it, whose links count from there.

    Args:
        up: the way from that page to the plan's own; "" for that one itself.
    """
    return {text: _LINK_BELOW.sub(rf"\g<1>{up}", html) for text, html in words.items()} if up else words


def markdown_of(prose: Prose | FittedProse) -> str:
    """Return prose as Markdown with a mark for each quote."""
    written: list[str] = []
    quotes = 0
    for piece in prose.pieces:
        if isinstance(piece, str):
            written.append(piece.replace(OPEN, "").replace(CLOSE, ""))
        else:
            written.append(f"{OPEN}{quotes}{CLOSE}")
            quotes += 1
    return "".join(written)


def prose_of(plan_prose: FittedProse, words: Words, display: Display, other: Display | None = None) -> str:
    """Return prose as blocks of HTML."""
    quotes = [piece.value for piece in plan_prose.pieces if not isinstance(piece, str)]
    values = [write_value(value, display) for value in quotes]
    others = [write_value(value, other) for value in quotes] if other is not None else values
    return _MARK.sub(_filler(values, others), words[markdown_of(plan_prose)]) if plan_prose else ""


def line_of(plan_prose: FittedProse, words: Words, display: Display, other: Display | None = None) -> str:
    """Return prose as HTML that may stand within a line, where the author wrote but one paragraph."""
    html = prose_of(plan_prose, words, display, other)
    inner = html.removeprefix("<p>").removesuffix("</p>")
    return inner if len(inner) == len(html) - 7 and "<p>" not in inner else html


def _filler(values: list[str], others: list[str]) -> Callable[[re.Match[str]], str]:
    def fill(mark: re.Match[str]) -> str:
        number = int(mark[1])
        if number >= len(values):
            return ""
        other = others[number] if others[number] != values[number] else None
        return tag("span", escape(values[number]), class_="quoted", data_quote=number, data_other=other)

    return fill
