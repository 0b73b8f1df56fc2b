"""One plan file: front matter between two lines of `---`, then the body."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from scantling.source.body import read_body
from scantling.source.document import Document, Found
from scantling.source.spans import Span, Spans
from scantling.source.yaml_data import Data, read_yaml

_RULE = re.compile(r"---[ \t]*$")
_END = re.compile(r"^(?:---|\.\.\.)[ \t]*$", re.MULTILINE)
_UNREAD = {"file-too-large", "not-utf-8"}
"""After these, nothing more is said of a file."""
_BODY_KEYS = {
    "steps": "write each step as a '## heading' below the front matter",
    "intro": "write it below the front matter",
}


@dataclass(slots=True)
class PlainData:
    """What a file says, as nested plain data, with the place of every value."""

    document: Document
    data: Data | None
    """None where it could not be read."""
    spans: Spans = field(default_factory=Spans)
    found: list[Found] = field(default_factory=list)


def read_plan_file(document: Document, found: list[Found]) -> PlainData:
    """Return the plain data of a plan file."""
    spans = Spans(whole=_first_line(document))
    made = PlainData(document, None, spans, found)
    if any(one.code in _UNREAD for one in found):
        return made
    first = document.line(1)
    if not _RULE.match(first):
        help_line = "begin the file with a line ---, then 'title: ...', then a line --- again"
        found.append(
            Found("no-front-matter", "this plan does not begin with a line ---", 0, len(first), help_line)
        )
        return made
    start = len(first) + 1
    end = _END.search(document.text, start)
    if end is None:
        help_line = "put a line --- before the words of the plan"
        found.append(
            Found("open-front-matter", "the lines that begin here are never closed", 0, 3, help_line)
        )
        return made
    front = read_yaml(document.text, start, end.start(), spans, found)
    body = read_body(document.text, end.end() + 1, spans, found)
    if front is None:
        return made
    made.data = _joined(front, body, spans, found)
    return made


def _first_line(document: Document) -> Span:
    return Span(0, len(document.line(1)), is_scalar=False)


def _joined(front: Data, body: dict[str, Data], spans: Spans, found: list[Found]) -> Data:
    if not isinstance(front, dict):
        return front
    for key, help_line in _BODY_KEYS.items():
        if key in front:
            span = spans.by_path[(key,)]
            start, end = span.key or (span.start, span.end)
            found.append(
                Found("belongs-below", f"'{key}' is not written in the front matter", start, end, help_line)
            )
            del front[key]
    return {**front, **body}


def read_shop_file(document: Document, found: list[Found]) -> PlainData:
    """Return the plain data of a shop file."""
    spans = Spans(whole=_first_line(document))
    made = PlainData(document, None, spans, found)
    if not any(one.code in _UNREAD for one in found):
        made.data = read_yaml(document.text, 0, len(document.text), spans, found)
    return made
