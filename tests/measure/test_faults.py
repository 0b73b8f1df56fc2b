"""What is said about prices, weights, areas, angles and numbers that cannot be read."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import read_angle, read_area, read_money, read_number, read_weight

READERS = (read_angle, read_area, read_money, read_number, read_weight)


@pytest.mark.parametrize(
    ("reader", "text", "code", "marked"),
    [
        (read_money, "4.285", "part-of-a-cent", "5"),
        (read_money, "-4", "negative", "-4"),
        (read_money, "- $4", "negative", "- $4"),
        (read_money, "12,34", "not-a-price", "12,34"),
        (read_money, "1234,567", "not-a-price", "1234,567"),
        (read_money, "4.", "not-a-price", "4."),
        (read_money, "1.2.3", "not-a-price", "1.2.3"),
        (read_money, "free", "not-a-price", "free"),
        (read_money, "$", "not-a-price", "$"),
        (read_money, "4.28 each", "left-over", "each"),
        (read_money, "99999999999", "too-large", "99999999999"),
        (read_money, "", "empty", ""),
        (read_weight, "12", "missing-unit", "12"),
        (read_weight, "3 stone", "unknown-unit", "stone"),
        (read_weight, "heavy", "not-a-weight", "heavy"),
        (read_area, "150", "missing-unit", "150"),
        (read_area, "150 ft", "unknown-unit", "ft"),
        (read_angle, "45", "not-an-angle", "45"),
        (read_angle, "45 in", "not-an-angle", "45 in"),
        (read_angle, "45° 3", "left-over", "3"),
        (read_number, "3 in", "left-over", "in"),
        (read_number, "many", "not-a-number", "many"),
        (read_number, "1e9", "left-over", "e9"),
        (read_number, "9999999", "too-large", "9999999"),
    ],
)
def test_the_wrong_characters_are_marked(reader, text, code, marked):
    """Each fault has a code and marks the characters that are wrong."""
    with pytest.raises(Faulty) as caught:
        reader(text)
    (fault,) = caught.value.faults

    assert (fault.code, text[fault.place.start : fault.place.end]) == (code, marked)


@given(
    st.sampled_from(READERS),
    st.one_of(st.text(max_size=70), st.text("0123456789 ,.$-/½lbkgftsq2²°", max_size=40)),
)
def test_any_text_is_read_or_faulted(reader, text):
    """Whatever is typed, nothing but a fault that points into the text is raised."""
    try:
        reader(text)
    except Faulty as faulty:
        (fault,) = faulty.faults

        assert 0 <= fault.place.start <= fault.place.end <= len(text)
