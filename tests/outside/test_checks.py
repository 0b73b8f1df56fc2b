"""What the checks of a plan compute, against handbooks, standards and a general beam library."""

from __future__ import annotations

import warnings
from fractions import Fraction

import pytest

from scantling.checks import Standing, bite, movement, shelf_sag
from scantling.checks.statics import CREEP
from scantling.checks.use_heights import USES
from scantling.checks.wood_movement import DAMP, DRY
from scantling.measure import Length, Weight
from scantling.plan import wanted_length
from tests.outside.sources import checked

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from Pynite import FEModel3D


def beam(span: float, stiffness: float, inertia: float):
    """Return a beam of some inches on two resting ends, to be loaded."""
    model = FEModel3D()
    for name, x in (("left", 0), ("right", span)):
        model.add_node(name, x, 0, 0)
        model.def_support(name, name == "left", True, True, True, False, False)
    model.add_material("wood", stiffness, stiffness / 16, 0.3, 0.001)
    model.add_section("board", 1, 1, inertia, 1)
    model.add_member("shelf", "left", "right", "wood", "board")
    return model


@pytest.mark.parametrize(
    ("span", "depth", "thick", "stiffness", "load"),
    [
        (36, Fraction(45, 4), Fraction(3, 4), 1_240_000, 40),
        (32, 12, Fraction(23, 32), 1_200_000, 50),
        (48, Fraction(7, 2), Fraction(3, 2), 1_400_000, 100),
    ],
)
@checked(
    quantity="check-shelf-sag",
    document="PyNiteFEA, a general library of finite elements",
    place="version 3.2.0, a member with an even load on two supports",
    kind="library",
)
def test_sag_is_that_of_a_beam(span, depth, thick, stiffness, load):
    """The sag of a shelf is that of a beam of the same section, to a millionth, however deep it is."""
    model = beam(span, stiffness, float(depth * thick**3 / 12))
    each_inch = float(Fraction(load, 144) * depth)
    model.add_member_dist_load("shelf", "Fy", -each_inch, -each_inch)
    model.analyze_linear()

    ours = shelf_sag(Length(span), Length(thick), Fraction(stiffness), Fraction(load))

    assert float(ours.inches) == pytest.approx(-model.members["shelf"].deflection("dy", span / 2), rel=1e-6)


@checked(
    quantity="check-shelf-sag",
    document="FPL-GTR-190, Wood Handbook (2010)",
    place="Table 9-1 and Eq. 9-2: kb = 5/384, both ends resting, load even",
    kind="handbook",
)
def test_sag_of_a_pine_shelf():
    """A pine shelf of 3/4 in by 11 1/4 in over 36 in under 60 lb sags 0.0743 in."""
    ours = shelf_sag(Length(36), Length(Fraction(3, 4)), Fraction(1_240_000), Fraction(60 * 144 * 4, 36 * 45))

    assert float(ours.inches) == pytest.approx(0.0743225806, rel=1e-8)


@pytest.mark.parametrize(
    ("stiffness", "thick", "load", "published"),
    [
        (950_000, "3/4", 40, 40),
        (950_000, "3/4", 50, 37),
        (950_000, "1", 40, 53),
        (1_800_000, "3/4", 50, 46),
        (1_800_000, "1", 40, 66),
        (1_820_000, "3/4", 40, 49),
        (1_820_000, "3/4", 50, 46),
        (1_820_000, "1", 40, 66),
    ],
)
@checked(
    quantity="check-shelf-sag",
    document="Architectural Woodwork Standards, edition 1 (2009)",
    place="p. 279, 4.4.14.10.11 to 13: longest shelves at the span over 144; load and limit 1.2.21",
    kind="standard",
)
def test_published_spans_sag_the_span_over_144(stiffness, thick, load, published):
    """At the published longest span a shelf just keeps the span over 144; an inch further it does not."""

    def ratio(span: Fraction) -> Fraction:
        sag = shelf_sag(Length(span), Length(Fraction(thick)), Fraction(stiffness), Fraction(load))
        return Length(span) / sag

    assert ratio(Fraction(published) - Fraction(1, 20)) > 144
    assert ratio(Fraction(published) + 1) < 144


@checked(
    quantity="check-shelf-sag",
    kind="from memory",
    document="NDS 2018",
    place="3.5.2, Kcr for seasoned lumber",
)
def test_creep_adds_half():
    """A load that stays makes a seasoned board sag half as much again."""
    assert Fraction(3, 2) == CREEP


@checked(
    quantity="check-movement",
    document="FPL-GTR-190, Wood Handbook (2010)",
    place="chapter 13, worked example: white fir, 9.15 in, 8 to 11 % moisture, + 0.067 in",
    kind="handbook",
)
def test_movement_of_a_fir_board():
    """The handbook's flat-sawn board of white fir grows by 0.067 in."""
    ours = movement(Length(Fraction(915, 100)), Fraction(7), Fraction(8), Fraction(11))

    assert float(ours.inches) == pytest.approx(0.067, abs=0.0005)


@pytest.mark.parametrize(
    ("shrinkage", "coefficient"),
    [
        ("7.8", "0.00274"),  # white ash and black walnut, tangential
        ("4.9", "0.00169"),  # white ash, radial
        ("7.3", "0.00256"),  # red alder
        ("6.7", "0.00234"),  # quaking aspen
        ("9.3", "0.00330"),  # american basswood
        ("11.9", "0.00431"),  # american beech
        ("9.5", "0.00338"),  # yellow birch
        ("7.1", "0.00248"),  # black cherry
    ],
)
@checked(
    quantity="check-movement",
    document="FPL-GTR-190, Wood Handbook (2010)",
    place="Tables 4-3 (shrinkage) and 13-5 (coefficients)",
    kind="handbook",
)
def test_movement_has_the_handbook_coefficients(shrinkage, coefficient):
    """One percent of moisture moves an inch by the printed coefficient, to the last printed digit."""
    ours = movement(Length(1), Fraction(shrinkage), Fraction(9), Fraction(10))

    assert abs(ours.inches - Fraction(coefficient)) <= Fraction(1, 200_000)


@checked(
    quantity="check-movement",
    document="FPL-GTR-190, Wood Handbook (2010)",
    place="Table 13-2, interior woodwork, most areas: 6 to 10 %",
    kind="from memory",
)
def test_moisture_indoors():
    """Furniture is reckoned from 6 to 10 percent, where the formula holds (6 to 14 percent)."""
    assert (DRY, DAMP) == (6, 10)


@checked(quantity="check-bite", kind="common practice")
def test_bite_is_what_is_left():
    """A 1 1/4 in screw through 3/4 in leaves 1/2 in, with its head level with the face."""
    assert bite(Length(Fraction(5, 4)), Length(Fraction(3, 4))) == Length(Fraction(1, 2))


@checked(
    quantity="check-bite",
    document="US Navy training manual, NAVEDTRA 14119",
    place="fasteners: a nail is three times as long as the piece it holds is thick",
    kind="handbook",
)
def test_two_thirds_of_a_nail_are_in_the_second_piece():
    """A nail for a 3/4 in board is 2 1/4 in long, and two thirds of it are in what it goes into."""
    least, _ = wanted_length("nails", Length(Fraction(3, 4)), Length(3))

    assert least == Length(Fraction(9, 4))
    assert bite(least, Length(Fraction(3, 4))) / least == Fraction(2, 3)


def reactions(weight: float, depth: float, load: float, at: float) -> tuple[float, float]:
    """Return what the front and the back edge carry, the load hanging so far in front of the front edge."""
    model = FEModel3D()
    for name, x in (("drawer", -at), ("front", 0), ("middle", depth / 2), ("back", depth)):
        model.add_node(name, x, 0, 0)
    model.def_support("front", True, True, True, True, False, False)
    model.def_support("back", False, True, True, True, False, False)
    model.add_material("wood", 1e6, 1e5, 0.3, 0)
    model.add_section("board", 1, 1, 1, 1)
    for start, end in (("drawer", "front"), ("front", "middle"), ("middle", "back")):
        model.add_member(start, start, end, "wood", "board")
    model.add_node_load("drawer", "FY", -load)
    model.add_node_load("middle", "FY", -weight)
    model.analyze_linear()
    return model.nodes["front"].RxnFY["Combo 1"], model.nodes["back"].RxnFY["Combo 1"]


@checked(
    quantity="check-tipping",
    document="PyNiteFEA, a general library of finite elements",
    place="version 3.2.0, reactions of a beam that overhangs one support",
    kind="library",
)
def test_the_back_edge_carries_nothing_when_it_tips():
    """With the load that we name on the open drawer, the front edge carries all of it."""
    load = Standing(Weight(84), Length(18), Length(40)).drawer_load(Length(12))
    front, back = reactions(84, 18, float(load.pounds), 12)

    assert float(load.pounds) == 63
    assert back == pytest.approx(0, abs=1e-6)
    assert front == pytest.approx(84 + 63)


@checked(
    quantity="check-tipping",
    document="PyNiteFEA, a general library of finite elements",
    place="version 3.2.0, the same beam; a pull at the top turns about the front edge as a load as far out",
    kind="library",
)
def test_a_pull_at_the_top_tips_it():
    """A pull at 60 in of height has the moment of the same load hanging 60 in in front."""
    pull = Standing(Weight(70), Length(11), Length(60)).pull
    _, back = reactions(70, 11, float(pull.pounds), 60)

    assert back == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize(
    ("use", "low", "high"),
    [
        ("a child's table", 26, 30),  # ADA 902.4.2
    ],
)
@checked(quantity="check-heights", document="ADA Standards (2010)", place="902.4.2", kind="standard")
def test_published_heights(use, low, high):
    """A child's table is 26 to 30 in high."""
    found = next(one for one in USES if one.name == use)

    assert (found.low, found.high) == (Length(low), Length(high))


@checked(
    quantity="check-heights", document="ADA Standards (2010)", place="902.3: 28 to 34 in", kind="standard"
)
def test_desks_and_tables_lie_within_the_standard():
    """What is usual for desks and tables lies within what the standard allows work surfaces."""
    for use in USES:
        if use.name in {"a desk", "a table"}:
            assert Length(28) <= use.low <= use.high <= Length(34)


@checked(
    quantity="check-heights", document="ADA Standards (2010)", place="903.5: 17 to 19 in", kind="from memory"
)
def test_seats():
    """A bench is 17 to 19 in high."""
    found = next(one for one in USES if one.name == "a seat")

    assert (found.low, found.high) == (Length(17), Length(19))


@checked(quantity="check-heights", kind="common practice")
def test_heights_by_practice():
    """Coffee tables, end tables and bars are as high as the trade makes them."""
    found = {use.name: (use.low, use.high) for use in USES}

    assert found["a coffee table"] == (Length(16), Length(18))
    assert found["an end table"] == (Length(20), Length(26))
    assert found["a bar"] == (Length(40), Length(42))
