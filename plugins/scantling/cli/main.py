"""From the words that were typed to a command."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, RawDescriptionHelpFormatter
from collections.abc import Sequence
from contextlib import suppress
from typing import NoReturn

from scantling.cli.calc import CALC
from scantling.cli.check import CHECK
from scantling.cli.command import FINE, MISUSED, Command, Misused, misused, tell
from scantling.cli.cut import CUT
from scantling.cli.new import NEW
from scantling.cli.pages import PAGES
from scantling.cli.prices import PRICES
from scantling.cli.show import SHOW
from scantling.fault import did_you_mean

COMMANDS: tuple[Command, ...] = (NEW, CHECK, SHOW, CUT, CALC, PRICES, PAGES)
"""In the order in which an author meets them. To add one: write it in a file of its own, and name it here."""


class _Parser(ArgumentParser):
    """A parser whose complaints are in the words of this program."""

    def error(self, message: str) -> NoReturn:
        words = message.replace("the following arguments are required:", "still to be named:")
        words = words.replace("unrecognized arguments:", "nothing is known of")
        raise misused(words, f"see {self.prog} --help")


def _parser() -> ArgumentParser:
    parser = _Parser(
        prog="scantling",
        description="Turns designs for home-workshop furniture into plans that can be printed and resized.",
        epilog="Type scantling COMMAND --help for an example of each.",
        allow_abbrev=False,
    )
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")
    for command in COMMANDS:
        own = commands.add_parser(
            command.name,
            help=command.help,
            description=_described(command),
            epilog=f"example:\n  {command.example}",
            formatter_class=RawDescriptionHelpFormatter,
            allow_abbrev=False,
        )
        command.add_arguments(own)
    return parser


def _described(command: Command) -> str:
    first = command.help[0].upper() + command.help[1:] + "."
    return f"{first}\n\n{command.more}" if command.more else first


def main(argv: Sequence[str] | None = None) -> int:
    """Run a command and return its exit status: 0 well, 1 something read is faulty, 2 misused.

    Args:
        argv: the words after the program's name; those that were typed if left out.
    """
    words = list(sys.argv[1:] if argv is None else argv)
    _let_any_letter_out()
    try:
        return _run(words)
    except Misused as misused:
        tell(f"scantling: {misused}")
        return MISUSED
    except SystemExit as end:  # help was asked for
        return end.code if isinstance(end.code, int) else FINE
    except BrokenPipeError:  # the reader of our output has seen enough
        with suppress(OSError):
            sys.stdout.close()
        return FINE


def _run(words: list[str]) -> int:
    names = [command.name for command in COMMANDS]
    if not words:
        _parser().print_help()
        return FINE
    if not words[0].startswith("-") and words[0] not in names:
        raise misused(f"there is no command '{words[0]}'", did_you_mean(words[0], names, kind="commands"))
    given = _parser().parse_args(words)
    command = next(command for command in COMMANDS if command.name == given.command)
    return command.run(given)


def _let_any_letter_out() -> None:
    """Show a stand-in where the terminal cannot show a letter, instead of failing."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(errors="replace")
