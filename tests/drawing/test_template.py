"""Full-size templates measure what the part measures, and their tiles lose nothing."""

from __future__ import annotations

from itertools import pairwise

import pytest

from scantling.drawing import Circle, Group, Line, Scene, templates, tiles
from scantling.drawing.tile import MARGIN, MOST_HIGH, MOST_WIDE, OVERLAP
from scantling.measure import Display
from scantling.plan import Fitter, read_plan
from scantling.shop import read_shop
from tests.support.workshop import bench_data, shop_data

PINS = {
    "kind": "shelf pin holes",
    "where": "inside face, two columns",
    "count": "24",
    "width": "1/4 in",
    "from end": "3 in",
    "apart": "1 1/4 in",
}
TAPER = {"kind": "taper", "where": "the two inner faces", "depth": "3/4 in", "length": "14 in"}


def made(part="rail", **fields):
    """Return the templates of the bench with fields of one part set."""
    data = bench_data()
    data["parts"][part].update(fields)
    return templates(Fitter(read_plan(data, "bench"), read_shop(shop_data())).fit(), Display())


def lines(scene, look):
    """Return the lines of a look."""
    return [shape for shape in scene.shapes if isinstance(shape, Line) and shape.look == look]


def test_a_plan_without_such_work_has_none():
    """Square parts need no template."""
    assert made() == ()


@pytest.mark.parametrize("angle", ["0 deg", "22.5 deg", "45 deg"])
def test_a_stop_of_the_saw_needs_none(angle):
    """Every mitre saw has a stop for these."""
    assert made(ends=f"mitre {angle}") == ()


def test_a_mitre_runs_as_far_as_its_tangent():
    """At 30 degrees over 4 3/4 in the end runs 2.742 in: tan 30 = 0.57735."""
    (one,) = made(ends="mitre 30 deg")
    (cut,) = lines(one.scene, "bold")

    assert cut.x2 - cut.x1 == pytest.approx(4.75 * 72)
    assert cut.y2 - cut.y1 == pytest.approx(4.75 * 0.577350269 * 72)


def test_a_bevel_is_drawn_over_the_thickness():
    """A bevel is seen on the edge: 3/4 in of a 1x6."""
    (one,) = made(ends="bevel 30 deg")
    (cut,) = lines(one.scene, "bold")

    assert cut.x2 - cut.x1 == pytest.approx(0.75 * 72)


def test_two_ends_that_differ_have_one_each():
    """The left end and the right."""
    titles = [one.title for one in made(ends=["mitre 30 deg", "mitre 20 deg"])]

    assert [title.partition(", ")[2] for title in titles] == ["left end", "right end"]


def test_holes_are_as_far_apart_as_the_plan_says():
    """Between middles of neighbours lie 1 1/4 in."""
    (one,) = made(work=[PINS])
    holes = [shape for shape in one.scene.shapes if isinstance(shape, Circle)]

    assert {round(b.y - a.y, 6) for a, b in pairwise(holes)} == {90.0}
    assert {hole.radius for hole in holes} == {9.0}


def test_holes_without_a_distance_have_none():
    """Nothing is drawn that the plan does not say."""
    assert made(work=[{"kind": "holes", "where": "inside face", "count": "4", "width": "1/4 in"}]) == ()


def test_parts_that_are_alike_share_one():
    """The same pattern on two parts is drawn once, with both names."""
    data = bench_data()
    for part in ("rail", "top"):
        data["parts"][part]["work"] = [PINS]
    shared = templates(Fitter(read_plan(data, "bench"), read_shop(shop_data())).fit(), Display())

    assert len(shared) == 1
    assert "rail" in shared[0].title
    assert "top" in shared[0].title


CURVE = {"kind": "curve", "where": "front edge", "depth": "1 3/4 in", "length": "12 in"}


def test_a_curve_runs_from_its_depth_at_the_end_to_the_edge():
    """The line begins as far in as the plan says, ends at the edge, and never turns back."""
    (one,) = made(part="rail", work=[CURVE])
    drawn = [shape for shape in lines(one.scene, "bold") if shape.y2 > shape.y1]

    wide = 4.75 * 72
    assert (drawn[0].x1, drawn[0].y1) == pytest.approx((wide - 1.75 * 72, 0))
    assert (drawn[-1].x2, drawn[-1].y2) == pytest.approx((wide, 12 * 72))
    assert all(shape.x2 >= shape.x1 for shape in drawn)
    middle = min(drawn, key=lambda shape: abs(shape.y1 - 6 * 72))
    assert middle.x1 == pytest.approx(wide - 1.75 * 72 / 2)


def test_a_curve_without_measures_has_no_template():
    """Where the plan does not say how far in and how long, nothing is drawn."""
    assert made(part="rail", work=[{"kind": "curve", "where": "front edge"}]) == ()


def test_tiles_cover_the_whole_and_overlap():
    """Each tile fits on a sheet; together they show all, the joins twice."""
    (one,) = made(part="leg", work=[TAPER])
    found = tiles(one.scene)
    heights = [tile.scene.height - 2 * MARGIN for tile in found]

    assert [tile.name for tile in found] == ["A1", "A2", "A3"]
    assert all(height <= MOST_HIGH for height in heights)
    assert sum(heights) - OVERLAP * (len(found) - 1) == pytest.approx(one.scene.height)


def test_tiles_without_a_line_to_follow_are_left_out():
    """Tiles that are wood or waste all over are left out, and none that the curve crosses."""
    steps = [(20.0 + 8 * i, 18.0 * i) for i in range(90)]
    line = tuple(Line(*one, *other, "bold") for one, other in pairwise(steps))
    scene = Scene(steps[-1][0] + 5, steps[-1][1] + 5, line, "curve")
    made = tiles(scene)
    names = {tile.name for tile in made}

    assert "A1" in names
    assert "B1" not in names
    drawn = {
        (round(shape.x1, 3), round(shape.y1, 3))
        for tile in made
        for group in tile.scene.shapes
        if isinstance(group, Group)
        for shape in group.shapes
        if isinstance(shape, Line) and shape.look == "bold"
    }
    assert {(round(x, 3), round(y, 3)) for x, y in steps[:-1]} <= drawn


def inside(tile):
    """Return what of the drawing a tile holds, and how far it was moved."""
    (group,) = (shape for shape in tile.scene.shapes if isinstance(shape, Group))
    return group


def test_nothing_hides_beyond_a_tile():
    """A line is cut at the tile's edge, and its pieces add up with the overlaps."""
    long = Scene(100, 1000, (Line(50, 0, 50, 1000), Line(0, 0, 100, 1000)), "long")
    pieces = []
    for tile in tiles(long):
        group = inside(tile)
        here = [shape for shape in group.shapes if isinstance(shape, Line) and shape.look == "edge"]
        pieces.append(next(line for line in here if line.x1 == line.x2 == 50))
        for line in here:
            assert -14 <= line.y1 + group.y <= tile.scene.height + 14

    assert sum(line.y2 - line.y1 for line in pieces) == pytest.approx(1000 + OVERLAP * (len(pieces) - 1))


def test_marks_of_neighbours_lie_on_each_other():
    """The crosses of a join have the same place in both tiles."""
    first, second = tiles(Scene(100, 1000, (Line(0, 0, 0, 1000),), "long"))[:2]

    def crosses(tile):
        return {(shape.x, round(shape.y, 6)) for shape in inside(tile).shapes if isinstance(shape, Circle)}

    assert crosses(first) & crosses(second) == crosses(first)


def test_a_wide_drawing_goes_over_several_columns():
    """Tiles are named by a letter across and a number down."""
    names = [tile.name for tile in tiles(Scene(MOST_WIDE * 1.5, MOST_HIGH * 1.5, (), "wide"))]

    assert names == ["A1", "B1", "A2", "B2"]
