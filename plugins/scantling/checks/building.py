"""What the steps say about when each part and each fastener goes in."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.checks.check import Subject
from scantling.plan import FittedJoin, FittedStep, Use

GLUE = "glue"


@dataclass(frozen=True, slots=True)
class Need:
    """One thing that a step needs: screws, glue, varnish."""

    step: FittedStep
    use: Use
    ware: str
    count: int


@dataclass(frozen=True, slots=True)
class Building:
    """The steps of a fitted plan, read for their order; steps are told by their index, from 0."""

    first_use: dict[str, int]
    """The step in which the first of a part is used up."""
    last_use: dict[str, int]
    """The step in which the last of it is."""
    needs: tuple[tuple[Need, ...], ...]
    """What each step needs."""

    def meets(self, join: FittedJoin) -> int | None:
        """Return the first step in which both parts of a join are there; None if one is never used."""
        first = self.first_use.get(join.join.first)
        second = self.first_use.get(join.join.second)
        return None if first is None or second is None else max(first, second)


def building(subject: Subject) -> Building:
    """Return the steps of a plan at one size, read for their order."""
    return subject.here("building", _read)


def _read(subject: Subject) -> Building:
    first: dict[str, int] = {}
    last: dict[str, int] = {}
    for index, step in enumerate(subject.fitted.steps):
        for use in step.uses:
            first.setdefault(use.name, index)
            last[use.name] = index
    return Building(first, last, tuple(_needs(subject, step) for step in subject.fitted.steps))


def _needs(subject: Subject, step: FittedStep) -> tuple[Need, ...]:
    named = subject.plan.hardware
    return tuple(
        Need(step, use, named[use.name].ware if use.name in named else use.name, fitted.count)
        for use, fitted in zip(step.step.needs, step.needs, strict=True)
    )


def kind_of(subject: Subject, ware: str) -> str:
    """Return what kind of article a ware is: "glue", "pocket screw"; else its own name."""
    found = subject.shop.wares.get(ware)
    return (found.kind or ware) if found else ware


def is_glue(subject: Subject, ware: str) -> bool:
    """Return whether a ware is a glue."""
    return GLUE in kind_of(subject, ware).split() or ware.split()[-1:] == [GLUE]
