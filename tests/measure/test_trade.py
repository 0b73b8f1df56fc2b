"""Board feet and linear feet."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import (
    Length,
    board_feet,
    board_feet_hardwood,
    board_feet_nominal,
    linear_feet,
    surface_measure,
)

SIZES = st.fractions(Fraction(1, 16), 100, max_denominator=64).map(Length)


@given(SIZES, SIZES, SIZES)
def test_board_feet_do_not_care_which_way_a_board_lies(thickness, width, length):
    """Board feet are volume: any order of the three measures gives the same."""
    assert board_feet(thickness, width, length) == board_feet(length, thickness, width)


@given(SIZES, SIZES, SIZES)
def test_a_thin_board_counts_as_an_inch(thickness, width, length):
    """Sold by nominal size, anything under 1 in counts as 1 in; from there on it is the volume."""
    nominal = board_feet_nominal(thickness, width, length)

    assert nominal == board_feet(max(thickness, Length(1)), width, length)
    assert nominal >= board_feet(thickness, width, length)


def test_surface_measure_is_whole_square_feet():
    """A face is counted to the nearest square foot, a half up."""
    assert surface_measure(Length(6), Length.of_feet(9)) == 5
    assert surface_measure(Length(6), Length.of_feet(8)) == 4
    assert board_feet_hardwood(Length(Fraction(3, 4)), Length(6), Length.of_feet(8)) == 4
    assert board_feet_hardwood(Length(Fraction(5, 4)), Length(6), Length.of_feet(8)) == 5


def test_linear_feet_count_every_piece():
    """Linear feet are length times count."""
    assert linear_feet(Length(30), 4) == 10
