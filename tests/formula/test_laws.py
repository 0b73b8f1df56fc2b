"""Laws of the formula language, and that nothing typed can break it."""

from __future__ import annotations

import operator
from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.formula import FUNCTIONS, KEYWORDS, describe, read_formula
from scantling.measure import Angle, Area, Length, write_fraction

SIGNS = {"+": operator.add, "-": operator.sub, "*": operator.mul, "/": operator.truediv}
SCOPE = {
    "width": Length(48),
    "leg.width": Length(Fraction(11, 4)),
    "n": Fraction(3),
    "tilt": Angle(5),
    "panel": Area(144),
    "trim": "from offcuts",
    "has back": True,
}

NUMBERS = st.fractions(0, 100, max_denominator=64)
SUMS = st.recursive(
    NUMBERS.map(lambda number: (f"({write_fraction(number)})", number)),
    lambda inner: st.tuples(inner, st.sampled_from(sorted(SIGNS)), inner).map(lambda parts: joined(*parts)),
    max_leaves=12,
)


def joined(left, sign, right):
    """Return the text of a sum in brackets, and its worth or None where it has none."""
    text = f"({left[0]} {sign} {right[0]})"
    if None in {left[1], right[1]} or (sign == "/" and right[1] == 0):
        return text, None
    return text, SIGNS[sign](left[1], right[1])


@given(SUMS)
def test_numbers_are_reckoned_as_fractions_are(written):
    """A sum is worth exactly what the same sum of fractions is; a division by nothing is the only fault."""
    text, worth = written
    formula = read_formula(text)

    if worth is None:
        with pytest.raises(Faulty) as caught:
            formula.evaluate({})
        assert caught.value.faults[0].code == "divided-by-zero"
    elif abs(worth) <= 10**12 and worth.denominator <= 10**24:
        assert formula.evaluate({}) == worth


@given(st.lists(st.tuples(st.sampled_from("+-"), NUMBERS), min_size=1, max_size=40))
def test_long_sums_run_from_left_to_right(steps):
    """Lengths without brackets are added and taken away in written order."""
    text = "width " + " ".join(f"{sign} {write_fraction(inches)} in" for sign, inches in steps)
    worth = Fraction(48) + sum(inches if sign == "+" else -inches for sign, inches in steps)

    assert read_formula(text).evaluate(SCOPE) == Length(worth)


@given(st.fractions(-10_000, 10_000, max_denominator=1000))
def test_a_written_value_is_read_as_itself(number):
    """What `describe` writes of a length, an angle or a number reads as the same value."""
    for value in (Length(number), number if number.denominator <= 64 else Fraction(7)):
        assert read_formula(describe(value).replace(",", "")).evaluate({}) == value


@given(
    st.sampled_from(["width", "n", "tilt", "panel"]), st.fractions(Fraction(1, 50), 50, max_denominator=50)
)
def test_times_a_number_and_back(name, number):
    """Multiplying by a number and dividing by it gives the same, whatever the kind."""
    written = f"({write_fraction(number)})"

    assert read_formula(f"{name} * {written} / {written}").evaluate(SCOPE) == SCOPE[name]


@given(st.sampled_from(sorted(SCOPE)), st.sampled_from(sorted(SCOPE)), st.sampled_from(sorted(SIGNS)))
def test_every_sum_of_two_kinds_is_worth_something_or_is_faulted(one, other, sign):
    """Two values of any kinds have a worth or one fault that marks characters of the formula."""
    text = f"{one} {sign} {other}"
    try:
        read_formula(text).evaluate(SCOPE)
    except Faulty as faulty:
        (fault,) = faulty.faults

        assert fault.code == "units-differ"
        assert fault.place.start == 0


WORDS = [
    *SCOPE,
    *KEYWORDS,
    *FUNCTIONS,
    "in",
    "ft",
    "mm",
    "deg",
    "widht",
    *"()+-*/<>=,.'\"½°×",
    "<=",
    "≠",
    "12",
    "1/2",
    "7'",
]
LANGUAGE_LIKE = st.lists(st.sampled_from(sorted(WORDS)), max_size=30).flatmap(
    lambda words: st.sampled_from([" ", ""]).map(lambda gap: gap.join(words))
)


@given(st.one_of(st.text(max_size=100), LANGUAGE_LIKE))
@example("(" * 10_000)
@example("9**9**9")
@example("1" + "+1" * 999)
@example("1" + " - 1" * 490)
@example("-" * 1999 + "1")
@example("not " * 499 + "yes")
@example("if yes then " * 150 + "1" + " else 1" * 20)
@example("(" * 60 + "1" + ")" * 60)
@example("min(" * 60 + "1" + ")" * 60)
@example("(1 or 1 and 1 = 1 + 1 * -" * 59 + "1" + ")" * 59)
@example("width is " * 200)
@example("a " * 1000)
@example("a." * 1000)
@example("1 " * 1000)
@example("1 1/" * 500)
@example("'" * 2000)
@example("999999999999999999999999999999" + "*999999999999999999999999999999" * 60)
@example(".")
@example("0/0")
@example("\x00")
def test_any_text_is_worth_something_or_is_faulted(text):
    """Whatever is typed, the only error is a fault, and it marks characters of the text."""
    try:
        read_formula(text).evaluate(SCOPE)
    except Faulty as faulty:
        for fault in faulty.faults:
            assert fault.message
            assert 0 <= fault.place.start <= fault.place.end <= len(text)
