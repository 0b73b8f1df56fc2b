"""Aligned columns for a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from scantling.source import columns_of, visible


def width_of(text: str) -> int:
    """Return how many columns a text takes."""
    return sum(columns_of(letter) for letter in text)


def table(head: Sequence[str], rows: Iterable[Sequence[str]], *, right: Iterable[int] = ()) -> str:
    """Return rows in columns under a head, two spaces apart.

    Args:
        right: numbers of the columns that are set to the right.
    """
    shown = [[visible(cell) for cell in row] for row in (head, *rows)]
    widths = [max(width_of(row[column]) for row in shown) for column in range(len(head))]
    to_right = set(right)
    lines = [_line(row, widths, to_right) for row in shown]
    rule = "  ".join("-" * width for width in widths)
    return "\n".join([lines[0], rule, *lines[1:]])


def _line(row: Sequence[str], widths: Sequence[int], to_right: set[int]) -> str:
    cells = []
    for column, (cell, width) in enumerate(zip(row, widths, strict=True)):
        space = " " * (width - width_of(cell))
        cells.append(space + cell if column in to_right else cell + space)
    return "  ".join(cells).rstrip()
