"""YAML as nested plain data whose scalars are all the author's text, with the place of every value."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import yaml

from scantling.source.document import Found
from scantling.source.letters import letters_of
from scantling.source.spans import Path, Span, Spans
from scantling.source.yaml_faults import found_of

DEEPEST = 20
MOST_VALUES = 20_000
MOST_MARKS = 5
"""Anchors and aliases that are told of; a file with one has often hundreds."""
_NOTHING = {"", "~", "null", "Null", "NULL"}

Data = str | list["Data"] | dict[str, "Data"]

_QUICK = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
"""The quick reader, where it is installed; what it cannot read the slow one tells more of."""
_DISPUTED = re.compile(r"[\t\x85\u2028\u2029\ufeff]|^%|(?:^|[-:]) *[?]", re.MULTILINE)
"""What the two readers do not agree on: the slow one decides, so that every machine says the same."""
_SIGNS = re.compile(r"[\[\]{}?]")
_REFUSED = {
    "second-document": ("a second document begins here", "keep one file for each"),
    "too-many-values": (f"more than {MOST_VALUES:,} values are written here", "split the file"),
    "too-deep": (f"more than {DEEPEST} levels lie within each other here", "a bracket may be left open"),
    "not-a-key": (
        "a list or 'key: value' lines stand where a key is due",
        "put what is in brackets in quotes",
    ),
}
"""What ends the reading of a file, by code."""


class _TooMuch(Exception):
    """The document is beyond what is read; a fault says so already."""


@dataclass(slots=True)
class _Open:
    """A list or a mapping that is being read."""

    data: list[Data] | dict[str, Data]
    path: Path
    start: int
    key: tuple[int, int] | None
    in_brackets: bool
    """True if it is written between brackets, where commas part the entries."""
    waiting: str | None = None
    """A key whose value comes next."""
    waiting_span: tuple[int, int] = (0, 0)
    keys: dict[str, tuple[int, int]] = field(default_factory=dict)
    dropping: bool = False
    """The value that comes next belongs to a faulty key and is left out."""
    cut: tuple[Path, int] | None = None
    """Path and start of a formula that a comma cut off within its brackets."""


def read_yaml(text: str, start: int, end: int, spans: Spans, found: list[Found]) -> Data | None:
    """Return the data in a stretch of a document's text, or None where it cannot be read.

    Args:
        text: the whole file, of which `text[start:end]` is read.
        spans: gets the place of every value.
        found: gets what is wrong.
    """
    before = len(found)
    stretch = text[start:end]
    loaders = (yaml.SafeLoader,) if _is_disputed(stretch) else (_QUICK, yaml.SafeLoader)
    for loader in loaders:
        builder = _Builder(text, start, spans, found)
        try:
            for event in _events(stretch, loader):
                builder.take(event)
        except _TooMuch:
            return None
        except yaml.YAMLError as error:
            if loader is not yaml.SafeLoader:
                spans.by_path.clear()
                del found[before:]
                continue
            found.append(found_of(error, text, start, end))
            return None
        return None if builder.is_refused else builder.root
    return None


def _is_disputed(text: str) -> bool:
    """Return whether the two readers may not agree; a question mark between brackets is such a case."""
    if _DISPUTED.search(text):
        return True
    last = text.rfind("?") + 1
    depth = 0
    for sign in _SIGNS.findall(text, 0, last):
        depth += (sign in "[{") - (sign in "]}")
        if sign == "?" and depth > 0:
            return True
    return False


def _events(text: str, loader: Any) -> Iterator[yaml.Event]:
    events: Iterator[yaml.Event] = yaml.parse(text, Loader=loader)
    return events


class _Builder:
    """Takes YAML's events one by one; nothing of it is ever called again by itself, however deep the file."""

    def __init__(self, text: str, base: int, spans: Spans, found: list[Found]) -> None:
        self.text = text
        self.base = base
        self.spans = spans
        self.found = found
        self.open: list[_Open] = []
        self.root: Data = ""
        self.is_refused = False
        self._documents = 0
        self._values = 0
        self._marks = 0

    def take(self, event: yaml.Event) -> None:
        if isinstance(event, yaml.DocumentStartEvent):
            self._documents += 1
            if self._documents > 1:
                self._refuse("second-document", event)
        elif isinstance(event, yaml.AliasEvent):
            help_line = "write the value out at both places, or give it a name under 'lengths:'"
            self._mark(f"'*{event.anchor}' refers to another place, which is not done here", event, help_line)
            if self._expects_key():
                raise _TooMuch
            self._value("", event)
        elif isinstance(event, yaml.NodeEvent):
            self._refuse_marks(event)
            self._node(event)
        elif isinstance(event, (yaml.MappingEndEvent, yaml.SequenceEndEvent)):
            self._close(event)

    def _at(self, event: yaml.Event) -> tuple[int, int]:
        """Return where an event stands in the file."""
        assert event.start_mark is not None
        assert event.end_mark is not None
        return event.start_mark.index + self.base, event.end_mark.index + self.base

    def _line_end(self, start: int) -> int:
        end = self.text.find("\n", start)
        return len(self.text) if end < 0 else max(end, start)

    def _fault(self, code: str, message: str, event: yaml.Event, help_line: str) -> None:
        start, end = self._at(event)
        self.found.append(Found(code, message, start, min(end, self._line_end(start)), help_line))

    def _refuse(self, code: str, event: yaml.Event) -> None:
        message, help_line = _REFUSED[code]
        self._fault(code, message, event, help_line)
        raise _TooMuch

    def _mark(self, message: str, event: yaml.Event, help_line: str) -> None:
        """Add a fault for an anchor or an alias, but only for the first few."""
        self.is_refused = True
        self._marks += 1
        if self._marks <= MOST_MARKS:
            self._fault("alias", message, event, help_line)

    def _refuse_marks(self, event: yaml.NodeEvent) -> None:
        if event.anchor is not None:
            self._mark(f"'&{event.anchor}' marks a value for use elsewhere", event, "delete it")
        if getattr(event, "tag", None) is not None:
            self.is_refused = True
            help_line = "delete it, or put the value in quotes"
            self._fault("tag", "a word with '!' stands before a value here", event, help_line)

    def _node(self, event: yaml.NodeEvent) -> None:
        self._values += 1
        if self._values > MOST_VALUES:
            self._refuse("too-many-values", event)
        if isinstance(event, yaml.ScalarEvent):
            self._scalar(event)
            return
        if len(self.open) >= DEEPEST:
            self._refuse("too-deep", event)
        if self._expects_key():
            self._refuse("not-a-key", event)
        data: list[Data] | dict[str, Data] = {} if isinstance(event, yaml.MappingStartEvent) else []
        path, key = self._place()
        in_brackets = bool(getattr(event, "flow_style", False))
        self.open.append(_Open(data, path, self._at(event)[0], key, in_brackets))

    def _expects_key(self) -> bool:
        return bool(self.open) and isinstance(self.open[-1].data, dict) and self.open[-1].waiting is None

    def _place(self) -> tuple[Path, tuple[int, int] | None]:
        """Return the path of the value that comes next, and where its key stands."""
        if not self.open:
            return (), None
        top = self.open[-1]
        if isinstance(top.data, list):
            return (*top.path, len(top.data)), None
        assert top.waiting is not None
        return (*top.path, top.waiting), top.waiting_span

    def _close(self, event: yaml.Event) -> None:
        done = self.open.pop()
        end = min(self._line_end(done.start), self._at(event)[1])
        self._put(done.data, Span(done.start, max(done.start, end), done.key, is_scalar=False))

    def _scalar(self, event: yaml.ScalarEvent) -> None:
        is_rest = self._goes_on(event)
        if self._expects_key():
            self._key(event, is_rest=is_rest)
        elif not is_rest:
            self._value("" if event.implicit[0] and event.value in _NOTHING else event.value, event)

    def _goes_on(self, event: yaml.ScalarEvent) -> bool:
        """Return whether this is the rest of a formula that was cut off at its comma, and mend that."""
        top = self.open[-1] if self.open else None
        if top is None or top.cut is None or event.style or top.waiting is not None:
            return False
        path, start = top.cut
        _, end = self._at(event)
        whole = self.text[start:end]
        if whole.count("(") <= whole.count(")"):
            top.cut = None
            help_line = f'put the formula in quotes: "{whole}"'
            self.found.append(
                Found("cut-at-comma", "a formula is cut off at its comma", start, end, help_line)
            )
            span = self.spans.by_path[path]
            self.spans.by_path[path] = Span(start, end, span.key)
            top.data[path[-1]] = whole  # type: ignore[index]
        return True

    def _value(self, value: str, event: yaml.Event) -> None:
        start, end = self._at(event)
        path, key = self._place()
        style = getattr(event, "style", None)
        letters = letters_of(self.text, start, end, value, style) if value else None
        top = self.open[-1] if self.open else None
        if top is not None and top.in_brackets and not style and value.count("(") > value.count(")"):
            top.cut = None if top.dropping else (path, start)
        self._put(value, self._shown(Span(start, end, key, letters=letters), style))

    def _shown(self, span: Span, style: str | None) -> Span:
        """Return the span to show: of a block its first line, of nothing its key."""
        if style in {"|", ">"}:
            first = span.letters[0] if span.letters else span.start
            return Span(first, max(first, self._line_end(first)), span.key, letters=span.letters)
        if span.start == span.end and span.key:
            return Span(*span.key, span.key)
        return span

    def _put(self, value: Data, span: Span) -> None:
        if not self.open:
            self.root = value
            return
        top = self.open[-1]
        path, _ = self._place()
        if isinstance(top.data, list):
            top.data.append(value)
        else:
            assert top.waiting is not None
            if not top.dropping:
                top.data[top.waiting] = value
            top.waiting = None
        if not top.dropping:
            self.spans.by_path.setdefault(path, span)
        top.dropping = False

    def _key(self, event: yaml.ScalarEvent, *, is_rest: bool) -> None:
        top = self.open[-1]
        start, end = self._at(event)
        name = event.value
        top.waiting, top.waiting_span = name, (start, end)
        top.dropping = is_rest or name in top.keys or not name.strip()
        if is_rest:
            return
        if name in top.keys:
            first = ("it is first written here", *top.keys[name])
            message, help_line = f"'{name}' is written twice", "delete one of them, or give it another name"
            self.found.append(Found("duplicate-key", message, start, end, help_line, (first,)))
        elif not name.strip():
            message, help_line = "a name is due before this colon", "write 'name: value'"
            self.found.append(Found("not-a-key", message, start, max(end, start + 1), help_line))
        top.keys.setdefault(name, (start, end))
