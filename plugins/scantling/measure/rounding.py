"""Rounding, and what it changed: the one place where an exact value becomes a shown one."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from scantling.measure.quantity import Way, round_number
from scantling.measure.space import Length

System = Literal["in", "mm"]
"""The units in which lengths are shown."""


def step_of(system: System, denominator: int) -> Length:
    """Return the step to which lengths are shown: 1 mm, or one `denominator`-th of an inch."""
    return Length.of_mm(1) if system == "mm" else Length(Fraction(1, denominator))


@dataclass(frozen=True, slots=True)
class Rounded:
    """A length as it is shown."""

    value: Length
    """The length that is shown."""
    text: str
    """How it is written."""
    off: Length
    """Shown less exact: positive where the shown length is longer than the true one."""

    @property
    def is_exact(self) -> bool:
        """True where showing changed nothing."""
        return self.off == Length(0)


def round_steps(length: Length, *, system: System, denominator: int, way: Way = "nearest") -> Length:
    """Return `length` as a whole number of steps of 1 mm or 1/`denominator` in.

    Halves are rounded up (away from zero), as a table of millimetres in sixteenths is usually made.
    """
    step = step_of(system, denominator)
    return step * round_number(length / step, way)


def share_steps(lengths: Iterable[Length], step: Length) -> list[Length]:
    """Round lengths to whole steps so that they add up to their rounded total.

    Each is rounded down, and the steps that are then missing go to those that lost most (the largest
    remainders; the earlier one where two lost the same). A length that is already whole stays as it is.
    """
    exact = [length / step for length in lengths]
    floors = [round_number(number, "down") for number in exact]
    missing = round_number(sum(exact, Fraction())) - sum(floors)
    lost_most = sorted(range(len(exact)), key=lambda i: (floors[i] - exact[i], i))
    for i in lost_most[:missing]:
        floors[i] += 1
    return [step * floor for floor in floors]
