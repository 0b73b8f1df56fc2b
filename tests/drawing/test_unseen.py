"""New parts that others hide are shown dashed, with their letters, and those that can be seen are not."""

from __future__ import annotations

from pathlib import Path

import pytest

from scantling.drawing import Strokes, Text, make_model, step_pictures
from scantling.measure import Display
from scantling.source import read_catalog
from tests.support.shapes import flat

ROOT = Path(__file__).resolve().parent.parent.parent


@pytest.fixture(scope="module")
def planter():
    """Return the pictures of the planter's steps, by number."""
    fitted = read_catalog(ROOT / "plans").plan("herb-planter").fitter.fit()
    return dict(enumerate(step_pictures(make_model(fitted, Display())), 1))


def _dashed(scene) -> list[tuple[float, float, float, float]]:
    return [
        line
        for shape in flat(scene.shapes)
        if isinstance(shape, Strokes) and shape.look == "unseen"
        for line in shape.lines
    ]


def test_cleats_inside_a_box_are_dashed_and_lettered(planter):
    """Four cleats that the walls hide: nine edges of each that could be seen, none of them twice."""
    lines = _dashed(planter[4])
    letters = [shape.words for shape in flat(planter[4].shapes) if isinstance(shape, Text)]

    assert len(lines) == 4 * 9
    assert len(set(lines)) == len(lines)
    assert {"D", "E"} <= set(letters)
    assert "Dashed: what others hide." in planter[4].told


def test_parts_that_can_be_seen_are_not_dashed(planter):
    """The first sides and the battens stand in sight."""
    for number in (2, 3):
        assert _dashed(planter[number]) == []
        assert "Dashed" not in planter[number].told
