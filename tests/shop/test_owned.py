"""Reading what a reader has at home."""

from __future__ import annotations

import pytest

from scantling.measure import Length
from scantling.shop import read_owned, read_shop
from tests.support.workshop import shop_data

FOOT = 12


@pytest.fixture(scope="module")
def shop():
    """Return the small shop."""
    return read_shop(shop_data())


@pytest.mark.parametrize(
    ("text", "count", "stock", "sides"),
    [
        ("six 2x4 8 ft", 6, "2x4", (8 * FOOT,)),
        ("6 2x4 8 ft", 6, "2x4", (8 * FOOT,)),
        ("6 × 2x4, 8 ft".replace(",", ""), 6, "2x4", (8 * FOOT,)),
        ("a board of 2x4 96 in", 1, "2x4", (96,)),
        ("2x4 2400 mm", 1, "2x4", None),
        ("1 sheet 3/4 plywood", 1, "3/4 plywood", (96, 48)),
        ("3/4 plywood", 1, "3/4 plywood", (96, 48)),
        ("two pieces of 3/4 plywood 30 in x 20 in", 2, "3/4 plywood", (30, 20)),
    ],
)
def test_a_line_says_how_many_of_what_and_how_large(shop, text, count, stock, sides):
    """In figures or words, with a size or a whole sheet."""
    owned, faults = read_owned(text, shop)

    assert faults == ()
    (one,) = owned
    assert (one.count, one.stock) == (count, stock)
    if sides is not None:
        assert (one.length, one.width)[: len(sides)] == tuple(Length(side) for side in sides)


def test_lines_and_commas_part_a_list(shop):
    """What is right is kept beside what is not."""
    owned, faults = read_owned("1 3/4 plywood, 2x5 8 ft\nmany 2x4 8 ft; 2x4\n3 2x4 8 ft", shop)

    assert [(one.stock, one.count) for one in owned] == [("3/4 plywood", 1), ("2x4", 3)]
    assert [fault.code for fault in faults] == ["unknown-stock", "not-a-count", "not-a-size"]
    assert "2x4" in faults[0].help


@pytest.mark.parametrize(
    "text", ["", " \n , ;", "x" * 5000, "9" * 400 + " 2x4 8 ft", "2x4 0 in", "2x4 -8 ft"]
)
def test_nothing_breaks_it(shop, text):
    """Nothing, nonsense, and sizes that are none: no piece, and never an error."""
    owned, _ = read_owned(text, shop)

    assert owned == ()
