"""The reader's choice of how lengths are shown."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from scantling.measure.quantity import Way
from scantling.measure.rounding import Rounded, System, share_steps, step_of
from scantling.measure.space import Length
from scantling.measure.writing import local_decimal, round_length, spell_length, write_fraction
from scantling.words import mark, say

DENOMINATORS = (2, 4, 8, 16, 32, 64)


@dataclass(frozen=True, slots=True)
class Display:
    """How lengths are shown: inches to a chosen fraction, or whole millimetres."""

    system: System = "in"
    denominator: int = 16
    """The finest fraction of an inch; of no effect in millimetres."""

    @property
    def step(self) -> Length:
        """The step to which lengths are shown."""
        return step_of(self.system, self.denominator)

    def round(self, length: Length, way: Way = "nearest", *, feet: bool = False) -> Rounded:
        """Return a length as it is shown, with what the rounding changed."""
        return round_length(length, system=self.system, denominator=self.denominator, way=way, feet=feet)

    def length(self, length: Length, *, feet: bool = False) -> str:
        """Write a length."""
        return self.round(length, feet=feet).text

    def approx(self, length: Length, way: Way = "nearest") -> str:
        """Write a length, marked and with its rounding stated where the shown value is not exact.

        Example:
            `≈ 23 5/8 in (rounded up by less than 1/64 in)`
        """
        rounded = self.round(length, way)
        if rounded.is_exact:
            return rounded.text
        return f"≈ {rounded.text} ({self.statement(rounded)})"

    def statement(self, rounded: Rounded) -> str:
        """Say which way and by how much a value was rounded; nothing where it is exact."""
        if rounded.is_exact:
            return ""
        is_up = rounded.off > Length(0)
        told = mark("rounded up by {size}") if is_up else mark("rounded down by {size}")
        return say(told, size=self._size(abs(rounded.off)))

    def _size(self, off: Length) -> str:
        if self.system == "mm":
            return f"{local_decimal(off.mm, 1)} mm" if off.mm * 20 >= 1 else say("less than 0.1 mm")
        inches = off.inches
        if inches.denominator in (*DENOMINATORS, 128):
            return f"{write_fraction(inches)} in"
        bound = Fraction(1, 128)
        while bound < inches:
            bound *= 2
        return say("less than {size} in", size=bound)


def other_display(display: Display) -> Display:
    """Return how lengths are shown to those who measure in the other unit: in mm, or to 1/16 in."""
    return Display("in") if display.system == "mm" else Display("mm")


def round_to_total(lengths: Iterable[Length], display: Display) -> tuple[Rounded, ...]:
    """Return lengths as they are shown, such that the shown lengths add up to their shown total.

    Each is within one step of its exact value, and one that needs no rounding keeps its value.
    """
    exact = list(lengths)
    shown = share_steps(exact, display.step)
    return tuple(
        Rounded(value, spell_length(value, system=display.system), value - length)
        for value, length in zip(shown, exact, strict=True)
    )
