"""Numbers in a document that nobody accounts for are found."""

from __future__ import annotations

from scantling.quantities import Quantity
from tests.outside.numbers import numbers, stands_under, unexplained

PLAN = {
    "title": "Bench for the harbour wall",
    "sizes": {"width": "48 in", "depth": 14},
    "parts": [{"id": "leg", "count": 4, "glued": True}, {"id": "2x4 rail", "count": 2}],
    "report": {"cost": {"total": 1850}, "yield": "3/4", "note": "4 boards"},
}


def test_numbers_are_found_wherever_they_stand():
    """Whole numbers and fractions in text count; truth values and words with digits in them do not."""
    assert list(numbers(PLAN)) == [
        ("sizes.depth", 14),
        ("parts.count", 4),
        ("parts.count", 2),
        ("report.cost.total", 1850),
        ("report.yield", "3/4"),
    ]


def test_a_key_names_the_end_of_a_path():
    """A key must match whole steps from the end; a star is any one step."""
    assert stands_under("report.cost.total", "cost.total")
    assert stands_under("report.cost.total", "total")
    assert stands_under("sizes.width", "sizes.*")
    assert not stands_under("report.subtotal", "total")
    assert not stands_under("total", "cost.total")
    assert not stands_under("sizes.width.inches", "sizes.*")


def test_what_nobody_accounts_for_is_told_once():
    """Given keys and listed quantities are fine; the rest is told by its path."""
    cost = Quantity("cost", "Cost", "cents", "Quantity times price.", "report", keys=("cost.total",))

    assert unexplained(PLAN, ["sizes.*"], [cost]) == ["parts.count", "report.yield"]
    assert unexplained(PLAN, ["sizes.*", "parts.count", "yield"], [cost]) == []
