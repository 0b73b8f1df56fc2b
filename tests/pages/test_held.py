"""What no line's end may part, on a page and in the picture of a link."""

from __future__ import annotations

import re

from scantling.pages import Choices, make_pages
from scantling.pages.held import held
from scantling.pages.lettering import face, lines
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, write_catalog


def test_measures_counts_and_days_are_held_together():
    """A length, a count with what it counts, a board's number and a day each stay on one line."""
    assert held("2 × pocket screw 1 1/4 in each, 1x6 no. 2, revised 2026-11-09") == (
        "2&nbsp;×&nbsp;pocket screw 1&nbsp;1/4&nbsp;in each, 1x6 no.&nbsp;2, "
        'revised&nbsp;<span class="sc-day">2026-11-09</span>'
    )


def test_no_line_begins_with_the_dot_between_two_facts():
    """It stays at the end of the line before."""
    assert held("drill · dowelling jig") == "drill&nbsp;· dowelling jig"


def test_tags_are_left_as_they_are():
    """A day or a measure in an attribute is data, not words to be set."""
    html = '<time datetime="2026-11-09" title="1 1/4 in">then</time>'

    assert held(html) == html


def test_the_words_of_a_plan_page_are_held(tmp_path):
    """Facts, materials, joints, steps and the credit keep measures, counts and days whole."""
    made = make_pages(read_catalog(write_catalog(tmp_path, stool=BENCH)), Choices())
    page = next(page for page in made.pages if page.path == "plans/stool/index.md")
    quotes = r'<span class="quoted"[^>]*>.*?</span>'  # held by their style
    words = re.sub(rf"{quotes}|<(script|svg|option)\b.*?</\1>|<[^>]*>", "", page.markdown, flags=re.DOTALL)

    assert 'revised&nbsp;<span class="sc-day">2026-11-09</span>' in page.markdown
    assert "saw&nbsp;· drill" in page.markdown
    assert re.findall(r".{0,30}(?:\d × [a-z]|\d \d/\d| ·).{0,20}", words) == []


def test_the_size_in_the_picture_of_a_link_keeps_its_words():
    """'high' never stands alone on a line, as '… × 30 in / high' did."""
    words = "48\u00a0in\u00a0wide ×\u00a014\u00a0in\u00a0deep ×\u00a017\u00a01/2\u00a0in\u00a0high"
    font = face("text", 34, words)

    for width in range(220, 700, 10):
        for line in lines(words, font, width):
            assert re.fullmatch(r"(48 in wide)?( ?×? ?14 in deep)?( ?×? ?17 1/2 in high)?( ×)?", line), line
