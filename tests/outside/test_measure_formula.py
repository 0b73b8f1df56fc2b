"""What a formula comes to, against libraries that know nothing of it and facts that every workshop knows."""

from __future__ import annotations

from fractions import Fraction

import mpmath
import pint
import pytest

from scantling.formula import read_formula
from scantling.measure import Angle, Length, read_length
from tests.outside.sources import checked

UNITS = pint.UnitRegistry(non_int_type=Fraction)

# The same sum in the plan's language and as another library writes it.
SAME = {
    "48 in - 2 * 2 3/4 in - 2 * 1 in": "48 inch - 2 * 2.75 inch - 2 * 1 inch",
    "(7' 6 1/2\" - 38 mm) / 3": "(7 foot + 6.5 inch - 38 millimeter) / 3",
    "1.2 m / 7 - 1/8 in": "1.2 meter / 7 - 0.125 inch",
    "2 * (30 in - 3/4 in) + 4 ft / 5": "2 * (30 inch - 0.75 inch) + 4 foot / 5",
    "24 in * 48 in / 16 in": "24 inch * 48 inch / (16 inch)",
    "24 in * 3 / 4 / 2": "24 inch * 3 / 4 / 2",
}


@checked(
    quantity="formula-value",
    document="pint, unit conversion with exact fractions",
    place=f"version {pint.__version__}, its parser of expressions with units",
    kind="library",
)
@pytest.mark.parametrize("text", SAME)
def test_sums_of_lengths_come_to_what_pint_makes_of_them(text):
    """Mixed units, brackets and precedence give exactly the same length."""
    theirs = UNITS.parse_expression(SAME[text]).to("inch").magnitude

    assert read_formula(text).evaluate({}) == Length(theirs)


@checked(
    quantity="formula-value",
    document="mpmath, arithmetic to any precision",
    place=f"version {mpmath.__version__}, root of W sin t - H cos t = w by bisection, 40 digits",
    kind="library",
)
@pytest.mark.parametrize(
    ("width", "height", "brace", "degrees"),
    [
        ("36", "30", "3.5", "44.0888771740852"),
        ("24", "48", "1.5", "65.0366231431367"),
        ("28.5", "70", "2.5", "69.7422184506973"),
    ],
)
def test_the_angle_of_a_diagonal_brace(width, height, brace, degrees):
    """A brace seated on two rails lies at the angle that a search by another library finds."""
    scope = {"W": read_length(width, "in"), "H": read_length(height, "in"), "w": read_length(brace, "in")}
    found = read_formula("arctan(H, W) + arcsin(w / diagonal(W, H))").evaluate(scope)
    assert isinstance(found, Angle)
    with mpmath.workdps(40):
        across, up, wide = mpmath.mpf(width), mpmath.mpf(height), mpmath.mpf(brace)
        theirs = mpmath.degrees(
            mpmath.findroot(
                lambda t: across * mpmath.sin(t) - up * mpmath.cos(t) - wide,
                (mpmath.atan(up / across), mpmath.pi / 2),
                solver="anderson",
                tol=1e-60,
            )
        )
        off = abs(mpmath.mpf(found.degrees.numerator) / found.degrees.denominator - theirs)

    assert off < 1e-10
    assert abs(found.degrees - Fraction(degrees)) < Fraction(1, 10**11)


@checked(quantity="formula-value", kind="common practice")
@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("5 1/2 in - 4 in - 1/8 in", "1 3/8 in"),
        ("5 1/2 in - 2 * 2 1/2 in - 2 * 1/8 in", "1/4 in"),
        ("(5 1/2 in - 1/8 in) / 2", "2 11/16 in"),
    ],
)
def test_what_the_saw_leaves(text, left):
    """A rip of 4 in leaves 1 3/8 in of a 5 1/2 in board, and a halved one gives two strips of 2 11/16 in."""
    assert read_formula(text).evaluate({}) == read_length(left)


@checked(quantity="formula-value", kind="common practice")
def test_a_third_strip_does_not_fit():
    """Two strips of 2 1/2 in fit a 5 1/2 in board, a third does not."""
    fits = read_formula("count * 2 1/2 in + (count - 1) * 1/8 in <= 5 1/2 in")

    assert fits.evaluate({"count": Fraction(2)}) is True
    assert fits.evaluate({"count": Fraction(3)}) is False
