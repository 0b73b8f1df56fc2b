"""The drawings in one file."""

from __future__ import annotations

import io
from zipfile import ZipFile

from scantling.pages import Choices, Drawing, make_pages
from scantling.pages.drawings_bundle import DRAWINGS_FILE, drawings_bundle
from scantling.source import read_catalog
from tests.support.catalogs import write_catalog

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


def test_a_page_links_to_it(tmp_path):
    """Beside each page lies the file with all of its drawings, and the page leads there."""
    finished = make_pages(read_catalog(write_catalog(tmp_path)), Choices())
    (path,) = (file.path for file in finished.files if file.path == f"plans/stool/{DRAWINGS_FILE}")
    (page,) = (page for page in finished.pages if page.path == "plans/stool/index.md")
    beside = {file.path.rpartition("/")[2] for file in finished.files if file.path.startswith("plans/stool/")}
    content = next(file.content for file in finished.files if file.path == path)

    assert f'href="{DRAWINGS_FILE}"' in page.markdown
    with ZipFile(io.BytesIO(content)) as opened:
        assert opened.namelist()
        assert set(opened.namelist()) <= beside
