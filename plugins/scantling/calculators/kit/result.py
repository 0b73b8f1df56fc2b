"""What a calculator found: figures, tables and the sum with the numbers put in."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from scantling.measure import Angle, Area, Length, Money, Volume, Way, Weight

Value = Length | Area | Volume | Weight | Money | Angle | Fraction | int | str


@dataclass(frozen=True, slots=True)
class Figure:
    """One thing that was asked for."""

    key: str
    """Its stable name, for data."""
    name: str
    """What the reader calls it."""
    value: Value
    unit: str = ""
    """What a bare number counts."""
    way: Way = "nearest"
    """Which way the shop value of a length is rounded."""
    times: int = 1
    """How often it is used over the whole run, so that a rounding adds up."""
    run: str = ""
    """What the run is ("spaces", "cuts")."""
    places: int = 2
    """Decimals of a bare number."""
    note: str = ""
    fine: bool = False
    """True for a length too small for a tape: shown to 1/64 in or 0.1 mm."""
    main: bool = False
    """True for what was asked; the others stand beside it."""


@dataclass(frozen=True, slots=True)
class Table:
    """Rows of values under headings."""

    title: str
    headings: tuple[str, ...]
    rows: tuple[tuple[Value, ...], ...]


@dataclass(frozen=True, slots=True)
class Result:
    """All that a calculator found."""

    figures: tuple[Figure, ...]
    working: tuple[str, ...] = ()
    """The formula with the numbers put in, line by line."""
    tables: tuple[Table, ...] = ()
    remarks: tuple[str, ...] = ()
    """What a careful colleague would say about just these numbers."""
    shape: Any = None
    """What the picture is drawn from; the calculator's own."""

    def figure(self, key: str) -> Figure:
        """Return the figure of that key."""
        return next(figure for figure in self.figures if figure.key == key)
