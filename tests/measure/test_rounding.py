"""Rounding, what it changed, and lists that must add up."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import Display, Length, round_length, round_number, round_to_total

LENGTHS = st.fractions(-200, 200, max_denominator=2000).map(Length)
DISPLAYS = st.one_of(
    st.sampled_from([2, 4, 8, 16, 32, 64]).map(lambda denominator: Display("in", denominator)),
    st.just(Display("mm")),
)


@pytest.mark.parametrize(
    ("number", "nearest", "down", "up"),
    [
        (Fraction(1, 2), 1, 0, 1),
        (Fraction(3, 2), 2, 1, 2),
        (Fraction(-1, 2), -1, -1, 0),
        (Fraction(7, 3), 2, 2, 3),
        (-4, -4, -4, -4),
    ],
)
def test_halves_go_away_from_nothing(number, nearest, down, up):
    """The nearest whole number, halves away from zero; down and up are towards less and more."""
    assert round_number(number) == nearest
    assert round_number(number, "down") == down
    assert round_number(number, "up") == up


@given(LENGTHS, DISPLAYS)
def test_rounding_is_off_by_at_most_half_a_step(length, display):
    """The shown value lies within half a step, down at or below, up at or above; `off` says by how much."""
    nearest, down, up = (display.round(length, way) for way in ("nearest", "down", "up"))

    assert abs(nearest.off) * 2 <= display.step
    assert down.value <= length <= up.value
    assert up.value - down.value <= display.step
    for rounded in (nearest, down, up):
        assert rounded.value - rounded.off == length
        assert (rounded.value / display.step).denominator == 1


@given(LENGTHS, DISPLAYS)
def test_rounding_twice_is_rounding_once(length, display):
    """A shown value is shown as itself, without a mark."""
    once = display.round(length)
    twice = display.round(once.value)

    assert twice.is_exact
    assert twice.text == once.text
    assert display.approx(once.value) == once.text


@given(st.lists(LENGTHS, max_size=12), DISPLAYS)
def test_shown_lengths_add_up_to_their_shown_total(lengths, display):
    """The shown values of a list add up to the shown value of its sum."""
    shown = round_to_total(lengths, display)
    total = display.round(sum(lengths, Length(0)))

    assert sum((rounded.value for rounded in shown), Length(0)) == total.value


@given(st.lists(LENGTHS, max_size=12), DISPLAYS)
def test_a_list_is_changed_no_more_than_it_must_be(lengths, display):
    """Each shown value is within one step of the exact one, and exact ones stay."""
    for rounded, length in zip(round_to_total(lengths, display), lengths, strict=True):
        assert abs(rounded.off) < display.step
        assert rounded.value - rounded.off == length
        if display.round(length).is_exact:
            assert rounded.value == length


@given(st.lists(LENGTHS, min_size=2, max_size=8), DISPLAYS)
def test_a_longer_part_is_never_shown_shorter(lengths, display):
    """Within a list that adds up, a part that is longer than another is not shown shorter."""
    shown = list(zip(lengths, round_to_total(lengths, display), strict=True))

    for one, shown_one in shown:
        for other, shown_other in shown:
            assert one >= other or shown_one.value <= shown_other.value


def test_thirds_of_a_board_add_up():
    """Three thirds of 1 in are 3/8, 5/16 and 5/16, not three times 5/16."""
    shown = round_to_total([Length(Fraction(1, 3))] * 3, Display())

    assert [rounded.text for rounded in shown] == ["3/8 in", "5/16 in", "5/16 in"]


def test_the_way_can_be_chosen():
    """Down is for a part that must go in, up for a room that must take it."""
    thickness = Length(Fraction(23, 32))

    assert round_length(thickness, denominator=16, way="down").text == "11/16 in"
    assert round_length(thickness, denominator=16, way="up").text == "3/4 in"
    assert round_length(thickness, denominator=16, way="down").off == Length(Fraction(-1, 32))
