"""What a renderer is told of each demo plan's model."""

from __future__ import annotations

import json

import pytest

from scantling.measure import Length
from scantling.source import read_catalog
from tools.renderings.__main__ import PLANS, main
from tools.renderings.models import model_of


@pytest.fixture(scope="module")
def fitters():
    """Return what fits each demo plan, by its folder."""
    return {plan.slug: plan.fitter for plan in read_catalog(PLANS).plans}


def test_every_piece_is_there_once(fitters):
    """As many pieces as the plan has placed, each with a name of its own, and each of some wood."""
    for slug, fitter in fitters.items():
        pieces = model_of(fitter)["pieces"]
        placed = sum(len(part.placed) for part in fitter.fit().parts)
        assert len({piece["name"] for piece in pieces}) == len(pieces) == placed > 0, slug
        assert all(piece["wood"] for piece in pieces), slug


def test_the_grain_runs_along_the_length(fitters):
    """Seen along its own directions, a leg is as long as the plan says, and as wide and thick."""
    fitter = fitters["entry-bench"]
    part = next(part for part in fitter.fit().parts if part.id == "leg")
    piece = next(piece for piece in model_of(fitter)["pieces"] if piece["name"].startswith("leg "))
    points = [point for solid in piece["solids"] for point in solid["points"]]
    along, across, through = (
        max(point[way] for point in points) - min(point[way] for point in points) for way in range(3)
    )

    assert along == pytest.approx(float(part.length / Length.of_inches(1)))
    assert across == pytest.approx(float(part.width / Length.of_inches(1)))
    assert through == pytest.approx(float(part.thick / Length.of_inches(1)))


def test_the_command_writes_the_plans_named(tmp_path):
    """A file a plan, and the same each time."""
    main(tmp_path / "one", ["book-bin"])
    main(tmp_path / "two", ["book-bin"])

    (one,) = (tmp_path / "one").iterdir()
    assert json.loads(one.read_text("utf-8"))["title"] == "Tidepool book bin"
    assert one.read_bytes() == (tmp_path / "two" / one.name).read_bytes()
