"""A plan that was renamed is found at its old address."""

from __future__ import annotations

import re

import pytest

from scantling.pages import Choices, make_pages
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, write_catalog

MOVED = BENCH.replace("room: entry", "room: entry\nformerly: [wet-stool, quay-seat]")


def published(folder, site_url: str = "") -> dict[str, str]:
    """Return the catalog's files at former addresses, by path."""
    catalog = read_catalog(write_catalog(folder, stool=MOVED))
    made = make_pages(catalog, Choices(site_url=site_url))
    assert made.faults == ()
    return {one.path: one.content for one in made.files if one.path.startswith(("plans/wet", "plans/quay"))}


def test_each_page_of_the_plan_is_led_to(tmp_path):
    """The plan, its offered sizes and its page for posts answer at each former address."""
    found = published(tmp_path)

    assert sorted(path for path in found if path.startswith("plans/wet-stool/")) == [
        "plans/wet-stool/embed/index.html",
        "plans/wet-stool/index.html",
        "plans/wet-stool/width-30in/index.html",
        "plans/wet-stool/width-36in-shelf-slatted/index.html",
    ]
    assert len(found) == 8


def test_the_page_leads_on_without_scripts_as_well(tmp_path):
    """It holds a link, a refresh for browsers without scripts, and the address that counts."""
    page = published(tmp_path, "https://yard.example.org/")["plans/wet-stool/width-30in/index.html"]

    assert '<a href="../../stool/width-30in/">Quay stool</a>' in page
    assert re.search(r'<noscript><meta http-equiv="refresh" content="0; url=../../stool/width-30in/">', page)
    assert '<link rel="canonical" href="https://yard.example.org/plans/stool/width-30in/">' in page
    assert "http" not in page.replace("https://yard.example.org/", "").replace("http-equiv", "")


@pytest.mark.browser
def test_what_stood_behind_the_address_is_carried_on(page, tmp_path, serve_folder):
    """A reader's own size and step arrive, and so does a reader whose browser runs no scripts."""
    for path, content in published(tmp_path).items():
        file = tmp_path / "site" / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(content, "utf-8")
    home = tmp_path / "site" / "plans" / "stool" / "index.html"
    home.parent.mkdir(parents=True)
    home.write_text('<!doctype html><title>Here</title><link rel="icon" href="data:,">', "utf-8")
    url = serve_folder(tmp_path / "site").url
    page.goto(f"{url}plans/wet-stool/?width=31in&shelf=slatted#step-2")
    page.wait_for_url(f"{url}plans/stool/?width=31in&shelf=slatted#step-2")

    bare = page.context.browser.new_context(java_script_enabled=False).new_page()
    bare.goto(f"{url}plans/wet-stool/")
    bare.wait_for_url(f"{url}plans/stool/")
    bare.context.close()
