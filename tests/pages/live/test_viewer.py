"""What turns a piece around in the reader's browser: where it comes from, and that it is checked."""

from __future__ import annotations

import re

import pytest

from scantling.pages.live import viewer
from scantling.pages.live.runtime import Node, NoRuntime
from scantling.pages.live.viewer import find_viewer, get_viewer, ready_viewer


@pytest.fixture(scope="module")
def made():
    """Return the viewer."""
    return get_viewer()


def test_it_is_found_again_without_being_fetched(made):
    """A second build finds what the first one kept."""
    assert find_viewer() == made
    assert ready_viewer(pytest.fail) == made.digest


def test_every_import_leads_to_a_file_beside(made):
    """A browser finds all that the files ask for, without a tool that looks packages up by name."""
    names = {path.name for path in made.files()}
    wanted: set[str] = set()
    for path in made.files():
        if path.suffix == ".js":
            code = re.sub(r"/\*.*?\*/|//[^\n]*", "", path.read_text("utf-8"), flags=re.DOTALL)
            wanted |= set(re.findall(r"""[}\w] ?from ?['"]([^'"]+)['"];""", code))

    assert {"./three.module.min.js", "./three.core.min.js", "./BufferGeometryUtils.js"} <= wanted
    assert wanted <= {f"./{name}" for name in names}


def test_its_licence_goes_with_it(made):
    """The notice names what it is and holds the licence that asks to be kept."""
    notice = (made.folder / "NOTICE.txt").read_text("utf-8")

    assert notice.startswith(f"three.js {viewer.THREE}")
    assert "The MIT License" in notice
    assert "three.js authors" in notice


def test_a_package_that_is_not_the_tested_one_is_refused(monkeypatch, tmp_path):
    """The checksum is looked at before anything is unpacked, and nothing is kept."""

    def forge(self, package, folder):
        (folder / "three.tgz").write_bytes(b"something else")

    monkeypatch.setattr(Node, "pack", forge)
    with pytest.raises(NoRuntime, match="not the one that was tested"):
        get_viewer(tmp_path)

    assert list(tmp_path.iterdir()) == []


def test_where_it_cannot_be_had_the_site_is_built_without_and_says_so(monkeypatch, tmp_path):
    """The author reads why, and the build goes on."""

    def fail(self, package, folder):
        raise NoRuntime("the package could not be fetched")

    monkeypatch.setenv("SCANTLING_CACHE", str(tmp_path))
    monkeypatch.setattr(Node, "pack", fail)
    told: list[str] = []

    assert ready_viewer(told.append) == ""
    assert "built without pieces to turn around: the package could not be fetched" in told[-1]
