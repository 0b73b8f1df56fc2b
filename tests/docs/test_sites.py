"""Settings and posts of the documentation make a site; its workflow is the one that is given out."""

from __future__ import annotations

import pytest
import yaml

from scantling.cli import main
from scantling.cli.scaffold import WORKFLOW
from tests.docs.examples import all_examples
from tests.host.test_build import build

EXAMPLES = all_examples()
SITES = [example for example in EXAMPLES if example.kind == "site"]
POSTS = [example for example in EXAMPLES if example.kind == "post"]
LEAN = "  - scantling: {paper: false, live: false, link_cards: false}\n"


@pytest.fixture
def catalog(tmp_path, monkeypatch, capsys):
    """Return a fresh catalog as a newcomer gets it."""
    monkeypatch.chdir(tmp_path)
    assert main(["new", "--catalog", "harbour"]) == 0
    capsys.readouterr()
    return tmp_path / "harbour"


def built(catalog, settings: str):
    """Build the catalog strictly with some settings, without what takes long."""
    assert "  - scantling\n" in settings
    (catalog / "mkdocs.yml").write_text(settings.replace("  - scantling\n", LEAN), "utf-8")
    done = build(catalog)
    assert done.returncode == 0, done.stdout + done.stderr
    return catalog / "site"


@pytest.mark.parametrize("example", SITES, ids=str)
def test_settings_make_a_site(catalog, example):
    """A fresh catalog with the settings of a page is built without a warning."""
    folder = yaml.safe_load(example.text)["theme"].get("custom_dir")
    if folder:
        counter = catalog / folder / "partials" / "integrations" / "analytics" / "custom.html"
        counter.parent.mkdir(parents=True)
        counter.write_text("", "utf-8")
    site = built(catalog, example.text)

    assert (site / "plans" / "first-crate" / "index.html").is_file()


def test_a_fresh_catalog_with_the_posts_of_the_pages_is_a_site(catalog):
    """Its own settings, its own first post and those that the documentation shows are built as they stand."""
    for number, example in enumerate(POSTS):
        (catalog / "docs" / "blog" / "posts" / f"shown-{number}.md").write_text(
            example.text.replace("# ", f"# {number} ", 1), "utf-8"
        )
    site = built(catalog, (catalog / "mkdocs.yml").read_text("utf-8"))
    posts = [path.read_text("utf-8") for path in sorted(site.glob("blog/2*/*/*/*/index.html"))]

    assert len(POSTS) == 3
    assert len(posts) == 1 + len(POSTS)
    assert sum('class="sc-card sc-in-post"' in page for page in posts) == 2
    assert sum("/plans/first-crate/embed/" in page for page in posts) == 1


def test_the_workflow_is_the_one_that_a_new_catalog_has(catalog):
    """The page shows it whole, and it is YAML with one job."""
    (example,) = (one for one in EXAMPLES if one.kind == "workflow")

    assert example.text == WORKFLOW == (catalog / ".github" / "workflows" / "publish.yml").read_text("utf-8")
    assert list(yaml.safe_load(WORKFLOW)["jobs"]) == ["site"]


def test_a_new_catalog_names_the_versions_that_it_was_begun_with(catalog):
    """Each line of `requirements.txt` is a comment, a version, or the wheel of this very version."""
    from importlib.metadata import version

    lines = (catalog / "requirements.txt").read_text("utf-8").splitlines()
    named = [line for line in lines if not line.startswith("#")]

    assert named[0] == f"./wheels/scantling-{version('scantling')}-py3-none-any.whl"
    assert {f"{name}=={version(name)}" for name in ("mkdocs", "mkdocs-material", "pillow", "typst")} <= set(
        named
    )
