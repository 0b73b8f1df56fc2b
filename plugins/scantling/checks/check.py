"""What a check is: a question that the most careful reader would ask of a plan."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field, replace
from typing import TypeVar, cast

from scantling.fault import Fault, Note, Place, Severity
from scantling.plan import Choice, FittedPlan, Plan
from scantling.shop import Shop
from scantling.words import say

Known = TypeVar("Known")


@dataclass(frozen=True, slots=True)
class Subject:
    """A plan at one size, before the eyes of a check."""

    plan: Plan
    shop: Shop
    choice: Choice
    fitted: FittedPlan
    memo: dict[str, object] = field(default_factory=dict, compare=False, repr=False)
    """What holds at every size of the plan, found out once in a sweep."""
    seen: dict[str, object] = field(default_factory=dict, compare=False, repr=False)
    """What several checks want to know of this size, found out once."""

    def once(self, name: str, find: Callable[[Subject], Known]) -> Known:
        """Return what `find` answers, which must be the same at every size."""
        if name not in self.memo:
            self.memo[name] = find(self)
        return cast("Known", self.memo[name])

    def here(self, name: str, find: Callable[[Subject], Known]) -> Known:
        """Return what `find` answers at this size, asked once however many checks want it."""
        if name not in self.seen:
            self.seen[name] = find(self)
        return cast("Known", self.seen[name])


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
    about: tuple[str, ...] = ()
    """Parts at which it may be silenced as well, beside its own place."""


@dataclass(frozen=True, slots=True)
class Told:
    """A finding as a fault, and the `accept` that silences it, if one does."""

    fault: Fault
    silenced: Place | None


@dataclass(frozen=True, slots=True)
class Check:
    """One question, with what it means and how to mend what it finds."""

    name: str
    """Words joined by hyphens: the code of its faults, and what `accept:` silences."""
    group: str
    """The chapter of the docs that it stands in."""
    title: str
    """The question, in the reader's words."""
    meaning: str
    """Why it matters, in a sentence or two, for the docs."""
    mend: str
    """What an author does about it."""
    severity: Severity
    examine: Callable[[Subject], Iterable[Finding]]
    source: str = ""
    """Where a limit comes from: a document and place, or "common practice, no source"."""
    quotes: str = ""
    """Words that the meaning quotes as `{quoted}`: what a page says by itself."""
    every_size: bool = True
    """False for what cannot depend on the size: it is asked once."""

    def explained(self) -> str:
        """Return why it matters, in the language that is spoken."""
        return say(self.meaning, quoted=say(self.quotes)) if self.quotes else say(self.meaning)

    def ask(self, subject: Subject) -> Iterator[Told]:
        """Yield everything that the check finds in a plan at one size, silenced or not."""
        for finding in self.examine(subject):
            yield Told(self._fault(finding), accepting(subject.plan, self.name, finding))

    def faults(self, subject: Subject) -> list[Fault]:
        """Return what the check finds in a plan at one size, without what the author accepts."""
        return [told.fault for told in self.ask(subject) if told.silenced is None]

    def _fault(self, finding: Finding) -> Fault:
        severity = finding.severity or self.severity
        return Fault(
            self.name, finding.message, finding.place, finding.help or self.mend, finding.notes, severity
        )


def accepting(plan: Plan, name: str, finding: Finding) -> Place | None:
    """Return where the author accepts what a check found: at its step, its part, or for the whole plan."""
    parts = finding.about
    match finding.place.path:
        case ("steps", int(index), *_) if index < len(plan.steps) and name in plan.steps[index].accepts:
            return Place(("steps", index, "accept", name))
        case ("parts", str(part), *_):
            parts = (part, *parts)
    for part in parts:
        if part in plan.parts and name in plan.parts[part].accepts:
            return Place(("parts", part, "accept", name))
    return Place(("accept", name)) if name in plan.accepts else None


def at_size(fault: Fault, words: str) -> Fault:
    """Return a fault that says at which sizes it holds."""
    return replace(fault, message=f"{words}: {fault.message}") if words else fault
