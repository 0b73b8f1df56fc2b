"""Numbers in a document that nobody accounts for are found."""

from __future__ import annotations

from scantling.quantities import Quantity
from tests.outside.numbers import numbers, stands_under, unexplained

PLAN = {
    "title": "Bench for the harbour wall",
    "sizes": {"width": "48 in", "depth": 14},
    "parts": [{"id": "leg", "count": 4, "glued": True}, {"id": "2x4 rail", "count": 2}],
    "report": {"cost": {"total": 1850}, "yield": "3/4", "note": "cut 4 boards", "weight": "≈ 20 1/2 lb"},
}


def test_numbers_are_found_wherever_they_stand():
    """Numbers count, in text too, with a unit or without; truth values and words with digits do not."""
    assert list(numbers(PLAN)) == [
        ("sizes.width", "48 in"),
        ("sizes.depth", 14),
        ("parts.count", 4),
        ("parts.count", 2),
        ("report.cost.total", 1850),
        ("report.yield", "3/4"),
        ("report.weight", "≈ 20 1/2 lb"),
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

    assert unexplained(PLAN, ["sizes.*"], [cost]) == ["parts.count", "report.yield", "report.weight"]
    assert unexplained(PLAN, ["sizes.*", "parts.count", "yield", "weight"], [cost]) == []


def test_a_number_in_several_forms_is_one_number():
    """An exact length and the length as shown stand together under one key."""
    data = {"leg": {"length": {"in": "16 25/32", "text": "16 13/16 in"}}}

    assert unexplained(data, [], []) == ["leg.length"]
    assert unexplained(data, ["leg.length"], []) == []
