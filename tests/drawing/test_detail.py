"""Joinery details: work lies at the end that its author names, and no number hides another."""

from __future__ import annotations

from itertools import combinations
from pathlib import Path

import pytest

from scantling.drawing import Circle, Group, Polygon, Rectangle, Scene, Text, detail_drawing
from scantling.measure import Display
from scantling.source import read_catalog
from tests.support.placing import fit
from tests.support.shapes import flat

ROOT = Path(__file__).resolve().parent.parent.parent


def detail(*works, **more) -> Scene:
    """Return the detail of a part 24 in long and 3 1/2 in wide on which this is done."""
    part = fit({"rail": {"work": list(works), **more}}).part("rail")
    scene = detail_drawing(part, Display())
    assert scene is not None
    return scene


def wood(scene) -> tuple[float, float]:
    """Return where the part begins and ends on the page."""
    outline = next(shape for shape in flat(scene.shapes) if isinstance(shape, Polygon))
    return min(x for x, _ in outline.points), max(x for x, _ in outline.points)


def slots(scene) -> list[tuple[float, float]]:
    """Return the middles of the pocket holes."""
    found = [shape for shape in flat(scene.shapes) if isinstance(shape, Polygon) and "paper" in shape.look]
    return [(sum(x for x, _ in one.points) / 4, sum(y for _, y in one.points) / 4) for one in found]


@pytest.mark.parametrize(
    ("where", "left", "right"),
    [
        ("inside face, each end", True, True),
        ("inside face, top end", False, True),
        ("inside face, lower end", True, False),
        ("upper face, both ends", True, True),
    ],
)
def test_pocket_holes_stand_at_the_end_that_is_named(where, left, right):
    """Two pocket holes at the top end are drawn there alone; at each end, at both."""
    scene = detail({"kind": "pocket holes", "where": where, "count": "2"})
    start, end = wood(scene)
    middle = (start + end) / 2

    assert len(slots(scene)) == 2 * (left + right)
    assert any(x < middle for x, _ in slots(scene)) == left
    assert any(x > middle for x, _ in slots(scene)) == right


def test_pocket_holes_begin_at_a_leaning_end():
    """Where an end is mitred, each hole runs to the cut and not into the air beside it."""
    scene = detail({"kind": "pocket holes", "where": "each end", "count": "2"}, ends="mitre 45 deg")
    outline = next(shape for shape in flat(scene.shapes) if isinstance(shape, Polygon))
    (x1, y1), (x2, y2) = outline.points[0], outline.points[3]

    for x, y in slots(scene):
        begins = x1 + (x2 - x1) * (y - y1) / (y2 - y1)
        assert x > begins


def test_a_rabbet_at_both_ends_runs_across():
    """A rabbet at both ends is drawn at both, as high as the part, and not along its edge."""
    scene = detail(
        {"kind": "rabbet", "where": "inside face, both ends", "width": "1/2 in", "depth": "1/4 in"}
    )
    start, end = wood(scene)
    cut = [shape for shape in scene.shapes if isinstance(shape, Rectangle) and shape.fill == "cutaway"]

    assert [round(one.x) for one in cut][:1] == [round(start)]
    assert [round(one.x + one.width) for one in cut][1:] == [round(end)]
    assert all(one.height > one.width for one in cut)


def test_a_groove_in_an_end_is_not_drawn_along_the_edge():
    """A groove in the lower end lies at that end, as deep as it goes."""
    scene = detail({"kind": "groove", "where": "lower end", "width": "1/8 in", "depth": "1/2 in"})
    start, end = wood(scene)
    groove = next(shape for shape in scene.shapes if isinstance(shape, Rectangle) and shape.look == "hidden")

    assert groove.x == pytest.approx(start)
    assert groove.width == pytest.approx((end - start) / 24 / 2)


def test_holes_without_a_distance_are_told_and_not_drawn():
    """A plan that does not say where holes go gets none at made-up places."""
    dado = {"kind": "dado", "width": "3/4 in", "depth": "1/4 in", "from end": "3 in"}
    loose = {"kind": "holes", "where": "the wide face", "count": "6", "width": "3/16 in"}
    scene = detail(dado, loose)

    assert "holes, the wide face: 6 of them" in scene.told
    assert not [
        shape for shape in flat(scene.shapes) if isinstance(shape, Circle) and shape.look == "edge paper"
    ]


def test_holes_are_measured_from_the_end_that_is_named():
    """The first hole near the top end is 2 in from it, the next 3 in further in."""
    work = {
        "kind": "holes",
        "where": "near the top end, one face",
        "count": "2",
        "width": "3/8 in",
        "from end": "2 in",
        "apart": "3 in",
    }
    scene = detail(work)
    start, end = wood(scene)
    holes = [shape.x for shape in scene.shapes if isinstance(shape, Circle)]

    assert [round((end - x) / (end - start) * 24, 6) for x in holes] == [2, 5]


def test_a_dado_for_a_sheet_is_told_as_wide_as_the_sheet():
    """A dado 23/32 in wide is not told as 3/4 in: the shelf would rattle in it."""
    scene = detail({"kind": "dado", "width": "23/32 in", "depth": "1/4 in", "from end": "3 in"})
    words = [shape.words for shape in flat(scene.shapes) if isinstance(shape, Text)]

    assert "23/32 in" in words
    assert "23/32 in wide" in scene.told
    assert not [said for said in words if "3/4 in" in said]


def test_no_number_hides_another():
    """On details of demo plans the numbers stand apart, and clear of the dimension line at the right."""
    catalog = read_catalog(ROOT / "plans")
    seen = 0
    for slug in ("oak-side-table", "sliding-door-console", "drawer-cabinet", "plywood-bookcase"):
        for part in catalog.plan(slug).fitter.fit().parts:
            scene = detail_drawing(part, Display())
            if scene is None:
                continue
            places = list(_places(scene))
            seen += len(places)
            for (x1, y1), (x2, y2) in combinations(places, 2):
                assert abs(x1 - x2) >= 12 or abs(y1 - y2) >= 12, (slug, part.id)
            assert all(x + 8 <= wood(scene)[1] for x, _ in places), (slug, part.id)
    assert seen > 20


def _number(group) -> str:
    words = [shape.words for shape in group.shapes if isinstance(shape, Text)]
    rounds = [shape for shape in group.shapes if isinstance(shape, Circle)]
    return words[0] if rounds and len(words) == 1 and words[0].isdigit() else ""


def _places(scene):
    """Return where the numbers in circles stand."""
    for group in scene.shapes:
        if isinstance(group, Group) and _number(group):
            ring = next(shape for shape in group.shapes if isinstance(shape, Circle))
            yield group.x + ring.x, group.y + ring.y
