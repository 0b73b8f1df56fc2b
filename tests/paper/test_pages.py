"""How the pages of printed plans are filled: none nearly empty, nothing beyond the margins."""

from __future__ import annotations

import io
from functools import cache
from itertools import product
from pathlib import Path

import pypdfium2 as pdfium
import pytest
import typst
from PIL import ImageChops

from scantling.drawing import size_words
from scantling.measure import Display
from scantling.pages import Look, render_words
from scantling.paper import PAPERS, Sheets, lay_out, typeset
from scantling.report import report_on
from scantling.source import read_catalog

SLUGS = (
    "drawer-cabinet",
    "oak-side-table",
    "picket-headboard",
    "plant-stand",
    "sliding-door-console",
    "splayed-stool",
)
CASES = list(product(SLUGS, PAPERS))
FOOT = 0.93
"""Where the line at the foot of a page begins, as a share of its height."""
MM = 72 / 25.4
ROOT = Path(__file__).parents[2]


@cache
def _plan(slug: str):
    """Return a plan's report and the look of its page."""
    found = read_catalog(ROOT / "plans").plan(slug)
    return report_on(found.fitter), Look(Display(), render_words(found.plan))


@cache
def _sheets(slug: str, paper: str) -> Sheets:
    report, look = _plan(slug)
    return lay_out(report, look, paper=paper, size_name="", link="https://plans.example.org/", photos={})


@cache
def _inked(slug: str, paper: str) -> list[tuple[float, float, float, float]]:
    """Return the box round what is printed on each page above its foot, in shares of the page."""
    boxes = []
    for page in pdfium.PdfDocument(typeset(_sheets(slug, paper))):
        picture = page.render(scale=0.5).to_pil().convert("L")
        wide, high = picture.size
        above = picture.crop((0, 0, wide, round(FOOT * high)))
        left, top, right, bottom = ImageChops.invert(above).point(lambda ink: 255 * (ink > 40)).getbbox()
        boxes.append((left / wide, top / high, right / wide, bottom / high))
    return boxes


@pytest.mark.parametrize(("slug", "paper"), CASES)
def test_no_page_holds_only_a_few_lines(slug: str, paper: str) -> None:
    """Every page is filled by a fifth at least."""
    assert min(bottom for *_, bottom in _inked(slug, paper)) > 0.2


@pytest.mark.parametrize(("slug", "paper"), CASES)
def test_nothing_is_printed_beyond_the_margins(slug: str, paper: str) -> None:
    """A printer that leaves a rim of 12 mm loses nothing, templates included."""
    wide = {"letter": 612, "a4": 595.28}[paper]
    rim = 12 * MM / wide

    assert min(left for left, *_ in _inked(slug, paper)) > rim
    assert max(right for _, _, right, _ in _inked(slug, paper)) < 1 - rim


@pytest.mark.parametrize("slug", ["potting-bench", "sliding-door-console"])
def test_the_typesetter_settles(slug: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where figures go depends on where their section begins; that comes to rest, and every face is known."""
    told: list[object] = []
    made = typst.Compiler

    class Telling:
        def __init__(self, *given: object, **named: object) -> None:
            self.setter = made(*given, **named)
            self.query = self.setter.query

        def compile(self, **named: object) -> bytes:
            pdf, warnings = self.setter.compile_with_warnings(**named)
            told.extend(map(str, warnings))
            return pdf

    monkeypatch.setattr(typst, "Compiler", Telling)

    assert typeset(_sheets(slug, "letter")).startswith(b"%PDF")
    assert told == []


@pytest.mark.parametrize("slug", ["plant-stand", "drawer-cabinet"])
def test_the_piece_taken_apart_has_its_key_beside_it(slug: str) -> None:
    """Letter, count, name and size of every part stand on the page that shows it taken apart."""
    report, look = _plan(slug)
    pages = pdfium.PdfDocument(io.BytesIO(typeset(_sheets(slug, "letter"))))
    words = [" ".join(page.get_textpage().get_text_range().split()) for page in pages]
    (page,) = [text.replace("\u00a0", " ") for text in words if "Taken apart" in text]

    for part in report.fitted.parts:
        size = size_words(part, look.display).replace("\u00a0", " ")
        assert f"{part.letter} {part.count} × {part.id} {size}" in page


def test_the_cover_says_what_was_chosen() -> None:
    """A plan with options says each question and its answer, so that nobody looks for parts of the other."""
    pages = pdfium.PdfDocument(typeset(_sheets("oak-side-table", "letter")))
    cover = " ".join(pages[0].get_textpage().get_text_range().split()).replace("\u00a0", " ")

    assert "Tapered legs or straight ones? tapered" in cover
