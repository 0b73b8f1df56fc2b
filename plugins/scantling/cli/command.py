"""What a command is."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from scantling.source import visible

FINE, FAULTY, MISUSED = 0, 1, 2
"""Exit statuses: all is well; something that was read is faulty; the command was misused."""


@dataclass(frozen=True, slots=True)
class Command:
    """One command of the command line."""

    name: str
    help: str
    """What it does, in one line."""
    example: str
    """A line that can be typed."""
    add_arguments: Callable[[ArgumentParser], None]
    run: Callable[[Namespace], int]
    """Returns the exit status."""
    more: str = ""
    """Further words for its own help."""


class Misused(Exception):
    """The command was not given as it should be; the message says how it should."""


def misused(message: str, help_line: str = "") -> Misused:
    """Return the exception that ends a command, with a message and how to mend it."""
    return Misused(f"{message}\n  help: {help_line}" if help_line else message)


def say(text: str) -> None:
    """Print what was asked for."""
    print(text, end="" if text.endswith("\n") else "\n")


def tell(text: str) -> None:
    """Print, beside what was asked for, what a person should know."""
    print(text, file=sys.stderr, end="" if text.endswith("\n") else "\n")


def tell_faults(name: str, faults: Iterable[tuple[str, str, str]]) -> None:
    """Print faults of something that has no lines: where, what is wrong, how to mend it."""
    for where, message, help_line in faults:
        place = f"{name}: {where}: " if where else f"{name}: "
        tell(visible(f"{place}{message}"))
        if help_line:
            tell(visible(f"  help: {help_line}"))
