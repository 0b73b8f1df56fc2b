"""What stands beside and below what on a printed plan: boards in their order, names with what they name."""

from __future__ import annotations

import io
import re

import pypdf
import pytest

from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.paper import PAPERS, lay_out, typeset
from scantling.report import report_on
from scantling.source import read_catalog


def _pages(root, slug: str, paper: str) -> list[str]:
    """Return the words of each page, in the order in which they are set."""
    found = read_catalog(root / "plans").plan(slug)
    look = Look(Display(), render_words(found.plan))
    pdf = typeset(lay_out(report_on(found.fitter), look, paper=paper, size_name="", link="", photos={}))
    return [" ".join(page.extract_text().split()) for page in pypdf.PdfReader(io.BytesIO(pdf)).pages]


@pytest.mark.parametrize("slug", ["sheet-workbench", "entry-bench", "sliding-door-console"])
def test_boards_of_a_stock_follow_each_other_by_number(root, slug):
    """A wide cut diagram never comes before a narrow one of a lower number."""
    words = " ".join(_pages(root, slug, "letter"))
    diagrams = words.partition(" Cut diagrams ")[2].partition(" Joints and hardware ")[0]
    drawn = re.findall(
        r"(\S+(?: (?:exterior )?plywood| cedar| picket)?) no\. (\d+)(?: \(\d|\s+\d+ ft)", diagrams
    )
    numbers: dict[str, list[int]] = {}
    for stock, number in drawn:
        numbers.setdefault(stock, []).append(int(number))

    assert len(drawn) >= 5
    assert max(len(found) for found in numbers.values()) >= 2
    assert all(found == sorted(found) for found in numbers.values()), numbers


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("slug", ["potting-bench", "plywood-bookcase"])
def test_the_name_of_notes_stands_with_the_first_of_them(root, slug, paper):
    """No page ends with *From the build* alone: the first note follows on the same page."""
    note = read_catalog(root / "plans").plan(slug).plan.notes[0]
    (page,) = [page for page in _pages(root, slug, paper) if "From the build" in page]

    assert page.partition("From the build")[2].strip().startswith(note.day)
