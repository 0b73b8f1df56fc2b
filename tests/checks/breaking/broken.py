"""A demonstration plan with one thing wrong, and the way to make it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from tests.checks.text import Step, Text


@dataclass(frozen=True)
class Broken:
    """A plan with one thing wrong."""

    how: str
    text: str
    code: str
    line: int
    column: int
    sweeping: bool = False
    """True where it shows only at another size, or over all of them."""


def broken(how: str, text: str, code: str, offset: int, *, sweeping: bool = False) -> Broken:
    """Return a broken plan, its place given as an offset into the broken text."""
    return Broken(how, text, code, *Text(text).at(offset), sweeping)


@dataclass(frozen=True)
class Sizes:
    """What the names of the whole plan come to at its usual size, in inches."""

    inches: Mapping[str, Fraction]

    def __call__(self, name: str) -> Fraction | None:
        return self.inches.get(name)

    def is_alone(self, size: Fraction) -> bool:
        """Return whether just one name has that size."""
        return list(self.inches.values()).count(size) == 1


Way = Callable[[Text, Sizes], Iterator[Broken]]


def without(plan: Text, step: Step, key: str, name: str) -> str:
    """Return the text without one item of a step's `uses:` or `needs:`; the line goes with its last item."""
    items = step.listed(key)
    at, text = step.value(key)
    kept = [f"{count} {other}".strip() for _, count, other in items if other != name]
    if kept:
        return plan.with_(at, at + len(text), ", ".join(kept))
    return plan.with_(at - len(key) - 2, at + len(text) + 1, "")


def is_optional(plan: Text, name: str) -> bool:
    """Return whether a part is there only at some sizes."""
    return plan.part_value(name, "only if") is not None
