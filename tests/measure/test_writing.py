"""Writing lengths and other quantities, and reading back what was written."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import (
    Angle,
    Area,
    Display,
    Length,
    Money,
    Volume,
    Weight,
    read_angle,
    read_area,
    read_length,
    read_money,
    read_number,
    read_weight,
    saw_setting,
    write_angle,
    write_area,
    write_board_feet,
    write_decimal,
    write_length,
    write_linear,
    write_money,
    write_number,
    write_volume,
    write_weight,
)

DENOMINATORS = st.sampled_from([2, 4, 8, 16, 32, 64])


@pytest.mark.parametrize(
    ("inches", "text", "in_feet"),
    [
        (Fraction(5, 2), "2 1/2 in", "2 1/2 in"),
        (96, "96 in", "8 ft"),
        (Fraction(181, 2), "90 1/2 in", "7 ft 6 1/2 in"),
        (Fraction(1, 2), "1/2 in", "1/2 in"),
        (0, "0 in", "0 in"),
        (Fraction(-5, 4), "-1 1/4 in", "-1 1/4 in"),
        (-18, "-18 in", "-1 ft 6 in"),
        (Fraction(1, 3), "5/16 in", "5/16 in"),
    ],
)
def test_lengths_are_written_as_on_a_workshop_wall(inches, text, in_feet):
    """A length has its whole inches, the reduced fraction and the unit; feet only where asked for."""
    assert write_length(Length(inches)) == text
    assert write_length(Length(inches), feet=True) == in_feet


def test_a_finer_fraction_can_be_chosen():
    """The denominator is the reader's choice; plywood needs thirty-seconds."""
    thickness = Length(Fraction(23, 32))

    assert write_length(thickness, denominator=32) == "23/32 in"
    assert write_length(thickness) == "3/4 in"


def test_millimetres_are_whole():
    """Millimetres are written without a fraction, the half rounded up."""
    assert write_length(Length(Fraction(3, 2)), system="mm") == "38 mm"
    assert write_length(Length.of_mm(Fraction(5, 2)), system="mm") == "3 mm"


@given(st.integers(-(10**6), 10**6), DENOMINATORS, st.booleans())
def test_reading_what_was_written_gives_the_same_on_the_grid(steps, denominator, feet):
    """read(write(x)) is x for every length that the chosen fraction can hold."""
    length = Length(Fraction(steps, denominator))
    length = min(max(length, Length(-999_999)), Length(999_999))

    assert read_length(write_length(length, denominator=denominator, feet=feet)) == length


@given(st.integers(-(10**6), 10**6))
def test_millimetres_come_back_too(mm):
    """read(write(x)) is x for every whole millimetre."""
    assert read_length(write_length(Length.of_mm(mm), system="mm")) == Length.of_mm(mm)


@given(st.fractions(-1000, 1000, max_denominator=5000), DENOMINATORS)
def test_writing_is_the_mirror_image_below_nothing(inches, denominator):
    """A negative length is written as the positive one with a minus."""
    positive = write_length(Length(abs(inches)), denominator=denominator)
    negative = write_length(Length(-abs(inches)), denominator=denominator)

    assert negative == (f"-{positive}" if positive != "0 in" else "0 in")


def test_an_exact_length_is_shown_without_a_mark():
    """Only a rounded value is marked, with the way it was rounded and by how much."""
    display = Display()

    assert display.approx(Length(Fraction(5, 2))) == "2 1/2 in"
    assert display.approx(Length(Fraction(1, 32))) == "≈ 1/16 in (rounded up by 1/32 in)"
    assert display.approx(Length(Fraction(19, 64))) == "≈ 5/16 in (rounded up by 1/64 in)"
    assert display.approx(Length.of_mm(600)) == "≈ 23 5/8 in (rounded up by less than 1/128 in)"
    assert display.approx(Length(Fraction(1, 3)), "down") == "≈ 5/16 in (rounded down by less than 1/32 in)"
    assert Display("mm").approx(Length(1)) == "≈ 25 mm (rounded down by 0.4 mm)"
    assert (
        Display("mm").approx(Length.of_mm(Fraction(1001, 1000)))
        == "≈ 1 mm (rounded down by less than 0.1 mm)"
    )


@pytest.mark.parametrize(
    ("number", "text"),
    [
        (3, "3"),
        (Fraction(5, 2), "2.5"),
        (Fraction(1, 3), "1/3"),
        (Fraction(7, 3), "2 1/3"),
        (Fraction(1, 16), "0.0625"),
        (Fraction(5, 97), "≈0.0515"),
        (-2, "-2"),
        (10, "10"),
        (0, "0"),
        (1200, "1,200"),
    ],
)
def test_numbers_are_written_exactly_where_they_can_be(number, text):
    """A number is a short decimal, else a fraction with a small denominator, else marked as rounded."""
    assert write_number(number) == text


def test_decimals_round_halves_away_from_nothing():
    """Halves go up, and below nothing down; thousands have commas."""
    assert write_decimal(Fraction(1, 8), 2) == "0.13"
    assert write_decimal(Fraction(-1, 8), 2) == "-0.13"
    assert write_decimal(Fraction(-1, 1000), 2) == "0.00"
    assert write_decimal(1234567, 0) == "1,234,567"


def test_the_other_quantities_have_their_units():
    """Areas, volumes, weights, linear and board feet are written with a unit in either system."""
    area, volume, weight = Area.of_square_feet(Fraction(25, 2)), Volume(1728), Weight(10)

    assert (write_area(area), write_area(area, system="mm")) == ("12.50 sq ft", "1.16 m²")
    assert (write_volume(volume), write_volume(volume, system="mm")) == ("1.00 cu ft", "0.0283 m³")
    assert (write_weight(weight), write_weight(weight, system="mm")) == ("10.0 lb", "4.5 kg")
    assert write_board_feet(Fraction(28, 3)) == "9.33 bd ft"
    assert write_linear(Length(510)) == "42.50 linear ft"
    assert write_linear(Length.of_mm(2500), system="mm") == "2.50 m"


@pytest.mark.parametrize(
    ("cents", "text"),
    [(428, "$4.28"), (120_450, "$1,204.50"), (-5, "-$0.05"), (0, "$0.00"), (100_000_000, "$1,000,000.00")],
)
def test_money_has_commas_and_two_decimals(cents, text):
    """A sum is written with its currency, thousands commas and cents."""
    assert write_money(Money(cents)) == text
    assert read_money(text, negative=True) == Money(cents) if cents >= 0 else True


@given(st.integers(0, 99_999_999))
def test_money_comes_back(cents):
    """read(write(x)) is x for every sum."""
    assert read_money(write_money(Money(cents))) == Money(cents)
    assert read_money(write_money(Money(cents), "€ "), "€") == Money(cents)


def test_angles_are_written_to_a_tenth():
    """An angle is whole or has one decimal; the saw's own setting is the nearest half degree."""
    assert write_angle(Angle(45)) == "45°"
    assert write_angle(Angle(Fraction(45, 2))) == "22.5°"
    assert write_angle(Angle(Fraction(26565, 1000))) == "26.6°"
    assert saw_setting(Angle(Fraction(26565, 1000))) == Angle(Fraction(53, 2))
    assert saw_setting(Angle(Fraction(1, 4))) == Angle(Fraction(1, 2))


@given(st.integers(-3600, 3600))
def test_angles_come_back(tenths):
    """read(write(x)) is x for every tenth of a degree."""
    angle = Angle(Fraction(tenths, 10))

    assert read_angle(write_angle(angle).replace(",", "")) == angle


def test_weights_areas_and_numbers_are_read():
    """Each unit is known by its short and long names."""
    assert read_weight("12 lb") == read_weight("12 pounds") == Weight(12)
    assert read_weight("8 oz") == Weight(Fraction(1, 2))
    assert read_weight("2 kg") == read_weight("2000 g") == Weight.of_kilograms(2)
    assert read_area("150 sq ft") == read_area("150 square feet") == Area.of_square_feet(150)
    assert read_area("12 m2") == read_area("12 m²") == Area.of_square_metres(12)
    assert read_area("1 1/2 sq in") == Area(Fraction(3, 2))
    assert read_number("2 1/2") == read_number("2.5") == Fraction(5, 2)
    assert read_number("-1/4") == Fraction(-1, 4)
