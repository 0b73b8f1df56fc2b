"""The cuts in `plan.json`: whoever makes them one after another holds the pieces in the end."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.measure import Display, read_length
from scantling.plan import Choice, Fitter, read_plan
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data

KERF = Fraction(1, 8)
Rectangle = tuple[Fraction, Fraction, Fraction, Fraction]


def rectangle(data: dict) -> Rectangle:
    """Return where something lies on its board: x, y, length, width in inches."""
    return tuple(inches(data[key]["in"]) for key in ("x", "y", "length", "width"))


def inches(words: str) -> Fraction:
    """Return the inches of "35 1/2"."""
    return sum((Fraction(word) for word in words.split()), Fraction(0))


def sawn(board: dict) -> set[Rectangle]:
    """Return what lies on the bench after every cut of a board, knowing only their settings."""
    lying = {(Fraction(0), Fraction(0), inches(board["length"]["in"]), inches(board["width"]["in"]))}
    for cut in board["cuts"]:
        panel = rectangle(cut)
        lying.remove(panel)
        x, y, length, width = panel
        at = inches(cut["setting"]["in"])
        if cut["kind"] == "rip":
            parts = (x, y, length, at), (x, y + at + KERF, length, width - at - KERF)
        else:
            parts = (x, y, at, width), (x + at + KERF, y, length - at - KERF, width)
        lying |= {part for part in parts if min(part[2:]) > 0}
    return lying


@pytest.mark.parametrize("width", ["36 in", "48 in", "72 in"])
@pytest.mark.parametrize("trim", ["", "1/16 in", "1/2 in"])
def test_making_the_cuts_gives_the_pieces(width, trim):
    """Each cut parts what lies there from the cuts before it; pieces and kept offcuts are what remains."""
    shop = shop_data()
    if trim:
        shop["lumber"]["2x4"]["trim ends"] = trim
    fitter = Fitter(read_plan(bench_data(), "bench"), read_shop(shop))
    data = plan_data(report_on(fitter, Choice({"width": read_length(width)}, {})), Display())

    boards = data["cutting"]["boards"]
    assert sum(len(board["cuts"]) for board in boards) > len(boards)
    for board in boards:
        assert {rectangle(one) for one in (*board["pieces"], *board["offcuts"])} <= sawn(board)
        assert [cut["number"] for cut in board["cuts"]] == list(range(1, len(board["cuts"]) + 1))
