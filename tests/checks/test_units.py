"""Findings speak to a reader in the units that the reader chose."""

from __future__ import annotations

from fractions import Fraction

import pint
import pytest

from scantling.checks.saying import about_up, about_weight, length, load_on_shelf
from scantling.measure import Length, Weight, telling_in, told_system


def test_findings_are_told_in_inches_and_pounds_unless_asked_otherwise():
    """An author reads what the plan is written in."""
    assert told_system() == "in"
    assert length(Length(Fraction(30))) == "30 in"
    assert about_weight(Weight(12)) == "12 lb"
    assert load_on_shelf(Fraction(50)) == "50 lb on the square foot"


def test_a_reader_of_millimetres_gets_millimetres_and_kilograms():
    """Lengths, weights and loads, the last compared with pint; afterwards all is as before."""
    units = pint.UnitRegistry()
    load = (50 * units.pound / units.foot**2).to(units.kilogram / units.metre**2).magnitude
    with telling_in("mm"):
        assert length(Length(Fraction(30))) == "762 mm"
        assert about_up(Length(Fraction(1, 32))) == "1 mm"
        assert about_weight(Weight(Fraction(22))) == "9 kg"
        assert load_on_shelf(Fraction(50)) == f"{round(load)} kg on the square metre"
        assert round(load) == 244
    assert told_system() == "in"


@pytest.mark.parametrize("light", [Weight(0), Weight(Fraction(1, 2))])
def test_no_weight_is_nothing(light):
    """What tips at once is told as one pound, or one kilogram."""
    assert about_weight(light) == "1 lb"
    with telling_in("mm"):
        assert about_weight(light) == "1 kg"
