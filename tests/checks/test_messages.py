"""How checks speak, and that each is told in the docs and can be silenced by its name."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
import yaml

from scantling.checks import CHECKS
from tests.checks.breaking import WAYS
from tests.checks.demo import SLUGS, found_in, read, sizes_of, text_of

ROOT = Path(__file__).resolve().parent.parent.parent
UNKIND = re.compile(r"[.!]$|\b(?:must|error|invalid|illegal|None)\b")
PAGE = (ROOT / "docs" / "reference" / "checks.md").read_text("utf-8")


def test_names_are_slugs_and_unique():
    """A check's name is words joined by hyphens, and no two share it."""
    names = [check.name for check in CHECKS]

    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"[a-z]+(-[a-z]+)*", name) for name in names)


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.name)
def test_each_check_is_told(check):
    """Question, meaning, mend and, for guidance, source: in the check, and in its section of the page."""
    assert check.title.endswith("?")
    assert check.meaning.endswith((".", "”"))
    assert check.mend
    assert not check.mend.endswith(".")
    assert f"### {check.name}\n" in PAGE
    if check.group in {"Fasteners", "Strength and use", "Safety"}:
        assert check.source


@pytest.mark.parametrize("slug", SLUGS[::4])
def test_messages_are_short_and_kind(slug, tmp_path):
    """A message is one line without a full stop or an exclamation, and comes with help."""
    for way in WAYS:
        for one in list(way(text_of(slug), sizes_of(slug)))[:1]:
            source = read(one.text, tmp_path, slug)
            if source.fitter is None:
                continue
            for told in found_in(source):
                assert told.help, told
                assert len(told.message) <= 190, told.message
                assert "\n" not in told.message
                assert not re.search(r"[.!]$|\b(?:must|error|invalid|illegal|None)\b", told.message), (
                    told.message
                )


def test_hooks_run_a_command_that_there_is():
    """The hooks for pre-commit call `scantling check` as it is, for plans and the shop file."""
    from scantling.cli.main import _parser

    for hook in yaml.safe_load((ROOT / ".pre-commit-hooks.yaml").read_text("utf-8")):
        program, *words = hook["entry"].split()
        given = _parser().parse_args(words)

        assert program == "scantling"
        assert given.command == "check"
        assert re.search(hook["files"], "plans/quay-bench/plan.md")
        assert re.search(hook["files"], "plans/shop.yml")
        assert not re.search(hook["files"], "docs/index.md")
