"""Measures stay on one line, on the page and on paper."""

from __future__ import annotations

from scantling.measure import hold


def test_no_line_ends_inside_a_measure():
    """Whole, fraction and unit stand together; other words part as they did."""
    held = hold("2 of 30 x 11 1/4 in, 37.5 bd ft and 96 in")

    assert held.replace("\N{NO-BREAK SPACE}", "~") == "2 of 30 x 11~1/4~in, 37.5~bd~ft and 96~in"
