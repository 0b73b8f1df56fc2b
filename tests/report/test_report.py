"""The report on a fitted plan: what to buy, what it weighs, where each piece comes from."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import Display, Length, Money, read_length
from scantling.plan import Choice, Fitter, read_plan
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data, with_part

FITTER = Fitter(read_plan(bench_data(), "bench"), read_shop(shop_data()))


def at(width: str) -> Choice:
    """Return a choice of the bench's width."""
    return Choice({"width": read_length(width)}, {})


def test_every_blank_is_cut_once():
    """Each part's blanks, layers counted one by one, lie on the boards or on offcut strips, none twice."""
    report = report_on(FITTER)

    cut = {}
    for origin in report.origins:
        cut[origin.part.id] = cut.get(origin.part.id, 0) + origin.count

    assert cut == {"leg": 8, "side strip": 4, "top": 1, "rail": 2}


def test_the_cost_is_the_sum_of_its_lines():
    """Quantities times unit prices add up to the total, wood and wares together."""
    report = report_on(FITTER)

    assert (
        sum(line.quantity * line.unit_price.cents for line in report.materials.lines)
        == report.totals.cost.cents
    )
    assert report.totals.wood_cost == report.cutting.cost


def test_screws_are_bought_by_the_box():
    """Eight pocket screws are one box of a hundred."""
    screws = next(line for line in report_on(FITTER).materials.wares if "screw" in line.ware.key)

    assert (screws.quantity, screws.needed, screws.cost) == (1, 8, Money(840))
    assert screws.why == "rail to leg"


def test_banding_is_bought_by_the_roll():
    """A 48 in by 14 in top has 124 in of edges: two rolls of 8 ft."""
    tape = next(line for line in report_on(FITTER).materials.wares if line.ware.key == "edge tape")

    assert tape.length == Length(124)
    assert tape.quantity == 2


def test_finish_is_bought_by_what_it_covers():
    """The cans cover twice the surface of all parts, and one can less would not."""
    report = report_on(FITTER)
    oil = next(line for line in report.materials.wares if line.ware.key == "exterior oil")

    surface = sum(
        2
        * part.count
        * (part.length * part.width + part.length * part.thick + part.width * part.thick).square_inches
        for part in report.fitted.parts
    )
    assert oil.area.square_inches == 2 * surface
    assert (oil.quantity - 1) * 10 * 144 < 2 * surface <= oil.quantity * 10 * 144


def test_side_strips_come_from_the_legs():
    """A part marked as coming from an offcut costs nothing and says where it comes from."""
    report = report_on(FITTER)
    data = plan_data(report, Display())

    assert {"letter": "B", "part": "side strip", "count": 4, "from": "4 from the offcuts of leg"} in data[
        "trace"
    ]
    assert not any(piece.part.id == "side strip" for board in report.cutting.boards for piece in board.pieces)


def test_what_does_not_fit_the_offcuts_is_bought():
    """Strips too many for the offcuts come from the stock named beside, and the trace says which."""
    fitter = Fitter(
        read_plan(with_part("side strip", count="12", from_="1x2", thick="1/2 in", width="1 in"), "bench"),
        FITTER.shop,
    )

    origins = {
        words["from"]
        for words in plan_data(report_on(fitter), Display())["trace"]
        if words["part"] == "side strip"
    }
    assert len(origins) == 1 or any("1x2" in words for words in origins)
    assert sum(origin.count for origin in report_on(fitter).origins if origin.part.id == "side strip") == 12


def test_too_many_for_the_offcuts_is_a_fault_where_nothing_else_is_named():
    """The fault counts what does not fit and names the field."""
    fitter = Fitter(read_plan(with_part("side strip", count="40"), "bench"), FITTER.shop)

    with pytest.raises(Faulty) as raised:
        report_on(fitter)

    assert [fault.code for fault in raised.value.faults] == ["offcut-too-small"]
    assert raised.value.faults[0].place.path == ("parts", "side strip", "from offcut of")


def test_weight_is_none_where_a_wood_is_not_known():
    """No weight is guessed: a stock without a wood leaves the total open."""
    shop = shop_data()
    del shop["lumber"]["1x6"]["wood"]
    report = report_on(Fitter(FITTER.plan, read_shop(shop)))

    assert report.totals.weight is None
    assert report_on(FITTER).totals.weight is not None


@given(st.integers(min_value=30 * 16, max_value=72 * 16))
def test_the_yield_is_a_share(sixteenths):
    """At any width the blanks are more than nothing and no more than what is bought."""
    report = report_on(FITTER, Choice({"width": Length(Fraction(sixteenths, 16))}, {}), steps=2_000)

    assert 0 < report.totals.yield_ <= 1
    assert report.cutting.bound <= report.cutting.cost


def test_plan_data_is_the_same_every_time():
    """The same plan at the same size gives the same bytes."""
    texts = {json.dumps(plan_data(report_on(FITTER, at("60 in")), Display())) for _ in range(2)}

    assert len(texts) == 1


def test_sheet_thickness_is_not_rounded_to_its_name():
    """23/32 in stays 23/32 in where lengths are shown to 1/16 in."""
    top = next(part for part in plan_data(report_on(FITTER), Display())["cut_list"] if part["part"] == "top")

    assert top["thick"] == {"in": "23/32", "text": "23/32 in"}
