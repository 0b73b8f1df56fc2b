"""Rendering an author's Markdown with nothing of HTML let through.

Prose may be emphasised, listed, linked and quoted; tags, scripts and addresses that are not plain ones
come out as the letters that were typed.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import cache
from html import unescape
from xml.etree import ElementTree as ET

from markdown import Markdown
from markdown.extensions import Extension
from markdown.inlinepatterns import SimpleTagInlineProcessor
from markdown.treeprocessors import Treeprocessor

from scantling.measure import Display
from scantling.pages.held import held
from scantling.pages.html import escape
from scantling.pages.words import CLOSE, OPEN, Words, markdown_of, prose_of
from scantling.plan import FittedProse, Plan, Prose

_ADDRESS = re.compile(
    r"(?:https?://|mailto:)[^\s<>\"'`{}]+|#[\w.-]*|(?:/|(?:\.{1,2}/)+)?\w[\w./#?=&%+,;@~-]*", re.IGNORECASE
)
_SCHEME = re.compile(r"[a-z][a-z0-9+.-]*:", re.IGNORECASE)
_PLAIN_SCHEMES = ("http:", "https:", "mailto:")


def render_words(plan: Plan) -> Words:
    """Return every piece of a plan's prose rendered, by its Markdown."""
    return {text: render(text) for text in sorted({markdown_of(prose) for prose in _prose(plan) if prose})}


def _prose(plan: Plan) -> Iterator[Prose]:
    yield from (plan.summary, plan.intro, *plan.cautions)
    for step in plan.steps:
        yield from (step.title, step.text, *step.cautions)
    yield from (note.text for note in (*plan.errata, *plan.notes))
    for part in plan.parts.values():
        yield part.note
        yield from (work.note for work in part.work)
    yield from (hardware.note for hardware in plan.hardware.values())


@cache
def render(text: str) -> str:
    """Return Markdown as HTML, marks for quotes left as they are."""
    renderer = Markdown(extensions=["tables", "sane_lists", _Safe()], output_format="html")
    html = renderer.convert(text)
    return _without_blank_lines(held(html.translate(_BRACES)))


_BRACES = {ord("{"): "&#123;", ord("}"): "&#125;"}


def _without_blank_lines(html: str) -> str:
    """Return the HTML with no empty line, which would end a block of HTML for some hosts."""
    return re.sub(r"\n(?=[ \t]*\n)", "&#10;", html).strip()


class _Safe(Extension):
    """Take out of Markdown all that lets raw HTML through, and look at every address."""

    def extendMarkdown(self, md: Markdown) -> None:  # noqa: N802 - the name is the base class's
        """Change the renderer."""
        md.preprocessors.deregister("html_block")
        md.inlinePatterns.deregister("html")
        md.inlinePatterns.deregister("entity")
        md.parser.blockprocessors.deregister("reference")
        md.inlinePatterns.register(SimpleTagInlineProcessor(r"(~~)(.+?)~~", "del"), "strike", 45)
        md.treeprocessors.register(_Tidy(md), "tidy", -10)


class _Tidy(Treeprocessor):
    """Keep plain links alone, move headings below those of the page, make pictures words."""

    def run(self, root: ET.Element) -> None:
        """Change the tree in place."""
        for element in root.iter():
            if element.tag == "a":
                _tidy_link(element)
            elif element.tag == "img":
                _tidy_picture(element)
            elif element.tag in _HEADINGS:
                element.tag = "h4"
            for key in ("title", "alt", "style"):
                if key in element.attrib and (key == "style" or OPEN in element.attrib[key]):
                    del element.attrib[key]


_HEADINGS = ("h1", "h2", "h3", "h5", "h6")


def _tidy_link(link: ET.Element) -> None:
    address = link.attrib.get("href", "")
    if is_plain_address(address):
        link.attrib["href"] = address
        return
    link.tag = "span"
    link.attrib.clear()


def _tidy_picture(picture: ET.Element) -> None:
    picture.tag = "em"
    picture.text = picture.attrib.get("alt", "")
    picture.attrib.clear()


def is_plain_address(address: str) -> bool:
    """Return whether an address is http(s), mailto or relative, and nothing cleverer."""
    if OPEN in address or CLOSE in address:
        return False
    scheme = _SCHEME.match(address)
    if scheme and scheme[0].lower() not in _PLAIN_SCHEMES:
        return False
    return bool(_ADDRESS.fullmatch(address))


def rendered(texts: Iterable[str]) -> Words:
    """Return some Markdown rendered, by its text."""
    return {text: render(text) for text in texts}


def bare(plan_prose: FittedProse, words: Words, display: Display) -> str:
    """Return prose as bare text without any markup, not escaped."""
    return (
        unescape(re.sub(r"<[^>]*>", "", prose_of(plan_prose, words, display))).replace("\u00a0", " ").strip()
    )


def escape_markdown(words: str) -> str:
    """Return words that mean themselves both in Markdown and in HTML, for a heading of a page."""
    safe = escape(" ".join(words.split()))
    return "".join(f"&#{ord(sign)};" if sign in _SIGNS else sign for sign in safe)


_SIGNS = "\\*_[]()+-.!|~^=:<>"
