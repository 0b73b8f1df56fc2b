"""Marks on what changed."""

from __future__ import annotations

import re

from hypothesis import given
from hypothesis import strategies as st

from scantling.pages.live.marks import mark_changes

DRAWN = (
    '<table><tr data-part="leg"><td>4</td><td>17 in</td></tr>'
    '<tr data-part="top"><td>1</td><td>48 in</td></tr></table>'
)


def test_only_what_changed_is_marked():
    """One number differs, one mark, with what it was."""
    now = DRAWN.replace("48 in", "40 in")

    assert mark_changes(now, DRAWN) == now.replace(
        "40 in", '<mark title="as drawn: 48 in" class="sc-changed">40 in</mark>'
    )
    assert mark_changes(DRAWN, DRAWN) == DRAWN


def test_rows_are_compared_by_what_they_are_about():
    """A row that is new or gone moves no mark onto its neighbours."""
    row = '<tr data-part="middle leg"><td>1</td><td>16 in</td></tr>'
    more = DRAWN.replace('<tr data-part="top">', row + '<tr data-part="top">')

    assert mark_changes(more, DRAWN).count("<mark") == 1
    assert mark_changes(DRAWN, more) == DRAWN


def test_a_quote_in_what_was_stays_in_its_attribute():
    """Words of the author's size go into a title, escaped."""
    marked = mark_changes("<p>5 ft</p>", '<p>4" wide</p>')

    assert 'title="as drawn: 4&quot; wide"' in marked


ROWS = st.lists(
    st.tuples(st.sampled_from(["a", "b", "c"]), st.lists(st.text("12 x&;", max_size=4), max_size=3)),
    max_size=4,
)


@given(ROWS, ROWS)
def test_marks_change_nothing_else(now, before):
    """Without its marks, the HTML is what it was."""
    html, drawn = (
        "".join(
            f'<tr data-part="{name}">{"".join(f"<td>{cell}</td>" for cell in cells)}</tr>'
            for name, cells in rows
        )
        for rows in (now, before)
    )

    assert re.sub(r"</?mark[^>]*>", "", mark_changes(html, drawn)) == html


def test_a_new_line_of_a_list_marks_no_line_after_it():
    """Lines that say what they are about are compared with their own like, wherever they stand."""
    drawn = '<ul><li data-row="side front">side to front</li><li data-row="glue">1 × glue</li></ul>'
    new = '<li data-row="side shelf">side to shelf</li>'
    html = drawn.replace('<li data-row="glue">', f'{new}<li data-row="glue">')

    marked = mark_changes(html, drawn)

    assert marked.count("<mark") == 1
    assert "<mark" in marked.partition('data-row="side shelf">')[2].partition("</li>")[0]
