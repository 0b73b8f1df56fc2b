"""A cutting problem: what can be bought, what is to be cut, and what the saw takes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

MOST_PIECES = 2_000
"""More pieces than this are refused: a whole catalog's shopping trip has a fifth of it."""


@dataclass(frozen=True, slots=True)
class StockItem:
    """One kind of board or sheet that can be bought or is owned."""

    id: str
    family: str
    length: int
    """Along the grain, in units of the problem."""
    width: int
    """Across the grain, in units of the problem."""
    price: int
    """Whole cents for one; nothing for a piece that is owned."""
    available: int | None = None
    """How many can be had, or None for as many as wanted."""
    trim_ends: int = 0
    """What is cut off both ends before anything else."""
    trim_edges: int = 0
    """What is cut off both edges, except from a part of full width."""


@dataclass(frozen=True, slots=True)
class PartItem:
    """One kind of part, and how many of it are to be cut."""

    id: str
    family: str
    count: int
    length: int
    """Along the grain (along the stock's length unless turned)."""
    width: int
    """Across the grain."""
    may_turn: bool = False
    """True where the grain does not matter."""
    least_length: int | None = None
    """The shortest that still serves, where the last kerf of an exactly divided board falls on it."""
    least_width: int | None = None
    """The narrowest that still serves, where the last kerf of an exactly divided board falls on it."""


@dataclass(frozen=True, slots=True)
class Rules:
    """What a person with a saw can do safely and what is worth keeping; all in units, None for no rule."""

    least_rip_length: int | None = None
    """A piece shorter than this is not ripped."""
    least_strip_width: int | None = None
    """A strip narrower than this is not ripped."""
    longest_piece: int | None = None
    """The longest piece that goes home uncut: longer stock is crosscut at the yard."""
    first_cuts: int | None = None
    """How many first cuts the yard makes on a sheet."""
    keep_length: int = 0
    """An offcut at least this long ..."""
    keep_width: int = 0
    """... and at least this wide is kept."""


def worth_keeping(length: int, width: int, rules: Rules) -> int:
    """Return what an offcut is worth: its area, or nothing where it is too short or too narrow to keep.

    An offcut is as long as its longer side; the grain does not matter.
    """
    short, long = sorted((length, width))
    if long < max(1, rules.keep_length) or short < max(1, rules.keep_width):
        return 0
    return length * width


@dataclass(frozen=True, slots=True)
class Problem:
    """Everything `solve` needs to know; all lengths are whole numbers of one unit."""

    unit: str
    kerf: int
    stages: int
    stock: tuple[StockItem, ...]
    parts: tuple[PartItem, ...]
    rules: Rules = Rules()
    name: str = ""

    @classmethod
    def from_data(cls, data: Mapping[str, Any]) -> Problem:
        """Read a problem in the form of the cutting seam.

        Raises:
            Faulty: with everything that is wrong with it.
        """
        from scantling.cutting.reading import read_problem  # noqa: PLC0415

        return read_problem(data)
