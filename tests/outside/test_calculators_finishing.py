"""Screws, finish, glue and numbers, against published tables and a units library."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest

from tests.outside.sources import checked
from tests.support.calculating import MILLIMETRES, ask, column, exact, number

UNITS = pint.UnitRegistry(non_int_type=Fraction)
PINT = "0.24 or newer"

SCREWS = [
    ("4", 0.112, 0.0525, 0.0675),
    ("6", 0.138, 0.0658, 0.0846),
    ("8", 0.164, 0.0784, 0.1008),
    ("10", 0.190, 0.091, 0.117),
    ("12", 0.216, 0.1036, 0.1332),
    ("14", 0.242, 0.1155, 0.1485),
]
"""Gauge, shank, pilot in softwood and in hardwood, inches."""


@checked(
    quantity="calc-screw",
    document="ASME B18.6.1, as a public screw page prints its shank diameters",
    place="numbers 4 to 14: .112, .138, .164, .190, .216, .242 in",
    kind="handbook",
)
@checked(
    quantity="calc-screw",
    document="American Wood Council, rule for wood screws, as a public screw page prints its pilot holes",
    place="70 and 90 percent of the root diameter",
    kind="handbook",
)
@pytest.mark.parametrize(("gauge", "shank", "soft", "hard"), SCREWS)
def test_holes_as_in_the_chart(gauge, shank, soft, hard):
    """Shank and pilot holes are the chart's, and the drill is within 1/128 in."""
    in_soft = ask("screws", gauge=gauge, wood="softwood", second="3")
    in_hard = ask("screws", gauge=gauge, wood="hardwood", second="3")

    assert float(exact(in_soft, "shank")) == pytest.approx(shank, abs=1e-9)
    assert float(exact(in_soft, "pilot-exact")) == pytest.approx(soft, abs=6e-5)
    assert float(exact(in_hard, "pilot-exact")) == pytest.approx(hard, abs=6e-5)
    assert abs(float(exact(in_hard, "pilot")) - hard) <= 1 / 128 + 1e-6
    assert 0 <= float(exact(in_hard, "shank-hole")) - shank < 1 / 64


@checked(
    quantity="calc-screw-length",
    document="NDS 2018",
    place="12.1.5.6: penetration of at least six diameters",
    kind="standard",
)
@checked(quantity="calc-screw-length", kind="common practice")
@pytest.mark.parametrize(
    ("gauge", "first", "second"),
    [("8", "3/4", "1 1/2"), ("6", "1/2", "1 1/2"), ("10", "3/4", "3 1/2"), ("12", "1 1/2", "1 3/4")],
)
def test_screws_grip_and_stay_inside(gauge, first, second):
    """The screw goes six diameters into the second piece and stays an eighth short of its far side."""
    answer = ask("screws", gauge=gauge, first=first, second=second)
    thick, behind = (float(sum(Fraction(part) for part in text.split())) for text in (first, second))
    length = float(exact(answer, "length"))

    assert length - thick >= 6 * float(exact(answer, "shank"))
    assert length <= thick + behind - 0.125


@checked(
    quantity="calc-finish", document="pint", place=f"{PINT}: square feet, gallons, litres", kind="library"
)
@pytest.mark.parametrize(
    ("parts", "faces", "square_inches"),
    [
        ("1 of 60 x 30 in", "one face", 1800),
        ("4 of 29 x 3 in", "both faces", 696),
        ("2 of 96 x 48 in, 10 of 12 x 10 in", "both faces", 20832),
    ],
)
def test_finish_by_units(parts, faces, square_inches):
    """Surface times coats over coverage, with what is lost, in the library's units."""
    area = square_inches * UNITS.inch**2
    wanted = (area * 3 * Fraction(115, 100) / (400 * UNITS.foot**2 / UNITS.gallon)).to("litre").magnitude

    found = ask("finish", parts=parts, faces=faces, thickness="0", coats="3", coverage="400", waste="15")

    assert float(exact(found, "litres")) == pytest.approx(float(wanted), rel=1e-9)
    assert exact(found, "area") == square_inches


@checked(
    quantity="calc-finish",
    document="pint",
    place=f"{PINT}: square metres to the litre",
    kind="library",
)
def test_finish_in_metric_units():
    """A square metre at ten square metres to the litre takes a tenth of a litre, as the library agrees."""
    wanted = (UNITS.metre**2 / (10 * UNITS.metre**2 / UNITS.litre)).to("litre").magnitude

    answer = ask(
        "finish",
        MILLIMETRES,
        parts="1000 x 1000",
        faces="one face",
        thickness="0",
        coats="1",
        coverage="10",
        waste="0",
    )

    assert float(exact(answer, "litres")) == pytest.approx(float(wanted), rel=1e-12)


@checked(
    quantity="calc-glue",
    document="R. Joseph, Calculating paint coverage, Paint Center (2003)",
    place="a gallon covers 1,604 square feet at a thickness of 0.001 in",
    kind="handbook",
)
@pytest.mark.parametrize(("film", "covers"), [("0.001", 1604), ("0.004", 401), ("0.008", 200.5)])
def test_a_gallon_covers_what_is_printed(film, covers):
    """So many square feet take a gallon: 128 fluid ounces."""
    found = number(
        "glue",
        "ounces",
        length="12 in",
        width="12 in",
        joints=str(round(covers * 2)),
        film=f"{film} in",
        waste="0",
    )

    assert found / 2 == pytest.approx(128, rel=3e-3)


@checked(quantity="calc-glue", document="pint", place=f"{PINT}: volume of a film", kind="library")
@pytest.mark.parametrize(("length", "width", "joints"), [(48, "0.75", 6), (60, "1.5", 6), (17, "2.75", 4)])
def test_glue_by_units(length, width, joints):
    """A film of 0.2 mm over the joints is as many millilitres as the library makes of it."""
    volume = length * Fraction(width) * joints * UNITS.inch**2 * Fraction(2, 10) * UNITS.millimetre

    found = number(
        "glue",
        "millilitres",
        length=f"{length} in",
        width=width,
        joints=str(joints),
        film="0.2 mm",
        waste="0",
    )

    assert found == pytest.approx(float(volume.to("millilitre").magnitude), rel=1e-9)


SIXTEENTHS = {
    "3": "1/8", "12": "1/2", "15": "9/16", "18": "11/16", "19": "3/4", "20": "13/16", "25.4": "1",
    "32": "1 1/4",     "38": "1 1/2",
    "40": "1 9/16", "50": "1 15/16", "89": "3 1/2", "140": "5 1/2", "286": "11 1/4",
    "400": "15 3/4",     "600": "23 5/8", "1000": "39 3/8", "1220": "48 1/16", "2440": "96 1/16",
}  # fmt: skip
"""Nearest sixteenth of an inch by millimetres, halves up, reckoned with exact fractions."""


@checked(
    quantity="calc-convert",
    document="NIST SP 811 and 16 CFR 500.19",
    place="1 in = 25.4 mm exactly",
    kind="standard",
)
@checked(quantity="calc-convert", document="pint", place=f"{PINT}: inch to millimetre", kind="library")
@pytest.mark.parametrize(("mm", "sixteenth"), SIXTEENTHS.items())
def test_millimetres_to_the_nearest_sixteenth(mm, sixteenth):
    """The exact inches are the library's, and the nearest sixteenth is the table's."""
    answer = ask("convert", length=f"{mm} mm")

    assert exact(answer, "inches") == Fraction((Fraction(mm) * UNITS.millimetre).to("inch").magnitude)
    assert column(answer, 0, "Nearest")[1] == f"{sixteenth} in"


@checked(quantity="calc-fractions", document="pint", place=f"{PINT}: lengths of mixed units", kind="library")
@pytest.mark.parametrize(
    ("text", "terms"),
    [
        ("3 1/2 in + 2 * 3/4 in", [("7/2", "inch"), ("3/2", "inch")]),
        ("2 ft - 18 mm", [("2", "foot"), ("-18", "millimetre")]),
        ("7 ft 6 1/2 in + 1 m", [("7", "foot"), ("13/2", "inch"), ("1", "metre")]),
        ("5/8 in + 3/16 in + 7/32 in", [("5/8", "inch"), ("3/16", "inch"), ("7/32", "inch")]),
    ],
)
def test_sums_of_lengths(text, terms):
    """The sum is exactly what a units library with exact fractions makes of its terms."""
    whole = sum(
        (Fraction(number) * UNITS.Quantity(Fraction(1), unit) for number, unit in terms[1:]),
        start=(Fraction(terms[0][0]) * UNITS.Quantity(Fraction(1), terms[0][1])),
    )

    found = exact(ask("fractions", sum=text), "inches")

    assert float(found) == pytest.approx(float(whole.to("inch").magnitude), rel=1e-15)
