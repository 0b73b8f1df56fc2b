"""Where each instance stands and in which step it goes in, as plain boxes in inches."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.checks.building import building
from scantling.checks.check import Subject
from scantling.measure import Length
from scantling.plan import FittedPart, Placed

Corner = tuple[float, float, float]
CLOSE = 1 / 64
"""Boxes that stand in each other by less than this only touch."""


@dataclass(frozen=True, slots=True)
class Box:
    """One placed instance; a part with slanted ends counts as the box that just holds it."""

    part: FittedPart
    step: int | None
    """The index of the step that uses it up; None if no step does."""
    low: Corner
    high: Corner
    axes: tuple[int, int, int]
    """Along which of x, y, z its length, width and thickness run."""
    placed: Placed
    """The same, exactly."""

    @property
    def is_whole(self) -> bool:
        """False if something is cut off its box."""
        return self.placed.is_box

    @property
    def centre(self) -> Corner:
        """Return its middle."""
        x, y, z = ((a + b) / 2 for a, b in zip(self.low, self.high, strict=True))
        return x, y, z


def boxes(subject: Subject) -> tuple[Box, ...]:
    """Return every placed instance of a plan at one size; none where nothing is placed."""
    return subject.here("boxes", _read)


def _read(subject: Subject) -> tuple[Box, ...]:
    return tuple(box for part in subject.fitted.parts if part.placed for box in _of_part(subject, part))


def _of_part(subject: Subject, part: FittedPart) -> list[Box]:
    steps = _steps_of(subject, part.id)
    return [
        Box(
            part,
            steps[index] if index < len(steps) else None,
            _floats(placed.low),
            _floats(placed.high),
            placed.axes,
            placed,
        )
        for index, placed in enumerate(part.placed)
    ]


def _steps_of(subject: Subject, name: str) -> list[int]:
    """Return the step that uses up the first instance of a part, the second, and so on."""
    if name not in building(subject).first_use:
        return []
    return [
        index
        for index, step in enumerate(subject.fitted.steps)
        for use in step.uses
        if use.name == name
        for _ in range(use.count)
    ]


def _floats(corner: tuple[Length, Length, Length]) -> Corner:
    x, y, z = (side.top / side.bottom for side in corner)
    return x, y, z


def overlap(one: Box, other: Box, axis: int) -> float:
    """Return how far two boxes stand in each other along one axis; below nothing: the gap between them."""
    low, least = one.low[axis], other.low[axis]
    high, most = one.high[axis], other.high[axis]
    return (min(most, high)) - (max(least, low))
