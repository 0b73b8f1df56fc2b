"""Lengths, areas, weights, board feet and angles against standards and general-purpose libraries."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

import mpmath
import numpy as np
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import (
    Angle,
    Area,
    Length,
    Weight,
    arc_sine,
    arc_tangent,
    board_feet,
    board_feet_hardwood,
    board_feet_nominal,
    cosine,
    diagonal,
    linear_feet,
    read_area,
    read_length,
    read_weight,
    root,
    round_length,
    sine,
    surface_measure,
    tangent,
    write_length,
)
from tests.outside.sources import checked

UNITS = pint.UnitRegistry(non_int_type=Fraction)
PINT = "pint, unit conversion with exact fractions"
PINT_AT = f"version {pint.__version__}, its own definitions of inch, foot, pound and degree"
MPMATH = "mpmath, arithmetic to any precision"
MPMATH_AT = f"version {mpmath.__version__}, 50 digits"
LENGTHS = st.fractions(0, 500, max_denominator=1000)


def in_pint(length: Length):
    """Return a length as pint has it."""
    return UNITS.Quantity(length.inches, "inch")


@checked(
    quantity="inch-to-millimetre", document="16 CFR 500.19", place="1 in = 2.54 cm exactly", kind="standard"
)
@checked(
    quantity="inch-to-millimetre", document="NIST SP 811", place="Appendix B.8, inch (in)", kind="from memory"
)
def test_an_inch_is_25_4_millimetres_exactly():
    """Both ways, without any rounding."""
    assert Length.of_inches(1).mm == Fraction(254, 10)
    assert read_length("25.4 mm") == read_length("2.54 cm") == read_length("0.0254 m") == Length(1)


@checked(quantity="foot-to-inch", document="16 CFR 500.19", place="1 ft = 30.48 cm exactly", kind="standard")
def test_a_foot_is_30_48_centimetres_exactly():
    """A foot is twelve inches and 30.48 cm."""
    assert read_length("1 ft") == read_length("12 in") == read_length("30.48 cm")
    assert read_length("7' 6 1/2\"") == Length(Fraction(181, 2))


@checked(quantity="inch-to-millimetre", document=PINT, place=PINT_AT, kind="library")
@checked(quantity="linear-feet", document=PINT, place=PINT_AT, kind="library")
@given(LENGTHS, st.integers(1, 40))
def test_lengths_convert_as_pint_converts_them(inches, count):
    """Inches, millimetres and feet of any length are what another library makes of them, exactly."""
    length = Length(inches)

    assert length.mm == in_pint(length).to("millimeter").magnitude
    assert length.feet == in_pint(length).to("foot").magnitude
    assert linear_feet(length, count) == (in_pint(length) * count).to("foot").magnitude


@checked(quantity="area", document=PINT, place=PINT_AT, kind="library")
@given(LENGTHS, LENGTHS)
def test_areas_convert_as_pint_converts_them(one, other):
    """Square inches, square feet and square metres agree exactly."""
    area = Length(one) * Length(other)
    theirs = in_pint(Length(one)) * in_pint(Length(other))

    assert area.square_feet == theirs.to("foot ** 2").magnitude
    assert area.square_metres == theirs.to("meter ** 2").magnitude
    assert Area.of_square_metres(area.square_metres) == area


@checked(
    quantity="area", document="NIST Handbook 44", place="Appendix C: 1 sq ft = 144 sq in", kind="from memory"
)
def test_a_square_foot_has_144_square_inches():
    """The face of a square foot, written either way."""
    assert read_area("1 sq ft") == read_area("144 sq in") == Length(12) * Length(12)


@checked(quantity="weight-units", document="NIST SP 811", place="Appendix B, pound", kind="from memory")
def test_a_pound_is_0_45359237_kilograms_exactly():
    """The avoirdupois pound, exact."""
    assert Weight(1).kilograms == Fraction("0.45359237")


@checked(quantity="weight-units", document=PINT, place=PINT_AT, kind="library")
@given(st.fractions(0, 1000, max_denominator=100))
def test_weights_convert_as_pint_converts_them(pounds):
    """Pounds, ounces, kilograms and grams agree exactly."""
    theirs = UNITS.Quantity(pounds, "pound")

    assert Weight(pounds).kilograms == theirs.to("kilogram").magnitude
    assert read_weight("12 oz").pounds == UNITS.Quantity(Fraction(12), "ounce").to("pound").magnitude
    assert read_weight("250 g").pounds == UNITS.Quantity(Fraction(250), "gram").to("pound").magnitude


WRITTEN = {
    '2 1/2"': "2.5 inch",
    "2-1/2 in": "2.5 inch",
    "8'": "8 foot",
    "7 1/2 ft": "7.5 foot",
    "38 mm": "38 millimeter",
    "1.2m": "1.2 meter",
    "3.8 cm": "3.8 centimeter",
    "23/32 in": "0.71875 inch",
    "17 ⅜ in": "17.375 inch",
}


@checked(quantity="read-length", document=PINT, place=PINT_AT, kind="library")
@pytest.mark.parametrize("written", WRITTEN)
def test_written_lengths_mean_what_pint_reads(written):
    """Fractions and units in a woodworker's spelling mean the same as decimals and units in pint's."""
    assert read_length(written).inches == UNITS.Quantity(WRITTEN[written]).to("inch").magnitude


@checked(
    quantity="written-length",
    document="PS 20-20, American Softwood Lumber Standard",
    place="dressed dry sizes, inch and millimetre columns",
    kind="standard",
)
@pytest.mark.parametrize(
    ("inches", "mm"),
    [
        ("3/4", 19),
        ("1-1/2", 38),
        ("2-1/2", 64),
        ("3-1/2", 89),
        ("5-1/2", 140),
        ("7-1/4", 184),
        ("9-1/4", 235),
        ("11-1/4", 286),
    ],
)
def test_dressed_sizes_show_the_standard_s_millimetres(inches, mm):
    """The standard's own rounding of each size, the half at 63.5 mm upwards included."""
    assert write_length(read_length(f"{inches} in"), system="mm") == f"{mm} mm"


SIXTEENTHS = """
3 1/8 1/8 1/8
6 1/4 1/4 15/64
9 3/8 11/32 23/64
12 1/2 15/32 15/32
12.7 1/2 1/2 1/2
15 9/16 19/32 19/32
16 5/8 5/8 5/8
18 11/16 23/32 45/64
19 3/4 3/4 3/4
20 13/16 25/32 25/32
25 1 31/32 63/64
25.4 1 1 1
32 1-1/4 1-1/4 1-17/64
38 1-1/2 1-1/2 1-1/2
40 1-9/16 1-9/16 1-37/64
45 1-3/4 1-25/32 1-49/64
50 1-15/16 1-31/32 1-31/32
64 2-1/2 2-17/32 2-33/64
89 3-1/2 3-1/2 3-1/2
100 3-15/16 3-15/16 3-15/16
140 5-1/2 5-1/2 5-33/64
184 7-1/4 7-1/4 7-1/4
235 9-1/4 9-1/4 9-1/4
286 11-1/4 11-1/4 11-17/64
300 11-13/16 11-13/16 11-13/16
400 15-3/4 15-3/4 15-3/4
457 18 18 17-63/64
600 23-5/8 23-5/8 23-5/8
610 24 24-1/32 24-1/64
800 31-1/2 31-1/2 31-1/2
900 35-7/16 35-7/16 35-7/16
1000 39-3/8 39-3/8 39-3/8
1220 48-1/16 48-1/32 48-1/32
1829 72 72 72-1/64
2440 96-1/16 96-1/16 96-1/16
"""
"""Millimetres, and the nearest sixteenth, thirty-second and sixty-fourth of an inch."""
ROWS = [row.split() for row in SIXTEENTHS.split("\n")[1:-1]]


@checked(
    quantity="written-length",
    document="Python's decimal module",
    place="quantize with ROUND_HALF_UP, on 35 usual millimetre sizes",
    kind="library",
)
@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_millimetres_in_fractions_of_an_inch(row):
    """A millimetre size shows the nearest 16th, 32nd and 64th, as another library rounds it."""
    mm, *shown = row
    for denominator, text in zip((16, 32, 64), shown, strict=True):
        rounded = round_length(Length.of_mm(Fraction(mm)), denominator=denominator)
        steps = (Decimal(mm) / Decimal("25.4") * denominator).quantize(Decimal(1), ROUND_HALF_UP)

        assert rounded.text == f"{text.replace('-', ' ')} in"
        assert rounded.value.inches == Fraction(int(steps), denominator)


@checked(
    quantity="written-length",
    document="Python's decimal module",
    place="quantize with ROUND_HALF_UP; ties at 1/32, 3/32 and 5/32 in",
    kind="library",
)
@given(st.integers(0, 10_000), st.sampled_from([2, 4, 8, 16, 32]))
def test_ties_are_rounded_up(halves, denominator):
    """A length half way between two marks shows the upper one."""
    exact = Decimal(halves) / (2 * denominator)
    steps = (exact * denominator).quantize(Decimal(1), ROUND_HALF_UP)

    assert round_length(Length(Fraction(exact)), denominator=denominator).value == Length(
        Fraction(int(steps), denominator)
    )


@checked(
    quantity="board-foot",
    document="Engineering Aid Basic (US Navy training manual)",
    place="section 6, board measure: thickness and width in inches by length in feet, over 12",
    kind="handbook",
)
@checked(
    quantity="board-foot",
    document="Worked examples of sawmills and yards (3x8x10 ft is 20; 1x3x8 ft is 2; 1x12x10 ft is 10)",
    place="West Coast Lands, board footage of a sawmill; Classic American, ordering lumber by the board foot",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("thickness", "width", "feet", "published"),
    [(3, 8, 10, "20"), (1, 3, 8, "2"), (1, 12, 10, "10"), (1, 8, 8, "5.33"), (2, 4, 14, "9.33")],
)
def test_board_feet_of_worked_examples(thickness, width, feet, published):
    """Nominal thickness by width by length comes to the printed figure."""
    found = board_feet_nominal(Length(thickness), Length(width), Length.of_feet(feet))

    assert abs(found - Fraction(published)) < Fraction(1, 200)


@checked(
    quantity="board-foot",
    document="Engineering Aid Basic (US Navy training manual)",
    place="section 6, board measure: under 1 in thick counts as 1 in",
    kind="handbook",
)
def test_thin_softwood_counts_as_an_inch():
    """Half-inch stock is counted as inch stock, but its volume is half of that."""
    half, width, length = Length(Fraction(1, 2)), Length(6), Length.of_feet(8)

    assert board_feet_nominal(half, width, length) == 4
    assert board_feet(half, width, length) == 2


@checked(quantity="board-foot", document=PINT, place=PINT_AT, kind="library")
@given(LENGTHS, LENGTHS, LENGTHS)
def test_board_feet_are_144_cubic_inches(thickness, width, length):
    """The volume in board feet is what pint's own board foot makes of it."""
    theirs = in_pint(Length(thickness)) * in_pint(Length(width)) * in_pint(Length(length))

    assert board_feet(Length(thickness), Length(width), Length(length)) == theirs.to("board_foot").magnitude


@checked(
    quantity="surface-measure",
    document="American Hardwood Export Council, grading sawn lumber: measurement (NHLA rules)",
    place="worked example: 2 in thick, 6 1/4 in wide, 8 ft long",
    kind="standard",
)
def test_the_hardwood_rule_rounds_the_face_first():
    """4 1/6 square feet count as 4, and 2 in thick makes 8 board feet, not 8.33."""
    thickness, width, length = Length(2), Length(Fraction(25, 4)), Length.of_feet(8)

    assert surface_measure(width, length) == 4
    assert board_feet_hardwood(thickness, width, length) == 8
    assert board_feet(thickness, width, length) == Fraction(25, 3)


@checked(
    quantity="surface-measure",
    document="NHLA rules as quoted in American hardwood lumber measurement (Eastern Lumber)",
    place="examples of determining surface measure",
    kind="handbook",
)
@pytest.mark.parametrize(("width", "feet", "published"), [("6 1/2", 8, 4), ("8", 12, 8), ("10", 13, 11)])
def test_surface_measure_of_the_published_examples(width, feet, published):
    """Each face comes to the printed whole number of square feet."""
    assert surface_measure(read_length(f"{width} in"), Length.of_feet(feet)) == published


def near(found: Fraction, true, within: str = "1e-12") -> bool:
    """Tell whether a value lies as near the true one as it claims."""
    return abs(mpmath.mpf(found.numerator) / found.denominator - true) <= mpmath.mpf(within)


def real(number: Fraction):
    """Return a fraction as a real number of mpmath."""
    return mpmath.mpf(number.numerator) / number.denominator


@checked(quantity="roots-and-angles", document=MPMATH, place=MPMATH_AT, kind="library")
@given(st.fractions(0, 100_000, max_denominator=1000), st.fractions(-720, 720, max_denominator=1000))
def test_roots_sines_and_cosines_are_right_to_twelve_decimals(number, degrees):
    """Each is within half of 1e-12 of the true value."""
    with mpmath.workdps(50):
        angle = mpmath.radians(real(degrees))

        assert near(root(number), mpmath.sqrt(real(number)), "5.01e-13")
        assert near(sine(Angle(degrees)), mpmath.sin(angle), "5.01e-13")
        assert near(cosine(Angle(degrees)), mpmath.cos(angle), "5.01e-13")


@checked(quantity="roots-and-angles", document=MPMATH, place=MPMATH_AT, kind="library")
@given(st.fractions(-89, 89, max_denominator=1000), st.fractions(-1, 1, max_denominator=10_000))
def test_tangents_and_arcs_are_right_to_twelve_decimals(degrees, ratio):
    """The tangent and both arcs are within half of 1e-12, in degrees where they are angles."""
    with mpmath.workdps(50):
        assert near(tangent(Angle(degrees)), mpmath.tan(mpmath.radians(real(degrees))), "5.01e-13")
        assert near(arc_sine(ratio).degrees, mpmath.degrees(mpmath.asin(real(ratio))), "5.01e-13")
        assert near(arc_tangent(degrees).degrees, mpmath.degrees(mpmath.atan(real(degrees))), "5.01e-13")


@checked(
    quantity="roots-and-angles",
    document="numpy, hypot and arctan2",
    place=f"version {np.__version__}, to double precision",
    kind="library",
)
@given(LENGTHS, st.fractions(1, 500, max_denominator=1000))
def test_diagonals_and_slopes_are_as_numpy_has_them(rise, run):
    """The diagonal of a frame and the angle of its brace agree to double precision."""
    found = diagonal(Length(rise), Length(run)).inches
    angle = np.degrees(np.arctan2(float(rise), float(run)))

    assert abs(float(found) - np.hypot(float(rise), float(run))) < 1e-9
    assert abs(float(arc_tangent(rise, run).degrees) - angle) < 1e-9
