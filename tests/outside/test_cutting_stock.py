"""Least costs and bounds against worked examples of the cutting-stock problem."""

from __future__ import annotations

import pytest

from scantling.cutting import PartItem, Problem, StockItem, solve
from tests.outside.sources import checked

PAPER = dict(
    zip(
        [2200, 2150, 2140, 2100, 2050, 2000, 1930, 1880, 1820, 1710, 1560, 1520, 1380],
        [20, 18, 16, 14, 12, 10, 20, 18, 18, 14, 12, 25, 22],
        strict=True,
    )
)
CHVATAL = {45: 97, 36: 610, 31: 395, 14: 211}
AMPL = {20: 48, 45: 35, 50: 24, 55: 10, 75: 8}
SEVERAL = {
    **dict.fromkeys([99, 95, 92, 83, 79, 71, 66, 63, 55, 54, 50, 40, 38, 36, 33, 32, 29, 24, 17, 14, 10], 1),
    **dict.fromkeys([77, 19], 2),
}


def least(pieces: dict[int, int], stock: dict[int, int]):
    """Return the cutting plan for pieces (length: count) from stock (length: price), with no kerf."""
    return solve(
        Problem(
            unit="mm",
            kerf=0,
            stages=1,
            stock=tuple(StockItem(f"s{length}", "roll", length, 1, price) for length, price in stock.items()),
            parts=tuple(PartItem(f"p{length}", "roll", count, length, 1) for length, count in pieces.items()),
        )
    )


@checked(
    quantity="cutting-bound",
    document="V. Chvátal, Linear Programming (1983)",
    place="chapter 13, rolls of 100: 453, with 452.25 for the linear programme (attribution from memory)",
    kind="from memory",
)
@checked(
    quantity="cutting-cost",
    document="VPSolver, example of bin packing in several sizes",
    place="examples/vpsolver/example_vsbpp.py: least cost 1280",
    kind="handbook",
)
@checked(
    quantity="cutting-bound",
    document="VPSolver, example of bin packing in several sizes",
    place="examples/vpsolver/example_vsbpp.py: least cost 1280",
    kind="handbook",
)
@checked(
    quantity="cutting-cost",
    document="The usual worked example of the cutting-stock problem: one 5,600 mm roll, 13 widths",
    place="73 rolls",
    kind="from memory",
)
@checked(
    quantity="cutting-cost",
    document="R. Fourer, D. M. Gay, B. W. Kernighan, AMPL",
    place="the cutting-stock example, rolls of 110: 47",
    kind="from memory",
)
@pytest.mark.parametrize(
    ("pieces", "stock", "known"),
    [
        pytest.param(PAPER, {5600: 1}, 73, id="paper"),
        pytest.param(CHVATAL, {100: 1}, 453, id="chvatal"),
        pytest.param(AMPL, {110: 1}, 47, id="ampl"),
        pytest.param(SEVERAL, {100: 100, 120: 120, 150: 150}, 1280, id="several lengths"),
    ],
)
def test_published_examples_are_solved_at_their_least_cost(pieces, stock, known):
    """The cost is the published one, and the bound never claims that more is needed."""
    answer = least(pieces, stock)

    assert answer.bound <= known
    assert answer.cost == known
