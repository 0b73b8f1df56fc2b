"""What a change of prices did to prices and plans."""

from __future__ import annotations

import json
from itertools import pairwise

import pytest

from scantling.measure import Length, Money
from scantling.plan import Fitter, read_plan
from scantling.report import (
    PriceRecord,
    compare,
    cost_by_size,
    main_size,
    price_words,
    prices_of,
    record_prices,
    report_on,
)
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data


def shop_with(day: str, **prices: str):
    """Return the shop on a day, with other prices for 2x4 (`two_by_four_8`) or glue (`glue`)."""
    data = shop_data(**{"prices of": day})
    if "two_by_four_8" in prices:
        data["lumber"]["2x4"]["lengths"]["8 ft"] = prices["two_by_four_8"]
    if "glue" in prices:
        data["hardware"]["wood glue"]["price"] = prices["glue"]
    return read_shop(data)


def record(shop, last=None) -> PriceRecord:
    """Return the record of a shop with one plan."""
    return record_prices(shop, [report_on(Fitter(read_plan(bench_data(), "bench"), shop))], last)


FIRST = record(shop_with("2026-09-01"))


def test_nothing_changed():
    """The same prices on another day change nothing."""
    report = compare(FIRST, record(shop_with("2026-10-01"), FIRST))

    assert report.prices == ()
    assert report.plans == ()
    assert price_words(report)[0] == "No price has changed since 2026-09-01."


def test_a_price_keeps_the_day_since_which_it_is_that():
    """Only what changed gets the new day."""
    after = record(shop_with("2026-10-01", glue="7.00"), FIRST)

    assert after.prices["wood glue"].since == "2026-10-01"
    assert after.prices["2x4 | 8 ft"].since == "2026-09-01"


def test_a_plan_moves_by_what_its_materials_move():
    """Glue that is 1.00 dearer makes a plan with one bottle 1.00 dearer."""
    report = compare(FIRST, record(shop_with("2026-10-01", glue="7.00"), FIRST))

    assert [(plan.slug, plan.difference) for plan in report.plans] == [("bench", Money(100))]


def test_a_plan_that_buys_differently_is_told():
    """Where 8 ft boards got dear, the plan buys the 10 ft ones."""
    report = compare(FIRST, record(shop_with("2026-10-01", two_by_four_8="9.00"), FIRST))

    bought = {name: (before, after) for name, before, after in report.plans[0].buys_differently()}
    assert bought["2x4 | 8 ft"][1] < bought["2x4 | 8 ft"][0]
    assert bought["2x4 | 10 ft"][1] > bought["2x4 | 10 ft"][0]


@pytest.mark.parametrize(
    ("price", "words"),
    [
        ("60.00", "about ten times more"),
        ("47.40", "about ten times more"),
        ("0.06", "about a hundred times less"),
        ("600", "hundred times more"),
    ],
)
def test_slips_are_seen(price, words):
    """Tenfold and hundredfold changes look mistyped."""
    report = compare(FIRST, record(shop_with("2026-10-01", glue=price), FIRST))

    assert words in report.slips[0].slip


def test_an_honest_rise_is_no_slip():
    """A third dearer is the market, not the keyboard."""
    assert compare(FIRST, record(shop_with("2026-10-01", glue="8.00"), FIRST)).slips == ()


def test_what_is_no_longer_sold_names_its_buyers():
    """A sale that is gone is told with the plans that bought it."""
    data = shop_data(**{"prices of": "2026-10-01"})
    del data["lumber"]["1x6"]["lengths"]["8 ft"]
    report = compare(FIRST, record(read_shop(data), FIRST))

    assert dict(report.no_longer_sold) == {"1x6 | 8 ft": ("bench",)}


def test_a_record_survives_being_written():
    """What is read from the written record is the record."""
    after = record(shop_with("2026-10-01", glue="7.00"), FIRST)

    assert PriceRecord.from_data(json.loads(json.dumps(after.to_data()))) == after
    assert list(after.history) == ["2026-09-01", "2026-10-01"]


def test_every_price_of_the_shop_is_in_the_record():
    """The record lists what the shop file lists, no more and no less."""
    assert set(FIRST.prices) == set(prices_of(shop_with("2026-09-01")))


def test_cost_by_size_steps_up_with_the_boards():
    """The chart runs over the whole range, and each sweet spot stands right before a rise."""
    fitter = Fitter(read_plan(bench_data(), "bench"), shop_with("2026-09-01"))
    chart = cost_by_size(fitter, main_size(fitter))

    assert (chart.points[0].value, chart.points[-1].value) == (Length(30), Length(72))
    after = {here.value: following.cost for here, following in pairwise(chart.points)}
    assert chart.sweet_spots
    for spot in chart.sweet_spots:
        assert after[spot.value] - spot.cost == spot.rise > Money(0)


def test_a_record_remembers_what_was_before_the_last_change():
    """The state before a change is kept until the next change, however often the catalog is built."""
    changed = record(shop_with("2026-10-01", glue="7.00"), FIRST)
    built_again = record(shop_with("2026-10-01", glue="7.00"), changed)

    assert changed.before.prices == FIRST.prices
    assert built_again.before == changed.before
    assert changed.before.before is None
