"""Braces, solids and 3-D files, against tables, high-precision arithmetic and a general mesh library."""

from __future__ import annotations

import io
from fractions import Fraction

import mpmath
import numpy as np
import pytest
import trimesh

from scantling.cutting import PartItem, Problem, Rules, StockItem, solve
from scantling.drawing import cut_order, make_model, to_glb
from scantling.geometry import fit_brace
from scantling.measure import Length, write_length
from tests.outside.sources import checked
from tests.support.placing import fit

MPMATH = f"mpmath {mpmath.__version__.split('.')[0]}"
TRIMESH = f"trimesh {trimesh.__version__.split('.')[0]}"

BRACES = [
    ("36", "30", "7/2", 44.0888771740852, 35.5222650104452, 46.7306109525651),
    ("24", "48", "3/2", 65.0366231431367, 61.8332745027073, 53.6446642267430),
    ("57/2", "70", "5/2", 69.7422184506973, 65.9510920737467, 75.5380698720850),
]
"""Run, rise, width; slope on rails, slope on posts, length: by clipping a turned rectangle to the opening and
bisecting on its extent with 50 digits."""


def length(text):
    """Return a length in inches."""
    return Length(Fraction(text))


def bisected(run, rise, width, *, on_rails):
    """Return the slope of a brace by bisecting: cut by the opening, its far corner must be the opening's.

    On the rails its ends are cut level. Of a strip whose lower left long point is the opening's corner, the
    upper end lies between two places on the upper rail; the right one of them must be the opening's corner.
    On the posts the same with run and rise exchanged.
    """
    mpmath.mp.dps = 40
    run, rise, width = (
        mpmath.mpf(Fraction(x).numerator) / Fraction(x).denominator for x in (run, rise, width)
    )
    if not on_rails:
        run, rise = rise, run
    low, high = mpmath.mpf(0.01), mpmath.pi / 2
    for _ in range(120):
        angle = (low + high) / 2
        reach = rise / mpmath.tan(angle) + width / mpmath.sin(angle)
        low, high = (angle, high) if reach > run else (low, angle)
    return angle if on_rails else mpmath.pi / 2 - angle


@checked(quantity="brace-fit", document="mpmath, high-precision arithmetic", place=MPMATH, kind="library")
@pytest.mark.parametrize(("run", "rise", "width", "on_rails", "on_posts", "long"), BRACES)
def test_a_brace_has_the_slope_and_length_of_the_numeric_solution(run, rise, width, on_rails, on_posts, long):
    """Seated on rails or posts, to twelve digits; the simple diagonal would be off by degrees."""
    sides = [length(side) for side in (run, rise, width)]
    for seat, slope in (("rails", on_rails), ("posts", on_posts)):
        brace = fit_brace(*sides, seat)

        assert float(brace.slope.degrees) == pytest.approx(slope, abs=1e-10)
        assert float(brace.length.inches) == pytest.approx(long, abs=1e-10)
        mitre = 90 - slope if seat == "rails" else slope
        assert float(brace.mitre.degrees) == pytest.approx(mitre, abs=1e-10)
        again = mpmath.degrees(bisected(run, rise, width, on_rails=seat == "rails"))
        assert float(brace.slope.degrees) == pytest.approx(float(again), abs=1e-10)


@checked(
    quantity="brace-fit", document="numpy, linear algebra", place=f"numpy {np.__version__[0]}", kind="library"
)
@pytest.mark.parametrize(("run", "rise", "width", "on_rails", "on_posts", "long"), BRACES)
def test_a_brace_touches_both_corners_and_is_as_wide_as_its_strip(run, rise, width, on_rails, on_posts, long):
    """Its long edges are as far apart as it is wide, and pass through opposite corners of the opening."""
    for seat in ("rails", "posts", "corners"):
        brace = fit_brace(*(length(side) for side in (run, rise, width)), seat)
        edges = [(np.array([float(a), float(b)]), float(most)) for (a, b), most in brace.edges]
        far = np.array([float(Fraction(run)), float(Fraction(rise))])

        assert np.linalg.norm(edges[0][0]) == pytest.approx(1, abs=1e-10)
        assert edges[0][1] + edges[1][1] == pytest.approx(float(Fraction(width)), abs=1e-9)
        gaps = [most - normal @ corner for corner in (np.zeros(2), far) for normal, most in edges]
        if seat == "corners":
            assert gaps == pytest.approx([float(Fraction(width)) / 2] * 4, abs=1e-9)
        else:
            assert min(gaps[:2]) == pytest.approx(0, abs=1e-9)
            assert min(gaps[2:]) == pytest.approx(0, abs=1e-9)


@checked(quantity="saw-setting", kind="common practice")
def test_the_fence_is_set_to_the_width_of_the_strip_and_the_stop_to_the_length_of_the_piece():
    """A 5 1/2 in board gives two 2 1/2 in strips at one setting of the fence, and 1/4 in is left."""
    stock = StockItem("6ft", "1x6", 72 * 8, 44, 786)
    strips = PartItem("strip", "1x6", 4, 30 * 8, 20)
    problem = Problem("1/8 in", 1, 3, (stock,), (strips,), Rules(keep_length=96, keep_width=16))
    (board,) = solve(problem).boards
    assert board.cuts is not None
    cuts = cut_order(board.cuts, 1, "AAAA", lambda units: Length(Fraction(units, 8)), write_length)

    rips = [cut for cut in cuts if cut.y1 == cut.y2]
    assert [cut.setting for cut in rips] == ["rip, fence at 2 1/2 in"] * 2
    assert 5.5 - (rips[-1].y1 + 1 / 16) == pytest.approx(0.25)
    assert {cut.setting for cut in cuts if cut.x1 == cut.x2} == {"crosscut at 30 in"}
    assert [cut.number for cut in rips] == [1, 2], "long rips come before short pieces"


FRAME = {
    "leg": {
        "count": "4",
        "length": "24 in",
        "width": "1 1/2 in",
        "place": {"runs": "up", "left": "2 in", "front": "1 in", "mirror": "both"},
    },
    "rail": {
        "count": "2",
        "length": "30 in",
        "ends": "mitre 30 deg",
        "place": {"faces": "front", "left": "leg.right", "top": "leg.top", "mirror": "back"},
    },
    "brace": {
        "count": "2",
        "width": "2 in",
        "length": "brace.fit length",
        "place": {
            "brace": "posts",
            "left": "4 in",
            "right": "40 in",
            "bottom": "2 in",
            "top": "20 in",
            "crossed": "half-lap",
        },
    },
    "splayed": {
        "length": "20 in",
        "width": "1 1/2 in",
        "place": {"runs": "up", "lean": "8 deg", "leans": ["right", "back"]},
    },
}


def read_back(fitted):
    """Return the meshes of a plan's GLB by node name, in metres, as the mesh library reads them."""
    scene = trimesh.load(io.BytesIO(to_glb(make_model(fitted))), file_type="glb")
    found = {}
    for name in scene.graph.nodes_geometry:
        turn, geometry = scene.graph[name]
        mesh = scene.geometry[geometry].copy()
        mesh.apply_transform(turn)
        found[name] = mesh
    return found


@checked(quantity="model-3d", document="trimesh, triangular meshes", place=TRIMESH, kind="library")
def test_a_3d_file_read_back_has_the_plan_s_volumes_and_boxes():
    """Every instance is there by name, with its box and, for whole pieces, its volume, to a micrometre."""
    fitted = fit(FRAME)
    meshes = read_back(fitted)

    assert sorted(meshes) == sorted(f"{part.id} {one.number}" for part in fitted.parts for one in part.placed)
    for part in fitted.parts:
        for one in part.placed:
            mesh = meshes[f"{part.id} {one.number}"]
            low, high = ([float(end.inches) * 0.0254 for end in corner] for corner in (one.low, one.high))
            assert mesh.bounds[0] == pytest.approx([low[0], low[2], -high[1]], abs=2e-6)
            assert mesh.bounds[1] == pytest.approx([high[0], high[2], -low[1]], abs=2e-6)
            if one.is_box:
                whole = float((part.length * part.width * part.thick).cubic_metres)
                mesh.merge_vertices(merge_norm=True, merge_tex=True)
                assert mesh.is_watertight
                assert mesh.volume == pytest.approx(whole, rel=1e-5)


@checked(quantity="model-3d", document="trimesh, triangular meshes", place=TRIMESH, kind="library")
def test_cut_parts_have_the_volume_that_is_reckoned_on_paper():
    """A mitred rail, lapped braces and a splayed leg, by formula."""
    fitted = fit(FRAME)
    meshes = read_back(fitted)
    inch = 0.0254**3

    rail = (30 - 3.5 * np.tan(np.radians(30))) * 3.5 * 1.5
    assert meshes["rail 1"].volume / inch == pytest.approx(rail, rel=1e-4)
    slope = np.radians(float(fitted.values["brace.fit angle"].degrees))
    strip = (36 / np.cos(slope)) * 2 * 1.5
    lapped = strip - 2 * 2 / np.sin(2 * slope) * 1.5 / 2
    assert meshes["brace 1"].volume / inch == pytest.approx(lapped, rel=1e-4)
    assert meshes["splayed 1"].volume / inch == pytest.approx(20 * 1.5 * 1.5, rel=1e-4)
