"""Order: what an earlier step shuts out or covers."""

from __future__ import annotations

from scantling.fault import Severity
from tests.checks.bench_plan import codes, found, frame
from tests.checks.test_strength import framed


def test_the_trestle_is_in_order():
    """Nothing is found in the plan that these tests change, over all of its sizes."""
    assert codes(frame(), sweeping=True) == []


def panel_first():
    """Return the trestle with its panel put on before the frame's screws are driven."""
    data = frame()
    cut, screw, panel = data["steps"]
    steps = [
        cut,
        {"title": "Clamp the frame", "uses": "post, rail, panel", "tools": "clamps"},
        {**screw, "uses": ""},
        {**panel, "uses": ""},
    ]
    for step in steps:
        if not step.get("uses"):
            step.pop("uses", None)
    return {**data, "steps": steps}


def test_a_covered_pocket_hole_is_a_fault():
    """The rail's pocket holes face the panel, which was put on before their screws are driven."""
    (fault,) = [one for one in found(panel_first()) if one.code == "pocket-covered"]

    assert fault.message == (
        "the pocket holes of 'rail' face 'panel', put in by step 2, before their screws go in (step 3)"
    )
    assert fault.place.path == ("joins", 0, "join")
    assert fault.severity is Severity.FAULT
    assert fault.notes[0].place.path == ("steps", 1)


def test_pocket_holes_in_the_other_face_are_free():
    """With the holes in the back face, the same panel covers nothing."""
    data = panel_first()
    data["parts"]["rail"]["work"][0]["where"] = "back face, each end"

    assert "pocket-covered" not in codes(data)


def test_pocket_holes_in_an_unnamed_face_are_free_while_one_face_is():
    """Where the words name no face, only a part that is covered on both sides is a fault."""
    data = panel_first()
    data["parts"]["rail"]["work"][0]["where"] = "each end"

    assert "pocket-covered" not in codes(data)


def box_of_six():
    """Return a block that stands within six boards, with the step that puts it in as the last."""
    boards = {
        "left": {"runs": "back", "faces": "side", "left": "0 in", "bottom": "1 in"},
        "right": {"runs": "back", "faces": "side", "left": "4 in", "bottom": "1 in"},
        "lower": {"runs": "back", "bottom": "0 in", "left": "1 in"},
        "upper": {"runs": "back", "bottom": "6 in", "left": "1 in"},
        "near": {"faces": "front", "front": "-3/4 in", "bottom": "1 in", "left": "-1 in"},
        "far": {"faces": "front", "front": "8 in", "bottom": "1 in", "left": "-1 in"},
    }
    parts = {name: {"from": "1x4", "length": "8 in", "place": place} for name, place in boards.items()}
    parts["block"] = {
        "from": "1x4",
        "width": "2 in",
        "length": "4 in",
        "place": {"runs": "back", "left": "1 1/2 in", "front": "2 in", "bottom": "3 in"},
    }
    steps = [
        {"title": "Close the box", "uses": ", ".join(boards)},
        {"title": "Put in the block", "uses": "block"},
    ]
    return frame(parts=parts, joins=[], steps=steps, sizes={}, lengths={}, overall={}, summary="A box.")


def test_a_part_that_is_closed_in_on_every_side_is_a_fault():
    """A block cannot get into a box whose six sides are on."""
    (fault,) = [one for one in found(box_of_six()) if one.code == "shut-out"]

    assert "'block' cannot go in any more" in fault.message
    assert fault.message.endswith("close its place from step 1 on")
    assert fault.place.path == ("steps", 1, "uses")


def test_one_open_side_is_a_way_in():
    """With the upper board put on last, the block goes in from above."""
    data = box_of_six()
    data["steps"][0]["uses"] = "left, right, lower, near, far"
    data["steps"].append({"title": "Close it", "uses": "upper"})

    assert "shut-out" not in codes(data)


def test_glue_comes_before_the_glued_up_part_is_used():
    """A post of two layers is used, and only a later step has any glue."""
    data = frame(hardware={"wood glue": "1"})
    data["parts"]["post"] |= {"glued up": "2 layers", "thick": "3 in"}
    for part in data["parts"].values():
        part.pop("place")
    data["steps"][2] |= {"needs": "3 wood screw 2 in, wood glue", "tools": "drill, clamps"}
    (fault,) = [one for one in found(data) if one.code == "made-first"]

    assert fault.message == "'post' is glued up from 2, but no step has glue before step 2 uses it"
    assert fault.place.path == ("parts", "post", "glued up")


def test_a_strip_is_used_after_what_it_falls_off():
    """A strip that trimming the posts leaves is used before the posts are."""
    data = frame()
    data["parts"]["strip"] = {"from offcut of": "post", "from": "1x4", "length": "6 in", "width": "1/2 in"}
    data["steps"][0]["uses"] = "strip"
    (fault,) = [one for one in found(data) if one.code == "made-first"]

    assert "is cut from what 'post' leaves" in fault.message
    assert fault.place.path == ("steps", 0, "uses")


def test_a_solid_panel_is_finished_before_it_is_closed_in():
    """A wide panel in a groove that is oiled only at the end gets a hint; oiled first, it gets none."""
    data = framed()
    data["hardware"]["linseed oil"] = {"area": "surface"}
    oil = {"title": "Oil it", "needs": "linseed oil", "caution": ["Rags can catch fire."]}
    late = {**data, "steps": [*data["steps"], oil]}
    early = {**data, "steps": [oil, *data["steps"]]}
    (fault,) = [one for one in found(late) if one.code == "finish-order"]

    assert fault.place.path == ("parts", "field")
    assert "shows a bare edge when it shrinks" in fault.message
    assert "finish-order" not in codes(early)
