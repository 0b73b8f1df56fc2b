"""Diagnostics for programs and pages: JSON, annotations of a build service, escaped HTML."""

from __future__ import annotations

import html
from collections.abc import Iterable
from typing import Any

from scantling.fault import Severity
from scantling.source.diagnostic import Diagnostic, Spot

_LEVELS = {Severity.FAULT: "error", Severity.WARNING: "warning", Severity.HINT: "notice"}


def to_data(one: Diagnostic) -> dict[str, Any]:
    """Return a diagnostic as JSON-able data."""
    return {
        "code": one.code,
        "severity": one.severity.value,
        "message": one.message,
        **_spot(one.spot),
        "help": one.help,
        "notes": [
            {"message": note.message, **(_spot(note.spot) if note.spot is not None else {})}
            for note in one.notes
        ],
    }


def _spot(spot: Spot) -> dict[str, Any]:
    return {
        "file": spot.path,
        "line": spot.line,
        "column": spot.column,
        "end_line": spot.end_line,
        "end_column": spot.end_column,
        "excerpt": spot.excerpt,
    }


def render_github(diagnostics: Iterable[Diagnostic]) -> str:
    """Return workflow commands that put each diagnostic beside its line on the code host."""
    return "".join(f"{_annotation(one)}\n" for one in diagnostics)


def _annotation(one: Diagnostic) -> str:
    spot = one.spot
    fields = {"file": spot.path, "line": spot.line, "col": spot.column, "title": one.code}
    if spot.end_line == spot.line and spot.end_column > spot.column:
        fields["endColumn"] = spot.end_column
    words = f"{one.message}\n{one.help}" if one.help else one.message
    listed = ",".join(f"{key}={_property(str(value))}" for key, value in fields.items())
    return f"::{_LEVELS[one.severity]} {listed}::{_message(words)}"


def _message(words: str) -> str:
    return words.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def _property(words: str) -> str:
    return _message(words).replace(":", "%3A").replace(",", "%2C")


def render_html(diagnostics: Iterable[Diagnostic]) -> str:
    """Return an HTML list of diagnostics, all text escaped, for a page that stands in for a faulty plan."""
    return f'<ul class="sc-faults">{"".join(_item(one) for one in diagnostics)}</ul>'


def _item(one: Diagnostic) -> str:
    spot = one.spot
    where = html.escape(f"{spot.path}:{spot.line}:{spot.column}")
    parts = [
        f'<li class="sc-fault sc-fault--{one.severity.value}">',
        f"<p><code>{where}</code> <strong>{html.escape(one.message)}</strong></p>",
    ]
    if spot.excerpt.strip():
        parts.append(f"<pre><code>{_marked(spot)}</code></pre>")
    parts += [f"<p>Note: {html.escape(note.message)}</p>" for note in one.notes]
    if one.help:
        parts.append(f"<p>Help: {html.escape(one.help)}</p>")
    return "".join([*parts, "</li>"])


def _marked(spot: Spot) -> str:
    text, start = spot.excerpt, spot.column - 1
    end = spot.end_column - 1 if spot.end_line == spot.line else len(text)
    before, there, after = (html.escape(part) for part in (text[:start], text[start:end], text[end:]))
    return f"{before}<mark>{there}</mark>{after}" if there else f"{before}{after}"
