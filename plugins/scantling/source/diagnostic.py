"""A fault with its line and column: what is shown to an author."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from scantling.fault import Fault, Severity
from scantling.source.document import Document, Found
from scantling.source.spans import Spans


@dataclass(frozen=True, slots=True)
class Spot:
    """Some characters of a file."""

    path: str
    line: int
    """Counted from 1; 0 where a fault has no place in the file."""
    column: int
    """Counted from 1 in characters, a tab being one."""
    end_line: int
    end_column: int
    """One past the last character."""
    excerpt: str
    """The first of its lines, whole."""


@dataclass(frozen=True, slots=True)
class DiagnosticNote:
    """A second place that helps to understand a fault."""

    message: str
    spot: Spot | None


@dataclass(frozen=True, slots=True)
class Diagnostic:
    """One thing that is wrong, and where."""

    code: str
    severity: Severity
    message: str
    spot: Spot
    help: str = ""
    notes: tuple[DiagnosticNote, ...] = ()

    @property
    def is_fault(self) -> bool:
        """True if nothing can be built before it is mended."""
        return self.severity is Severity.FAULT


def spot_at(document: Document, start: int, end: int) -> Spot:
    """Return some characters of a document as a spot."""
    line, column = document.position(start)
    end_line, end_column = document.position(max(start, end))
    return Spot(document.path, line, column, end_line, end_column, document.line(line))


def from_found(found: Found, document: Document) -> Diagnostic:
    """Return what reading a document found."""
    notes = tuple(
        DiagnosticNote(message, spot_at(document, start, end)) for message, start, end in found.notes
    )
    spot = spot_at(document, found.start, found.end)
    return Diagnostic(found.code, found.severity, found.message, spot, found.help, notes)


def from_fault(fault: Fault, document: Document, spans: Spans) -> Diagnostic:
    """Return a fault of the engine, which knows a document only as plain data."""
    notes = tuple(
        DiagnosticNote(
            note.message, spot_at(document, *spans.resolve(note.place)) if note.place is not None else None
        )
        for note in fault.notes
    )
    spot = spot_at(document, *spans.resolve(fault.place))
    return Diagnostic(fault.code, fault.severity, fault.message, spot, fault.help, notes)


_ORDER = {Severity.FAULT: 0, Severity.WARNING: 1, Severity.HINT: 2}


def sort_diagnostics(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """Return diagnostics by file, line and column, each once."""
    unique = dict.fromkeys(diagnostics)
    return tuple(
        sorted(
            unique,
            key=lambda one: (
                one.spot.path,
                one.spot.line,
                one.spot.column,
                _ORDER[one.severity],
                one.code,
                one.message,
            ),
        )
    )


def count_severities(diagnostics: Iterable[Diagnostic]) -> dict[Severity, int]:
    """Return how many there are of each severity."""
    counts = dict.fromkeys(Severity, 0)
    for one in diagnostics:
        counts[one.severity] += 1
    return counts


def exit_status(diagnostics: Iterable[Diagnostic], *, strict: bool = False) -> int:
    """Return what a command ends with: 1 if there is a fault, or, where `strict`, a warning.

    How the diagnostics are shown has no part in it.
    """
    counts = count_severities(diagnostics)
    return int(bool(counts[Severity.FAULT] or (strict and counts[Severity.WARNING])))
