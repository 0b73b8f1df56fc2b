"""Numbers that readers type, with the marks of their language."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import in_plain_marks, local_decimal, read_length, read_number
from scantling.words import language_of, speaking

GERMAN = language_of("de")


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("1,5", "1.5"),
        ("12,75 mm", "12.75 mm"),
        ("1.204,50", "1204.50"),
        ("1.204.050", "1204050"),
        ("61.20", "61.20"),
        ("0.008 in", "0.008 in"),
        ("22 1/2 in", "22 1/2 in"),
        ("4 mal 570,5 mm; 2 mal 760 mm", "4 mal 570.5 mm; 2 mal 760 mm"),
        ("570 mm, 760 mm", "570 mm, 760 mm"),
        ("570 mm,2 mal 760 mm", "570 mm,2 mal 760 mm"),
        ("", ""),
    ],
)
def test_a_german_comma_stands_before_decimals(typed, meant):
    """A comma between digits is read as a point; one between items stays, and so does a point of its own."""
    with speaking(GERMAN):
        assert in_plain_marks(typed) == meant


@pytest.mark.parametrize("typed", ["1.200", "1.200 mm", "2 x 1.220 mm"])
def test_what_can_be_read_in_two_ways_is_refused(typed):
    """Twelve hundred or one and a fifth: the reader says which."""
    with speaking(GERMAN), pytest.raises(Faulty) as caught:
        in_plain_marks(typed)
    (fault,) = caught.value.faults
    number = typed[fault.place.start : fault.place.end]
    assert number.count(".") == 1
    assert number.replace(".", "") in fault.help
    assert number.replace(".", ",") in fault.help


def test_english_is_read_as_it_stands():
    """Without a language, a comma keeps its meaning, and is told of where it has none."""
    assert in_plain_marks("1,5") == "1,5"
    with pytest.raises(Faulty):
        read_length("1,5 in")


@given(st.integers(0, 999_999), st.integers(1, 3))
def test_what_is_written_in_german_is_read_back(number, places):
    """A number as a page shows it, thousands and decimals included, is understood where it is typed."""
    value = Fraction(number, 10**places)
    with speaking(GERMAN):
        assert read_number(in_plain_marks(local_decimal(value, places))) == value
