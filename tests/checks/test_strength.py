"""Strength and use: sag, tipping, seasonal movement."""

from __future__ import annotations

import pytest

from scantling.fault import Severity
from tests.checks.bench_plan import codes, found, frame


def shelf(length: str, **changes: str):
    """Return a plan of one shelf on two sides."""
    parts = {
        "side": {"count": "2", "from": "3/4 plywood", "length": "12 in", "width": "10 in"},
        "shelf": {"from": "3/4 plywood", "length": length, "width": "10 in"},
    }
    data = frame(
        parts=parts, joins=[], lengths={}, overall={}, steps=[{"title": "Build", "uses": "side, shelf"}]
    )
    return {**data, **changes}


def only(data, code: str):
    """Return what one check finds."""
    return [one for one in found(data) if one.code == code]


def test_a_long_shelf_sags():
    """A shelf of 3/4 in plywood over 48 in is told with its sag, the load and the limit."""
    (fault,) = only(shelf("48 in"), "shelf-sag")

    assert fault.severity is Severity.WARNING
    assert fault.message == (
        "'shelf' spans 48 in and sags about 25/32 in in the end, under 40 lb on the square foot; "
        "cabinet shelves are allowed 11/32 in"
    )
    assert fault.place.path == ("parts", "shelf", "length")


def test_a_short_shelf_does_not():
    """Over 30 in the same shelf keeps the limit."""
    assert only(shelf("30 in"), "shelf-sag") == []


def test_books_are_heavier():
    """A span that carries things is too long for books."""
    assert only(shelf("35 in"), "shelf-sag") == []
    assert "under 50 lb" in only(shelf("35 in", tags=["bookcase"]), "shelf-sag")[0].message


def test_the_author_states_load_and_span():
    """A stated load and a stated span between supports are taken instead."""
    assert only(shelf("48 in", lengths={"shelf span": "24 in"}), "shelf-sag") == []
    assert "under 120 lb" in only(shelf("30 in", lengths={"shelf load": "120"}), "shelf-sag")[0].message


@pytest.mark.parametrize("name", ["shelf pin strip", "shelf support", "shelf edging"])
def test_what_belongs_to_a_shelf_is_none(name):
    """A long strip that is named for a shelf is not taken for one."""
    data = shelf("20 in")
    data["parts"][name] = {"from": "1x4", "length": "70 in"}
    data["steps"][0]["uses"] += f", {name}"

    assert only(data, "shelf-sag") == []


def cabinet(height: str, **changes):
    """Return a cabinet 12 in deep with one shelf."""
    data = shelf("20 in")
    sizes = {"height": height, "depth": "12 in", "width": "24 in"}
    return {**data, "sizes": sizes, "summary": "A cabinet.", **changes}


def test_a_tall_cabinet_tips():
    """It is told how high and deep it is, about what tips it, and that nothing fastens it."""
    (fault,) = only(cabinet("60 in"), "tip-over")

    assert fault.message.startswith("60 in high and 12 in deep, it tips easily: empty, a pull of some ")
    assert fault.message.endswith("begins to tip it; nothing here fastens it")
    assert fault.place.path == ("sizes", "height")


@pytest.mark.parametrize("height", ["24 in", "26 1/2 in"])
def test_a_low_one_does_not(height):
    """Below 27 in nothing is said."""
    assert only(cabinet(height), "tip-over") == []


def test_an_anchor_or_a_caution_is_enough():
    """With a wall anchor, or with words on it, nothing is missing."""
    data = cabinet("60 in", hardware={"wall anchor kit": "1"})
    data["steps"][0]["needs"] = "1 wall anchor kit"

    assert only(data, "tip-over") == []
    assert only(cabinet("60 in", caution=["It can tip over; anchor it."]), "tip-over") == []


def test_drawers_tip_a_piece_that_is_not_slender():
    """A chest as deep as it is high is told by what an open drawer may carry."""
    data = cabinet("30 in")
    data["sizes"]["depth"] = "24 in"
    data["parts"]["drawer front"] = {"from": "3/4 plywood", "length": "20 in", "width": "8 in"}
    data["steps"][0]["uses"] += ", drawer front"

    assert "on an open drawer begin to tip it" in only(data, "tip-over")[0].message


def framed(**join: str):
    """Return a solid panel of 11 1/4 in in the groove of two stiles."""
    parts = {
        "stile": {
            "count": "2",
            "from": "1x4",
            "length": "30 in",
            "work": [{"kind": "groove", "where": "edge", "width": "field.thick", "depth": "3/8 in"}],
        },
        "field": {"from": "1x12", "length": "24 in"},
    }
    joins = [{"join": "field to stile", "with": "groove", "depth": "3/8 in", **join}]
    steps = [{"title": "Build", "uses": "stile, field", "needs": "wood glue", "tools": "clamps, router"}]
    return frame(
        parts=parts,
        joins=joins,
        lengths={},
        overall={},
        hardware={"wood glue": "1"},
        steps=steps,
        tools=["clamps", "router"],
        caution=["Clamp the router's fence."],
    )


def test_a_glued_panel_splits():
    """A solid panel that is glued into its groove is told how much it moves."""
    (fault,) = only(framed(glue="yes"), "wood-movement")

    assert fault.message == (
        "'field' is solid and 11 1/4 in wide: it swells and shrinks by about 1/8 in, "
        "but is glued into 'stile'"
    )
    assert fault.place.path == ("joins", 0, "glue")


def test_a_loose_panel_and_a_sheet_do_not():
    """Without glue nothing is said, and plywood may be glued."""
    sheet = framed(glue="yes")
    sheet["parts"]["field"] = {"from": "3/4 plywood", "length": "24 in", "width": "11 in"}

    assert only(framed(), "wood-movement") == []
    assert only(sheet, "wood-movement") == []


def test_a_placed_panel_needs_its_room():
    """A panel that fills its grooves to the bottom has no room; 1/8 in narrower it has enough."""
    data = framed()
    data["parts"]["stile"]["place"] = {"runs": "up", "left": "0 in", "mirror": "across"}
    data["parts"]["field"] |= {"place": {"runs": "up", "middle": "width / 2", "bottom": "3 in"}}
    data["sizes"] = {"width": "17 1/2 in"}
    data["summary"] = "A frame."
    (fault,) = only(data, "wood-movement")
    data["parts"]["field"]["width"] = "11 1/8 in"

    assert "its grooves leave it 0 in of room" in fault.message
    assert fault.place.path == ("parts", "field", "width")
    assert only(data, "wood-movement") == []


def test_nothing_is_said_twice():
    """The plans of these tests have nothing else wrong with them."""
    assert codes(framed()) == ["picture-missing"]
