"""Fitting a plan to a size: every formula a number, every count a whole one."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import Angle, Area, Length
from scantling.plan import USUAL, Choice, FittedPart, FittedPlan, Fitter, glued_section, read_plan
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data, with_part


def inches(text: str) -> Length:
    """Return a length of so many inches."""
    return Length.of_inches(sum((Fraction(word) for word in text.split()), Fraction(0)))


def fitter(data=None, shop=None) -> Fitter:
    """Return the bench ready to be fitted."""
    return Fitter(read_plan(data or bench_data(), "bench"), read_shop(shop or shop_data()))


def fit(data=None, **sizes: str) -> FittedPlan:
    """Return the bench, or changed data, at some sizes in inches."""
    return fitter(data).fit(Choice({name: inches(text) for name, text in sizes.items()}, {}))


def part(name: str, data=None, **sizes: str) -> FittedPart:
    """Return one fitted part."""
    found = fit(data, **sizes).part(name)
    assert found is not None
    return found


def codes(data, **sizes: str) -> list[str]:
    """Return the codes of what is wrong with data at some sizes."""
    with pytest.raises(Faulty) as caught:
        fit(data, **sizes)
    return [fault.code for fault in caught.value.faults]


def test_lengths_follow_the_size():
    """The rail of the bench is what is left between its legs."""
    assert part("rail").length == inches("40 1/2")
    assert part("rail", width="36").length == inches("28 1/2")
    assert part("leg").length == inches("17 1/2") - inches("23/32")


@given(sixteenths=st.integers(30 * 16, 72 * 16))
def test_every_size_of_the_range_gives_exact_parts(sixteenths):
    """The sums hold exactly at any size, however odd."""
    width = Length.of_inches(Fraction(sixteenths, 16))
    fitted = FITTER.fit(Choice({"width": width}, {}))
    rail, leg, top = (fitted.part(name) for name in ("rail", "leg", "top"))

    assert rail.length + 2 * leg.width + 2 * fitted.values["overhang"] == width == top.length
    assert (fitted.part("middle leg") is None) == (width <= Length(60))
    assert fitted.values["middle leg.count"] == (0 if width <= Length(60) else 1)


FITTER = fitter()


def test_a_part_is_as_wide_and_thick_as_its_stock_unless_the_author_says_otherwise():
    """The middle leg is a plain 2x4, the top as thick as its sheet."""
    leg = part("middle leg", width="66")

    assert (leg.width, leg.thick) == (inches("3 1/2"), inches("1 1/2"))
    assert part("top").thick == inches("23/32")


def test_layers_add_thickness_and_the_blank_is_trimmed():
    """Two 2x4s glued face to face are 3 in by 3 1/2 in; they are trimmed to 2 3/4 in square."""
    leg = part("leg")

    assert (leg.blank.pieces, leg.blank.across, leg.layer_thick) == (2, inches("3 1/2"), inches("1 1/2"))
    assert leg.blank.along == leg.length + inches("1/2")
    assert glued_section(leg) == (inches("3 1/2"), inches("3"))
    assert leg.is_trimmed
    assert not part("top").is_trimmed


def test_trimming_leaves_strips():
    """What falls off the glued legs is there to be used: the blade's kerf is gone from it."""
    strips = fit().offcuts

    assert [(strip.of, strip.count, strip.width, strip.thick) for strip in strips] == [
        ("leg", 4, inches("3"), inches("5/8")),
        ("leg", 4, inches("2 3/4"), inches("1/8")),
    ]
    assert strips[0].length == part("leg").blank.along


def test_a_panel_is_glued_up_edge_to_edge():
    """Three boards side by side make a panel; without `wider` each has its full width."""
    panel = part("rail", with_part("rail", glued_up="3 wide", width="15 in"))

    assert (panel.blank.pieces, panel.blank.across, panel.thick) == (3, inches("5 1/2"), inches("3/4"))
    assert glued_section(panel) == (inches("16 1/2"), inches("3/4"))


def test_a_panel_that_is_cut_wider_is_ripped_into_equal_strips():
    """`wider` says how much is trimmed off the whole, so that the strips are as wide as they must be."""
    panel = part("rail", with_part("rail", glued_up="3 wide", width="14 in", wider="1/4 in"))

    assert panel.blank.across == inches("4 3/4")


def test_allowances_lengthen_the_blank_alone():
    """`longer` and `cut to fit` are bought, not built."""
    rail = part("rail", with_part("rail", longer="1/2 in", cut_to_fit="1 in", wider="1/4 in"))

    assert rail.length == inches("40 1/2")
    assert rail.blank.along == inches("42")
    assert rail.blank.across == inches("5")


def test_the_narrowest_that_will_do():
    """`least width` lets the last strip of a rip be narrower by what the kerfs took."""
    rail = part("rail", with_part("rail", least_width="4 5/8 in"))

    assert rail.blank.across == inches("4 3/4")
    assert rail.blank.least_across == inches("4 5/8")
    assert codes(with_part("rail", least_width="5 in")) == ["least-above"]


@pytest.mark.parametrize(
    ("grain", "along", "across"), [("length", "48", "14"), ("width", "14", "48"), ("any", "48", "14")]
)
def test_grain_turns_the_blank(grain, along, across):
    """Grain along the part's width lays that width along the sheet."""
    top = part("top", with_part("top", grain=grain))

    assert (top.blank.along, top.blank.across) == (inches(along), inches(across))
    assert top.blank.may_turn is (grain == "any")


def test_only_a_part_that_may_turn_is_fitted_across_the_sheet():
    """A part of 60 in by 20 in lies across a sheet of 48 in only if its grain may run any way."""
    across = {"grain": "width", "length": "60 in", "width": "20 in"}

    assert codes(with_part("top", **across)) == ["wider-than-stock"]
    assert part("top", with_part("top", **{**across, "grain": "any"})).blank.may_turn


def test_trimmed_edges_make_a_sheet_smaller():
    """A sheet whose edges are trimmed 1/4 in holds 47 1/2 in, unless the part has just its width."""
    shop = shop_data()
    shop["sheets"]["3/4 plywood"]["trim edges"] = "1/4 in"
    for width, holds in (("47 1/2 in", True), ("47 3/4 in", False), ("48 in", True)):
        data = with_part("top", width=width, length="30 in")
        _, faults = fitter(data, shop).try_fit()
        assert (faults == ()) is holds


def test_ends_are_angles_away_from_square():
    """A list gives left and right their own cuts; a formula may give the angle."""
    both = part("rail", with_part("rail", ends="mitre 45 deg")).ends
    each = part("rail", with_part("rail", ends=["square", "bevel 2 * 5 deg"])).ends

    assert [(end.kind, end.angle) for end in both] == [("mitre", Angle(45)), ("mitre", Angle(45))]
    assert [(end.kind, end.angle) for end in each] == [("square", Angle(0)), ("bevel", Angle(10))]
    assert codes(with_part("rail", ends="mitre 90 deg")) == ["too-steep", "too-steep"]


def test_the_surface_is_that_of_all_parts():
    """`surface` sums six faces of every piece; two coats take twice that."""
    fitted = fit()
    area = sum((part.surface * part.count for part in fitted.parts), Area(0))

    assert fitted.values["surface"] == area
    assert next(one.area for one in fitted.hardware if one.ware == "exterior oil") == 2 * area
    assert part("rail").surface == Area(
        2 * (inches("40 1/2").inches * (Fraction(19, 4) + Fraction(3, 4)) + Fraction(57, 16))
    )


def test_a_part_that_is_not_there_breaks_nothing():
    """Formulas of an absent part may make no sense at that size."""
    data = with_part("middle leg", length="width - 59 in")

    assert fit(data, width="48").part("middle leg") is None
    assert part("middle leg", data, width="66").length == Length(7)


def test_a_count_of_nothing_takes_the_part_away():
    """A part of which there are none is not there."""
    assert fit(with_part("rail", count="0")).part("rail") is None


def test_every_fault_at_a_size_is_told():
    """Negative lengths, odd counts and wrong units of several parts come together."""
    data = with_part("rail", count="width / 5 in")
    data["parts"]["top"]["width"] = "depth * depth"
    data["parts"]["middle leg"] = {"from": "2x4", "length": "width - 60 in"}

    assert sorted(codes(data)) == ["not-positive", "not-whole", "wrong-unit"]


@pytest.mark.parametrize(
    ("sizes", "options", "expected"),
    [
        ({"width": inches("73")}, {}, ["outside-range"]),
        ({"width": Fraction(48)}, {}, ["wrong-unit"]),
        ({"wdith": inches("48")}, {}, ["unknown-name"]),
        ({}, {"feet": "round"}, ["unknown-choice"]),
        ({"width": inches("1")}, {"foot": "plain"}, ["unknown-name", "outside-range"]),
    ],
)
def test_a_choice_that_cannot_be_made_is_refused(sizes, options, expected):
    """What a reader may choose is checked before anything is reckoned."""
    with pytest.raises(Faulty) as caught:
        FITTER.fit(Choice(sizes, options))

    assert [fault.code for fault in caught.value.faults] == expected


def test_fitting_again_gives_the_same():
    """A fitter keeps nothing from one size to the next."""
    first = FITTER.fit(USUAL)
    FITTER.fit(Choice({"width": inches("66")}, {"feet": "tapered"}))

    assert FITTER.fit(USUAL) == first


def test_overall_sizes_are_found_by_name():
    """Width, depth and height of the whole piece, or the names that the author gives for them."""
    assert fit().overall() == {"width": Length(48), "depth": Length(14), "height": inches("17 1/2")}
    named = bench_data(overall={"depth": "overhang"})
    assert fit(named).overall()["depth"] == Length(1)
