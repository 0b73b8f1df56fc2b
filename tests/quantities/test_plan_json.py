"""No number of plan.json goes unaccounted for: it is what somebody wrote, or a quantity that is checked."""

from __future__ import annotations

import pytest

from scantling.measure import Display, read_length
from scantling.plan import Choice, Fitter, read_plan
from scantling.quantities import QUANTITIES
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from tests.outside.numbers import numbers, stands_under, unexplained, without_form
from tests.support.workshop import bench_data, shop_data

WRITTEN = [
    # by the author
    *("sizes.*", "steps.uses.count", "steps.needs.count"),
    # in the shop file: names that start with a size, lengths that are sold, prices, the kerf
    *("materials.item", "materials.sold", "materials.unit_price", "materials.length", "cut_list.from"),
    *("boards.stock", "boards.sold", "boards.length", "boards.width", "cutting.kerf"),
]
COUNTED_OFF = ["scantling", "steps.number", "pieces.number", "cuts.number", "from_offcuts.strip"]
"""Ordinals and the version of the format: they name, and measure nothing."""

FITTER = Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data()))


@pytest.mark.parametrize("width", ["36 in", "48 in", "72 in"])
@pytest.mark.parametrize("display", [Display(), Display(system="mm")], ids=["in", "mm"])
def test_every_number_is_written_by_somebody_or_checked(width, display):
    """At several sizes, with and without the conditional part, in both systems of units."""
    data = plan_data(report_on(FITTER, Choice({"width": read_length(width)}, {})), display)

    assert unexplained(data, [*WRITTEN, *COUNTED_OFF], QUANTITIES) == []


def test_every_key_of_a_quantity_is_in_use():
    """A key that no number stands under any more is taken off the list, so that it hides nothing later."""
    data = plan_data(report_on(FITTER), Display())
    paths = [without_form(path) for path, _ in numbers(data)]
    keys = [key for quantity in QUANTITIES for key in quantity.keys]

    assert [key for key in keys if not any(stands_under(path, key) for path in paths)] == []
