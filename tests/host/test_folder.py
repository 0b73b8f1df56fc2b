"""The same pages as a folder: plain MkDocs with the theme makes the same articles of them."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import yaml

from tests.support.catalogs import BENCH, hostile_plan, write_site


def run(site: Path, *command: str) -> subprocess.CompletedProcess:
    """Run a module in a site's folder; it must end well."""
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    done = subprocess.run(
        [sys.executable, "-m", *command], cwd=site, env=told, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done


def article(path: Path) -> str:
    """Return a page's article."""
    found = re.search(r"<article.*?</article>", path.read_text("utf-8"), re.DOTALL)
    assert found, path
    return found[0]


def after_picture(html: str) -> str:
    """Return a page without its first picture, which the plugin puts into it and other hosts link to."""
    return re.sub(r"<img [^>]*>", "", html, count=1)


def test_a_folder_builds_to_the_same_articles(tmp_path):
    """`scantling pages` and the plugin give a reader the same, page for page, file for file."""
    site = write_site(tmp_path / "site", stool=BENCH, evil=hostile_plan())
    run(site, "mkdocs", "build", "--strict")
    named = ("--title", "Test yard", "--site-url", "https://yard.example.org/")
    run(site, "scantling", "pages", "out", "--no-paper", "--no-live", *named)
    run(site / "out", "mkdocs", "build", "--strict")
    ours, plain = site / "site", site / "out" / "site"
    files = [path.relative_to(ours) for path in sorted(ours.rglob("*")) if path.is_file()]
    made = [path for path in files if path.parts[0] in {"plans", "assets"} and "cards" not in path.parts]

    assert yaml.safe_load((site / "out" / "mkdocs.yml").read_text())["plugins"] == ["search"]
    themed = [path for path in made if path.name == "index.html" and path.parent.name != "embed"]
    assert len(themed) == 6
    for path in made:
        if path in themed:
            assert after_picture(article(ours / path)) == after_picture(article(plain / path)), path
        else:
            assert (ours / path).read_bytes() == (plain / path).read_bytes(), path


def test_every_page_has_front_matter_that_any_host_reads(tmp_path):
    """Title and description are there, on one line each, whatever the plan says."""
    site = write_site(tmp_path, stool=BENCH, evil=hostile_plan())
    run(site, "scantling", "pages", "out", "--no-paper", "--no-live")
    pages = sorted((site / "out" / "docs" / "plans").rglob("index.md"))

    assert len(pages) == 6
    for path in pages:
        meta = yaml.safe_load(path.read_text("utf-8").split("---\n")[1])

        assert "\n" not in meta["title"] + meta["description"]
        assert not set(meta["title"] + meta["description"]) & set('<>"')


def test_writing_twice_is_the_same(tmp_path):
    """A second run into the same folder changes no byte and leaves other files alone."""
    site = write_site(tmp_path, stool=BENCH)
    run(site, "scantling", "pages", "out", "--no-paper", "--no-live")
    (site / "out" / "docs" / "index.md").write_text("# Mine\n", "utf-8")
    before = {path: path.read_bytes() for path in sorted((site / "out").rglob("*")) if path.is_file()}
    run(site, "scantling", "pages", "out", "--no-paper", "--no-live")

    assert before == {path: path.read_bytes() for path in sorted((site / "out").rglob("*")) if path.is_file()}


def test_a_folder_brings_what_works_out_other_sizes(tmp_path):
    """Without being told otherwise, the folder holds the engine, its scripts and the trip."""
    site = write_site(tmp_path, stool=BENCH)
    run(site, "scantling", "pages", "out", "--no-paper")
    docs = site / "out" / "docs"

    assert list((docs / "assets" / "scantling" / "live").rglob("*.wasm"))
    assert 'data-live="plan"' in (docs / "plans" / "stool" / "index.md").read_text("utf-8")
    assert "data-trip-items" in (docs / "trip" / "index.md").read_text("utf-8")
    assert "assets/scantling/live/live.js" in str(yaml.safe_load((site / "out" / "mkdocs.yml").read_text()))
