"""Places: where each instance of a part sits and how it is turned."""

from __future__ import annotations

from fractions import Fraction
from math import cos, radians, sin, sqrt, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.drawing import make_bodies
from scantling.measure import Length
from scantling.plan import Placed
from tests.support.placing import box, boxes, faults, fit, one

LEG = {"length": "24 in", "place": {"runs": "up", "left": "1 in", "front": "2 in"}}


@pytest.mark.parametrize(
    ("place", "size"),
    [
        ({}, (24, 3.5, 1.5)),
        ({"runs": "across", "faces": "front"}, (24, 1.5, 3.5)),
        ({"runs": "back"}, (3.5, 24, 1.5)),
        ({"runs": "back", "faces": "side"}, (1.5, 24, 3.5)),
        ({"runs": "up"}, (3.5, 1.5, 24)),
        ({"runs": "up", "faces": "side"}, (1.5, 3.5, 24)),
    ],
)
def test_a_part_is_turned_the_way_it_runs_and_faces(place, size):
    """Length, width and thickness lie along the ways that the author named."""
    assert box(one({"rail": {"place": place}}, "rail")) == (0, 0, 0, *size)


@pytest.mark.parametrize(
    ("place", "left", "front", "bottom"),
    [
        ({"left": "1 in", "front": "2 in", "bottom": "3 in"}, 1, 2, 3),
        ({"right": "48 in", "back": "20 in", "top": "30 in"}, 24, 16.5, 28.5),
        ({"middle": "width / 2", "mid depth": "depth / 2", "mid height": "15 in"}, 12, 8.25, 14.25),
        ({"left": "-1/2 in"}, -0.5, 0, 0),
        ({"front": "0"}, 0, 0, 0),
    ],
)
def test_any_side_or_the_middle_places_a_part(place, left, front, bottom):
    """One side on each way is enough; what is left out is at 0."""
    assert box(one({"rail": {"place": place}}, "rail"))[:3] == (left, front, bottom)


def test_formulas_find_a_part_by_its_sides():
    """Every side and middle of the first instance has a name, wherever it was placed from."""
    parts = {
        "leg": LEG,
        "rail": {"place": {"left": "leg.right", "bottom": "leg.top", "front": "leg.back"}},
        "shelf": {
            "place": {"middle": "leg.middle", "mid depth": "leg.mid depth", "mid height": "rail.mid height"}
        },
        "lid": {"place": {"right": "leg.left", "back": "leg.front", "top": "leg.bottom"}},
    }

    assert box(one(parts, "rail"))[:3] == (4.5, 3.5, 24)
    assert box(one(parts, "shelf"))[:3] == (2.75 - 12, 2.75 - 1.75, 24.75 - 0.75)
    assert box(one(parts, "lid"))[3:] == (1, 2, 0)


def test_mirrors_double_and_both_quadruples():
    """A mirror makes a copy about the middle of the whole piece."""
    parts = {"leg": {**LEG, "count": "4", "place": {**LEG["place"], "mirror": "both"}}}

    assert [(x, y) for x, y, *_ in boxes(parts, "leg")] == [(1, 2), (43.5, 2), (1, 16.5), (43.5, 16.5)]


def test_several_are_spread_evenly():
    """Equal gaps between, and at the ends unless they are flush; the count follows from the part."""
    spread = {"way": "across", "from": "2 in", "to": "38 in"}
    part = {"count": "3", "length": "10 in", "place": {"runs": "back", "repeat": spread}}

    gap = (36 - 3 * 3.5) / 4
    assert [x for x, *_ in boxes({"slat": part}, "slat")] == [2 + gap + i * (gap + 3.5) for i in range(3)]
    part["place"]["repeat"] = {**spread, "ends": "flush"}
    assert [x for x, *_ in boxes({"slat": part}, "slat")] == [2, 18.25, 34.5]


def test_the_first_of_several_has_names_too():
    """A part can be placed on the first of several that are spread."""
    spread = {"way": "up", "from": "0 in", "to": "15 in"}
    parts = {
        "shelf": {"count": "2", "place": {"repeat": spread}},
        "peg": {"place": {"bottom": "shelf.top"}},
    }

    assert box(one(parts, "peg"))[2] == box(one(parts, "shelf"))[5] == 4 + 1.5


def test_two_repeats_make_a_pattern_and_a_fixed_distance_stacks():
    """One repeat along each of two ways; `every` counts from the anchor."""
    pattern = [{"way": "across", "count": "2", "every": "12 in"}, {"way": "up", "every": "layer.thick"}]
    parts = {"layer": {"count": "6", "length": "10 in", "place": {"left": "1 in", "repeat": pattern}}}

    assert [(x, z) for x, _, z, *_ in boxes(parts, "layer")] == [(x, z) for x in (1, 13) for z in (0, 1.5, 3)]


def test_a_list_of_places_takes_from_the_first_what_later_ones_leave_out():
    """The second stretcher differs from the first in one word."""
    places = [{"faces": "front", "left": "1 in", "bottom": "6 in"}, {"back": "depth"}]
    parts = {"stretcher": {"count": "2", "place": places}}

    assert boxes(parts, "stretcher") == [(1, 0, 6, 25, 1.5, 9.5), (1, 18.5, 6, 25, 20, 9.5)]


@given(st.integers(16 * 30, 16 * 60), st.integers(1, 12))
def test_spread_parts_keep_equal_gaps_exactly(sixteenths, count):
    """At any size the gaps are equal, to the last fraction."""
    slat = {
        "count": str(count),
        "length": "10 in",
        "width": "1/2 in",
        "place": {"runs": "back", "repeat": {"way": "across", "from": "0 in", "to": f"{sixteenths}/16 in"}},
    }
    placed = fit({"slat": slat}).part("slat").placed

    ends = [
        Length(0),
        *(end for one in placed for end in (one.low[0], one.high[0])),
        Length(Fraction(sixteenths, 16)),
    ]
    gaps = {after - before for before, after in zip(ends[::2], ends[1::2], strict=True)}
    assert len(gaps) == 1


def solid(placed_part, number=0):
    """Return the solids of one instance."""
    return make_bodies(placed_part)[number].solids


def test_mitred_ends_are_cut_off():
    """A frame's rail keeps its whole length at the long side and is cut at 45 degrees at both ends."""
    rail = {"length": "20 in", "ends": "mitre 45 deg", "place": {"long side": "back"}}
    (shape,) = solid(fit({"rail": rail}))

    assert shape.volume == pytest.approx((20 - 3.5) * 3.5 * 1.5)
    assert sorted({round(x, 9) for x, y, _ in shape.points if y == 0}) == [3.5, 16.5]
    assert sorted({round(x, 9) for x, y, _ in shape.points if y == 3.5}) == [0, 20]


def test_parallel_and_bevelled_ends():
    """Parallel cuts lean the same way; a bevel is seen on the edge."""
    parallel = {"length": "20 in", "ends": "mitre 30 deg parallel", "place": {}}
    (shape,) = solid(fit({"rail": parallel}))
    off = 3.5 * tan(radians(30))

    assert sorted({round(x, 6) for x, y, _ in shape.points if y == 0}) == [0, round(20 - off, 6)]
    bevel = {"length": "20 in", "ends": ["square", "bevel 45 deg"], "place": {}}
    (shape,) = solid(fit({"rail": bevel}))
    assert shape.volume == pytest.approx((20 - 1.5 / 2) * 3.5 * 1.5)


def test_tapers_and_notches_change_the_shape():
    """A taper takes a wedge off the foot of two sides; a notch takes a block out of an edge."""
    work = [{"kind": "taper", "where": "the two inner faces", "depth": "1/2 in", "length": "20 in"}]
    leg = {"length": "24 in", "width": "1 1/2 in", "work": work, "place": {"runs": "up"}}
    (shape,) = solid(fit({"leg": leg}))

    assert shape.high == pytest.approx((1.5, 1.5, 24))
    assert shape.volume == pytest.approx(4 * 1.5**2 + 20 / 3 * (1.5**2 + 1.5 * 1.0 + 1.0**2))
    notch = [
        {"kind": "notch", "where": "back edge, each end", "count": "2", "width": "2 in", "depth": "1 in"}
    ]
    pieces = solid(fit({"top": {"work": notch, "place": {}}}))
    assert sum(piece.volume for piece in pieces) == pytest.approx((24 * 3.5 - 2 * 2 * 1) * 1.5)


@pytest.mark.parametrize("kind", ["curve", "taper"])
@pytest.mark.parametrize("nothing", ["length", "depth"])
def test_work_on_an_edge_that_comes_to_nothing_takes_nothing_off(kind, nothing):
    """As an option may have it: straight legs are a taper without a depth."""
    work = [{"kind": kind, "where": "front edge", "length": "12 in", "depth": "2 in", nothing: "0 in"}]
    side = {"length": "20 in", "work": work, "place": {"runs": "up", "faces": "side"}}

    assert sum(piece.volume for piece in solid(fit({"side": side}))) == pytest.approx(20 * 3.5 * 1.5)


@pytest.mark.parametrize("edge", ["front", "back"])
@pytest.mark.parametrize(("end", "at"), [("top", 20), ("lower", 0)])
def test_a_curve_hollows_an_edge_towards_an_end(edge, end, at):
    """All of its depth is gone at the end, half of it half-way, so half of the block that it lies in."""
    where = f"{edge} edge, at the {end} end"
    work = [{"kind": "curve", "where": where, "length": "12 in", "depth": "2 in"}]
    side = {"length": "20 in", "work": work, "place": {"runs": "up", "faces": "side"}}
    pieces = solid(fit({"side": side}))

    def wide(height):
        spots = [y for piece in pieces for _, y, z in piece.points if z == pytest.approx(height)]
        return min(spots), max(spots)

    middle = 14 if at else 6
    gone = {at: 2, middle: 1, 20 - at: 0}
    for height, deep in gone.items():
        assert wide(height) == pytest.approx((deep, 3.5) if edge == "front" else (0, 3.5 - deep))
    assert sum(piece.volume for piece in pieces) == pytest.approx((20 * 3.5 - 12 * 2 / 2) * 1.5)


def test_a_rail_leans_about_its_length_and_a_leg_about_its_foot():
    """The top goes to the side that is named, and the box and the names follow."""
    rail = {"place": {"faces": "front", "lean": "10 deg", "leans": "back"}}
    lid = {"place": {"front": "rail.back", "bottom": "rail.top"}}
    placed = one({"rail": rail, "lid": lid}, "rail")

    deep = 1.5 * cos(radians(10)) + 3.5 * sin(radians(10))
    high = 3.5 * cos(radians(10)) + 1.5 * sin(radians(10))
    assert box(placed) == pytest.approx((0, 0, 0, 24, deep, high))
    assert box(one({"rail": rail, "lid": lid}, "lid"))[1:3] == pytest.approx((deep, high))
    leg = {"place": {"runs": "up", "lean": "10 deg", "leans": "left"}}
    (shape,) = solid(fit({"leg": leg}))
    assert shape.volume == pytest.approx(24 * 3.5 * 1.5)
    assert next(x for x, _, z in shape.points if z == min(spot[2] for spot in shape.points)) > 3


def test_a_splayed_leg_leans_alike_from_the_front_and_from_the_side():
    """Its edges rise at the splay in both views, its ends are level, its section is that of the stick."""
    leg = {
        "length": "20 in",
        "width": "1 1/2 in",
        "place": {"runs": "up", "lean": "8 deg", "leans": ["right", "back"]},
    }
    (shape,) = solid(fit({"leg": leg}))

    slope = tan(radians(8))
    height = 20 / sqrt(1 + 2 * slope**2)
    assert sorted({round(z, 6) for _, _, z in shape.points}) == [0, round(height, 6)]
    foot = sorted(point for point in shape.points if point[2] < 1)
    head = sorted(point for point in shape.points if point[2] > 1)
    for (x1, y1, _), (x2, y2, _) in zip(foot, head, strict=True):
        assert (x2 - x1, y2 - y1) == pytest.approx((height * slope, height * slope))
    assert shape.volume == pytest.approx(1.5 * 1.5 * 20)


BRACED = {
    "brace": "posts",
    "left": "2 in",
    "right": "38 in",
    "bottom": "5 in",
    "top": "35 in",
}


@pytest.mark.parametrize(("seat", "length"), [("rails", 46.7306109525651), ("posts", 46.7306109525651)])
def test_a_brace_fits_its_opening(seat, length):
    """Its box is the opening, its length comes from it, and so do the names for its formulas."""
    brace = {
        "width": "3 1/2 in",
        "length": "brace.fit length",
        "ends": "mitre brace.fit angle parallel",
        "place": {**BRACED, "brace": seat},
    }
    fitted = fit({"brace": brace})
    part = fitted.part("brace")

    assert float(part.length.inches) == pytest.approx(length, abs=1e-9)
    assert box(part.placed[0]) == (2, 0, 5, 38, 1.5, 35)
    (shape,) = solid(fitted)
    corners = {(round(x, 6), round(z, 6)) for x, _, z in shape.points}
    assert {(2, 5), (38, 35)} <= corners
    assert len(corners) == 4


def test_braces_rise_either_way_and_cross():
    """One that rises to the left is the mirror image; passing ones lie one behind the other."""
    brace = {"length": "brace.fit length", "place": {**BRACED, "rises": "left"}}
    (shape,) = solid(fit({"brace": brace}))

    assert {(38, 5), (2, 35)} <= {(round(x, 6), round(z, 6)) for x, _, z in shape.points}
    brace = {"count": "2", "length": "brace.fit length", "place": {**BRACED, "crossed": "passing"}}
    first, second = fit({"brace": brace}).part("brace").placed
    assert (box(first)[1], box(second)[1]) == (0, 1.5)


def test_half_lapped_braces_share_the_crossing():
    """Each loses half its thickness over the crossing, so that the two fill it together."""
    whole = {"length": "brace.fit length", "place": BRACED}
    lapped = {"count": "2", "length": "brace.fit length", "place": {**BRACED, "crossed": "half-lap"}}
    (shape,) = solid(fit({"brace": whole}))
    fitted = fit({"brace": lapped})
    one_half, other_half = (sum(piece.volume for piece in body.solids) for body in make_bodies(fitted))

    slope = float(fitted.values["brace.fit angle"].degrees)
    crossing = 3.5 * 3.5 / sin(radians(2 * slope)) * 1.5
    assert one_half == pytest.approx(other_half)
    assert one_half == pytest.approx(shape.volume - crossing / 2)


def test_braces_in_a_side_opening_and_a_flat_one():
    """The two ways that have both ends are the opening; the brace is as thick along the third."""
    side = {
        "brace": "rails",
        "front": "2 in",
        "back": "18 in",
        "bottom": "4 in",
        "top": "28 in",
        "left": "1 in",
    }
    flat = {
        "brace": "corners",
        "left": "0 in",
        "right": "40 in",
        "front": "0 in",
        "back": "20 in",
        "bottom": "9 in",
    }

    assert box(one({"brace": {"place": side}}, "brace")) == (1, 2, 4, 2.5, 18, 28)
    assert box(one({"brace": {"place": flat}}, "brace")) == (0, 0, 9, 40, 20, 10.5)


FAULTY = [
    ({"left": "1 in", "right": "9 in"}, "placed-twice", "right", None),
    ({"runs": "up", "faces": "up"}, "faces-along", "faces", None),
    ({"runs": "up", "left": "nowhere.right"}, "unknown-name", "left", "nowhere.right"),
    ({"left": "rail.right"}, "circle", "left", "rail.right"),
    ({"left": "5"}, "wrong-unit", "left", None),
    ({"mirror": "acros"}, "unknown-choice", "mirror", None),
    ({"sideways": "1 in"}, "unknown-key", "sideways", None),
    ({"crossed": "passing"}, "no-brace", "crossed", None),
    ({"lean": "5 deg"}, "missing-key", "lean", None),
    ({"lean": "5 deg", "leans": "top"}, "unknown-choice", "leans", None),
    ({"lean": "5 deg", "leans": ["left", "right"]}, "leans-nowhere", "leans", None),
    ({"brace": "rails", "left": "1 in", "right": "9 in"}, "no-opening", "brace", None),
    ({**BRACED, "runs": "up"}, "not-for-brace", "runs", None),
    ({**BRACED, "right": "5 in", "brace": "rails"}, "brace-too-wide", "brace", None),
    ({**BRACED, "right": "1 in"}, "no-opening", "brace", None),
]


@pytest.mark.parametrize(("place", "code", "key", "marked"), FAULTY)
def test_a_wrong_place_is_told_where_it_is_wrong(place, code, key, marked):
    """Each fault names its key, and the characters where a formula is to blame."""
    found = faults({"rail": {"place": place}})

    assert [(found_code, path[-1]) for found_code, path, _ in found] == [(code, key)]
    if marked is not None:
        assert found[0][2] == marked


@pytest.mark.parametrize(
    ("repeat", "code", "key"),
    [
        ({"way": "across"}, "missing-key", "repeat"),
        ({"way": "across", "from": "0 in", "to": "40 in", "every": "3 in"}, "placed-twice", "repeat"),
        ({"way": "across", "from": "0 in", "to": "5 in", "count": "4"}, "no-room", "repeat"),
        ({"way": "across", "every": "5"}, "wrong-unit", "every"),
        ({"way": "round", "every": "5 in"}, "unknown-choice", "way"),
    ],
)
def test_a_wrong_repeat_is_told(repeat, code, key):
    """What a repeat lacks or has too much of is a fault at the repeat."""
    part = {"count": "4", "place": {"runs": "back", "repeat": repeat}}

    assert [(found, path[-1]) for found, path, _ in faults({"slat": part})] == [(code, key)]


@pytest.mark.parametrize(("count", "mirror"), [("4", "across"), ("1", "across"), ("3", "both")])
def test_as_many_are_placed_as_there_are(count, mirror):
    """A count that the places do not come to is a fault at the place."""
    found = faults({"leg": {**LEG, "count": count, "place": {**LEG["place"], "mirror": mirror}}})

    assert [(code, path) for code, path, _ in found] == [("place-count", ("parts", "leg", "place"))]


def test_a_count_that_cannot_be_shared_out_is_told():
    """Five slats cannot be half on each side."""
    repeat = {"way": "across", "every": "4 in"}
    found = faults({"slat": {"count": "5", "place": {"runs": "back", "repeat": repeat, "mirror": "back"}}})

    assert [code for code, _, _ in found] == ["place-count"]


def test_parts_that_need_each_other_make_a_circle_that_is_told():
    """Two parts that each lie on the other are a fault that names both."""
    parts = {"rail": {"place": {"bottom": "shelf.top"}}, "shelf": {"place": {"bottom": "rail.top"}}}
    found = faults(parts)

    assert [code for code, _, _ in found] == ["circle"]
    assert found[0][2] in {"shelf.top", "rail.top"}


def test_a_mirror_needs_to_know_the_middle():
    """Without an overall size along a way nothing can be mirrored along it."""
    parts = {"leg": {"count": "2", "place": {"mirror": "across"}}}

    assert [code for code, _, _ in faults(parts, sizes={"reach": "40 in"})] == ["no-overall"]


def test_all_faults_of_places_are_told_at_once():
    """Three parts placed wrongly give three faults."""
    parts = {
        "rail": {"place": {"left": "1 in", "right": "2 in"}},
        "leg": {"place": {"runs": "up", "faces": "up"}},
        "shelf": {"place": {"left": "nothing.left"}},
    }

    assert sorted(code for code, _, _ in faults(parts)) == ["faces-along", "placed-twice", "unknown-name"]


def test_a_part_that_is_not_there_has_no_places_and_no_faults():
    """A middle leg that this size does without is not placed."""
    part = {"only if": "width > 60 in", "place": {"left": "width / 2"}}
    fitted = fit({"leg": LEG, "middle leg": part})

    assert fitted.part("middle leg") is None
    assert isinstance(fitted.part("leg").placed[0], Placed)


@given(
    st.sampled_from(["across", "back", "up"]),
    st.integers(-400, 400),
    st.sampled_from([0, 1, 2]),
)
def test_mirroring_twice_and_moving_back_change_nothing(runs, sixteenths, axis):
    """A mirror image of the mirror image is the part itself; so is a part moved there and back."""
    rail = {"length": "20 in", "ends": "mitre 30 deg", "place": {"runs": runs}}
    placed = fit({"rail": rail}).part("rail").placed[0]
    by = Length(Fraction(sixteenths, 16))

    assert placed.mirrored(axis, by).mirrored(axis, by) == placed
    assert placed.moved(axis, by).moved(axis, -by) == placed
