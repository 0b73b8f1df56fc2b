"""What docs/reference/commands.md says of each command, from the command itself."""

from __future__ import annotations

import argparse
from collections.abc import Iterator

from scantling.cli import COMMANDS, Command


def commands_part() -> str:
    """Return a section for each command, in the order in which an author meets them."""
    return "\n".join(_section(command) for command in COMMANDS)


def _section(command: Command) -> str:
    words = [command.help[0].upper() + command.help[1:] + "."]
    words += [command.more] if command.more else []
    rows = "\n".join(
        f"| `{what.replace('|', ' or ')}` | {meaning} |" for what, meaning in _arguments(command)
    )
    table = f"\n| Word | What it says |\n|---|---|\n{rows}\n" if rows else ""
    example = f"<!-- run: not here; an example -->\n\n```sh\n{command.example}\n```\n"
    return f"## `scantling {command.name}`\n\n{' '.join(words)}\n\n{example}{table}"


def _arguments(command: Command) -> Iterator[tuple[str, str]]:
    parser = argparse.ArgumentParser(add_help=False)
    command.add_arguments(parser)
    for action in parser._actions:  # noqa: SLF001 - argparse has no other way to tell what it was given
        meaning = (action.help or "").replace("%(default)s", str(action.default)).replace("|", "\\|")
        typed = "=" in meaning.partition(" ")[0]  # an example to type stays as it is typed
        yield _written(action), meaning if typed else meaning[:1].upper() + meaning[1:]


def _written(action: argparse.Action) -> str:
    if action.choices is not None:
        value = " or ".join(str(choice) for choice in action.choices)
    else:
        value = str(action.metavar or action.dest.upper())
    if not action.option_strings:
        return f"{value}{' ...' if action.nargs == '*' else ''}"
    takes_value = action.nargs != 0
    return f"{action.option_strings[-1]}{f' {value}' if takes_value else ''}"
