"""What a carpenter types is understood as meant."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.calculators.kit import Ask, Batch, Offer, Panel, decimals, exactly, fraction
from scantling.calculators.kit.lists import read_lengths, read_prices, read_rectangles
from scantling.calculators.kit.whole import common_unit
from scantling.fault import Faulty
from scantling.measure import Angle, Display, Length, Money
from tests.support.calculating import MILLIMETRES, ask, exact

INCHES = Display()


@pytest.mark.parametrize(
    ("text", "count", "inches"),
    [
        ("22 1/2 in", 1, "45/2"),
        ("4 of 22 1/2", 4, "45/2"),
        ("4 x 30 in", 4, "30"),
        ("4 @ 2 ft", 4, "24"),
        ("2 pcs 7' 6\"", 2, "90"),
        ("12 of 900 mm", 12, "4500/127"),
    ],
)
def test_a_length_with_its_count(text, count, inches):
    """A count may stand before a length in the ways that carpenters write it."""
    assert read_lengths(text, "in") == (Batch(count, Length(Fraction(inches))),)


@pytest.mark.parametrize(
    ("text", "count", "length", "width"),
    [
        ("30 x 12", 1, "30", "12"),
        ("4 of 30 x 11 1/4 in", 4, "30", "45/4"),
        ("4 x 30 x 12 in", 4, "30", "12"),
        ("2 @ 760 x 300 mm", 2, "3800/127", "1500/127"),
        ('3 of 30" by 12"', 3, "30", "12"),
        ("1 of 8 ft × 4 ft", 1, "96", "48"),
    ],
)
def test_a_rectangle_with_its_count(text, count, length, width):
    """A rectangle is two sides; a unit behind the second holds for both."""
    assert read_rectangles(text, "in") == (Panel(count, Length(Fraction(length)), Length(Fraction(width))),)


@pytest.mark.parametrize("text", ["8 ft = 4.28", "8ft: 4.28", "8' = $4.28", "8 ft at 4.28", "8=4.28"])
def test_a_length_with_its_price(text):
    """A price may stand behind a length in several ways; bare feet are feet where boards are meant."""
    assert read_prices(text, "ft") == (Offer(Length(96), Money(428)),)


def test_items_are_parted_by_commas_semicolons_and_lines():
    """However a list is written down, each item is read."""
    assert len(read_lengths("30 in, 2 of 12 in; 5 in\n8 in,", "in")) == 4


def test_every_wrong_item_is_told_at_its_place():
    """Two items of four are wrong: two faults, each at its own letters."""
    text = "30 in, width, 5 in, 12 qq"

    with pytest.raises(Faulty) as caught:
        read_lengths(text, "in")

    assert [text[fault.place.start : fault.place.end].strip() for fault in caught.value.faults] == [
        "width",
        "qq",
    ]


@pytest.mark.parametrize("text", ["0 of 3 in", "300 of 3 in", "-3 in", "0 in", "", " , ", "x" * 2000])
def test_lists_that_make_no_sense_are_refused(text):
    """No count of nothing, no length of nothing, no endless list."""
    with pytest.raises(Faulty):
        read_lengths(text, "in")


def test_a_bare_number_is_in_the_readers_units():
    """Thirty is inches for one reader and millimetres for the other; a named unit stays what it is."""
    field = Ask("width", "Width", "length", "1 in", least="1/8 in", most="40 ft")

    assert field.read("30", INCHES) == Length(30)
    assert field.read("30", MILLIMETRES) == Length.of_mm(30)
    assert field.read("30 in", MILLIMETRES) == Length(30)


def test_quarters_are_inches_for_everybody():
    """5/4 stock is an inch and a quarter, also where millimetres are shown."""
    field = Ask("thick", "Thickness", "thickness", "4/4")

    assert field.read("5/4", MILLIMETRES) == field.read("5/4", INCHES) == Length(Fraction(5, 4))


@pytest.mark.parametrize(
    ("text", "fahrenheit"), [("70", 70), ("70 F", 70), ("21 C", Fraction(349, 5)), ("0 °C", 32)]
)
def test_temperatures(text, fahrenheit):
    """Degrees of either kind are read."""
    assert Ask("t", "Temperature", "temperature").read(text, INCHES) == fahrenheit


def test_angles_weights_and_percents_may_be_bare():
    """A bare angle is degrees, a bare weight pounds or kilograms, a percent needs no sign."""
    assert Ask("a", "Angle", "angle").read("15", INCHES) == Angle(15)
    assert Ask("w", "Load", "weight").read("1", MILLIMETRES).kilograms == 1
    assert Ask("p", "Waste", "percent").read("15 %", INCHES) == 15


@pytest.mark.parametrize(
    ("number", "words"),
    [("55/12", "4 7/12"), ("3", "3"), ("-1/4", "−1/4"), ("0", "0"), ("5000/3", "1,666 2/3")],
)
def test_fractions_are_written_as_spoken(number, words):
    """Whole and fraction, with commas in large numbers."""
    assert fraction(Fraction(number)) == words


@pytest.mark.parametrize(
    ("number", "places", "words"),
    [
        ("1/3", 4, "≈ 0.3333"),
        ("1/4", 4, "0.25"),
        ("2", 2, "2"),
        ("-1/8", 2, "≈ −0.13"),
        ("12345/2", 1, "6,172.5"),
    ],
)
def test_decimals_say_when_they_are_not_exact(number, places, words):
    """The sign for "about" stands before what was rounded."""
    assert decimals(Fraction(number), places) == words


def test_exact_lengths_are_written_short():
    """A fraction that a person can read, else decimals; millimetres with at most three decimals."""
    assert exactly(Length(Fraction(55, 12)), INCHES) == "4 7/12 in"
    assert exactly(Length(Fraction(525, 923)), INCHES) == "≈ 0.5688 in"
    assert exactly(Length.of_mm(Fraction(1167, 10)), MILLIMETRES) == "116.7 mm"


def test_lengths_become_whole_numbers_of_one_unit():
    """Sixteenths and millimetres share an exact unit; what shares none is cut up finely, parts rounded up."""
    unit = common_unit([Length(Fraction(1, 16)), Length.of_mm(3)])
    odd = common_unit([Length(Fraction(1, 99991)), Length(Fraction(1, 7))])

    assert unit.is_exact
    assert unit.back(unit.up(Length.of_mm(3))) == Length.of_mm(3)
    assert not odd.is_exact
    assert (
        odd.back(odd.up(Length(Fraction(1, 7))))
        >= Length(Fraction(1, 7))
        >= odd.back(odd.down(Length(Fraction(1, 7))))
    )


def test_the_shop_value_says_how_far_it_is_off_over_the_run():
    """Five spaces of 6 3/5 in, set to the nearest sixteenth, are an eighth too long together."""
    shown = next(
        one
        for one in ask("equal-spaces", opening="36", dividers="4", thickness="3/4").shown()
        if one.key == "space"
    )

    assert shown.shop == "6 5/8 in"
    assert shown.exact == "6 3/5 in"
    assert shown.off == "rounded up by less than 1/32 in"
    assert shown.over == "over all 5 spaces: 1/8 in too long"


def test_an_angle_is_set_to_half_degrees_and_adds_up_over_all_cuts():
    """Seven sides: 25.71 degrees, set to 25.5, leave three degrees open over fourteen cuts."""
    shown = next(one for one in ask("segments", sides="7").shown() if one.key == "mitre")

    assert shown.shop == "25.5°"
    assert shown.off == "rounded down by 0.21°"
    assert shown.over == "over all 14 cuts: 3°"


def test_millimetres_are_shown_where_they_are_asked_for():
    """The same opening in millimetres is the same length, shown in whole ones."""
    answer = ask("equal-spaces", MILLIMETRES, opening="900", dividers="4", thickness="18")

    assert exact(answer, "space") == Fraction(828, 5) / Fraction(127, 5)
    assert next(one for one in answer.shown() if one.key == "space").shop == "166 mm"


@pytest.mark.parametrize(
    ("text", "cents"), [("$6.75", 675), ("6.75 €", 675), ("EUR 6.75", 675), ("6.75\N{NO-BREAK SPACE}kr", 675)]
)
def test_a_price_may_carry_its_sign(text, cents):
    """The sign or code of a currency may stand before the price or after it, alone and in a list."""
    assert Ask("p", "Price", "money").read(text, INCHES).cents == cents
    (offer,) = Ask("p", "Prices", "prices", bare="ft").read(f"8 ft = {text}", INCHES)
    assert offer.price.cents == cents


@pytest.mark.parametrize(
    ("ask", "text", "inches", "metric"),
    [
        (Ask("l", "Length", "length", least="1/2 in", most="20 ft"), "30 ft", "20 ft", "6096 mm"),
        (Ask("l", "Length", "length", least="1/2 in", most="20 ft"), "1 mm", "1/2 in", "13 mm"),
        (Ask("t", "Heat", "temperature", least="30 °F", most="200 °F"), "300 C", "200 °F", "93 °C"),
        (Ask("t", "Heat", "temperature", least="30 °F", most="200 °F"), "-9 C", "30 °F", "-1 °C"),
    ],
)
def test_a_bound_is_named_in_the_units_that_are_shown(ask, text, inches, metric):
    """The nearest that works is told as its reader would type it, and works."""
    for display, limit in ((INCHES, inches), (MILLIMETRES, metric)):
        with pytest.raises(Faulty) as refused:
            ask.read(text, display)
        (fault,) = refused.value.faults
        assert fault.help == f"the nearest that works is {limit}"
        ask.read(limit, display)
