"""The formula language, as tests/fixtures/formula.md has it."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.fault import Faulty
from scantling.formula import describe, read_formula
from scantling.measure import Angle, Length
from tests.fixtures.reading import cases, judge

SCOPE = {
    "width": Length(48),
    "height": Length(30),
    "leg.width": Length(Fraction(11, 4)),
    "overhang": Length(1),
    "between legs": Length(40),
    "side strip.length": Length(9),
    "slide.side clearance": Length(Fraction(1, 2)),
    "n": Fraction(3),
    "tilt": Angle(5),
    "trim": "from offcuts",
    "has back": True,
}


def said(given: str) -> str:
    """Return a formula's worth, or what is wrong with it, as the fixture writes it."""
    text = given.replace("⏎", "\n").replace("␣", " ")
    try:
        return describe(read_formula(text).evaluate(SCOPE))
    except Faulty as faulty:
        return "\n".join(fault_line(fault, text) for fault in faulty.faults)


def fault_line(fault, text: str) -> str:
    """Write a fault on one line."""
    marked = text[fault.place.start : fault.place.end].replace("\n", "⏎").replace(" ", " ")
    line = f"{fault.code} [{marked}] {fault.message}"
    return f"{line} → {fault.help}" if fault.help else line


@pytest.mark.parametrize("case", cases("formula.md"), ids=lambda case: case.name)
def test_case(case):
    """A formula is worth, or complains of, what the document says."""
    judge("formula.md", case, said)


def test_there_are_many_cases():
    """The document holds a fair part of the language, and no case twice."""
    given = [case.given for case in cases("formula.md")]

    assert len(given) >= 80
    assert len(given) == len(set(given))
