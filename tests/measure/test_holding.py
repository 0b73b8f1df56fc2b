"""Measures stay on one line, on the page and on paper."""

from __future__ import annotations

from scantling.measure import hold


def test_no_line_ends_inside_a_measure():
    """Whole, fraction and unit stand together; other words part as they did."""
    held = hold("2 of 30 x 11 1/4 in, 37.5 bd ft and 96 in")

    assert held.replace("\N{NO-BREAK SPACE}", "~") == "2 of 30 x 11~1/4~in, 37.5~bd~ft and 96~in"


def test_nor_before_the_units_of_a_sum():
    """Areas, moments of area, forces and degrees stand with their numbers."""
    held = hold("164,600 mm⁴ at 8549 N/mm², 266.9 N, 0.3955 in⁴, 3.84 m² and 68 °F")

    assert held.replace("\N{NO-BREAK SPACE}", "~") == (
        "164,600~mm⁴ at 8549~N/mm², 266.9~N, 0.3955~in⁴, 3.84~m² and 68~°F"
    )
