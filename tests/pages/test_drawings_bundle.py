"""The drawings in one file."""

from __future__ import annotations

import io
from zipfile import ZipFile

from scantling.pages import Drawing
from scantling.pages.drawings_bundle import drawings_bundle

ONE, TWO = (Drawing(f"{name}.svg", f"<svg>{name} ½</svg>", name, 1, 1) for name in ("b", "a"))


def test_it_holds_every_drawing_in_order():
    """Names are sorted, the content is that of the page's own files."""
    with ZipFile(io.BytesIO(drawings_bundle([ONE, TWO]))) as opened:
        assert opened.testzip() is None
        assert opened.namelist() == ["a.svg", "b.svg"]
        assert opened.read("b.svg").decode() == "<svg>b ½</svg>"


def test_it_is_the_same_on_any_day():
    """Neither the clock nor the order in which they come changes a byte."""
    assert drawings_bundle([ONE, TWO]) == drawings_bundle([TWO, ONE])
    with ZipFile(io.BytesIO(drawings_bundle([ONE]))) as opened:
        assert opened.infolist()[0].date_time == (1980, 1, 1, 0, 0, 0)
