"""The fit check: parts that clash, joins that do not meet, sizes that do not hold."""

from __future__ import annotations

from copy import deepcopy
from pathlib import Path

import pytest

from scantling.drawing import check_fit, find_blocked, make_bodies
from scantling.drawing.fit_check import clashing, meet
from scantling.plan import offered_choices
from scantling.source import read_catalog
from tests.support.placing import fit

ROOT = Path(__file__).resolve().parent.parent.parent
FRAME = {
    "post": {
        "count": "2",
        "length": "30 in",
        "width": "3 1/2 in",
        "place": {"runs": "up", "faces": "side", "back": "depth", "mirror": "across"},
    },
    "rail": {
        "count": "1",
        "length": "width - 2 * post.thick",
        "place": {"faces": "front", "left": "post.right", "back": "depth", "top": "height"},
    },
    "foot": {
        "count": "2",
        "length": "depth - post.width",
        "width": "2 in",
        "place": {"runs": "back", "left": "0 in", "mirror": "across"},
    },
}
JOINS = [
    {"join": "rail to post", "with": "screws", "fastener": "wood glue", "each": "2", "joints": "2"},
    {"join": "foot to post", "with": "glue", "joints": "2"},
]


def check(change=None, joins=None, **sizes):
    """Return the codes and messages of what is wrong with a frame of which one part's fields are changed."""
    parts = deepcopy(FRAME)
    for name, fields in (change or {}).items():
        place = fields.pop("place", {})
        parts[name].update(fields)
        if isinstance(place, dict):
            parts[name]["place"] = {**parts[name]["place"], **place}
    fitted = fit(parts, joins=deepcopy(JOINS if joins is None else joins), **sizes)
    return [(fault.code, fault.message, fault.place.path) for fault in check_fit(fitted, make_bodies(fitted))]


def test_a_sound_frame_has_no_faults():
    """Parts that touch do not clash, joins that meet meet, and the whole is as large as it says."""
    assert check() == []


def test_parts_in_one_place_clash():
    """A rail that is too long stands in both posts; the depth is told."""
    found = check({"rail": {"length": "width - 2 * post.thick + 1/4 in"}})

    assert [(code, message) for code, message, _ in found] == [
        ("parts-clash", "'post' and 'rail' stand in each other, 1/4 in deep")
    ]
    assert found[0][2][:3] == ("parts", "post", "place")


@pytest.mark.parametrize(("depth", "codes"), [("1/4 in", []), ("1/8 in", ["let-in-too-deep"])])
def test_parts_that_are_let_in_may_stand_in_each_other_so_deep(depth, codes):
    """A dado allows its own depth and no more."""
    change = {
        "rail": {
            "length": "width - 2 * post.thick + 1/2 in",
            "place": {"left": "post.right - 1/4 in"},
        }
    }
    joins = [{"join": "rail to post", "with": "dado", "depth": depth}]

    assert [code for code, _, _ in check(change, joins)] == codes


def test_a_rabbet_allows_its_depth_to_parts_that_are_joined():
    """Work on a part lets its neighbour in, if the two are joined."""
    work = [{"kind": "rabbet", "where": "inside face", "width": "1 1/2 in", "depth": "1/4 in"}]
    change = {
        "post": {"work": work},
        "rail": {"length": "width - 2 * post.thick + 1/2 in", "place": {"left": "post.right - 1/4 in"}},
    }

    assert check(deepcopy(change)) == []
    assert [code for code, _, _ in check(change, joins=[])] == ["parts-clash"]


def test_a_join_whose_parts_do_not_meet_is_told():
    """A rail an inch short of its posts is joined to nothing."""
    change = {"rail": {"length": "40 in", "place": {"left": "4 in"}}}
    found = check(change)

    assert [(code, message) for code, message, _ in found] == [
        ("join-apart", "'rail' and 'post' are joined, but do not meet anywhere")
    ]
    change = {"rail": {"length": "40 in"}}
    assert [message for _, message, _ in check(change)] == [
        "'rail' and 'post' have 2 joints, but meet in 1 place"
    ]


def test_the_overall_size_is_the_named_size():
    """A frame that comes out lower than its height says so."""
    change = {"post": {"length": "29 in"}, "rail": {"place": {"top": "29 in"}}}
    found = check(change)

    assert [(code, path) for code, _, path in found] == [("overall-size", ("sizes", "height"))]
    assert "29 in" in found[0][1]
    assert "30 in" in found[0][1]


@pytest.mark.parametrize(
    ("kind", "where", "depth", "codes"),
    [
        ("shelf pin holes", "inside face", "1 1/2 in", ["breaks-through"]),
        ("shelf pin holes", "inside face", "3/8 in", []),
        ("groove", "inside face", "2 in", ["breaks-through"]),
        ("groove", "lower edge", "2 in", []),
    ],
)
def test_work_does_not_go_through(kind, where, depth, codes):
    """A hole or groove as deep as the part is thick breaks through, unless it goes into an edge."""
    work = [{"kind": kind, "where": where, "width": "1/4 in", "depth": depth}]

    assert [code for code, _, _ in check({"post": {"work": work}})] == codes


def test_a_brace_clashes_only_where_it_really_is():
    """The boxes of two braces that pass overlap, the braces do not; in one plane they do."""
    opening = {"brace": "rails", "left": "0 in", "right": "36 in", "bottom": "0 in", "top": "30 in"}
    base = {"count": "2", "length": "brace.fit length"}

    def clashes(**more):
        return list(clashing(make_bodies(fit({"brace": {**base, "place": {**opening, **more}}}))))

    assert clashes(crossed="passing") == []
    assert clashes(crossed="half-lap") == []
    twice = {"brace": {**base, "place": [opening, {"rises": "left"}]}}
    (clash,) = clashing(make_bodies(fit(twice)))
    assert clash[2] == pytest.approx(1.5)
    block = {"length": "2 in", "width": "2 in", "place": {"left": "30 in", "bottom": "2 in"}}
    bodies = make_bodies(fit({"brace": {"length": "brace.fit length", "place": opening}, "block": block}))
    assert list(clashing(bodies)) == []


def test_meeting_takes_more_than_a_corner():
    """Boxes that touch in a line or a point do not meet; those that touch in a face do."""
    parts = {
        "a": {"length": "4 in", "place": {}},
        "b": {"length": "4 in", "place": {"left": "4 in"}},
        "c": {"length": "4 in", "place": {"left": "4 in", "bottom": "1 1/2 in"}},
        "d": {"length": "4 in", "place": {"left": "4 1/32 in"}},
        "e": {"length": "4 in", "place": {"left": "4 1/4 in"}},
    }
    a, *others = make_bodies(fit(parts))

    assert [meet(a, other) for other in others] == [True, False, True, False]


CASE = {
    "side": {
        "count": "2",
        "length": "20 in",
        "width": "3 1/2 in",
        "place": {"runs": "up", "faces": "side", "mirror": "across"},
    },
    "box": {
        "length": "width - 2 * side.thick - 1 in",
        "width": "3 in",
        "place": {"faces": "front", "middle": "width / 2", "bottom": "4 in", "slides": "front"},
    },
}


def blocked(more):
    """Return what is blocked in a case with one more part before it or beside it."""
    return [(fault.code, fault.message) for fault in find_blocked(make_bodies(fit({**CASE, **more})))]


def test_a_drawer_needs_a_free_way_out():
    """A rail in front of a drawer blocks it; one beneath it, and what slides along, do not."""
    rail = {"length": "40 in", "place": {"faces": "front", "left": "4 in", "back": "0 in", "bottom": "5 in"}}
    beneath = {"length": "40 in", "place": {"left": "4 in", "front": "-2 in", "bottom": "2 in"}}
    face = {"length": "44 in", "place": {**rail["place"], "left": "2 in", "slides": "front"}}

    assert blocked({}) == []
    assert blocked({"rail": rail}) == [("path-blocked", "'box' meets 'rail' when it slides out")]
    assert blocked({"rail": beneath}) == []
    assert blocked({"face": face}) == []


@pytest.mark.parametrize(
    ("side", "at", "meets"),
    [
        ("left", "20 1/4 in", True),
        ("left", "22 3/4 in", False),
        ("right", "20 1/4 in", False),
        ("right", "22 3/4 in", True),
    ],
)
def test_a_door_needs_room_to_swing(side, at, meets):
    """A post before a door is met by one hinged at its side, and not by one hinged at the other."""
    door = {"length": "20 in", "place": {"runs": "up", "left": "20 in", "swings": side}}
    post = {"length": "20 in", "width": "1/2 in", "place": {"runs": "up", "left": at, "back": "-2 1/2 in"}}
    found = find_blocked(make_bodies(fit({"door": door, "post": post})))

    assert [fault.message for fault in found] == (["'door' meets 'post' when it opens"] if meets else [])


def test_a_mirrored_pair_of_doors_opens_to_both_sides():
    """The copy of a door hinged at the left is hinged at the right."""
    door = {
        "count": "2",
        "length": "20 in",
        "place": {"runs": "up", "left": "2 in", "swings": "left", "mirror": "across"},
    }

    assert [one.opens for one in fit({"door": door}).part("door").placed] == ["swings left", "swings right"]


@pytest.mark.parametrize("slug", sorted(path.parent.name for path in (ROOT / "plans").glob("*/plan.md")))
def test_the_demo_plans_go_together_at_every_offered_size(slug):
    """No demo plan has parts that clash or joins that do not meet, at any size that has a page."""
    found = read_catalog(ROOT / "plans").plan(slug)
    for offered in offered_choices(found.plan):
        fitted = found.fitter.fit(getattr(offered, "choice", offered))

        assert [fault.message for fault in check_fit(fitted, make_bodies(fitted))] == []
