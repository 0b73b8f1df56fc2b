"""What small problems are held against does find the least cost."""

from __future__ import annotations

from tests.support.three_stages import least_cost

QUARTER = {"id": "quarter", "from": "stock", "count": 4, "length": 10, "width": 5, "grain": "length"}
SHEET = {"id": "sheet", "family": "stock", "length": 20, "width": 10, "price": 7}
PROBLEM = {"unit": "1 in", "kerf": 0, "stages": 3, "stock": [SHEET], "parts": [QUARTER]}


def test_four_quarters_take_one_sheet_and_five_take_two() -> None:
    """Without a kerf nothing is lost."""
    assert least_cost(PROBLEM) == 7
    assert least_cost({**PROBLEM, "parts": [{**QUARTER, "count": 5}]}) == 14


def test_a_kerf_leaves_one_quarter_a_sheet() -> None:
    """Two of them are a kerf too long either way."""
    assert least_cost({**PROBLEM, "kerf": 1, "parts": [{**QUARTER, "count": 2}]}) == 14


def test_stages_are_counted() -> None:
    """Two pieces of one length and a third beside them want a second stage."""
    parts = [QUARTER | {"count": 2}, {**QUARTER, "id": "half", "count": 1, "length": 20}]

    assert least_cost({**PROBLEM, "parts": parts}) == 7
    assert least_cost({**PROBLEM, "parts": parts, "stages": 1}) == 14
