"""The printed plan says what the page says, is sound, accessible, and the same every time."""

from __future__ import annotations

import io
import json
import re

import pdfplumber
import pikepdf
import pypdf
import pytest
from PIL import Image

from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.paper import PAPERS, lay_out, printable, typeset
from scantling.plan import Fitter, read_plan
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from scantling.source import read_catalog
from scantling.words import language_of, speaking
from tests.support.workshop import bench_data, shop_data

LINK = "https://plans.example.org/plans/bench/?width=36in"


def printed(data=None, *, paper="letter", link=LINK, photos=None) -> bytes:
    """Return the PDF of a plan."""
    plan = read_plan(data or bench_data(), "bench")
    report = report_on(Fitter(plan, read_shop(shop_data())))
    look = Look(Display(), render_words(plan))
    return typeset(lay_out(report, look, paper=paper, size_name="", link=link, photos=photos or {}))


@pytest.fixture(scope="module")
def bench() -> bytes:
    """Return the bench on Letter paper."""
    return printed()


def words_of(pdf: bytes) -> str:
    """Return all text, every run of white space one space."""
    with pdfplumber.open(io.BytesIO(pdf)) as opened:
        return " ".join(" ".join(page.extract_text() for page in opened.pages).split())


def test_every_part_is_printed_with_the_sizes_of_plan_json(bench):
    """Letters, names, counts and sizes of all parts stand in the PDF as in plan.json."""
    report = report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))
    words = words_of(bench)

    for part in plan_data(report, Display())["cut_list"]:
        row = [str(part["count"]), *(part[side]["text"] for side in ("length", "width", "thick"))]
        assert " ".join(row) in words, part["part"]
        assert part["part"] in words
    for line in plan_data(report, Display())["materials"]:
        assert line["item"] in words
        assert line["cost"]["text"] in words


@pytest.mark.parametrize(("paper", "size"), [("letter", (612, 792)), ("a4", (595.28, 841.89))])
def test_it_is_made_for_either_paper(paper, size):
    """Letter is 8 1/2 by 11 in, A4 is 210 by 297 mm."""
    box = pypdf.PdfReader(io.BytesIO(printed(paper=paper))).pages[0].mediabox

    assert (float(box.width), float(box.height)) == pytest.approx(size, abs=0.01)
    assert paper in PAPERS


def test_the_check_ruler_is_true(bench):
    """One inch is 72 units of PDF, 25 mm are 70.87."""
    with pdfplumber.open(io.BytesIO(bench)) as opened:
        under = [
            line for page in opened.pages for line in page.lines if abs(line["top"] - line["bottom"]) < 0.01
        ]
    widths = {round(line["x1"] - line["x0"], 2) for line in under}

    assert 72.0 in widths
    assert 70.87 in widths


def test_it_is_tagged_titled_and_bookmarked(bench):
    """A reader that speaks finds a title, a language, tags, alternative words and bookmarks."""
    reader = pypdf.PdfReader(io.BytesIO(bench))
    root = reader.trailer["/Root"]

    assert reader.metadata.title == "Bench"
    assert root["/Lang"] == "en"
    assert root["/MarkInfo"]["/Marked"]
    assert b"pdfuaid:part" in bench
    assert [mark["/Title"] for mark in reader.outline if isinstance(mark, dict)] or reader.outline
    titles = json.dumps(reader.outline, default=str)
    assert all(section in titles for section in ("Materials list", "Cut list", "Steps"))


def test_every_font_is_embedded(bench):
    """No letter depends on what the printer has."""
    reader = pypdf.PdfReader(io.BytesIO(bench))
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            descendant = font.get_object()["/DescendantFonts"][0].get_object()
            descriptor = descendant["/FontDescriptor"].get_object()
            assert "/FontFile2" in descriptor or "/FontFile3" in descriptor


def test_no_letter_is_smaller_than_eight_points(bench):
    """What is printed is read at arm's length."""
    with pdfplumber.open(io.BytesIO(bench)) as opened:
        sizes = [letter["size"] for page in opened.pages for letter in page.chars if is_level(letter)]

    assert min(sizes) >= 8


def is_level(letter) -> bool:
    """Return whether a letter is not turned; a turned one is measured along the page."""
    return letter["matrix"][1] == letter["matrix"][2] == 0


def test_an_independent_checker_finds_it_sound(bench):
    """qpdf, by way of pikepdf, finds neither errors nor warnings."""
    with pikepdf.open(io.BytesIO(bench)) as opened:
        assert opened.check_pdf_syntax() == []


def test_the_same_plan_gives_the_same_bytes(bench):
    """Nothing of the day or the machine is in it."""
    assert printed() == bench


def test_every_page_says_what_it_belongs_to():
    """Plan, size, revision, day of the prices and page number stand at the foot of each page."""
    with pdfplumber.open(io.BytesIO(printed(bench_data(revised="2026-11-09")))) as opened:
        count = len(opened.pages)
        for number, page in enumerate(opened.pages, 1):
            foot = page.extract_text().splitlines()[-1]
            size = "48 in wide × 14 in deep × 17 1/2 in high"
            assert (
                foot == f"Bench · {size} · revised 2026-11-09 · prices of 2026-11-02 page {number} of {count}"
            )


def test_it_leads_back_to_the_page():
    """The address is printed, can be clicked, and is in the code that a phone reads."""
    pdf = printed()
    reader = pypdf.PdfReader(io.BytesIO(pdf))
    links = [note.get_object()["/A"]["/URI"] for note in reader.pages[0].get("/Annots", [])]

    assert LINK in links
    assert re.sub(r"\s", "", LINK) in re.sub(r"\s", "", words_of(pdf))
    assert "This plan on the web" not in words_of(printed(link=""))


def huge_plan(count: int) -> dict:
    """Return a plan of many parts."""
    parts = {
        f"part {letter_words(number)}": {"from": "2x4", "length": f"{10 + number % 12} in"}
        for number in range(count)
    }
    return {"title": "Many parts", "parts": parts}


def letter_words(number: int) -> str:
    """Return a number in letters, since a name holds no digits at its beginning."""
    return "x" + "".join(chr(ord("a") + int(digit)) for digit in str(number))


def test_a_plan_of_three_hundred_parts_is_printed_whole():
    """The table goes on over many pages, its head repeated, nothing lost."""
    words = words_of(printed(huge_plan(300)))

    assert all(f"part {letter_words(number)}" in words for number in range(300))
    assert words.count("Comes from") > 5


@pytest.mark.parametrize(
    "title",
    [
        "W" * 300,
        "Bank für Größe ½ × 漢字 🪑 עברית",
        "#set page(width: 1pt) $x$ *b* <script> \\ [a](b)",
        "a\u200bb\u0301c",
    ],
)
def test_any_title_is_printed(title):
    """Long words, other scripts and signs that a typesetter knows neither break nor run off the page."""
    with pdfplumber.open(io.BytesIO(printed(bench_data(title=title)))) as opened:
        letters = [letter for page in opened.pages for letter in page.chars]
        width = float(opened.pages[0].width)

    assert max(letter["x1"] for letter in letters) <= width


def photo(size=(4000, 3000)) -> bytes:
    """Return a JPEG with a place in its camera data."""
    out = io.BytesIO()
    exif = Image.Exif()
    exif[0x8825] = {1: "N", 2: (1.0, 2.0, 3.0)}
    Image.new("RGB", size, "#996633").save(out, "JPEG", exif=exif)
    return out.getvalue()


def test_a_photo_is_made_small_and_loses_its_place():
    """A large photo is scaled for print, without what the camera wrote into it."""
    small = printable(photo())

    with Image.open(io.BytesIO(small)) as picture:
        assert max(picture.size) == 1400
        assert not picture.getexif()
    assert len(small) < 200_000


@pytest.mark.parametrize("content", [b"", b"not a picture", b"\x89PNG\r\n\x1a\n broken", photo()[:500]])
def test_what_is_no_picture_is_left_out(content):
    """A file that is no picture is not printed, and nothing breaks."""
    assert printable(content) is None


def test_a_photo_stands_at_the_head():
    """The author's photo is printed in place of the drawing, with the line below it."""
    data = bench_data(photo={"file": "bench.jpg", "alt": "The bench by the wall", "caption": "By the wall"})
    pdf = printed(data, photos={"bench.jpg": photo((800, 600))})

    head = pypdf.PdfReader(io.BytesIO(pdf)).pages[0]
    assert len(head.images) == 1
    assert "By the wall" in head.extract_text()


def test_a_plan_stays_small(bench):
    """A printed plan fits into any mail."""
    assert len(bench) < 1_500_000


def test_a_step_says_the_sizes_of_what_it_adds(root):
    """Beside the picture of a step stand the sizes of the parts that it uses up."""
    found = read_catalog(root / "plans").plan("splayed-stool")
    report = report_on(found.fitter)
    look = Look(Display(), render_words(found.plan))
    pdf = typeset(lay_out(report, look, paper="letter", size_name="", link="", photos={}))
    steps = words_of(pdf).partition(" Steps ")[2]

    parts = {part.id: part for part in report.fitted.parts}
    used = {use.name for step in report.fitted.steps for use in step.uses}
    assert used >= {"leg", "apron", "low stretcher"}
    for name in used:
        size = f"{Display().length(parts[name].length)} × {Display().length(parts[name].width)}"
        assert size in steps, name


def test_a_caution_is_headed_in_the_language_that_is_spoken():
    """In German nothing on paper says *Caution*; what the author wrote stays as it is."""
    data = bench_data(caution=["Mind the blade."])
    with speaking(language_of("de")):
        words = words_of(printed(data))

    assert "Vorsicht. Mind the blade." in words
    assert "Caution" not in words
