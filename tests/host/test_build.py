"""Building a site with MkDocs: what comes out, what stops it, and what stays when it is stopped."""

from __future__ import annotations

import hashlib
import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from tests.support.catalogs import BENCH, build_small_site, hostile_plan, write_catalog, write_site


def mkdocs(site: Path, *arguments: str, **environment: str) -> subprocess.CompletedProcess:
    """Run MkDocs in a site's folder, never quietly: a quiet run forgets its warnings."""
    command = [sys.executable, "-m", "mkdocs", *arguments]
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1", **environment}
    return subprocess.run(command, cwd=site, env=told, capture_output=True, text=True, check=False)


def build(site: Path, *arguments: str, **environment: str) -> subprocess.CompletedProcess:
    """Build a site strictly."""
    return mkdocs(site, "build", "--strict", *arguments, **environment)


@pytest.fixture(scope="session")
def built(once) -> Path:
    """Return a small site, built strictly."""
    return once("small-site", build_small_site) / "site"


def digests(folder: Path) -> dict[str, str]:
    """Return a digest of every file; the sitemap's compressed form holds the time of the build."""
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and path.name != "sitemap.xml.gz"
    }


def test_a_strict_build_is_clean(built):
    """Every page of the plan stands on the site, with its files beside it."""
    for path in (
        "plans/index.html",
        "plans/stool/index.html",
        "plans/stool/width-30in/index.html",
        "plans/stool/plan.json",
        "plans/stool/cut-list.csv",
        "plans/stool/width-30in/cut-2x4-1.svg",
        "assets/scantling/notebook.css",
        "assets/scantling/fonts/cabin.woff2",
    ):
        assert (built / path).is_file(), path


def test_no_page_asks_a_stranger(built):
    """No page loads anything from another site."""
    loading = re.compile(
        r"""(?:<(?:script|img|iframe|source)[^>]*\ssrc|<link[^>]*\shref)="?(https?://[^"\s>]+)"""
    )
    for path in built.rglob("*.html"):
        strange = [url for url in loading.findall(path.read_text()) if "yard.example.org" not in url]

        assert strange == [], path
    assert "http" not in (built / "assets/scantling/notebook.css").read_text()


def test_an_offered_size_names_the_plan_as_canonical(built):
    """Search engines are led from an offered size to the plan's own page."""
    links = {
        path: re.findall(r'<link rel="canonical" href="([^"]*)"', (built / path / "index.html").read_text())
        for path in ("plans/stool", "plans/stool/width-30in")
    }

    assert links == {
        "plans/stool": ["https://yard.example.org/plans/stool/"],
        "plans/stool/width-30in": ["https://yard.example.org/plans/stool/"],
    }


def follow_links(built: Path) -> None:
    """Follow each relative link and picture of the plans' pages to a file."""
    pages = sorted(built.glob("plans/**/index.html"))

    assert len(pages) >= 4
    for page in pages:
        for address in re.findall(r'(?:href|src)="([^"#:?]+)[^":]*"', page.read_text()):
            target = (page.parent / address).resolve()

            assert target.is_file() or (target / "index.html").is_file(), f"{page}: {address}"


def test_every_link_leads_somewhere(built):
    """Each relative link and picture of a built page leads to a file of the site."""
    follow_links(built)


def test_links_hold_where_addresses_name_files(tmp_path):
    """With `use_directory_urls: false` every link still leads to a file."""
    site = write_site(tmp_path, stool=BENCH, settings="use_directory_urls: false\n")

    assert build(site).returncode == 0
    follow_links(site / "site")


def test_search_finds_words_and_no_glued_numbers(built):
    """The index has titles, parts, materials and tags of a plan, and no text of its tables and figures."""
    entries = json.loads((built / "search" / "search_index.json").read_text())["docs"]
    of_plan = [entry for entry in entries if entry["location"].startswith("plans/stool/")]
    text = " ".join(entry["text"] for entry in of_plan).replace("\N{NO-BREAK SPACE}", " ")

    for word in ("Quay stool", "leg", "seat", "2x4", "1x6", "wood screw 2 in", "outdoors", "Screw the"):
        assert word in text + " ".join(entry["title"] for entry in of_plan)
    assert of_plan[0]["tags"][:3] == ["stool", "quick", "outdoors"]
    assert {"width 24 inches", "width 30 inches", "width 762 mm"} <= set(of_plan[0]["tags"][3:])
    # a number that runs into a word or another number, as cells of a table do
    assert re.findall(r"\d+/\d+\d* ?in\d|in\d|[a-z]{3,}\d|\$\d", text) == []
    assert "Each" not in text
    assert [entry for entry in entries if "width-30in" in entry["location"]] == []


def test_words_between_tags_do_not_run_together(built):
    """In the index no two words of different elements are glued into one."""
    entries = json.loads((built / "search" / "search_index.json").read_text())["docs"]
    words = {word for entry in entries for word in re.findall(r"[A-Za-z]+", entry["text"])}

    assert {word for word in words if re.search(r"[a-z][A-Z]", word)} == set()


def test_two_builds_are_the_same_bytes(tmp_path):
    """Under other hash seeds and in another folder, the site comes out byte for byte the same."""
    seen = []
    for seed in ("1", "2"):
        site = write_site(tmp_path / f"site-{seed}", stool=BENCH, evil=hostile_plan())
        done = build(site, PYTHONHASHSEED=seed, SOURCE_DATE_EPOCH="1700000000")

        assert done.returncode == 0, done.stderr
        seen.append(digests(site / "site"))

    assert seen[0] == seen[1]


def test_a_fault_stops_the_build_and_leaves_the_last_good_site(tmp_path):
    """Every fault of every plan is told with its place; nothing of the site that is there changes."""
    site = write_site(tmp_path, stool=BENCH)
    assert build(site).returncode == 0
    before = digests(site / "site")
    write_catalog(
        site,
        stool=BENCH.replace("length: width}", "length: widht}"),
        other=BENCH.replace("count: 2,", "count: -2,"),
    )
    done = build(site)

    assert done.returncode != 0
    assert "plans/stool/plan.md:23:" in done.stderr
    assert "'width'" in done.stderr
    assert "plans/other/plan.md:23:" in done.stderr
    assert "Traceback" not in done.stderr
    assert digests(site / "site") == before


def test_a_build_without_strictness_stops_as_well(tmp_path):
    """A faulty plan is never published, strict or not."""
    site = write_site(tmp_path, stool=BENCH.replace("length: width}", "length: widht}"))
    done = mkdocs(site, "build")

    assert done.returncode != 0
    assert not (site / "site").exists()


def test_a_missing_shop_file_is_told(tmp_path):
    """Without a shop file nothing can be bought, and the build says which file it wants."""
    site = write_site(tmp_path, stool=BENCH)
    (site / "plans" / "shop.yml").unlink()
    done = build(site)

    assert done.returncode != 0
    assert "plans/shop.yml" in done.stderr
    assert "Traceback" not in done.stderr


def test_edit_links_lead_to_the_plan(tmp_path):
    """Where a site has a repository, a plan's page links to the author's file."""
    settings = "repo_url: https://example.org/yard\nedit_uri: edit/main/\n"
    site = write_site(tmp_path, stool=BENCH, settings=settings)
    (site / "mkdocs.yml").write_text(
        (site / "mkdocs.yml")
        .read_text()
        .replace("{name: material}", "{name: material, features: [content.action.edit]}")
    )

    assert build(site).returncode == 0
    assert (
        "https://example.org/yard/edit/main/plans/stool/plan.md"
        in (site / "site/plans/stool/index.html").read_text()
    )


def test_the_author_has_the_last_word(tmp_path):
    """A page, a template and a palette of the author's own stand in place of ours."""
    site = write_site(tmp_path, stool=BENCH)
    (site / "docs" / "plans").mkdir()
    (site / "docs" / "plans" / "index.md").write_text("# My own catalog\n", "utf-8")
    (site / "mine").mkdir()
    (site / "mine" / "scantling-plan.html").write_text(
        '{% extends "main.html" %}{% block footer %}My foot{% endblock %}'
    )
    settings = (site / "mkdocs.yml").read_text()
    theme = "{name: material, custom_dir: mine, palette: {scheme: slate}, font: false}"
    (site / "mkdocs.yml").write_text(settings.replace("{name: material}", theme), "utf-8")
    done = build(site)

    assert done.returncode == 0, done.stderr
    assert "My own catalog" in (site / "site/plans/index.html").read_text()
    page = (site / "site/plans/stool/index.html").read_text()
    assert "My foot" in page
    assert 'data-md-color-scheme="slate"' in page


def test_beside_an_authors_own_script_all_start_where_the_theme_starts_them(tmp_path):
    """Such a script may count on running while the page is read; else all wait for the first paint."""
    site = write_site(tmp_path, stool=BENCH)
    settings = (site / "mkdocs.yml").read_text()
    assert "extra_javascript" not in settings
    (site / "docs" / "mine.js").write_text("// mine", "utf-8")
    (site / "mkdocs.yml").write_text(settings + "\nextra_javascript: [mine.js]\n", "utf-8")
    done = build(site)
    assert done.returncode == 0, done.stderr
    page = (site / "site/plans/stool/index.html").read_text()

    assert 'id="sc-scripts"' not in page
    assert re.search(r'<script src="[^"]*mine\.js"', page)


def test_switched_off_it_does_nothing(tmp_path):
    """With `enabled: false` a site builds as if the plugin were not there."""
    site = write_site(tmp_path, stool=BENCH, options="enabled: false")
    (site / "docs" / "index.md").write_text("# Home\n", "utf-8")

    assert build(site).returncode == 0
    assert not (site / "site" / "plans").exists()


@pytest.mark.parametrize(
    ("setting", "told"),
    [
        ("units: furlong", "units"),
        ("fraction: 10", "fraction"),
        ("plan: x", "Unrecognised configuration name: plan"),
    ],
)
def test_a_mistyped_option_is_told(tmp_path, setting, told):
    """An option that does not exist, or a value that it cannot have, stops a strict build with its name."""
    site = write_site(tmp_path, stool=BENCH, options=setting)
    done = build(site)

    assert done.returncode != 0
    assert told in done.stderr + done.stdout
