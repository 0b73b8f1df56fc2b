"""Sheets needed against published optima of two-dimensional cutting, with and without turning."""

from __future__ import annotations

from typing import Any

import pytest

from scantling.cutting import PartItem, Problem, StockItem, solve
from tests.outside.sources import checked

MAKER = 2750, 1220
"""Sheets of a maker of furniture, whose orders are the instances A1 to A43."""
ORDERS = {
    "A1": (MAKER, [(1680, 420, 6), (463, 386, 18)], 3, 3),
    "A3": (MAKER, [(2117, 475, 16), (463, 386, 1)], 8, 8),
    "A4": (MAKER, [(76, 386, 8), (2357, 375, 8)], 3, 3),
    "A6": (MAKER, [(736, 310, 16), (986, 310, 1)], 2, 2),
    "A8": (MAKER, [(486, 310, 16)], 2, 1),
    "A22": ((2550, 2100), [(431, 1001, 24)], 3, 3),
}
"""Sheet, pieces (length, width, count), sheets needed without and with turning."""
TEN = [
    *[(5, 9, 1), (4, 2, 1), (10, 6, 1), (5, 7, 1), (6, 3, 1), (10, 7, 1), (1, 5, 1), (3, 5, 1), (6, 9, 1)],
    *[(2, 4, 1), (6, 7, 1), (7, 2, 1), (8, 3, 3), (4, 10, 1), (4, 5, 1), (10, 3, 1), (7, 8, 1), (8, 7, 1)],
]
FORTY = [
    *[(18, 30, 1), (13, 5, 1), (33, 19, 1), (17, 22, 1), (18, 9, 1), (34, 24, 1), (1, 16, 1), (9, 15, 1)],
    *[(19, 31, 1), (4, 11, 1), (19, 23, 1), (24, 4, 1), (27, 9, 1), (13, 33, 1), (13, 15, 1), (34, 9, 1)],
    *[(27, 10, 1), (22, 28, 1), (26, 11, 1), (25, 25, 1)],
]
HUNDRED = [
    *[(56, 75, 1), (97, 77, 1), (62, 73, 1), (98, 84, 1), (71, 50, 1), (76, 93, 1), (83, 55, 2), (97, 88, 1)],
    *[(67, 71, 1), (64, 99, 1), (80, 89, 1), (85, 87, 1), (70, 60, 1), (57, 53, 1), (89, 85, 1), (84, 98, 1)],
    *[(85, 61, 1), (62, 70, 1), (10, 42, 1)],
]
CLASSES = {
    "cl_01_020_01": ((10, 10), TEN, 8, 7),
    "cl_03_020_01": ((40, 40), FORTY, 6, 5),
    "cl_09_020_01": ((100, 100), HUNDRED, 19, 19),
}
PROVED_IN = "H. Becker, data of a thesis on guillotine cutting (henriquebecker91/phd): proved optima"


def sheets_needed(sheet: tuple[int, int], pieces: list[tuple[int, int, int]], *, turned: bool) -> Any:
    """Return the answer for sheets that cost 1 each."""
    stock = StockItem("sheet", "sheet", *sheet, 1)
    parts = tuple(
        PartItem(f"{length} x {width}", "sheet", count, length, width, turned)
        for length, width, count in pieces
    )
    return solve(Problem("mm", 0, 3, (stock,), parts))


def both_checked(place: str) -> Any:
    """Mark a test as one of costs and bounds against a published table."""

    def mark(test: Any) -> Any:
        for quantity in ("cutting-cost", "cutting-bound"):
            test = checked(quantity=quantity, document=PROVED_IN, place=place, kind="handbook")(test)
        return test

    return mark


@both_checked("G2CSP_A.csv: orders of a furniture maker, after Macedo, Alves and Valério de Carvalho (2010)")
@pytest.mark.parametrize("turned", [False, True], ids=["grain", "turned"])
@pytest.mark.parametrize("name", ORDERS)
def test_orders_of_a_furniture_maker(name, turned):
    """As few sheets as cutting right through, in any number of stages, can do with; and proved."""
    sheet, pieces, *known = ORDERS[name]

    answer = sheets_needed(sheet, pieces, turned=turned)

    assert (answer.cost, answer.proved) == (known[turned], True)


@both_checked(
    "G2CSP_CLASS.csv: classes 1 and 3 of Berkey and Wang (1987), class 9 of Martello and Vigo (1998)"
)
@pytest.mark.parametrize("turned", [False, True], ids=["grain", "turned"])
@pytest.mark.parametrize("name", CLASSES)
def test_classic_instances_of_twenty_pieces(name, turned):
    """As few sheets as any number of stages can do with, and no bound above that."""
    sheet, pieces, *known = CLASSES[name]

    answer = sheets_needed(sheet, pieces, turned=turned)

    assert answer.cost == known[turned]
    assert answer.bound <= known[turned]
