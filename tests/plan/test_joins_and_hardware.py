"""Fasteners from joins, banding from edges, and what the author lists."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.measure import Length
from scantling.plan import Fitter, banded_length, choose_fastener, read_plan, wanted_length
from scantling.shop import read_shop
from scantling.words import language_of, speaking
from tests.support.workshop import bench_data, shop_data, with_part


def inches(text: str) -> Length:
    """Return a length of so many inches."""
    return Length.of_inches(sum((Fraction(word) for word in text.split()), Fraction(0)))


def fitted(data=None, shop=None):
    """Return the fitted bench and what is wrong with it."""
    plan = read_plan(data or bench_data(), "bench")
    return Fitter(plan, read_shop(shop or shop_data())).try_fit()


def bought(name: str, data=None, shop=None):
    """Return everything that is bought of one ware."""
    plan, faults = fitted(data, shop)
    assert faults == ()
    return [one for one in plan.hardware if one.ware == name]


def test_screws_follow_from_the_joins():
    """Two in each of four joints are eight, of the length that 3/4 in wood takes."""
    (screws,) = bought("pocket screw 1 1/4 in")

    assert screws.count == 8
    assert screws.why == "rail to leg"
    assert screws.hardware is None


def test_what_a_ware_is_for_is_told_in_the_language_spoken_when_it_is_asked():
    """A plan that was fitted in English tells joins and banding in German to whoever asks in German."""
    (screws,), (tape,) = bought("pocket screw 1 1/4 in"), bought("edge tape")

    with speaking(language_of("de")):
        assert (screws.why, tape.why) == ("rail an leg", "beschichtete Kanten")


def test_a_join_of_a_part_that_is_not_there_takes_no_screws():
    """Joins come and go with their parts and conditions."""
    data = bench_data()
    data["joins"] += [
        {"join": "middle leg to top", "with": "pocket screws", "each": "2", "joints": "1"},
        {
            "join": "rail to top",
            "with": "pocket screws",
            "each": "5",
            "joints": "2",
            "only if": "width > 50 in",
        },
    ]

    assert bought("pocket screw 1 1/4 in", data)[0].count == 8


def test_a_named_fastener_is_taken():
    """The author's own choice stands, whatever the thicknesses."""
    data = bench_data()
    data["joins"][0].update({"with": "bolts", "fastener": "wood glue"})

    assert sum(one.count for one in bought("wood glue", data)) == 9


def test_banding_is_the_length_of_all_banded_edges():
    """All round a top of 48 in by 14 in are 124 in."""
    (tape,) = bought("edge tape")

    assert tape.length == inches("124")
    assert (tape.count, tape.why) == (0, "banded edges")


@pytest.mark.parametrize(
    ("band", "length"),
    [
        ("long edges", "96"),
        ("one long edge", "48"),
        ("short edges", "28"),
        ("one long edge, one short edge", "62"),
    ],
)
def test_edges_are_named(band, length):
    """Long edges run along the part's length, short ones along its width."""
    plan, _ = fitted(with_part("top", band=band))

    assert banded_length(plan.part("top")) == inches(length)


def test_work_holds_its_measures():
    """A groove has its width and depth; what the author left out stays open."""
    data = bench_data()
    data["parts"]["rail"]["work"] = [
        {"kind": "groove", "where": "inside", "width": "1/4 in", "depth": "top.thick / 2"}
    ]
    work = fitted(data)[0].part("rail").work[0]

    assert (work.width, work.depth, work.length, work.count) == (inches("1/4"), inches("23/64"), None, None)


@pytest.mark.parametrize(
    ("change", "code", "path"),
    [
        ({"wod glue": "1"}, "unknown-ware", ("hardware", "wod glue")),
        ({"wood glue": {"area": "surface"}}, "covers-nothing", ("hardware", "wood glue", "area")),
        ({"wood glue": {"long": "2 ft"}}, "no-length", ("hardware", "wood glue", "long")),
        ({"wood glue": {"count": "1/2"}}, "not-whole", ("hardware", "wood glue", "count")),
        ({"wood glue": {"area": "width"}}, "wrong-unit", ("hardware", "wood glue", "area")),
    ],
)
def test_hardware_that_cannot_be_bought_so_is_told(change, code, path):
    """Each with its place."""
    _, faults = fitted(bench_data(hardware=change))

    assert [(fault.code, fault.place.path) for fault in faults] == [(code, path)]


def test_hardware_listed_without_a_number_is_one():
    """`ware:` alone, or a condition alone, means one of it."""
    data = bench_data(
        hardware={"glue": {"ware": "wood glue"}, "oil": {"ware": "exterior oil", "only if": "width > 50 in"}}
    )

    assert bought("wood glue", data)[0].count == 1
    assert bought("exterior oil", data) == []


def test_clearances_are_names():
    """Parts may use the room that a maker asks for."""
    shop = shop_data()
    shop["hardware"]["slide"] = {"price": "9", "long": "16 in", "clearances": {"side": "1/2 in"}}
    data = bench_data(hardware={"slide": "2"})
    data["parts"]["rail"]["length"] = "slide.long - 2 * slide.side"
    plan, faults = fitted(data, shop)

    assert faults == ()
    assert plan.part("rail").length == Length(15)


@pytest.mark.parametrize("how", ["screws", "nails", "brads and glue"])
@pytest.mark.parametrize("held", ["1/4", "3/4", "1 1/2"])
@pytest.mark.parametrize("holding", ["1/2", "3/4", "3 1/2"])
def test_a_fastener_bites_and_stays_inside(how, held, holding):
    """It is longer than the piece it holds, and shorter than both together."""
    least, most = wanted_length(how, inches(held), inches(holding))

    assert inches(held) < least <= most < inches(held) + inches(holding)


def test_the_shortest_that_suits_is_chosen_and_one_with_a_price_first():
    """Of several screws that suit the shortest is taken; one without a price only if there is no other."""
    wares = {"price": "5", "kind": "wood screw"}
    hardware = {
        "a": {**wares, "long": "2 in"},
        "b": {**wares, "long": "1 3/4 in"},
        "c": {**wares, "long": "1 5/8 in", "price": ""},
        "d": {**wares, "long": "6 in"},
    }
    found = read_shop(shop_data(hardware=hardware)).wares

    assert choose_fastener("screws", inches("3/4"), inches("3 1/2"), found.values()).key == "b"
    assert choose_fastener("screws", inches("3/4"), inches("3 1/2"), [found["c"]]).key == "c"
    assert choose_fastener("screws", inches("3/4"), inches("3/4"), [found["d"]]) is None
