"""What is counted off for a plan, against sums that anybody does in the yard."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.plan import Fitter, read_plan
from scantling.report import report_on
from scantling.shop import read_shop
from tests.outside.sources import checked
from tests.support.workshop import bench_data, shop_data


@pytest.fixture(scope="module")
def report():
    """Return the report on the bench at its usual size."""
    return report_on(Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data())))


@checked(quantity="counts", place="four legs of two layers are eight pieces to cut", kind="common practice")
def test_layers_are_counted(report):
    """A part that is glued up from two layers takes two pieces each time."""
    leg = next(part for part in report.fitted.parts if part.id == "leg")

    assert leg.count == 4
    assert leg.blank.pieces * leg.count == 8


@checked(quantity="counts", place="four joints with two screws each take eight", kind="common practice")
def test_fasteners_are_counted(report):
    """Fasteners are joints times the screws of one joint."""
    (join,) = report.fitted.joins

    assert (join.joints, join.fasteners) == (4, 8)


@checked(
    quantity="blank-size",
    place="a leg of 17 1/2 in less a top of 23/32 in, cut 1/2 in long, is cut at 17 9/32 in",
    kind="common practice",
)
def test_a_blank_is_cut_long_by_what_is_trimmed_later(report):
    """Length of the part and the allowance add up."""
    leg = next(part for part in report.fitted.parts if part.id == "leg")

    assert leg.length.inches == Fraction("17.5") - Fraction(23, 32)
    assert leg.blank.along.inches == 17 + Fraction(9, 32)


@checked(
    quantity="quantity-to-buy",
    place="eight screws are one box of 100; 124 in of edges are two rolls of 8 ft",
    kind="common practice",
)
def test_things_are_bought_whole(report):
    """What is needed is rounded up to whole boxes and rolls."""
    bought = {line.ware.key: line.quantity for line in report.materials.wares}

    assert bought["pocket screw 1 1/4 in"] == 1
    assert bought["edge tape"] == 2
