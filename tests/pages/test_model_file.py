"""The 3-D file beside a page, and what a page has to turn the piece around."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
import trimesh

from scantling.measure import Display
from scantling.pages import Choices, make_pages, plan_pages
from scantling.pages.model_file import model_file
from scantling.plan import USUAL
from scantling.source import load_plan, load_shop, read_catalog
from tests.support.catalogs import write_catalog

PLANS = Path(__file__).resolve().parents[2] / "plans"
BIN = "book-bin"


@pytest.fixture(scope="module")
def plan():
    """Return a demo plan whose parts have places."""
    return load_plan(PLANS / BIN / "plan.md", load_shop(PLANS / "shop.yml").shop)


def test_it_lies_beside_every_page_of_a_placed_plan(plan):
    """A mesh library reads each, and finds the whole at the size of the page, which links to it."""
    made = plan_pages(plan, Choices())
    files = {file.path: file.content for file in made.finished.files}
    for page, size in zip(made.finished.pages, made.sizes, strict=True):
        folder = page.path.rpartition("/")[0]
        read = trimesh.load(io.BytesIO(files[f"{folder}/plan.glb"]), file_type="glb")
        overall = size.report.fitted.overall()
        metres = [float(overall[name].mm) / 1000 for name in ("width", "height", "depth")]

        assert list(read.extents) == pytest.approx(metres, abs=1e-6)
        assert '<a href="plan.glb">' in page.markdown
        assert "data-viewer" not in page.markdown


def test_a_page_has_the_button_where_both_scripts_are(plan):
    """The button needs what turns the piece and what wakes it; a site with only one has no button."""
    for engine, viewer in (("e" * 16, ""), ("", "f" * 16)):
        made = plan_pages(plan, Choices(engine=engine, viewer=viewer))
        assert all("data-viewer" not in page.markdown for page in made.finished.pages)

    made = plan_pages(plan, Choices(engine="e" * 16, viewer="f" * 16))
    assert all('data-viewer="ffffffffffffffff"' in page.markdown for page in made.finished.pages)


def test_a_plan_without_places_has_none(tmp_path):
    """Neither file nor link nor button where the parts have no place."""
    finished = make_pages(read_catalog(write_catalog(tmp_path)), Choices(engine="e" * 16, viewer="f" * 16))

    assert not [file.path for file in finished.files if file.path.endswith(".glb")]
    assert all("plan.glb" not in page.markdown for page in finished.pages)
    assert all("data-viewer" not in page.markdown for page in finished.pages)


def test_sizes_in_it_are_written_as_the_reader_writes_them(plan):
    """The parts carry millimetres for who reads millimetres."""
    fitted = plan.fitter.fit(USUAL)

    assert b" mm" in model_file(fitted, Display("mm"))
    assert b" mm" not in model_file(fitted, Display())
