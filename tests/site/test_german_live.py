"""A live site in German: the engine answers in German in the browser, and so do the scripts."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest

from tests.support.catalogs import write_site
from tests.support.live_page import READY, choose, fragment, told, wait

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def german(once, serve_folder):
    """Return a small live site in German and millimetres on a web server."""

    def make(folder) -> None:
        site = write_site(folder, options="paper: false, language: de, units: mm")
        command = [sys.executable, "-m", "mkdocs", "build", "--strict"]
        told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
        done = subprocess.run(command, cwd=site, env=told, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stderr

    return serve_folder(once("german-site", make) / "site")


def test_a_size_of_ones_own_is_answered_in_german(page, german):
    """What is said, the lists, the money, and a size that is out of range."""
    page.goto(german.url + "plans/stool/")
    choose(page, "width", "700 mm")
    wait(page, "Gezeigt für")

    assert "Kosten" in page.inner_text("[data-live-say]")
    assert "\N{NO-BREAK SPACE}$" in page.inner_text(".sc-fact--cost dd")
    assert "Schnittholz" in fragment(page, "materials")
    assert "aus 2x4 Nr. 1" in fragment(page, "cut-list")

    choose(page, "width", "5000 mm")
    page.wait_for_selector("[data-fault]:visible", timeout=READY)

    assert any("liegt außerhalb" in words for words in told(page))


def test_scripts_speak_german_too(page, german):
    """The catalog's count, and a plan that is put on the list."""
    page.goto(german.url + "plans/stool/")
    page.locator("[data-live-add]").click()
    wait(page, "steht auf dem Einkaufszettel")
    page.goto(german.url + "trip/")
    wait(page, "1 Möbelstück")

    assert "Gemeinsam gekauft" in fragment(page, "trip-sum")
