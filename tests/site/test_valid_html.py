"""Every page of the demo site is HTML as the standard writes it, by a validator that nobody here wrote."""

from __future__ import annotations

import json
import subprocess

import pytest

from tools.validator import VALIDATOR


@pytest.mark.timeout(300)
def test_every_page_of_the_site_is_valid_html(site, tmp_path):
    """html-validate, with its rules of the standard, finds nothing, in what is ours and in the theme."""
    settings = tmp_path / "settings.json"
    settings.write_text(json.dumps({"extends": ["html-validate:standard"], "root": True}))
    wrong = validate(settings, [str(page) for page in sorted(site.rglob("*.html"))])
    assert wrong == []


def test_the_validator_finds_what_is_wrong(tmp_path):
    """A page with a slip in it does not pass."""
    settings = tmp_path / "settings.json"
    settings.write_text(json.dumps({"extends": ["html-validate:standard"], "root": True}))
    page = tmp_path / "page.html"
    page.write_text(
        '<!doctype html><html lang="en"><head><title>A</title></head><body><p><div></p></body></html>'
    )
    assert validate(settings, [str(page)])


def validate(settings, pages):
    """Return each message about a page, with its place."""
    command = [*VALIDATOR.command(), "--config", str(settings), "--formatter", "json", *pages]
    told = subprocess.run(command, capture_output=True, text=True, check=False).stdout
    return [
        f"{page['filePath']}:{one['line']}:{one['column']}: {one['ruleId']}: {one['message']}"
        for page in json.loads(told)
        for one in page["messages"]
    ]
