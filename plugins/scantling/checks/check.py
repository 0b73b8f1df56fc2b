"""What a check is: a question that the most careful reader would ask of a plan."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from scantling.fault import Fault, Note, Place, Severity
from scantling.plan import Choice, FittedPlan, Plan
from scantling.shop import Shop


@dataclass(frozen=True, slots=True)
class Subject:
    """A plan at one size, before the eyes of a check."""

    plan: Plan
    shop: Shop
    choice: Choice
    fitted: FittedPlan


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that a check found, before it gets the check's name and severity."""

    message: str
    """What is wrong, in the reader's nouns, no full stop."""
    place: Place
    help: str = ""
    notes: tuple[Note, ...] = ()
    severity: Severity | None = None
    """Where it differs from the check's own."""


@dataclass(frozen=True, slots=True)
class Check:
    """One question, with what it means and how to mend what it finds."""

    name: str
    """Words joined by hyphens: the code of its faults, and what `accept:` silences."""
    title: str
    """The question, in the reader's words."""
    meaning: str
    """Why it matters, in a sentence or two, for the docs."""
    mend: str
    """What an author does about it."""
    severity: Severity
    examine: Callable[[Subject], Iterable[Finding]]
    source: str = ""
    """Where a limit comes from: a document and place, or "common practice"."""
    every_size: bool = True
    """False for what cannot depend on the size: it is asked once."""

    def faults(self, subject: Subject) -> list[Fault]:
        """Return what the check finds in a plan at one size, without what the author accepts."""
        return [
            self._fault(finding)
            for finding in self.examine(subject)
            if self.name not in accepted_at(subject.plan, finding.place)
        ]

    def _fault(self, finding: Finding) -> Fault:
        severity = finding.severity or self.severity
        return Fault(
            self.name, finding.message, finding.place, finding.help or self.mend, finding.notes, severity
        )


def accepted_at(plan: Plan, place: Place) -> set[str]:
    """Return the checks that are silenced at a place: for the whole plan, its part or its step."""
    accepted = set(plan.accepts)
    match place.path:
        case ("parts", str(name), *_) if name in plan.parts:
            accepted |= set(plan.parts[name].accepts)
        case ("steps", int(index), *_) if index < len(plan.steps):
            accepted |= set(plan.steps[index].accepts)
    return accepted


def at_size(fault: Fault, words: str) -> Fault:
    """Return a fault that says at which sizes it holds."""
    return replace(fault, message=f"{words}: {fault.message}") if words else fault
