"""The command line."""

from scantling.cli.command import Command
from scantling.cli.main import COMMANDS, main

__all__ = ["COMMANDS", "Command", "main"]
