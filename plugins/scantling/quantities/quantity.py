"""What a computed quantity is."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number that the product computes and shows to somebody."""

    id: str
    """A stable name: lower-case words joined by hyphens."""
    title: str
    """What a reader calls it."""
    unit: str
    """What it is counted in ("in, mm", "board feet", "cents"); "1" for a bare ratio or count."""
    meaning: str
    """One line that says what it is."""
    room: str
    """The room that computes it."""
    keys: tuple[str, ...] = ()
    """The keys under which it stands in plan.json: `section.key`, `key`, or `section.*` for any name."""
