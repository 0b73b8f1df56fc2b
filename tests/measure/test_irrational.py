"""Roots and angles in whole numbers."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import Angle, Length, arc_sine, arc_tangent, cosine, diagonal, root, sine, tangent

NEAR = Fraction(2, 10**12)
DEGREES = st.fractions(-720, 720, max_denominator=1000)


@given(st.fractions(0, 10**6, max_denominator=10**6))
def test_a_square_has_an_exact_root(number):
    """The root of a square is the number itself, exactly."""
    assert root(number * number) == number


@given(st.fractions(0, 10**6, max_denominator=10**6))
def test_a_root_squared_comes_back(number):
    """A root is the nearest multiple of 1e-12: one half of that off either way spans the number."""
    found, half = root(number), Fraction(1, 2 * 10**12)

    assert max(found - half, 0) ** 2 <= number <= (found + half) ** 2


@pytest.mark.parametrize(
    ("degrees", "sine_", "cosine_"),
    [
        (0, 0, 1),
        (30, Fraction(1, 2), None),
        (60, None, Fraction(1, 2)),
        (90, 1, 0),
        (150, Fraction(1, 2), None),
        (180, 0, -1),
        (270, -1, 0),
        (-90, -1, 0),
        (360, 0, 1),
        (240, None, Fraction(-1, 2)),
    ],
)
def test_the_well_known_angles_are_exact(degrees, sine_, cosine_):
    """Where sine or cosine is rational it comes out so."""
    if sine_ is not None:
        assert sine(Angle(degrees)) == sine_
    if cosine_ is not None:
        assert cosine(Angle(degrees)) == cosine_


@given(DEGREES)
def test_sine_and_cosine_lie_on_the_circle(degrees):
    """sin² + cos² is 1, and the functions are odd, even and periodic."""
    angle = Angle(degrees)

    assert abs(sine(angle) ** 2 + cosine(angle) ** 2 - 1) < 2 * NEAR
    assert sine(-angle) == -sine(angle)
    assert cosine(-angle) == cosine(angle)
    assert sine(angle + Angle(360)) == sine(angle)


@given(st.fractions(-89, 89, max_denominator=1000))
def test_arcs_undo_their_functions(degrees):
    """The arc tangent of a tangent and the arc sine of a sine are the angle."""
    angle = Angle(degrees)

    assert abs(arc_tangent(tangent(angle)) - angle) < Angle(Fraction(1, 10**9))
    assert abs(arc_sine(sine(angle)) - angle) < Angle(Fraction(1, 10**8))


@given(
    st.fractions(Fraction(1, 100), 1000, max_denominator=100),
    st.fractions(Fraction(1, 100), 1000, max_denominator=100),
)
def test_a_slope_and_its_complement_make_a_right_angle(rise, run):
    """Turned on its side, a slope has the rest of 90 degrees."""
    assert abs(arc_tangent(rise, run) + arc_tangent(run, rise) - Angle(90)) <= Angle(NEAR)


def test_upright_slopes_have_right_angles():
    """A rise without a run is upright, a fall without one hangs."""
    assert arc_tangent(3, 0) == Angle(90)
    assert arc_tangent(-3, 0) == Angle(-90)
    assert arc_tangent(1, 1) == Angle(45)
    assert arc_sine(1) == Angle(90)
    assert arc_sine(Fraction(-1)) == Angle(-90)
    assert diagonal(Length(3), Length(4)) == Length(5)


@pytest.mark.parametrize(
    "work",
    [
        lambda: root(-1),
        lambda: tangent(Angle(90)),
        lambda: tangent(Angle(-270)),
        lambda: arc_sine(2),
        lambda: arc_tangent(0, 0),
    ],
)
def test_what_has_no_answer_is_a_fault(work):
    """There is a fault, not an error of arithmetic, where no number answers."""
    with pytest.raises(Faulty):
        work()
