"""Drawers and doors, against measuring guides of the trade and general libraries."""

from __future__ import annotations

from fractions import Fraction

import mpmath
import numpy as np
import pytest

from tests.outside.sources import checked
from tests.support.calculating import ask, exact

NUMPY = f"numpy {np.__version__.split('.')[0]}"
MPMATH = f"mpmath {mpmath.__version__.split('.')[0]}"


@checked(
    quantity="calc-drawer",
    place="measuring guides of drawer makers: side-mount slides, 1/2 in each side",
    kind="common practice",
)
@pytest.mark.parametrize(("opening", "box"), [("15", 14), ("18", 17), ("21 1/2", Fraction("20.5"))])
def test_side_mount_boxes_as_in_the_guides(opening, box):
    """The box is an inch narrower than its opening."""
    assert exact(ask("drawer", opening=opening, runs="side-mount"), "width") == box


@checked(
    quantity="calc-drawer",
    place="measuring guides of drawer makers: under-mount, sides of 5/8 in take 13/32 in off the opening, "
    "sides of 1/2 in 21/32 in",
    kind="common practice",
)
@pytest.mark.parametrize(
    ("opening", "side", "less"), [("15", "5/8", 13 / 32), ("15 3/4", "5/8", 13 / 32), ("15", "1/2", 21 / 32)]
)
def test_under_mount_boxes_as_in_the_guides(opening, side, less):
    """Within 1/64 in the box is as much narrower as the guides say."""
    answer = ask("drawer", opening=opening, runs="under-mount", side=side)

    whole = float(sum(Fraction(part) for part in opening.split()))
    assert whole - float(exact(answer, "width")) == pytest.approx(less, abs=1 / 64)


@checked(
    quantity="calc-drawer-slide",
    place="guides to choosing slides: no longer than the box, a box 18 1/4 in deep takes 18 in, "
    "one of 22 1/2 in takes 22 in, a case 23 in deep inside takes 22 in",
    kind="common practice",
)
@pytest.mark.parametrize(
    ("depth", "behind", "slide"),
    [("18 3/4", "1/2", 18), ("23", "1/2", 22), ("18", "1", 16), ("18", "0", 18), ("12 15/16", "1", 10)],
)
@pytest.mark.parametrize("runs", ["side-mount", "under-mount"])
def test_a_slide_is_no_longer_than_its_box(depth, behind, slide, runs):
    """The longest even length within what is left of the depth in front of the room behind the box."""
    answer = ask("drawer", opening="18", depth=depth, runs=runs, **{"clear-back": behind})

    assert exact(answer, "slide") == slide


@checked(
    quantity="calc-drawer",
    document="numpy",
    place=f"{NUMPY}: the widths across a drawer, summed",
    kind="library",
)
@pytest.mark.parametrize("runs", ["side-mount", "under-mount", "wood runners"])
def test_widths_across_a_drawer_fill_the_opening(runs):
    """Clearances, sides and the inside, one after the other, reach exactly from side to side."""
    answer = ask("drawer", opening="18", runs=runs, side="1/2", groove="1/4", slack="1/16")
    box, inside, bottom = (float(exact(answer, key)) for key in ("width", "inside", "bottom-width"))
    clear = {"side-mount": 1, "under-mount": 42 / 25.4 - 1, "wood runners": 0.125}[runs]

    across = np.cumsum([clear / 2, 0.5, inside, 0.5, clear / 2])

    assert across[-1] == pytest.approx(18, abs=1e-9)
    assert across[3] - across[0] == pytest.approx(box, abs=1e-9)
    assert bottom - inside == pytest.approx(2 * 0.25 - 1 / 16, abs=1e-9)


@checked(
    quantity="calc-sliding-doors", document="numpy", place=f"{NUMPY}: union of door intervals", kind="library"
)
@pytest.mark.parametrize(
    ("opening", "doors", "overlap"), [(36, 2, 1), (42, 2, 1.5), (60, 3, 2), (96, 4, 0.75)]
)
def test_doors_in_grooves_cover_the_opening(opening, doors, overlap):
    """Doors laid from side to side, each over the one before, end where the opening does."""
    answer = ask("sliding-doors", opening=str(opening), doors=str(doors), overlap=str(overlap))
    width = float(exact(answer, "width"))

    starts = np.arange(doors) * (width - overlap)

    assert starts[-1] + width == pytest.approx(opening, abs=1e-9)
    assert np.diff(starts) == pytest.approx(np.full(doors - 1, width - overlap))
    held, drop = (float(exact(answer, key)) for key in ("held", "drop"))
    assert held + drop == pytest.approx(0.5)


@checked(
    quantity="calc-sliding-doors",
    place="a rail is about twice as long as the door that hangs from it",
    kind="common practice",
)
@pytest.mark.parametrize(
    ("opening", "doors", "overlap", "rail"),
    [(36, 1, 1, 75), (30, 1, 2, 66), (60, 2, 1, 122), (48, 2, 1.5, 99)],
)
def test_rails_are_about_twice_the_doors(opening, doors, overlap, rail):
    """The rail lets every door clear the opening, and is within two overlaps of twice the doors."""
    answer = ask(
        "sliding-doors", opening=str(opening), doors=str(doors), overlap=str(overlap), runs="hung from a rail"
    )
    width, found = (float(exact(answer, key)) for key in ("width", "rail"))

    assert found == rail
    assert abs(found - 2 * doors * width) <= 2 * overlap
    travel = found / doors - width
    assert travel >= opening / doors


@checked(
    quantity="calc-hinged-doors", document="numpy", place=f"{NUMPY}: widths across, summed", kind="library"
)
@pytest.mark.parametrize(
    ("opening", "doors", "mounted", "edge"),
    [
        (16.5, 1, "inset", 0.09375),
        (40, 2, "inset", 0.125),
        (18, 1, "overlay", 0.5),
        (36, 2, "overlay", 0.375),
    ],
)
def test_doors_and_gaps_fill_the_opening(opening, doors, mounted, edge):
    """Gaps, stiles, rails without tenons and gaps again reach over the opening, or past it by the overlay."""
    answer = ask(
        "hinged-doors",
        opening=str(opening),
        doors=str(doors),
        mounted=mounted,
        edge=str(edge),
        between="1/8",
        stile="2 1/4",
        tenon="3/8",
        groove="3/8",
        slack="1/8",
    )
    rail, panel = (float(exact(answer, key)) for key in ("rail", "panel-width"))
    inner = rail - 0.75

    across = [2.25, inner, 2.25]
    if doors == 2:
        across = [*across, 0.125, *across]

    past = 2 * edge * (1 if mounted == "overlay" else -1)
    assert np.sum(across) == pytest.approx(opening + past, abs=1e-9)
    assert panel == pytest.approx(inner + 0.75 - 0.125, abs=1e-9)


@checked(
    quantity="calc-door-droop",
    document="mpmath",
    place=f"{MPMATH}: hypot; a turned rectangle",
    kind="library",
)
@pytest.mark.parametrize(
    ("opening", "thickness", "hinges", "play"),
    [("16.5", "0.75", "22", "0.015625"), ("24", "1.25", "18", "0.03125"), ("10", "0.5", "8", "0.01")],
)
def test_droop_and_swing_of_a_turned_door(opening, thickness, hinges, play):
    """Turning the door about its hinge gives the same droop and the same room to swing."""
    answer = ask(
        "hinged-doors",
        opening=opening,
        height="30",
        thickness=thickness,
        hinges=hinges,
        hinge_play=f"{play} in",
        edge="0",
        stile="1",
    )
    width = mpmath.mpf(opening)
    tilt = mpmath.mpf(play) / mpmath.mpf(hinges)

    assert float(exact(answer, "droop")) == pytest.approx(float(width * tilt), rel=1e-9)
    swing = mpmath.hypot(width, mpmath.mpf(thickness)) - width
    assert float(exact(answer, "swing")) == pytest.approx(float(swing), abs=1e-10)
