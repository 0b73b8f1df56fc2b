"""Templates in the PDF are as large as the part."""

from __future__ import annotations

import io
from itertools import pairwise

import pdfplumber
import pytest

from scantling.measure import Display
from scantling.plan import Fitter, read_plan
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from tests.drawing.test_template import PINS, TAPER
from tests.paper.test_typeset import printed, words_of
from tests.support.workshop import bench_data, shop_data


@pytest.fixture(scope="module")
def data() -> dict:
    """Return the bench with tapered legs and rails with holes."""
    made = bench_data()
    made["parts"]["leg"]["work"] = [TAPER]
    made["parts"]["rail"]["work"] = [PINS]
    made["parts"]["rail"]["ends"] = "mitre 30 deg"
    return made


@pytest.fixture(scope="module", params=["letter", "a4"])
def pages(request, data):
    """Return lines and curves of the pages at true scale."""
    with pdfplumber.open(io.BytesIO(printed(data, paper=request.param))) as opened:
        texts = [page.extract_text() for page in opened.pages]
        start = next(i for i, text in enumerate(texts) if "Full-size templates" in text)
        shown = opened.pages[start:]
        yield [line for page in shown for line in page.lines], [c for page in shown for c in page.curves]


def exactly(data, part: str, side: str) -> float:
    """Return a size of a part from plan.json, in inches."""
    report = report_on(Fitter(read_plan(data, "bench"), read_shop(shop_data())))
    found = next(row for row in plan_data(report, Display())["cut_list"] if row["part"] == part)
    whole = found[side]["in"].split()
    return sum(int(a) / int(b or 1) for a, _, b in (piece.partition("/") for piece in whole))


def test_a_mitre_is_as_wide_as_the_part(pages, data):
    """The bold line runs over the width, at 72 units an inch."""
    lines, _ = pages
    wide = exactly(data, "rail", "width") * 72

    assert any(
        abs(line["x1"] - line["x0"] - wide) < 0.1 and abs(line["height"] - wide * 0.57735) < 0.1
        for line in lines
    )


def test_holes_keep_their_distance(pages):
    """The middles of round holes of 1/4 in stand 1 1/4 in apart."""
    _, curves = pages
    holes = sorted((curve["top"] + curve["bottom"]) / 2 for curve in curves if abs(curve["width"] - 18) < 0.1)
    steps = [after - before for before, after in pairwise(holes)]

    assert len(holes) >= 4
    assert steps == pytest.approx([90] * len(steps), abs=0.05)


def test_a_taper_is_as_deep_at_the_foot(pages, data):
    """The foot is narrower than the leg by the taper's depth."""
    lines, _ = pages
    foot = (exactly(data, "leg", "width") - 0.75) * 72

    assert any(abs(line["x1"] - line["x0"] - foot) < 0.05 and line["height"] < 0.01 for line in lines)


def test_the_words_say_how_to_lay_it_on(data):
    """Title, tile names and a word about the scale are printed."""
    words = words_of(printed(data))

    for told in ("Full-size templates", "100 %", "A1", "A2", "taper", "long point"):
        assert told in words


def test_a_plan_without_templates_has_no_page_for_them():
    """Nothing is printed where nothing is needed."""
    assert "Full-size" not in words_of(printed())


def test_long_lines_tell_whether_the_sheet_was_printed_true(pages):
    """Above the templates stand lines of 4 in and of 100 mm: 288 and 283.46 units of PDF."""
    lines, _ = pages
    level = {round(line["x1"] - line["x0"], 2) for line in lines if abs(line["top"] - line["bottom"]) < 0.01}

    assert {288.0, 283.46} <= level
