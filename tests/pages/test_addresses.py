"""Moving a piece of HTML to another page."""

from __future__ import annotations

from hypothesis import example, given
from hypothesis import strategies as st

from scantling.pages import moved
from scantling.pages.html import escape, tag


def test_every_address_is_moved():
    """Links, pictures and each of several widths; nothing else."""
    html = (
        '<a href="x/" title="x/">x/</a><img src="x.png" srcset="a.jpg 480w, b.jpg 960w" alt="x.png" hidden>'
    )

    assert moved(html, lambda address: "../" + address) == (
        '<a href="../x/" title="x/">x/</a>'
        '<img src="../x.png" srcset="../a.jpg 480w, ../b.jpg 960w" alt="x.png" hidden>'
    )


def test_what_may_not_come_along_stays_behind():
    """With all that is in it, and with elements that never close."""
    html = "<p>a<svg><g><path d='M0'/></g></svg>b<iframe src='x'></iframe>c<br>d<script>1 < 2</script>e</p>"

    assert moved(html, str, without=("svg", "iframe", "script")) == "<p>abc<br>de</p>"


@given(st.text(), st.text())
@example("", "\n")
def test_words_stay_as_they_are(words, address):
    """Text and attributes that are escaped as ours are come back the same from a move to the same place."""
    words, address = (text.replace("\0", "").replace("\r", "") for text in (words, address))
    html = tag("p", tag("a", escape(words), href=address))

    assert moved(html, str) == html
