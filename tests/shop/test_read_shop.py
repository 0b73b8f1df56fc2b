"""From a shop file to what can be bought."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.fault import Faulty
from scantling.measure import Area, Length, Money
from scantling.shop import USUAL_RULES, Shop, actual_size, nominal_size, read_shop, wood_named
from tests.support.workshop import shop_data


def shop(**changes) -> Shop:
    """Return the workshop's shop with some of its keys replaced."""
    return read_shop(shop_data(**changes))


def inches(text: str) -> Length:
    """Return a length of so many inches."""
    return Length.of_inches(sum((Fraction(word) for word in text.split()), Fraction(0)))


def codes(**changes) -> list[str]:
    """Return the codes of what is wrong with a changed shop."""
    with pytest.raises(Faulty) as caught:
        shop(**changes)
    return [fault.code for fault in caught.value.faults]


def test_lumber_has_the_sizes_of_the_standard():
    """A 2x4 is 1 1/2 in by 3 1/2 in, in every length that is sold."""
    stock = shop().stocks["2x4"]

    assert (stock.thick, stock.width, stock.nominal) == (inches("1 1/2"), inches("3 1/2"), (2, 4))
    assert [(sale.length, sale.price) for sale in stock.sales] == [
        (Length(96), Money(428)),
        (Length(120), Money(598)),
    ]
    assert stock.longest == Length(120)
    assert not stock.is_sheet


def test_measured_lumber_overrules_the_standard():
    """What the author measured is what is true."""
    lumber = {"2x4": {"lengths": {"8 ft": "4.28"}, "thick": "38 mm", "width": "89 mm"}}
    stock = shop(lumber=lumber).stocks["2x4"]

    assert (stock.thick.mm, stock.width.mm) == (38, 89)


def test_sheets_lie_with_their_longer_side_along_the_grain():
    """Whichever way round a sheet is written, its length is the longer side."""
    sheets = {"ply": {"thick": "1/2 in", "sizes": {"4 ft x 8 ft": "62", "5 ft × 30 in": "20"}, "grain": "no"}}
    stock = shop(sheets=sheets).stocks["ply"]

    assert stock.is_sheet
    assert [(sale.length, sale.width) for sale in stock.sales] == [
        (Length(96), Length(48)),
        (Length(60), Length(30)),
    ]
    assert stock.widest == Length(48)
    assert not stock.has_grain


def test_hardwood_is_priced_by_the_board_foot_of_its_rough_size():
    """A rough inch by 6 in by 8 ft is 4 board feet: 30.00 at 7.50 the board foot."""
    oak = {
        "thick": "13/16 in",
        "rough": "1 in",
        "width": "6 in",
        "per board foot": "7.50",
        "lengths": ["8 ft", "10 ft"],
    }

    assert [sale.price for sale in shop(hardwood={"oak": oak}).stocks["oak"].sales] == [
        Money(3000),
        Money(3750),
    ]


def test_a_board_foot_price_is_rounded_to_the_nearest_cent():
    """Half a cent is rounded up: 1.25 board feet at 0.10 is 12.5 cents."""
    oak = {"thick": "1 in", "rough": "1 in", "width": "3 in", "per board foot": "0.10", "lengths": ["5 ft"]}

    assert shop(hardwood={"oak": oak}).stocks["oak"].sales[0].price == Money(13)


def test_pieces_that_are_owned_cost_nothing():
    """They stand beside what is sold, and their number is known."""
    lumber = {"2x4": {"lengths": {"8 ft": "4.28"}, "owned": {"5 ft": "2"}}}
    sales = shop(lumber=lumber).stocks["2x4"].sales

    assert [(sale.length, sale.price, sale.owned) for sale in sales] == [
        (Length(96), Money(428), None),
        (Length(60), Money(0), 2),
    ]
    assert [sale.label for sale in sales] == ["8 ft", "5 ft owned"]


def test_an_owned_sheet_has_two_sides():
    """The rest of a sheet is owned by its length and width."""
    sheets = {"ply": {"thick": "1/2 in", "sizes": {"4 ft x 8 ft": "62"}, "owned": {"2 ft x 5 ft": "1"}}}

    assert shop(sheets=sheets).stocks["ply"].sales[1].length == Length(60)


def test_a_price_may_be_unknown_or_dated():
    """Nothing in place of a price is no fault by itself; a dated price keeps its day."""
    lumber = {"2x4": {"lengths": {"8 ft": "", "10 ft": {"price": "5.98", "since": "2026-03-01"}}}}
    first, second = shop(lumber=lumber).stocks["2x4"].sales

    assert first.price is None
    assert (second.price, second.touched) == (Money(598), "2026-03-01")


def test_wares_know_how_they_are_sold():
    """A box of 100, a can that covers an area, a roll with a length."""
    wares = shop().wares

    assert wares["pocket screw 1 1/4 in"].count == 100
    assert wares["pocket screw 1 1/4 in"].kind == "pocket screw"
    assert wares["exterior oil"].covers == Area(10 * 144)
    assert wares["edge tape"].long == Length(96)
    assert wares["wood glue"].kind == "wood glue"


def test_rules_that_are_not_written_are_as_usual():
    """One rule may be changed by itself."""
    assert shop().rules == USUAL_RULES
    changed = shop(rules={"keep length": "18 in", "longest piece": "8 ft"}).rules

    assert changed.keep_length == Length(18)
    assert changed.longest_piece == Length(96)
    assert changed.least_rip_length == USUAL_RULES.least_rip_length


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"kerf": "1/8"}, ["missing-unit"]),
        ({"kerf": "-1 in"}, ["not-positive"]),
        ({"lumber": {"plank": {"lengths": {"8 ft": "4"}}}}, ["no-actual-size"]),
        ({"lumber": {"2x4": {"lengths": {"0 ft": "4"}}}}, ["not-positive"]),
        ({"lumber": {"2x4": {"lengths": {"8": "4", "9": "5"}}}}, ["missing-unit", "missing-unit"]),
        ({"lumber": {"2x4": {"lengths": {"8 ft": "4"}, "owned": {"5 ft": "-1"}}}}, ["not-whole"]),
        ({"sheets": {"ply": {"thick": "0 in", "sizes": {"4 ft x 8 ft": "4"}}}}, ["not-positive"]),
        ({"sheets": {"ply": {"sizes": {"4 ft x 8 ft": "4"}}}}, ["missing-key"]),
        ({"finish": {"wood glue": {"price": "4"}}}, ["named-twice"]),
        ({"rules": {"keep length": "-1 in"}}, ["not-positive"]),
        ({"hardware": {"hinge": {"price": "4", "clearances": {"side": "1/2"}}}}, ["missing-unit"]),
    ],
)
def test_what_is_wrong_is_told(changes, expected):
    """Each fault by its code, and no other with it."""
    assert codes(**changes) == expected


@pytest.mark.parametrize(
    "name", ["2 by 4", "2x", "x4", "2/0x4", "123x4", "2x4x6", "2x4 8", "2x4cedar", "", "2x123"]
)
def test_what_is_no_nominal_size(name):
    """Only `2x4`, `5/4x6` and `1x4 cedar` are sizes; other names are names."""
    assert nominal_size(name) is None


@pytest.mark.parametrize(
    ("name", "nominal"),
    [
        ("2x4", (2, 4)),
        ("1 X 6", (1, 6)),
        ("5/4x6", (Fraction(5, 4), 6)),
        ("4×4", (4, 4)),
        ("1x4 western cedar", (1, 4)),
    ],
)
def test_nominal_sizes_are_read_as_people_write_them(name, nominal):
    """Small or capital, with the sign, with spaces."""
    assert nominal_size(name) == nominal


@pytest.mark.parametrize("nominal", [(2, 1), (2, 18), (7, 7), (Fraction(9, 4), 4)])
def test_sizes_outside_the_table_have_no_actual_size(nominal):
    """Nothing is guessed beyond the standard's table."""
    assert actual_size(tuple(Fraction(side) for side in nominal)) is None


def test_woods_are_found_whatever_their_capitals():
    """A wood that is not known is None, never another."""
    assert wood_named(" White Oak ").name == "white oak"
    assert wood_named("oak") is None


def test_one_size_has_one_price():
    """However it is written: 96 in is 8 ft, and a sheet may lie either way."""
    sheets = {"ply": {"thick": "1/2 in", "sizes": {"4 ft x 8 ft": "62", "8 ft x 4 ft": "60"}}}

    assert codes(lumber={"2x4": {"lengths": {"8 ft": "4.28", "96 in": "5.00"}}}) == ["priced-twice"]
    assert codes(sheets=sheets) == ["priced-twice"]


@pytest.mark.parametrize(
    ("currency", "price", "is_told"),
    [
        ("$", "$4.28", False),
        ("$", "4.28 USD", False),
        ("$", "€4.28", True),
        ("$", "4.28 GBP", True),
        ("EUR", "4.28 €", False),
        ("EUR", "EUR 4.28", False),
        ("EUR", "$4.28", True),
    ],
)
def test_a_price_in_another_currency_is_told(currency, price, is_told):
    """With the place of the price; the shop's own sign or code may stand beside it."""
    lumber = {"2x4": {"lengths": {"8 ft": price}}}

    if is_told:
        assert codes(currency=currency, lumber=lumber) == ["other-currency"]
    else:
        assert shop(currency=currency, lumber=lumber).stocks["2x4"].sales[0].price == Money(428)


def test_a_decimal_comma_is_told_with_the_mend():
    """4,28 is not four hundred and twenty-eight."""
    with pytest.raises(Faulty) as caught:
        shop(lumber={"2x4": {"lengths": {"8 ft": "4,28"}}})

    assert caught.value.faults[0].help.endswith("4.28")
