"""Faults in words, for a log."""

from __future__ import annotations

from collections.abc import Iterable

from scantling.source import Diagnostic


def told_faults(diagnostics: Iterable[Diagnostic]) -> str:
    """Return diagnostics with place, excerpt, caret and mend."""
    return "\n\n".join(_told(one) for one in diagnostics)


def _told(one: Diagnostic) -> str:
    spot = one.spot
    place = f"{spot.path}:{spot.line}:{spot.column}" if spot.line else spot.path
    lines = [f"{place}: {one.message}"]
    if spot.excerpt:
        width = (
            spot.end_column - spot.column
            if spot.end_line == spot.line
            else len(spot.excerpt) - spot.column + 1
        )
        lines += [f"    {spot.excerpt}", "    " + " " * (spot.column - 1) + "^" * max(1, width)]
    lines += [f"  note: {note.message}" for note in one.notes]
    return "\n".join([*lines, f"  help: {one.help}"] if one.help else lines)
