"""The values that say what is wrong, where, and how to mend it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import Enum

Key = str | int


class Severity(Enum):
    """How much a finding matters."""

    FAULT = "fault"
    """The plan cannot be built as written."""
    WARNING = "warning"
    """It can be built, but somebody will probably be hurt, puzzled or out of pocket."""
    HINT = "hint"
    """It could be better."""


@dataclass(frozen=True, slots=True)
class Place:
    """A place in a document that is known to the engine only as nested plain data.

    The engine names a place by the keys that lead to it; `source` knows which line and column
    that is in the author's file.
    """

    path: tuple[Key, ...] = ()
    """Keys and indexes from the top of the document down to a value."""
    start: int | None = None
    """First character within the value's text, or None for the whole value."""
    end: int | None = None
    """One past the last character within the value's text."""
    on_key: bool = False
    """True when the last key itself is meant, not its value."""

    def at(self, *keys: Key) -> Place:
        """Return the place of a value further down."""
        return Place(self.path + keys)

    def part(self, start: int, end: int) -> Place:
        """Return the place of some characters of this value's text, relative to what is named now."""
        base = self.start or 0
        return replace(self, start=base + start, end=base + end)

    def key(self) -> Place:
        """Return the place of the last key itself."""
        return replace(self, on_key=True, start=None, end=None)


@dataclass(frozen=True, slots=True)
class Note:
    """A second place that helps to understand a fault."""

    message: str
    place: Place | None = None


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that is wrong.

    Example:
        `Fault("unknown-name", "there is no size called 'widht'", place, help="did you mean 'width'?")`
    """

    code: str
    """A stable name of the kind of fault: lower-case words joined by hyphens."""
    message: str
    """What is wrong, in the reader's nouns, at most some 80 characters, no full stop."""
    place: Place = Place()
    help: str = ""
    """How to mend it; an edit that can be pasted where there is one."""
    notes: tuple[Note, ...] = ()
    severity: Severity = Severity.FAULT
    document: str = ""
    """Which document the place is in: a plan's slug, "shop", or "" for the one being read."""

    def under(self, place: Place) -> Fault:
        """Return the fault moved below `place`: its own place was relative to a value there."""
        own = self.place
        if own.path:
            moved = Place(place.path + own.path, own.start, own.end, own.on_key)
        elif own.start is not None:
            moved = place.part(own.start, own.start if own.end is None else own.end)
        else:
            moved = place
        return replace(self, place=moved)


class Faulty(Exception):
    """Raised where work cannot go on; carries every fault found until then."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("; ".join(fault.message for fault in self.faults))
