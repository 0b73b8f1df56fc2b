"""Nominal and actual sizes against the published standards."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.measure import Length
from scantling.shop import actual_size, nominal_size
from scantling.source import read_catalog
from tests.conftest import ROOT
from tests.outside.sources import checked

DRESSED = """
1x2 3/4 1-1/2
1x3 3/4 2-1/2
1x4 3/4 3-1/2
1x6 3/4 5-1/2
1x8 3/4 7-1/4
1x10 3/4 9-1/4
1x12 3/4 11-1/4
5/4x4 1 3-1/2
5/4x6 1 5-1/2
2x2 1-1/2 1-1/2
2x3 1-1/2 2-1/2
2x4 1-1/2 3-1/2
2x6 1-1/2 5-1/2
2x8 1-1/2 7-1/4
2x10 1-1/2 9-1/4
2x12 1-1/2 11-1/4
4x4 3-1/2 3-1/2
4x6 3-1/2 5-1/2
4x8 3-1/2 7-1/4
6x6 5-1/2 5-1/2
"""
"""Nominal size, minimum dressed dry thickness and width in inches."""
PANELS = ("1/4", "11/32", "3/8", "7/16", "15/32", "1/2", "19/32", "5/8", "23/32", "3/4", "13/16")
"""Performance categories up to 13/16, in inches; each allows 1/32 in more or less."""


def inches(text: str) -> Length:
    """Return `1-1/2` as a length."""
    return Length.of_inches(sum((Fraction(word) for word in text.split("-")), Fraction(0)))


@checked(
    quantity="actual-size",
    document="PS 20-20, American Softwood Lumber Standard",
    place="minimum dressed dry sizes of boards, dimension lumber and timbers",
    kind="standard",
)
@pytest.mark.parametrize("row", DRESSED.split("\n")[1:-1])
def test_lumber_measures_what_the_standard_says(row):
    """A nominal size has the standard's dressed dry thickness and width."""
    name, thick, wide = row.split()

    assert actual_size(nominal_size(name)) == (inches(thick), inches(wide))


@checked(
    quantity="panel-size",
    document="PS 1, Structural Plywood",
    place="tolerance of 1/32 in for performance categories up to 13/16, in APA's table of the standard",
    kind="standard",
)
def test_the_demo_shop_sells_plywood_of_a_thickness_that_the_standard_allows():
    """Each plywood sheet of the demo shop is as thick as one of the categories next to its name allows."""
    shop = read_catalog(ROOT / "plans").shop
    sheets = [stock for stock in shop.stocks.values() if stock.is_sheet and "plywood" in stock.key]

    assert sheets
    for sheet in sheets:
        off = min(abs(sheet.thick.inches - Fraction(category)) for category in PANELS)
        assert off <= Fraction(1, 32), sheet.key


@checked(
    quantity="panel-size",
    document="PS 1, Structural Plywood",
    place="panel length and width: 4 ft by 8 ft; tolerance +0, -1/16 in",
    kind="standard",
)
def test_a_full_sheet_is_four_by_eight_feet():
    """The demo shop's full sheet is 48 in by 96 in."""
    shop = read_catalog(ROOT / "plans").shop
    full = {
        sale.length * sale.width for stock in shop.stocks.values() if stock.is_sheet for sale in stock.sales
    }

    assert Length(96) * Length(48) in full
