"""A site in another language, chosen for the plugin or by the theme; and one that is not there."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.support.catalogs import write_site


def build(site: Path) -> subprocess.CompletedProcess:
    """Build a site strictly."""
    command = [sys.executable, "-m", "mkdocs", "build", "--strict"]
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    return subprocess.run(command, cwd=site, env=told, capture_output=True, text=True, check=False)


def speaking(site: Path, *, plugin: str = "", theme: str = "") -> None:
    """Let a site that was written for a test choose its language."""
    settings = (site / "mkdocs.yml").read_text("utf-8")
    if plugin:
        settings = settings.replace("{scantling: {", f"{{scantling: {{language: {plugin}, ")
    if theme:
        settings = settings.replace("{name: material}", f"{{name: material, language: {theme}}}")
    assert f"language: {plugin or theme}" in settings
    (site / "mkdocs.yml").write_text(settings, "utf-8")


@pytest.mark.parametrize("chosen", [{"plugin": "de"}, {"theme": "de"}])
def test_a_site_speaks_the_language_that_was_chosen(tmp_path, chosen):
    """Our words, the theme's, the templates', and what the page says of its language."""
    write_site(tmp_path)
    speaking(tmp_path, **chosen)
    done = build(tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr
    page = (tmp_path / "site/plans/stool/index.html").read_text("utf-8")

    assert '<html lang="de"' in page
    for words in ("Materialliste", "Alle Pläne", "Plan von Test yard", "Quay stool"):
        assert words in page
    for words in ("Materials list", "All plans", "Plan by"):
        assert words not in page


def test_a_theme_whose_language_is_not_ours_keeps_it(tmp_path):
    """The theme speaks French, our words are English."""
    write_site(tmp_path)
    speaking(tmp_path, theme="fr")
    done = build(tmp_path)
    assert done.returncode == 0, done.stdout + done.stderr
    page = (tmp_path / "site/plans/stool/index.html").read_text("utf-8")

    assert '<html lang="fr"' in page
    assert "Materials list" in page


def test_a_language_that_is_not_there_stops_the_build(tmp_path):
    """With a word on those that there are."""
    write_site(tmp_path)
    speaking(tmp_path, plugin="tlh")
    done = build(tmp_path)

    assert done.returncode != 0
    assert "'language'" in done.stderr
    assert "'de'" in done.stderr


@pytest.mark.parametrize(
    ("currency", "said"),
    [
        ("currency: EUT", "there is no currency 'EUT'"),
        ("currency: EUR\nlocale: de_DE", "there is no way to write money called 'de_DE'"),
    ],
)
def test_money_that_nobody_can_write_is_told_with_its_line(tmp_path, currency, said):
    """A code or a locale that is not known, where it stands in the shop file."""
    write_site(tmp_path)
    shop = tmp_path / "plans" / "shop.yml"
    shop.write_text(shop.read_text("utf-8").replace("currency: $", currency), "utf-8")
    done = build(tmp_path)

    assert done.returncode != 0
    assert said in done.stderr
    assert f"plans/shop.yml:{3 if 'locale' in currency else 2}:" in done.stderr
