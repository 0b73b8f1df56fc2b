"""Pieces set aside come back where they were, whatever a host makes of the Markdown around them."""

from __future__ import annotations

import re

import pytest
from markdown import Markdown

from scantling.pages import Choices, Page, make_pages, pieces_of, put_back, set_aside, whole
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, hostile_plan, write_catalog

EXTENSIONS = [[], ["attr_list", "tables", "toc"], ["md_in_html", "admonition", "sane_lists", "nl2br"]]


@pytest.fixture(scope="module")
def pages(tmp_path_factory) -> tuple[Page, ...]:
    """Return the pages of a plan in order and of one whose every word is hostile."""
    folder = write_catalog(tmp_path_factory.mktemp("pieces"), stool=BENCH, evil=hostile_plan())
    return make_pages(read_catalog(folder), Choices()).pages


def test_what_is_set_aside_is_put_back(pages):
    """A page is whole again, word for word; the pages of plans are mostly pieces."""
    for page in pages:
        aside = set_aside(page)

        assert whole(aside) == page.markdown
        assert set_aside(aside) == aside
    stool = next(page for page in pages if page.path == "plans/stool/index.md")
    assert len(set_aside(stool).markdown) < len(stool.markdown) / 8


@pytest.mark.parametrize("extensions", EXTENSIONS, ids=", ".join)
def test_a_host_makes_the_same_of_a_page_in_pieces(pages, extensions):
    """HTML of the Markdown with the pieces put back is that of the whole Markdown, but for line ends."""
    for page in pages:
        aside = set_aside(page)
        at_once = Markdown(extensions=extensions).convert(page.markdown)
        in_pieces = put_back(
            Markdown(extensions=extensions).convert(aside.markdown), pieces_of(aside).__getitem__
        )

        assert re.sub(r"\n+", "", in_pieces) == re.sub(r"\n+", "", at_once), page.path


def test_a_mark_that_an_author_wrote_stands_for_nothing():
    """A page that holds a mark of its own is left as it is."""
    page = Page("a.md", '<div data-set-aside="0"></div>\n\n<p>' + "long " * 40 + "</p>\n", {})

    assert set_aside(page) == page


@pytest.mark.parametrize("block", ["<p>short</p>", "<div>" + "x" * 200, "<p>" + "x" * 200 + "</p> and words"])
def test_only_whole_and_large_pieces_are_set_aside(block):
    """What is short, what stays open, and what words follow on stays in the Markdown."""
    page = Page("a.md", f"# A\n\n{block}\n", {})

    assert set_aside(page) == page
