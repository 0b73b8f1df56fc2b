"""A reader's own shop."""

from __future__ import annotations

import pytest

from scantling.fault import Severity
from scantling.measure import Length, Money
from scantling.plan import Fitter, read_plan
from scantling.report import report_on
from scantling.shop import MyShop, read_my_shop, read_shop, shop_of
from tests.support.workshop import bench_data, shop_data

SHOP = read_shop(shop_data())


def mine(**said):
    """Return the shop as a reader with these settings finds it, and the codes of what was left out."""
    settings, faults = read_my_shop({key.replace("_", " "): value for key, value in said.items()})
    shop, odd = shop_of(SHOP, settings)
    assert all(fault.severity is Severity.WARNING for fault in (*faults, *odd))
    return shop, [fault.place.path for fault in (*faults, *odd)]


def test_nothing_said_changes_nothing():
    """Without settings it is the author's shop."""
    assert mine() == (SHOP, [])
    assert read_my_shop(None) == (MyShop(), ())


def test_prices_and_kerf_take_the_place_of_the_authors():
    """A price is of a sale or of a ware; the kerf is the reader's saw's."""
    shop, left_out = mine(kerf="3/32 in", prices={"2x4 | 8 ft": "3.99", "wood glue": "1"})

    assert shop.kerf == Length.of_inches(1) * 3 / 32
    assert [sale.price for sale in shop.stocks["2x4"].sales] == [Money(399), Money(598)]
    assert shop.wares["wood glue"].price == Money(100)
    assert left_out == []


def test_what_the_store_does_not_carry_is_not_bought():
    """A sale that is left out is gone; another of the same stock stays."""
    shop, _ = mine(left_out=["2x4 | 8 ft"])

    assert [sale.label for sale in shop.stocks["2x4"].sales] == ["10 ft"]


def test_what_the_car_does_not_take_is_not_bought():
    """Boards longer than the car takes are not carried home."""
    shop, _ = mine(longest_piece="8 ft")

    assert [sale.label for sale in shop.stocks["2x4"].sales] == ["8 ft"]
    assert shop.rules.longest_piece == Length.of_inches(96)


def test_pieces_that_are_there_cost_nothing_and_are_used_first():
    """An owned board takes the place of a bought one, once for each that is there."""
    shop, _ = mine(owned={"2x4": {"8 ft": "1"}, "3/4 plywood": {"60 in x 30 in": "1"}})
    usual = report_on(Fitter(read_plan(bench_data(), "bench"), SHOP))
    owning = report_on(Fitter(read_plan(bench_data(), "bench"), shop))
    used = {line.sale.id: line.quantity for line in owning.materials.stocks if line.is_owned}

    assert used == {"2x4 | 8 ft mine": 1, "3/4 plywood | 60 in x 30 in mine": 1}
    assert owning.totals.cost < usual.totals.cost


@pytest.mark.parametrize(
    ("said", "place"),
    [
        ({"kerf": "2 in"}, ("kerf",)),
        ({"kerf": "wide"}, ("kerf",)),
        ({"prices": {"gold": "1"}}, ("prices", "gold")),
        ({"owned": {"gold": {"5 ft": "1"}}}, ("owned", "gold")),
        ({"owned": {"2x4": {"5 ft x 3 ft": "1"}}}, ("owned", "2x4", "5 ft x 3 ft")),
        ({"owned": {"3/4 plywood": {"5 ft": "1"}}}, ("owned", "3/4 plywood", "5 ft")),
        ({"owned": {"2x4": {"0 in": "1"}}}, ("owned", "2x4", "0 in")),
    ],
)
def test_what_makes_no_sense_is_left_out_with_a_warning(said, place):
    """The rest of the shop is as the author has it."""
    shop, left_out = mine(**said)

    assert place in left_out
    assert shop == SHOP


@pytest.mark.parametrize(
    "data", [7, "x", [], {"prices": 3}, {"owned": {"2x4": 4}}, {"left out": {"a": "b"}}, {"?": 1}]
)
def test_damaged_settings_are_never_fatal(data):
    """Whatever a device kept, there is a shop."""
    settings, faults = read_my_shop(data)

    assert settings == MyShop()
    assert faults
