"""What is printed at true scale, against the unit of PDF."""

from __future__ import annotations

import io
from fractions import Fraction
from itertools import pairwise

import mpmath
import pdfplumber
import pypdf
import pytest

from scantling.plan import easy_line
from tests.outside.sources import checked
from tests.paper.test_typeset import printed
from tests.support.workshop import bench_data

PDF = "ISO 32000-1:2008, Portable document format"
UNIT = "8.3.2.3: a unit of user space is 1/72 in; 7.7.3.3: UserUnit is 1 where it is not set"
INCH = "NIST SP 811:2008, Guide for the Use of the SI"
MPMATH = f"mpmath {mpmath.__version__.split('.')[0]}"
PER_INCH = 72
"""Units an inch, from the standard."""
APART, WIDE, ANGLE = 1.25, 4.75, 33


@pytest.fixture(scope="module")
def pdf() -> bytes:
    """Return the bench with a row of holes and a mitre that no saw has a stop for."""
    data = bench_data()
    hole = {"kind": "shelf pin holes", "where": "inside face", "count": "12", "width": "1/4 in"}
    data["parts"]["rail"]["work"] = [{**hole, "from end": "3 in", "apart": f"{APART} in"}]
    data["parts"]["rail"]["ends"] = f"mitre {ANGLE} deg"
    return printed(data)


@pytest.fixture(scope="module")
def drawn(pdf):
    """Return the lines and curves of the pages at true scale."""
    with pdfplumber.open(io.BytesIO(pdf)) as opened:
        start = next(i for i, page in enumerate(opened.pages) if "Full-size" in page.extract_text())
        shown = opened.pages[start:]
        return [line for page in shown for line in page.lines], [c for page in shown for c in page.curves]


@checked(quantity="full-size", document=PDF, place=UNIT, kind="standard")
def test_no_page_has_a_unit_of_its_own(pdf):
    """Pages leave UserUnit alone, and Letter is 8 1/2 by 11 of 72 units."""
    for page in pypdf.PdfReader(io.BytesIO(pdf)).pages:
        assert "/UserUnit" not in page
        assert [float(side) for side in page.mediabox] == [0, 0, 8.5 * PER_INCH, 11 * PER_INCH]


@checked(quantity="full-size", document=PDF, place=UNIT, kind="standard")
@checked(quantity="full-size", document=INCH, place="appendix B.8: 1 in is 25.4 mm exactly", kind="standard")
def test_the_ruler_beside_the_templates(drawn):
    """One line of 4 in, 72 units each, and one of 100 mm."""
    lines, _ = drawn
    level = {round(line["width"], 2) for line in lines if line["height"] < 0.01}

    assert 4 * PER_INCH in level
    assert round(PER_INCH / 25.4 * 100, 2) in level


@checked(quantity="full-size", document=PDF, place=UNIT, kind="standard")
def test_holes_stand_as_far_apart_on_paper(drawn):
    """Between the middles of neighbouring holes lie 1 1/4 in of 72 units; each is 1/4 in across."""
    _, curves = drawn
    holes = [curve for curve in curves if curve["width"] == pytest.approx(PER_INCH / 4, abs=0.05)]
    middles = sorted((hole["top"] + hole["bottom"]) / 2 for hole in holes)

    assert len(middles) > 2
    for before, after in pairwise(middles):
        assert after - before == pytest.approx(APART * PER_INCH, abs=0.02)


@checked(quantity="full-size", document=MPMATH, place="tan", kind="library")
def test_a_mitre_leans_on_paper_as_its_tangent_says(drawn):
    """Over the part's width the cut runs tan 33 degrees as far along."""
    lines, _ = drawn
    run = float(WIDE * mpmath.tan(mpmath.radians(ANGLE))) * PER_INCH
    sizes = [(line["width"], line["height"]) for line in lines]

    assert any(size == pytest.approx((WIDE * PER_INCH, run), abs=0.02) for size in sizes)


@checked(quantity="full-size", document=MPMATH, place="cos", kind="library")
def test_a_curve_is_half_a_wave():
    """All of its depth is gone at the end, none where it meets the edge, between them as the cosine falls."""
    for step, (off, gone) in enumerate(easy_line(Fraction(15), Fraction(4), 24)):
        assert off == Fraction(15 * step, 24)
        assert float(gone) == pytest.approx(float(2 * (1 + mpmath.cos(mpmath.pi * step / 24))), abs=1e-11)
