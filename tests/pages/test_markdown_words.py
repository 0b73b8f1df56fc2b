"""Rendering an author's prose: what is let through, and what comes out as letters."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from markdown import markdown

from scantling.pages.markdown_words import escape_markdown, is_plain_address, render
from tests.support.catalogs import EVIL

PLAIN_TAGS = {
    *(
        "p",
        "em",
        "strong",
        "a",
        "span",
        "ul",
        "ol",
        "li",
        "code",
        "pre",
        "br",
        "hr",
        "h4",
        "blockquote",
        "del",
    ),
    *("table", "thead", "tbody", "tr", "th", "td"),
}
"""All that prose may become."""


def tags(html: str) -> set[str]:
    """Return the names of all elements."""
    return set(re.findall(r"</?([a-zA-Z][^\s/>]*)", html))


def attributes(html: str) -> set[str]:
    """Return the names of all attributes."""
    inside = "".join(re.findall(r"<[a-z][^>]*>", html))
    return set(re.findall(r'([\w-]+)="', inside))


def test_prose_may_be_emphasised_listed_and_linked():
    """Ordinary Markdown is rendered."""
    html = render("Cut *one* of **two**:\n\n- first\n- [second](https://example.org/a?b=c)\n")

    assert html == (
        "<p>Cut <em>one</em> of <strong>two</strong>:</p>\n<ul>\n<li>first</li>\n"
        '<li><a href="https://example.org/a?b=c">second</a></li>\n</ul>'
    )


@pytest.mark.parametrize(
    "text",
    [
        EVIL,
        "<div onclick=alert(1)>x</div>",
        "<svg/onload=alert(1)>",
        "<!-- <script>alert(1)</script> -->",
        "<?php x ?>",
        "&lt;script&gt;alert(1)&lt;/script&gt;",
        "`<script>alert(1)</script>`",
        "    <script>alert(1)</script>",
        "[<script>alert(1)</script>](x)",
        '[x](y "><script>alert(1)</script>")',
        "![x](https://example.org/x.png)",
        "> <script>alert(1)</script>",
        "| a |\n|---|\n| <script>alert(1)</script> |",
    ],
)
def test_tags_are_letters(text):
    """HTML in prose is shown as it was typed and makes no element or attribute."""
    html = render(text)

    assert tags(html) <= PLAIN_TAGS
    assert attributes(html) <= {"href", "title"}


@pytest.mark.parametrize(
    "address",
    [
        "javascript:alert(1)",
        "JaVaScRiPt:alert(1)",
        "java\tscript:alert(1)",
        "&#106;avascript:alert(1)",
        "data:text/html,x",
        "vbscript:x",
        "//example.org/x",
        "\\\\example.org",
        "file:///etc/passwd",
        "http:javascript",
    ],
)
def test_clever_addresses_are_no_links(address):
    """A link that is neither http, mail nor relative keeps its words and loses its address."""
    assert "href" not in render(f"[words]({address})")
    assert "href" not in render(f"<{address}>")
    assert "href" not in render(f"[words][r]\n\n[r]: {address}")


@pytest.mark.parametrize(
    "address",
    [
        "https://example.org/",
        "http://example.org/a#b",
        "mailto:me@example.org",
        "../shelf/",
        "#steps",
        "a/b.pdf",
    ],
)
def test_plain_addresses_are_links(address):
    """Pages of the web, mail, and places on the site may be linked."""
    assert is_plain_address(address)
    assert f'href="{address}"' in render(f"[words]({address})")


@given(st.text(st.sampled_from("<>&\"'`[]()!{}:/#*_~|\\- \nabjavscript=1.\ue000\ue001")))
def test_no_prose_breaks_out(text):
    """Whatever signs stand together, no element, attribute or address appears that prose may not have."""
    html = render(text)

    assert tags(html) <= PLAIN_TAGS
    assert attributes(html) <= {"href", "title"}
    assert all(is_plain_address(address) for address in re.findall(r'href="([^"]*)"', html))
    assert "\n\n" not in html


@given(st.text(st.sampled_from("<>&\"'`[]()!{}:/#*_~|\\-+.= ab1"), min_size=1))
def test_a_title_means_itself(words):
    """Words that were escaped for a heading are neither Markdown nor HTML, in whichever renderer."""
    html = markdown(f"# {escape_markdown(words)}", extensions=["extra"])

    assert tags(html) <= {"h1"}
