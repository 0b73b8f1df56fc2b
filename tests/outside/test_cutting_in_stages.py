"""Least costs of rips and sheets against an integer programme over everything that three stages can cut."""

from __future__ import annotations

import random
from typing import Any

import pytest

from scantling.cutting import Problem, solve
from tests.outside.sources import checked
from tests.support.three_stages import least_cost

PIECES = 6


def few_pieces(seed: int, *, rips: bool) -> dict[str, Any]:
    """Return a problem of six pieces: strips of a board with its grain, or parts of a sheet that may turn."""
    rng = random.Random(seed)
    width = rng.randint(8, 14) if rips else rng.randint(20, 60)
    stock = [_stock("long", rng.randint(60, 100), width, rng.randint(50, 100))]
    if rng.random() < 0.8:
        narrow = width if rips else rng.randint(15, width)
        stock.append(_stock("short", rng.randint(30, 60), narrow, rng.randint(25, 60)))
    parts: list[dict[str, Any]] = []
    while (left := PIECES - sum(part["count"] for part in parts)) > 0:
        parts.append(
            {
                "id": f"part {len(parts)}",
                "from": "stock",
                "count": min(left, rng.choice((1, 1, 2))),
                "length": rng.randint(8, 45),
                "width": rng.randint(2, width) if rips else rng.randint(4, min(width, 25)),
                "grain": "length" if rips else rng.choice(("length", "any")),
            }
        )
    return {"unit": "1/8 in", "kerf": rng.choice((0, 1, 2)), "stages": 3, "stock": stock, "parts": parts}


def _stock(name: str, length: int, width: int, price: int) -> dict[str, Any]:
    return {"id": name, "family": "stock", "length": length, "width": width, "price": price}


def both_checked(test: Any) -> Any:
    """Mark a test as one of costs and bounds against the integer programme."""
    place = "milp, over every set of pieces that a board gives in three stages of cuts"
    for quantity in ("cutting-cost", "cutting-bound"):
        test = checked(quantity=quantity, document="scipy (HiGHS)", place=place, kind="library")(test)
    return test


@both_checked
@pytest.mark.parametrize("seed", range(8))
@pytest.mark.parametrize("rips", [True, False], ids=["rips", "sheets"])
def test_no_way_of_cutting_a_few_pieces_costs_less(seed, rips):
    """The cost is the least that there is, and the bound never claims that more is needed."""
    data = few_pieces(seed, rips=rips)
    least = least_cost(data)

    answer = solve(Problem.from_data(data))

    assert answer.cost == least
    assert answer.bound <= least
