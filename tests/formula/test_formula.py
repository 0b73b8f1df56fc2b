"""A formula as others see it: its names, its words, its kinds."""

from __future__ import annotations

import pickle
from fractions import Fraction

import pytest

from scantling.fault import Faulty
from scantling.formula import (
    FUNCTIONS,
    KEYWORDS,
    NameUse,
    WordsUse,
    name_of,
    read_formula,
    require,
    require_count,
)
from scantling.measure import Angle, Area, Length


def test_the_names_and_where_they_stand():
    """Every use of a name is kept with its characters; the list of names has each once."""
    formula = read_formula("width - 2 * side  strip.width - width")

    assert formula.names == ("width", "side strip.width")
    assert formula.uses == (
        NameUse("width", 0, 5),
        NameUse("side strip.width", 12, 29),
        NameUse("width", 32, 37),
    )
    assert not formula.is_constant
    assert read_formula("3 in + 2 in").is_constant


def test_words_are_no_names():
    """What a name is compared with is kept, so that a plan can check that it is one of the choices."""
    formula = read_formula('trim is from offcuts or top is not "oak"')

    assert formula.names == ("trim", "top")
    assert formula.compared == (WordsUse("trim", "from offcuts", 8, 20), WordsUse("top", "oak", 35, 40))


def test_formulas_with_the_same_text_are_equal():
    """A formula is known by its text, and comes back from a pickle."""
    formula = read_formula("width / 2")
    again = pickle.loads(pickle.dumps(formula))

    assert formula == read_formula("width / 2") == again
    assert hash(formula) == hash(again)
    assert again.evaluate({"width": Length(3)}) == Length(Fraction(3, 2))


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("3", Fraction),
        ("3 in", Length),
        ("3 in * 2 in", Area),
        ("3 deg", Angle),
        ("yes", bool),
        ('"oak"', str),
    ],
)
def test_each_kind_is_taken_only_for_itself(text, kind):
    """A value is returned where its kind is wanted, and is a fault that marks all of it where not."""
    formula = read_formula(text)

    assert formula.as_kind(kind, {}) == formula.evaluate({})
    for other in {Fraction, Length, Area, Angle, bool, str} - {kind}:
        with pytest.raises(Faulty) as caught:
            formula.as_kind(other, {})
        (fault,) = caught.value.faults
        assert (fault.place.start, fault.place.end) == (0, len(text))


def test_an_area_where_a_length_is_due():
    """The fault says what the value is and what is wanted."""
    with pytest.raises(Faulty) as caught:
        read_formula("3 in * 2 in").as_kind(Length, {})

    assert caught.value.faults[0].message == "this is an area; a length is wanted"


def test_a_number_where_a_length_is_due_lacks_its_unit():
    """A bare number is told to take a unit."""
    with pytest.raises(Faulty) as caught:
        require(Fraction(12), Length)

    assert caught.value.faults[0].help == "write 12 in or 12 mm"


def test_counts_are_whole_and_not_below_nothing():
    """A count is a whole number; parts of one and less than none are faults."""
    assert read_formula("6 / 2").as_count({}) == 3
    assert require_count(Fraction(0)) == 0
    for text, code in (
        ("5/2", "not-whole"),
        ("2 - 3", "negative-count"),
        ("2 in", "wrong-kind"),
        ("yes", "wrong-kind"),
    ):
        with pytest.raises(Faulty) as caught:
            read_formula(text).as_count({})
        assert caught.value.faults[0].code == code


def test_a_plain_whole_number_in_scope_is_a_number():
    """A count may be given as an ordinary whole number; the result is an exact number all the same."""
    assert read_formula("n / 2").evaluate({"n": 3}) == Fraction(3, 2)
    assert read_formula("n").evaluate({"n": 3}) == Fraction(3)
    assert type(read_formula("n").evaluate({"n": 3})) is Fraction
    assert read_formula("width * n").evaluate({"n": 3, "width": Length(2)}) == Length(6)
    assert read_formula("n > 2 and n = 3").evaluate({"n": 3}) is True
    assert read_formula("max(n, 2)").evaluate({"n": 3}) == 3


def test_every_function_has_a_pattern_and_a_purpose():
    """The reference can be made from the table of functions; none is hidden by a keyword."""
    for name, function in FUNCTIONS.items():
        assert function.pattern.startswith(f"{name}(")
        assert function.about
        assert not KEYWORDS & set(name.split())


def test_kinds_have_names():
    """Each kind is called what a woodworker would call it."""
    assert [name_of(value) for value in (Fraction(1), Length(1), Area(1), Angle(1), True, "oak")] == [
        "a number", "a length", "an area", "an angle", "yes or no", "words",
    ]  # fmt: skip
