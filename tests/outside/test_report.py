"""Sums of the report against trade rules, handbook densities and a library's arithmetic."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import numpy as np
import pint
import pytest

from scantling.plan import Fitter, read_plan
from scantling.report import report_on, stock_density
from scantling.shop import read_shop
from tests.outside.sources import checked
from tests.support.workshop import bench_data, shop_data

NUMPY = f"numpy {np.__version__.split('.')[0]}"


def buying(stock: str, size: str, price: str = "1.00", wood: str = "spruce-pine-fir"):
    """Return the report on a plan that takes one whole board."""
    shop = {"kerf": "1/8 in", "lumber": {stock: {"wood": wood, "lengths": {size: price}}}}
    plan = {"title": "One board", "parts": {"board": {"from": stock, "length": size}}}
    return report_on(Fitter(read_plan(plan, "one"), read_shop(shop)))


@checked(
    quantity="board-feet-nominal",
    document="US Navy training manual Engineering Aid Basic",
    place="section 6, board measure: 2 x 4 x 14 ft",
    kind="handbook",
)
@checked(
    quantity="board-feet-nominal",
    document="Worked examples of a sawmill's and a furniture maker's board-foot pages",
    place="3x8 10 ft is 20, 1x12 10 ft is 10, 1x3 8 ft is 2 board feet",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("stock", "size", "published"),
    [("2x4", "14 ft", Fraction(28, 3)), ("3x8", "10 ft", 20), ("1x12", "10 ft", 10), ("1x3", "8 ft", 2)],
)
def test_nominal_board_feet(stock, size, published):
    """A whole board counts the board feet that the example prints."""
    assert buying(stock, size).totals.board_feet_nominal == published


@checked(
    quantity="board-feet-actual",
    document="pint",
    place="0.24 or newer, unit board_foot, of the dressed volume",
    kind="library",
)
@pytest.mark.parametrize(
    ("stock", "dressed"), [("2x4", (1.5, 3.5)), ("1x6", (0.75, 5.5)), ("4x4", (3.5, 3.5))]
)
def test_actual_board_feet(stock, dressed):
    """The volume of the boards as they are is what a units library makes of it."""
    units = pint.UnitRegistry()
    volume = dressed[0] * units.inch * dressed[1] * units.inch * 8 * units.foot

    ours = buying(stock, "8 ft").totals.board_feet

    assert float(ours) == pytest.approx(volume.to(units.board_foot).magnitude)


@checked(quantity="linear-feet", document="pint", place="0.24 or newer, inch to foot", kind="library")
def test_linear_feet():
    """Boards end to end are what a units library adds up."""
    units = pint.UnitRegistry()
    report = report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))
    boards = [line for line in report.materials.stocks if not line.stock.is_sheet]

    added = sum(
        (float(line.sale.length.inches) * line.quantity * units.inch for line in boards), 0 * units.inch
    )

    assert float(report.totals.linear_feet.feet) == pytest.approx(added.to(units.foot).magnitude)


@checked(
    quantity="sheet-area",
    document="Common practice",
    place="a 4 x 8 sheet is 32 square feet",
    kind="common practice",
)
def test_sheet_area():
    """One full sheet is 32 sq ft."""
    shop = {"kerf": "1/8 in", "sheets": {"panel": {"thick": "1/2 in", "sizes": {"4 ft x 8 ft": "50"}}}}
    plan = {"title": "One sheet", "parts": {"board": {"from": "panel", "length": "90 in", "width": "40 in"}}}
    report = report_on(Fitter(read_plan(plan, "one"), read_shop(shop)))

    assert (report.totals.sheets, report.totals.sheet_area.square_feet) == (1, 32)


@checked(
    quantity="weight",
    document="National Design Specification for Wood Construction 2018, Table 12.3.3A and Supplement 3.1.3",
    place="density at 12 % moisture of the species groups, from the ovendry specific gravity",
    kind="standard",
)
@pytest.mark.parametrize(
    ("wood", "published"),
    [
        ("spruce-pine-fir", "28.0793"),
        ("douglas fir-larch", "33.1537"),
        ("southern pine", "36.2832"),
        ("hem-fir", "28.7182"),
        ("western cedar", "24.2181"),
    ],
)
def test_weight_of_a_species_group(wood, published):
    """An 8 ft 2x4 of a group weighs its volume times the published density."""
    cubic_feet = Fraction(3, 2) * Fraction(7, 2) * 96 / 1728

    weight = buying("2x4", "8 ft", wood=wood).totals.weight

    assert abs(weight.pounds - cubic_feet * Fraction(published)) < Fraction(1, 1000)


@checked(
    quantity="weight",
    document="FPL-GTR-190, Wood Handbook (2010)",
    place="Table 5-3, specific gravity at 12 % moisture; weight 62.4 G (1 + 12/100)",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("wood", "gravity"), [("northern red oak", "0.63"), ("black walnut", "0.55"), ("sugar maple", "0.63")]
)
def test_weight_of_a_species(wood, gravity):
    """A species' density follows from its specific gravity by volume at 12 % moisture."""
    shop = read_shop({"kerf": "0 in", "lumber": {"1x6": {"wood": wood, "lengths": {"8 ft": "1"}}}})

    density = stock_density(shop.stocks["1x6"])

    assert density.pounds_per_cubic_foot == Fraction("62.4") * Fraction(gravity) * Fraction("1.12")


@checked(quantity="yield", document="numpy", place=f"{NUMPY} or newer, dot product of areas", kind="library")
def test_yield():
    """The share of wood used is a ratio of volumes summed by a numeric library."""
    report = report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))
    boards = report.cutting.boards
    bought = np.dot(
        [float((board.sale.length * board.sale.width).square_inches) for board in boards],
        [float(board.stock.thick.inches) for board in boards],
    )
    pieces = [(piece, board) for board in boards for piece in board.pieces]
    used = np.dot(
        [float((piece.length * piece.width).square_inches) for piece, _ in pieces],
        [float(board.stock.thick.inches) for _, board in pieces],
    )

    assert float(report.totals.yield_) == pytest.approx(used / bought)


@checked(
    quantity="cost",
    document="Python's decimal module",
    place="exact decimal arithmetic of prices as printed",
    kind="library",
)
def test_cost():
    """The total is the decimal sum of printed prices times quantities."""
    report = report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))
    printed = {
        **{
            f"{key} | {size}": price
            for key, row in shop_data()["lumber"].items()
            for size, price in row["lengths"].items()
        },
        **{
            f"{key} | {size}": price
            for key, row in shop_data()["sheets"].items()
            for size, price in row["sizes"].items()
        },
        **{key: row["price"] for shelf in ("hardware", "finish") for key, row in shop_data()[shelf].items()},
    }
    lines = [(line.sale.id, line.quantity) for line in report.materials.stocks]
    lines += [(line.ware.key, line.quantity) for line in report.materials.wares]

    total = sum((Decimal(printed[name]) * quantity for name, quantity in lines), Decimal(0))

    assert Decimal(report.totals.cost.cents) / 100 == total
