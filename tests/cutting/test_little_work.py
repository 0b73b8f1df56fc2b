"""However little work is allowed, there is an answer."""

from __future__ import annotations

import pytest

from scantling.cutting import Problem, solve
from tests.tools.verify_cuts import verify

SHEETS = [
    {"id": "sheet", "family": "ply", "length": 768, "width": 384, "price": 5000},
    {"id": "half", "family": "ply", "length": 384, "width": 384, "price": 2900},
]


@pytest.mark.parametrize("steps", [1, 1_000, 20_000])
@pytest.mark.parametrize("count", [1, 20, 40])
def test_little_work_gives_an_answer_all_the_same(steps: int, count: int) -> None:
    """Few copies or many: all are cut, from whole sheets first where there is work for that."""
    parts = [
        {"id": "side", "from": "ply", "count": count, "length": 300, "width": 150, "grain": "length"},
        {"id": "shelf", "from": "ply", "count": count, "length": 211, "width": 90, "grain": "any"},
    ]
    data = {"unit": "1/8 in", "kerf": 1, "stages": 3, "stock": SHEETS, "parts": parts}

    verify(data, solve(Problem.from_data(data), steps=steps).to_data())
