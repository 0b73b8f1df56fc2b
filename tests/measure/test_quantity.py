"""Exact quantities and the sums that make sense."""

from __future__ import annotations

import copy
import pickle
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import Angle, Area, Length, Money, Volume, Weight

INCHES = st.fractions(-1000, 1000, max_denominator=1000)
LENGTHS = INCHES.map(Length)


@given(INCHES, INCHES)
def test_lengths_add_and_compare_as_fractions_do(one, other):
    """Sums, differences, order and remainders are those of exact fractions."""
    a, b = Length(one), Length(other)

    assert (a + b).inches == one + other
    assert (a - b).inches == one - other
    assert (a < b, a <= b, a > b, a >= b, a == b) == (
        one < other, one <= other, one > other, one >= other, one == other,
    )  # fmt: skip
    assert (abs(a).inches, (-a).inches) == (abs(one), -one)
    if other:
        assert a // b == one // other
        assert (a % b).inches == one % other
        assert a / b == one / other


@given(LENGTHS, LENGTHS, LENGTHS)
def test_addition_is_exact(a, b, c):
    """Nothing is lost, in whatever order lengths are added."""
    assert (a + b) + c == a + (b + c)
    assert a + b - b == a


@given(LENGTHS, st.fractions(-50, 50, max_denominator=50))
def test_lengths_scale(length, number):
    """Taking a length so many times, from either side, and parting it again gives it back."""
    assert length * number == number * length
    assert (length * number).inches == length.inches * number
    if number:
        assert length * number / number == length


@given(LENGTHS, LENGTHS, LENGTHS)
def test_lengths_make_areas_and_volumes(a, b, c):
    """A length times a length is an area, times another a volume, and division undoes it."""
    assert (a * b).square_inches == a.inches * b.inches
    assert a * b * c == a * (b * c)
    assert (a * b * c).cubic_inches == a.inches * b.inches * c.inches
    if b.inches:
        assert a * b / b == a
        assert a * b * c / b == a * c
        if a.inches:
            assert a * b * c / (a * b) == c


@given(LENGTHS)
def test_equal_lengths_are_one_key(length):
    """Equal lengths hash alike, however they came about, and survive copying and pickling."""
    again = Length.of_mm(length.mm)

    assert {length: 1}[again] == 1
    assert pickle.loads(pickle.dumps(length)) == length
    assert copy.deepcopy(length) == length


def test_a_quantity_never_changes():
    """There is no attribute to set or to delete."""
    length = Length(3)

    with pytest.raises(AttributeError):
        length.top = 4
    with pytest.raises(AttributeError):
        length.note = "long"
    with pytest.raises(AttributeError):
        del length.top


UNLIKE = [
    lambda: Length(1) + 1,
    lambda: 1 + Length(1),
    lambda: Length(1) - Area(1),
    lambda: Length(1) + Angle(1),
    lambda: Length(1) < 1,
    lambda: Length(1) >= Area(1),
    lambda: Length(1) * Volume(1),
    lambda: 1 / Length(1),
    lambda: Length(1) / Area(1),
    lambda: Area(1) * Area(1),
    lambda: Length(1) * 0.5,
    lambda: Length(1) / 0.5,
    lambda: Length(0.5),
    lambda: Length("1"),
    lambda: Money(Fraction(1, 2)),
    lambda: Money(1) * Fraction(1, 2),
    lambda: Money(1) + Weight(1),
    lambda: Weight(1) * Weight(1),
    lambda: Angle(1) * Length(1),
    lambda: Length(1) // 2,
    lambda: Length(1) % 2,
    lambda: Volume(1) / Angle(1),
    lambda: Money(1) / 2,
    lambda: Length(1) ** 2,
]


@pytest.mark.parametrize("sum_", UNLIKE, ids=range(len(UNLIKE)))
def test_sums_that_make_no_sense_are_refused(sum_):
    """Unlike quantities, bare numbers and floats raise TypeError."""
    with pytest.raises(TypeError):
        sum_()


@pytest.mark.parametrize(
    "divide", [lambda: Length(1) / 0, lambda: Length(1) / Length(0), lambda: Area(1) / Length(0)]
)
def test_nothing_is_divided_by_nothing(divide):
    """Division by zero raises ZeroDivisionError, of whatever kind the zero is."""
    with pytest.raises(ZeroDivisionError):
        divide()


def test_kinds_are_never_equal():
    """The same number of different units is not the same thing."""
    assert Length(1) != Area(1)
    assert Length(1) != 1
    assert Weight(0) != Money(0)


def test_prices_take_quantities_to_the_nearest_cent():
    """A price times a quantity is rounded once, halves away from nothing."""
    assert Money(428).times(Fraction(5, 2)) == Money(1070)
    assert Money(1).times(Fraction(1, 2)) == Money(1)
    assert Money(-1).times(Fraction(1, 2)) == Money(-1)
    assert Money(333) * 3 == Money(999)
    assert Money(100) / Money(300) == Fraction(1, 3)


def test_other_kinds_scale_too():
    """Angles, weights, areas and volumes are taken, parted and compared like lengths."""
    assert Angle(30) * 3 == 3 * Angle(30) == Angle(90)
    assert Angle(90) / 4 == Angle(Fraction(45, 2))
    assert Weight(3) / Weight(2) == Fraction(3, 2)
    assert Area(6) / Area(4) == Fraction(3, 2)
    assert Volume(6) / 3 == Volume(2)
    assert 2 * Area(3) == Area(6)
    assert 2 * Volume(3) == Volume(6)
    assert sum([Money(1), Money(2)], Money(0)) == Money(3)
    assert max(Weight(1), Weight(2)) == Weight(2)
