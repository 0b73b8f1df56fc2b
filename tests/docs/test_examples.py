"""Every example in the documentation works as the page says."""

from __future__ import annotations

import os
import re
import shlex
import subprocess
import sys
from collections.abc import Iterator
from itertools import groupby
from pathlib import Path

import pytest
import yaml

from scantling.fault import Faulty
from scantling.formula import read_formula
from scantling.shop import read_shop
from scantling.source import load_plan, load_shop
from tests.docs.examples import ROOT, Example, all_examples, steps_of

KINDS = {
    "plan",
    "front matter",
    "shop",
    "formulas",
    "faults",
    "yaml",
    "site",
    "post",
    "workflow",
    "commands",
    "output",
    "not here",
    "make",
    "python",
}
EXAMPLES = all_examples()
COMMANDED = {"commands", "output", "file", "change", "add"}


def of_kind(*kinds: str) -> list[Example]:
    """Return the examples of some kinds."""
    return [example for example in EXAMPLES if example.kind in kinds]


def scope_of(more: str) -> dict[str, object]:
    """Return the values that a page gives names for its formulas: `width = 48 in, n = 3`."""
    pairs = (pair.split("=", 1) for pair in more.split(",") if pair.strip())
    return {name.strip(): read_formula(value.strip()).evaluate({}) for name, value in pairs}


@pytest.mark.parametrize("example", EXAMPLES, ids=str)
def test_every_block_says_what_it_is(example):
    """A fenced block has a mark that tells how it is tried."""
    kind = example.kind.split(" ", 1)[0]
    assert example.kind in KINDS or kind in COMMANDED


@pytest.mark.parametrize("example", of_kind("plan", "front matter"), ids=str)
def test_plans_hold(example, tmp_path):
    """A plan on a page has no fault with the workshop's own shop file, usual and at every offered size."""
    text = example.text
    if example.kind == "front matter":
        text = f"---\ntitle: Example\n{text}---\n"
    path = tmp_path / "example" / "plan.md"
    path.parent.mkdir()
    path.write_text(text, "utf-8")
    shop = load_shop(ROOT / "plans" / "shop.yml").shop

    plan = load_plan(path, shop)

    assert [str(one) for one in plan.diagnostics if one.is_fault] == []
    assert plan.fitter is not None


@pytest.mark.parametrize("example", of_kind("shop"), ids=str)
def test_shop_files_are_read(example, tmp_path):
    """A shop file on a page has no fault."""
    path = tmp_path / "shop.yml"
    path.write_text(example.text, "utf-8")
    assert load_shop(path).diagnostics == ()


def test_an_empty_shop_is_refused():
    """The reader that the examples go through does find faults."""
    with pytest.raises(Faulty):
        read_shop({})


@pytest.mark.parametrize("example", of_kind("formulas"), ids=str)
def test_formulas_come_to_what_is_said(example):
    """What stands after the last equals sign is what the formula is worth."""
    scope = scope_of(example.more)
    for line in filter(str.strip, example.text.splitlines()):
        formula, result = re.split(r"\s{2,}=\s+", line, maxsplit=1)
        assert read_formula(formula).evaluate(scope) == read_formula(result).evaluate({}), line


@pytest.mark.parametrize("example", of_kind("faults"), ids=str)
def test_faults_are_told_as_said(example):
    """What stands after the exclamation mark is what the author is told."""
    scope = scope_of(example.more)
    for line in filter(str.strip, example.text.splitlines()):
        formula, message = re.split(r"\s{2,}!\s+", line, maxsplit=1)
        with pytest.raises(Faulty) as caught:
            read_formula(formula).evaluate(scope)
        assert caught.value.faults[0].message == message.strip()


@pytest.mark.parametrize("example", of_kind("yaml"), ids=str)
def test_settings_are_yaml(example):
    """A file of settings can be parsed."""
    assert yaml.safe_load(example.text)


@pytest.mark.parametrize("example", of_kind("make"), ids=str)
def test_make_commands_are_there(example):
    """A `make` command on a page is one that the Makefile has."""
    targets = set(re.findall(r"^([a-z-]+):", (ROOT / "Makefile").read_text("utf-8"), re.MULTILINE))
    named = re.findall(r"^make ([a-z-]+)", example.text, re.MULTILINE)
    assert named
    assert set(named) <= targets


@pytest.mark.parametrize("example", of_kind("python"), ids=str)
def test_code_runs(example):
    """A piece of Python can be run as it stands."""
    exec(compile(example.text, str(example), "exec"), {"__name__": "example"})


def tours() -> Iterator[tuple[str, list[Example]]]:
    """Yield each page with commands, and what it does, in order."""
    for page, steps in groupby(steps_of(COMMANDED), key=lambda step: step.page):
        yield page, list(steps)


TOURS = dict(tours())


@pytest.mark.parametrize("where", TOURS)
def test_a_page_can_be_followed(where, tmp_path):
    """Typing a page's files and commands into an empty folder shows what the page says."""
    here, shown = tmp_path, ""
    for step in TOURS[where]:
        kind, _, name = step.kind.partition(" ")
        if kind == "file":
            (here / name).parent.mkdir(parents=True, exist_ok=True)
            (here / name).write_text(step.text, "utf-8")
        elif kind == "change":
            old, _, new = step.more.partition(" -> ")
            replace(here / name, old, new)
        elif kind == "add":
            replace(here / name.removeprefix("to "), f"{step.more}\n", f"{step.more}\n{step.text}")
        elif kind == "output":
            missing = [line for line in step.text.splitlines() if closed_up(line) not in closed_up(shown)]
            assert not missing, f"{step}: not shown\n{shown}"
        else:
            here, shown = type_in(step, here)


def closed_up(text: str) -> str:
    """Return text with every run of spaces as one: columns of a table may grow wider."""
    return re.sub(r" +", " ", text).rstrip()


def replace(path: Path, old: str, new: str) -> None:
    """Put `new` for the one place where `old` stands in a file."""
    text = path.read_text("utf-8")
    assert text.count(old) == 1
    path.write_text(text.replace(old, new), "utf-8")


def type_in(step: Example, here: Path) -> tuple[Path, str]:
    """Run the commands of a block; return the folder that they end in, and what they printed."""
    shown = ""
    for line in filter(str.strip, step.text.splitlines()):
        words = shlex.split(line)
        if words[0] == "cd":
            here /= words[1]
            assert here.is_dir(), step
            continue
        assert words[0] in {"scantling", "mkdocs"}, step
        done = subprocess.run(
            [sys.executable, "-m", *words],
            cwd=here,
            capture_output=True,
            text=True,
            check=False,
            encoding="utf-8",
            env={**os.environ, "PYTHONUTF8": "1"},
        )
        shown += done.stdout + done.stderr
        assert (done.returncode != 0) == (step.more == "fails"), f"{step}: {line}\n{shown}"
    return here, shown
