"""The command line as a whole: help, unknown commands, exit statuses."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from scantling.cli import COMMANDS

ROOT = Path(__file__).resolve().parent.parent.parent


def test_without_a_word_all_commands_are_listed(run):
    """A newcomer sees what there is, and nothing fails."""
    status, out, err = run()

    assert status == 0
    assert err == ""
    for command in COMMANDS:
        assert f"    {command.name} " in out


@pytest.mark.parametrize("command", COMMANDS, ids=lambda command: command.name)
def test_each_command_tells_what_it_does_with_an_example(run, command):
    """`--help` holds the command's line and an example that begins with its name."""
    status, out, _ = run(command.name, "--help")

    assert status == 0
    assert command.example in out
    assert command.example.startswith(f"scantling {command.name} ")
    assert command.help[:20] in out[0].lower() + out[1:] or command.help[1:20] in out


@pytest.mark.parametrize("command", COMMANDS, ids=lambda command: command.name)
def test_each_command_is_in_the_reference(command):
    """docs/reference/commands.md has a section and the example of every command."""
    page = (ROOT / "docs" / "reference" / "commands.md").read_text("utf-8")

    assert f"## `scantling {command.name}`" in page
    assert f"```sh\n{command.example}\n```" in page


def test_a_mistyped_command_is_guessed(run):
    """What was probably meant is named, and the status says that the command was misused."""
    assert run("chek") == (2, "", "scantling: there is no command 'chek'\n  help: did you mean 'check'?\n")


@pytest.mark.parametrize(
    "words", [("check", "--colour"), ("show",), ("cut",), ("check", "--format", "long"), ("--x",)]
)
def test_misuse_ends_with_2_and_a_mend(run, words):
    """Unknown or missing words are told without a traceback."""
    status, out, err = run(*words)

    assert (status, out) == (2, "")
    assert err.startswith("scantling: ")
    assert "help: " in err


def test_the_module_is_the_command():
    """`python -m scantling` does the same as the console script, and works from any folder."""
    done = subprocess.run(
        [sys.executable, "-m", "scantling", "chek"], capture_output=True, text=True, check=False, cwd="/"
    )

    assert done.returncode == 2
    assert "did you mean 'check'?" in done.stderr


def test_a_reader_that_goes_away_is_no_failure(catalog):
    """Output piped into `head` ends without a traceback."""
    command = f"{sys.executable} -m scantling show first-crate --json | head -c 1"
    done = subprocess.run(
        ["/bin/sh", "-c", command], capture_output=True, text=True, check=False, cwd=catalog
    )

    assert done.stdout == "{"
    assert "Traceback" not in done.stderr


def test_a_terminal_without_the_letters_still_shows_something(catalog):
    """Where a letter cannot be shown, a stand-in is."""
    plan = catalog / "plans" / "first-crate" / "plan.md"
    plan.write_text(plan.read_text("utf-8").replace("title: First crate", "title: 木 crate"), "utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "scantling", "show", "first-crate"],
        capture_output=True,
        check=False,
        cwd=catalog,
        env={"PYTHONIOENCODING": "ascii", "PATH": "/usr/bin:/bin"},
    )

    assert done.returncode == 0
    assert done.stdout.startswith(b"? crate\n")
