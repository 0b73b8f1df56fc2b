"""Reading lengths, as tests/fixtures/length.md has it."""

from __future__ import annotations

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import Length, read_length, write_fraction
from tests.fixtures.reading import cases, judge


def said(written: str) -> str:
    """Return a length in inches, or what is wrong with the text, as the fixture writes it."""
    text = written.replace("␣", " ")
    try:
        return f"{write_fraction(read_length(text).inches)} in"
    except Faulty as faulty:
        (fault,) = faulty.faults
        line = f"{fault.code} [{text[fault.place.start : fault.place.end]}] {fault.message}"
        return f"{line} → {fault.help}" if fault.help else line


@pytest.mark.parametrize("case", cases("length.md"), ids=lambda case: case.name)
def test_case(case):
    """A text means, or is faulted for, what the document says."""
    judge("length.md", case, said)


@pytest.mark.parametrize(
    ("unit", "inches"),
    [("in", Length(12)), ("ft", Length(144)), ("mm", Length.of_mm(12)), ("m", Length.of_mm(12_000))],
)
def test_a_bare_number_takes_the_declared_unit(unit, inches):
    """A number alone is a length only where its unit was declared."""
    assert read_length("12", unit) == inches
    assert read_length("12 in", unit) == Length(12)


def test_a_declared_unit_excuses_no_unknown_one():
    """A word after the number is still a fault where a unit is declared."""
    with pytest.raises(Faulty) as caught:
        read_length("12 inx", "in")

    assert caught.value.faults[0].code == "unknown-unit"


LENGTH_LIKE = st.text(st.sampled_from("0123456789  -/.,'\"′″½¼ftinmcx°\u00a0⁄−"), max_size=70)


@given(st.one_of(st.text(max_size=80), LENGTH_LIKE))
@example("1" * 59 + "/")
@example("1 " * 29 + "/")
@example(" " * 60)
def test_any_text_is_a_length_or_a_fault_within_it(text):
    """Whatever is typed, the answer is a length or faults that point into the text."""
    try:
        found = read_length(text)
    except Faulty as faulty:
        (fault,) = faulty.faults

        assert 0 <= fault.place.start <= fault.place.end <= len(text)
        assert fault.message
    else:
        assert isinstance(found, Length)
