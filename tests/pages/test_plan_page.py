"""The page of a plan: what is on it, and how it is cut into pieces that a new size replaces."""

from __future__ import annotations

import csv
import io
import json
import re
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path

import pytest

import scantling
from scantling.measure import Display
from scantling.pages import FRAGMENTS, Choices, Look, make_pages, plan_drawings, plan_fragments, render_words
from scantling.pages.csv_file import inert
from scantling.plan import Choice
from scantling.report import plan_data, report_on
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, EVIL, hostile_plan, write_catalog


class Elements(HTMLParser):
    """Collects the names and attributes of all elements."""

    def __init__(self) -> None:
        super().__init__()
        self.names: set[str] = set()
        self.attributes: list[tuple[str, str]] = []

    def handle_starttag(self, tag, attrs):
        self.names.add(tag)
        self.attributes += [(key, value or "") for key, value in attrs]


@pytest.fixture
def stool(tmp_path):
    """Return the test stool, read."""
    return read_catalog(write_catalog(tmp_path)).plan("stool")


@pytest.fixture
def finished(tmp_path):
    """Return the pages of a catalog that holds only the stool."""
    return make_pages(read_catalog(write_catalog(tmp_path)), Choices())


def page_of(finished, path: str):
    """Return a page by its path."""
    return next(page for page in finished.pages if page.path == path)


def file_of(finished, path: str):
    """Return a side file's content by its path."""
    return next(file.content for file in finished.files if file.path == path)


def bare_words(html: str) -> str:
    """Return what a reader sees."""
    return " ".join(re.sub(r"<[^>]*>", " ", html).replace("&nbsp;", " ").split())


def test_a_plan_has_a_page_for_each_size(finished):
    """The usual size, each offered value and each offered combination get a page, and the catalog one."""
    assert [page.path for page in finished.pages if page.path.startswith("plans/")] == [
        "plans/index.md",
        "plans/stool/index.md",
        "plans/stool/width-30in/index.md",
        "plans/stool/width-36in-shelf-slatted/index.md",
    ]
    assert finished.diagnostics == ()


def test_a_page_holds_everything_of_the_plan(finished):
    """Facts, lists, steps with what they take, cautions, corrections and search words are all on it."""
    words = bare_words(page_of(finished, "plans/stool/index.md").markdown)

    for told in (
        "A stool 24 in wide for a wet morning.",
        "24 in wide × 11 in deep × 17 1/2 in high",
        "first project",
        "an afternoon",
        "prices of 2026-11-02",
        "saw · drill",
        "1 × wood screw 2 in, box of 50",
        "Caution: Rags can catch fire.",
        "seat to leg : screws, 8 joints, 2 × wood screw 2 in each, 16 altogether",
        "Keep both hands behind the blade.",
        "Cut four legs to 16 3/4 in .",
        "16 × wood screw 2 in",
        "Wear glasses; a 24 in board is heavy.",
        "The legs were drawn 3/4 in too long.",
        "Plan by Test yard, CC BY 4.0, revised 2026-11-09",
        "Found under: Quay stool, stool, quick, outdoors, entry, first project, saw, drill, leg, seat,",
    ):
        assert told in words


def test_steps_and_parts_that_are_not_there_are_not_told_of(finished):
    """A step for an option appears only on the page where the option is chosen."""
    usual = page_of(finished, "plans/stool/index.md").markdown
    slatted = page_of(finished, "plans/stool/width-36in-shelf-slatted/index.md").markdown

    assert "Add the slats" not in usual
    assert "Add the slats" in slatted
    assert 'data-part="slat"' not in usual
    assert 'data-part="slat"' in slatted


def test_an_offered_size_points_home(finished):
    """The page of an offered size names the plan's page as the one to be found, and stays out of search."""
    meta = page_of(finished, "plans/stool/width-30in/index.md").meta

    assert meta["canonical"] == "plans/stool/"
    assert meta["search"] == {"exclude": True}
    assert "canonical" not in page_of(finished, "plans/stool/index.md").meta


def test_prose_reads_right_at_every_size(finished):
    """Numbers that the author quoted follow the size."""
    wide = bare_words(page_of(finished, "plans/stool/width-30in/index.md").markdown)

    assert "A stool 30 in wide" in wide
    assert "Screw the 2 boards on, 30 in long." in wide


def test_pieces_of_the_page_are_the_fragments(stool, finished):
    """Each named piece holds exactly what the fragment function gives, so that a browser can replace it."""
    look = Look(Display(), render_words(stool.plan))
    fragments = plan_fragments(report_on(stool.fitter), look)
    markdown = page_of(finished, "plans/stool/index.md").markdown

    assert tuple(fragments) == FRAGMENTS
    for name, html in fragments.items():
        if html:
            assert re.search(f'<div data-fragment="{name}"[^>]*>{re.escape(html)}</div>', markdown), name


def test_fragments_need_nothing_but_the_engine():
    """The file of fragments loads in an interpreter without packages, and loads no Markdown, YAML or host."""
    plugins = Path(scantling.__file__).parent.parent
    start = f"import sys; sys.path.insert(0, {str(plugins)!r})"
    code = f"{start}; import scantling.pages.fragments; print(*sys.modules)"
    loaded = subprocess.run(
        [sys.executable, "-I", "-S", "-c", code], capture_output=True, text=True, check=True
    ).stdout.split()

    assert {"markdown", "yaml", "mkdocs", "csv", "pathlib", "jinja2"} & set(loaded) == set()
    assert [name for name in loaded if name.startswith(("scantling.source", "scantling.host"))] == []


def test_every_picture_on_a_page_has_its_file(finished):
    """Each drawing that a page shows lies beside it, with words for who cannot see it, and a size."""
    paths = {file.path for file in finished.files}
    for page in finished.pages[1:4]:
        folder = page.path.rpartition("/")[0]
        pictures = re.findall(r"<img [^>]*>", page.markdown)

        assert pictures
        for picture in pictures:
            found = re.fullmatch(r'<img src="([^"]+)" alt="([^"]+)" width="\d+" height="\d+"[^>]*>', picture)
            assert found, picture
            assert f"{folder}/{found[1]}" in paths


def test_drawings_never_share_a_file(stool):
    """However stocks are called, each drawing has a name of its own."""
    report = report_on(stool.fitter, Choice({}, {"shelf": "slatted"}))
    names = [drawing.file for drawing in plan_drawings(report, Look(Display(), render_words(stool.plan)))]

    assert len(set(names)) == len(names)


def test_the_data_beside_a_page_is_the_plan(stool, finished):
    """`plan.json` holds what the engine says of the plan, and the page shows its cost."""
    data = json.loads(file_of(finished, "plans/stool/plan.json"))

    assert data == json.loads(json.dumps(plan_data(report_on(stool.fitter), Display())))
    assert data["totals"]["cost"]["text"] in page_of(finished, "plans/stool/index.md").markdown


def test_the_cut_list_opens_in_a_spreadsheet(finished):
    """`cut-list.csv` has a row a part, with sizes as shown and in exact inches."""
    rows = list(csv.DictReader(io.StringIO(file_of(finished, "plans/stool/cut-list.csv"))))

    assert [(row["mark"], row["part"], row["count"]) for row in rows] == [
        ("A", "leg", "4"),
        ("B", "seat", "2"),
    ]
    assert (rows[0]["length"], rows[0]["length_in"]) == ("16 3/4 in", "16 3/4")


@pytest.mark.parametrize(
    "cell", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "=cmd|' /C calc'!A0"]
)
def test_no_cell_is_a_formula(cell):
    """What a spreadsheet would reckon begins with an apostrophe instead."""
    assert inert(cell) == f"'{cell}"
    assert inert("1 1/2 in") == "1 1/2 in"


def test_no_word_of_a_plan_becomes_markup(tmp_path):
    """In a plan whose every word is hostile, no page, drawing or card has an element of the author's."""
    finished = make_pages(read_catalog(write_catalog(tmp_path, evil=hostile_plan())), Choices())

    assert finished.diagnostics == ()
    texts = [page.markdown for page in finished.pages]
    texts += [file.content for file in finished.files if file.path.endswith(".svg")]
    for text in texts:
        elements = Elements()
        elements.feed(text)
        assert "script" not in elements.names
        assert [key for key, _ in elements.attributes if key.startswith("on")] == []
        addresses = [value for key, value in elements.attributes if key in {"src", "href"}]
        assert [address for address in addresses if address == "x" or "javascript" in address] == []
    assert [page.path for page in finished.pages if "{{" in page.markdown] == []
    assert EVIL not in "".join(texts)


def test_no_blank_line_ends_a_block(finished):
    """A piece of HTML has no empty line in it, which for some hosts would end it."""
    for page in finished.pages:
        for block in re.split(r"\n\n", page.markdown):
            assert block.count("<div") == block.count("</div>")
            assert block.count("<section") == block.count("</section>")


def test_a_missing_picture_is_a_fault(tmp_path):
    """A photo that is not beside the plan, or is outside its folder, is told of at its place."""
    photo = BENCH.replace("room: entry\n", "room: entry\nphoto: {file: stool.jpg, alt: A stool}\n")
    climbing = BENCH.replace("tools: saw\n", "tools: saw\npicture: ../shop.yml\npicture alt: no\n")
    climbing = climbing.replace("title: Quay stool", "title: Another stool")
    finished = make_pages(read_catalog(write_catalog(tmp_path, stool=photo, other=climbing)), Choices())

    assert [(one.code, one.spot.path, one.spot.line) for one in finished.faults] == [
        ("missing-file", "plans/other/plan.md", climbing.split("\n").index("picture: ../shop.yml") + 1),
        ("missing-file", "plans/stool/plan.md", 6),
    ]


def test_a_plan_that_fails_at_an_offered_size_is_told_of(tmp_path):
    """What cannot be cut at an offered size is a fault with a place, and no page is made of that plan."""
    long = BENCH.replace("to: 40 in, offer: [30 in]", "to: 140 in, offer: [130 in]")
    finished = make_pages(read_catalog(write_catalog(tmp_path, stool=long)), Choices())

    assert len(finished.faults) == 1
    assert "130 in" in finished.faults[0].message
    assert finished.faults[0].spot.path == "plans/stool/plan.md"
    assert [page.path for page in finished.pages if "plans" in page.path] == ["plans/index.md"]


def test_lengths_are_shown_as_the_site_chooses(tmp_path):
    """A site in millimetres shows no inch on a plan's page but in names of stock and addresses."""
    finished = make_pages(read_catalog(write_catalog(tmp_path)), Choices(display=Display("mm")))
    words = bare_words(page_of(finished, "plans/stool/index.md").markdown)

    assert "610 mm wide × 279 mm deep × 444 mm high" in words or "445 mm high" in words
    assert "Cut four legs to 425 mm" in words
    assert "width 762 mm" in words
    assert "width 762 mm" in page_of(finished, "plans/stool/width-30in/index.md").meta["title"]
