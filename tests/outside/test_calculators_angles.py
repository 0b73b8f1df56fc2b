"""Calculators about angles, against tables, high-precision arithmetic and geometry in coordinates."""

from __future__ import annotations

from fractions import Fraction

import mpmath
import numpy as np
import pytest

from tests.outside.sources import checked
from tests.support.calculating import ask, exact, number

NUMPY = f"numpy {np.__version__.split('.')[0]}"
MPMATH = f"mpmath {mpmath.__version__.split('.')[0]}"

BRACES = [
    ("36", "30", "3.5", 44.0888771740852, 35.5222650104452, 46.7306109525651),
    ("24", "48", "1.5", 65.0366231431367, 61.8332745027073, 53.6446642267430),
    ("28.5", "70", "2.5", 69.7422184506973, 65.9510920737467, 75.5380698720850),
]
"""Opening, brace, angle on rails, angle on posts, length: by bisecting on the extent of a turned rectangle
with 50 digits, and again by the closed form."""


def fitted(wide, high, width, on_rails):
    """Return angle and length of a brace, from turning a parallelogram until its corners meet the opening."""
    wide, high, width = (mpmath.mpf(side) for side in (wide, high, width))

    def gap(angle):
        foot = width / (mpmath.sin(angle) if on_rails else mpmath.cos(angle))
        if on_rails:
            return high / mpmath.tan(angle) + foot - wide
        return wide * mpmath.tan(angle) + foot - high

    # the end further along the rail (or up the post) must come out just at the far corner
    low, top = (mpmath.atan(high / wide), mpmath.pi / 2 - mpmath.mpf("1e-9"))
    if not on_rails:
        low, top = mpmath.mpf("1e-9"), mpmath.atan(high / wide)
    angle = mpmath.findroot(gap, (low, top), solver="anderson", tol=1e-25, verify=False)
    along = (mpmath.cos(angle), mpmath.sin(angle))
    return float(mpmath.degrees(angle)), float(wide * along[0] + high * along[1])


@checked(
    quantity="calc-brace-angle",
    document="mpmath",
    place=f"{MPMATH}: a turned rectangle, bisected",
    kind="library",
)
@checked(
    quantity="calc-brace-length",
    document="mpmath",
    place=f"{MPMATH}: a turned rectangle, bisected",
    kind="library",
)
@pytest.mark.parametrize(("wide", "high", "width", "rails", "posts", "length"), BRACES)
def test_braces_by_bisection(wide, high, width, rails, posts, length):
    """Angle and length agree to nine places with values found by another method."""
    asked = {"opening": wide, "height": high, "width": width}

    assert number("brace", "angle", seat="rails", **asked) == pytest.approx(rails, abs=1e-9)
    assert number("brace", "angle", seat="posts", **asked) == pytest.approx(posts, abs=1e-9)
    assert number("brace", "overall", seat="rails", **asked) == pytest.approx(length, abs=1e-9)
    assert number("brace", "overall", seat="posts", **asked) == pytest.approx(length, abs=1e-9)


@checked(quantity="calc-brace-angle", document="mpmath", place=f"{MPMATH}: findroot", kind="library")
@checked(quantity="calc-brace-length", document="mpmath", place=f"{MPMATH}: findroot", kind="library")
@pytest.mark.parametrize(
    ("wide", "high", "width"),
    [("36", "30", "3.5"), ("60", "20", "5.5"), ("15", "72", "0.75"), ("40", "40", "1.5")],
)
@pytest.mark.parametrize("seat", ["rails", "posts"])
def test_braces_by_a_root_finder(wide, high, width, seat):
    """A general root finder turns the brace to the same angle and length."""
    angle, length = fitted(wide, high, width, seat == "rails")

    answer = ask("brace", opening=wide, height=high, width=width, seat=seat)

    assert float(exact(answer, "angle")) == pytest.approx(angle, abs=1e-8)
    assert float(exact(answer, "overall")) == pytest.approx(length, abs=1e-8)


@checked(
    quantity="calc-half-lap",
    document="numpy",
    place=f"{NUMPY}: lines of two braces, linalg.solve",
    kind="library",
)
@pytest.mark.parametrize(("wide", "high", "width"), [(36, 30, 3.5), (24, 48, 1.5), (50, 20, 2.5)])
@pytest.mark.parametrize("seat", ["rails", "posts", "corners"])
def test_crossing_braces_in_coordinates(wide, high, width, seat):
    """Edges of the brace and of its mirror image cross at the notch's ends, half way along the brace."""
    answer = ask("brace", opening=str(wide), height=str(high), width=str(width), seat=seat, braces="two")
    angle = np.radians(float(exact(answer, "angle")))
    along = np.array([np.cos(angle), np.sin(angle)])
    square = np.array([-along[1], along[0]])
    middle = np.array([wide, high]) / 2
    mirror = np.array([-1, 1])
    edge = middle + square * width / 2
    crossings = []
    for side in (-1, 1):
        other = middle + square * mirror * side * width / 2
        run = np.linalg.solve(np.column_stack([along, -along * mirror]), other - edge)
        crossings.append(run[0])

    assert float(exact(answer, "notch")) == pytest.approx(abs(crossings[0] - crossings[1]), abs=1e-9)
    reach = middle @ along
    assert float(exact(answer, "cross")) == pytest.approx(reach, abs=1e-9)


@checked(
    quantity="calc-ring",
    document="E. W. Weisstein, Octagon",
    place="equations 1 and 2: r = (1 + √2) s / 2, R = √(4 + 2√2) s / 2",
    kind="handbook",
)
def test_an_octagon_as_printed():
    """Eight sides measure across flats and corners what the encyclopedia says."""
    answer = ask("segments", sides="8", measured="one side", size="10 in", stock="1 in")

    assert float(exact(answer, "flats")) == pytest.approx(10 * (1 + 2**0.5), abs=1e-9)
    assert float(exact(answer, "corners")) == pytest.approx(10 * (4 + 2 * 2**0.5) ** 0.5, abs=1e-9)


@checked(
    quantity="calc-mitre", document="numpy", place=f"{NUMPY}: corners of a polygon as vectors", kind="library"
)
@checked(
    quantity="calc-ring", document="numpy", place=f"{NUMPY}: corners of a polygon as vectors", kind="library"
)
@pytest.mark.parametrize(
    ("sides", "size", "stock"), [(3, 12, 1), (4, 20, 2.5), (6, 18, 1.5), (7, 30, 2), (24, 40, 3)]
)
def test_rings_in_coordinates(sides, size, stock):
    """Side, short side and mitre are what the corners of two polygons give."""
    turns = 2 * np.pi * np.arange(sides) / sides
    outer = size / 2 * np.column_stack([np.cos(turns), np.sin(turns)])
    flat = np.linalg.norm((outer[0] + outer[1]) / 2)
    inner = outer * (flat - stock) / flat
    mitre = outer[0] - inner[0]
    side = outer[1] - outer[0]
    from_side = np.degrees(np.arccos(abs(mitre @ side) / np.linalg.norm(mitre) / np.linalg.norm(side)))

    answer = ask(
        "segments", sides=str(sides), measured="across the corners", size=str(size), stock=str(stock)
    )

    assert float(exact(answer, "mitre")) == pytest.approx(90 - from_side, abs=1e-9)
    assert float(exact(answer, "side")) == pytest.approx(np.linalg.norm(side), abs=1e-9)
    assert float(exact(answer, "inside")) == pytest.approx(np.linalg.norm(inner[1] - inner[0]), abs=1e-9)


@checked(
    quantity="calc-mitre",
    document="The usual table of mitres for frames",
    place="3 to 12 sides: 60, 45, 36, 30, 25.7, 22.5, 20, 18, 16.4 and 15 degrees",
    kind="common practice",
)
@pytest.mark.parametrize(
    ("sides", "mitre"),
    [(3, 60), (4, 45), (5, 36), (6, 30), (7, 25.7), (8, 22.5), (9, 20), (10, 18), (11, 16.4), (12, 15)],
)
def test_mitres_as_in_the_usual_table(sides, mitre):
    """To a tenth of a degree the mitre is the table's."""
    assert number("segments", "mitre", sides=str(sides)) == pytest.approx(mitre, abs=0.05)


@checked(
    quantity="calc-compound",
    document="WOODWEB Knowledge Base, Finding compound angles for crown moulding",
    place="square corner: 31.6 and 33.9 degrees at a slope of 38, 35.3 and 30.0 at 45",
    kind="handbook",
)
@pytest.mark.parametrize(("slope", "turn", "tilt"), [("38", 31.6, 33.9), ("45", 35.3, 30.0)])
def test_compound_mitres_as_printed(slope, turn, tilt):
    """The two settings for a square corner are those that the trade prints."""
    answer = ask("sloped-sides", sides="4", slope=slope)

    assert float(exact(answer, "turn")) == pytest.approx(turn, abs=0.05)
    assert float(exact(answer, "tilt")) == pytest.approx(tilt, abs=0.05)


@checked(
    quantity="calc-compound",
    document="numpy",
    place=f"{NUMPY}: planes of two sides, cross products",
    kind="library",
)
@pytest.mark.parametrize(("sides", "slope"), [(4, 15), (3, 30), (6, 40), (8, 5), (12, 75), (4, 0)])
def test_compound_mitres_in_space(sides, slope):
    """Two sides of the box meet in the plane between them; turn and tilt follow from its normal."""
    lean, half = np.radians(slope), np.pi / sides
    up = np.array([np.sin(lean), 0, np.cos(lean)])
    face = np.array([np.cos(lean), 0, -np.sin(lean)])
    along = np.array([0.0, 1.0, 0.0])
    # the plane of the joint holds the upright axis and the line from the middle to the corner
    normal = np.array([-np.sin(half), np.cos(half), 0])
    tilt = np.degrees(np.arcsin(abs(normal @ face)))
    cut = np.cross(normal, face)
    turn = np.degrees(np.arctan2(abs(cut @ along), abs(cut @ up)))

    answer = ask("sloped-sides", sides=str(sides), slope=str(slope), long="200 in", board="4")

    assert float(exact(answer, "tilt")) == pytest.approx(tilt, abs=1e-9)
    assert float(exact(answer, "turn")) == pytest.approx(turn, abs=1e-9)


@checked(
    quantity="calc-taper",
    document="Turning and Boring Tapers, Derry-Collard Co.",
    place="equivalent tapers: 5, 10, 20 and 30 degrees are .08732, .17498, .35266 and .53590 per inch",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("included", "per_inch"), [(5, "0.08732"), (10, "0.17498"), (20, "0.35266"), (30, "0.53590")]
)
def test_tapers_as_in_the_table(included, per_inch):
    """A leg that tapers on two faces has half the table's included angle on each."""
    top = Fraction(per_inch) * 10 + 1

    found = number(
        "taper", "angle", length="10", straight="0", top=str(float(top)), foot="1", faces="two opposite faces"
    )

    assert 2 * found == pytest.approx(included, abs=2e-3)


@checked(quantity="calc-taper", document="mpmath", place=f"{MPMATH}: atan", kind="library")
@pytest.mark.parametrize(
    ("length", "straight", "top", "foot", "jig"),
    [("28.25", "5", "1.75", "1", "24"), ("16", "4", "2", "1.75", "12"), ("30", "0", "3", "0.5", "36")],
)
def test_tapers_by_the_arc_tangent(length, straight, top, foot, jig):
    """Angle and offset are what a high-precision library makes of the same triangle."""
    rise = mpmath.mpf(top) - mpmath.mpf(foot)
    run = mpmath.mpf(length) - mpmath.mpf(straight)

    answer = ask("taper", length=length, straight=straight, top=top, foot=foot, jig=jig)

    assert float(exact(answer, "angle")) == pytest.approx(
        float(mpmath.degrees(mpmath.atan(rise / run))), abs=1e-10
    )
    assert float(exact(answer, "offset")) == pytest.approx(float(mpmath.mpf(jig) * rise / run), rel=1e-12)
    assert float(exact(answer, "cut")) == pytest.approx(float(mpmath.hypot(rise, run)), abs=1e-10)
