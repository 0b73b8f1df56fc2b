"""A preview makes again what changed, and nothing else."""

from __future__ import annotations

import pytest
from mkdocs.config.defaults import MkDocsConfig

from scantling.host.kept_file import KeptFile, Published
from scantling.pages import SideFile


@pytest.fixture
def config(tmp_path) -> MkDocsConfig:
    """Return a host's settings with a folder for the site."""
    settings = MkDocsConfig()
    settings.load_dict({"site_name": "Test", "docs_dir": str(tmp_path), "site_dir": str(tmp_path / "site")})
    settings.validate()
    settings.plugins._current_plugin = "scantling"
    return settings


def noted(published: Published, config: MkDocsConfig, path: str, content: str) -> KeptFile:
    """Return a file that a build hands over."""
    return published.note(KeptFile.beside(config, SideFile(path, content)))


def test_only_what_is_another_than_last_time_is_modified(config):
    """The first build makes everything; the second what changed and what is new."""
    published = Published()
    assert noted(published, config, "a.svg", "one").is_modified()
    assert noted(published, config, "b.svg", "two").is_modified()
    published.settle()

    assert not noted(published, config, "a.svg", "one").is_modified()
    assert noted(published, config, "b.svg", "other").is_modified()
    assert noted(published, config, "c.svg", "new").is_modified()


def test_a_build_that_failed_counts_for_nothing(config):
    """What was only noted is not taken for published."""
    published = Published()
    noted(published, config, "a.svg", "one")

    assert noted(published, config, "a.svg", "one").is_modified()


def test_what_is_no_longer_published_is_removed(config, tmp_path):
    """A page of a plan that is gone does not linger in the preview."""
    published = Published()
    file = noted(published, config, "plans/gone.svg", "one")
    (tmp_path / "site" / "plans").mkdir(parents=True)
    (tmp_path / "site" / "plans" / "gone.svg").write_text("one")
    published.settle()
    published.settle()

    assert file.abs_dest_path.endswith("gone.svg")
    assert not (tmp_path / "site" / "plans" / "gone.svg").exists()
