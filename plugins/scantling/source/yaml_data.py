"""YAML as nested plain data whose scalars are all the author's text, with the place of every value."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

import yaml

from scantling.source.document import Found
from scantling.source.letters import letters_of
from scantling.source.spans import Path, Span, Spans
from scantling.source.yaml_faults import found_of

DEEPEST = 20
MOST_VALUES = 20_000
_NOTHING = {"", "~", "null", "Null", "NULL"}

Data = str | list["Data"] | dict[str, "Data"]


class _TooMuch(Exception):
    """The document is beyond what is read; a fault says so already."""


@dataclass(slots=True)
class _Open:
    """A list or a mapping that is being read."""

    data: list[Data] | dict[str, Data]
    path: Path
    start: int
    key: tuple[int, int] | None
    waiting: str | None = None
    """A key whose value comes next."""
    waiting_span: tuple[int, int] = (0, 0)
    keys: dict[str, tuple[int, int]] = field(default_factory=dict)
    dropping: bool = False
    """The value that comes next belongs to a faulty key and is left out."""


class _Builder:
    """Takes YAML's events one by one."""

    def __init__(self, text: str, base: int, spans: Spans, found: list[Found]) -> None:
        self.text = text
        self.base = base
        self.spans = spans
        self.found = found
        self.open: list[_Open] = []
        self.root: Data = ""
        self.documents = 0
        self.values = 0

    def fault(self, code: str, message: str, event: yaml.Event, help_line: str = "") -> None:
        start, end = self.at(event)
        self.found.append(Found(code, message, start, min(end, self._line_end(start)), help_line))

    def _line_end(self, start: int) -> int:
        end = self.text.find("\n", start)
        return len(self.text) if end < 0 else max(end, start)

    def at(self, event: yaml.Event) -> tuple[int, int]:
        """Return where an event stands in the file."""
        assert event.start_mark is not None
        assert event.end_mark is not None
        return event.start_mark.index + self.base, event.end_mark.index + self.base

    def take(self, event: yaml.Event) -> None:
        if isinstance(event, yaml.DocumentStartEvent):
            self._document(event)
        elif isinstance(event, yaml.AliasEvent):
            help_line = "write the value out at both places, or give it a name under 'lengths:'"
            self.fault(
                "alias",
                f"'*{event.anchor}' refers to another place; plans are written without such",
                event,
                help_line,
            )
            self._value("", event, dropped=True)
        elif isinstance(event, yaml.NodeEvent):
            self._refuse_marks(event)
            self._node(event)
        elif isinstance(event, (yaml.MappingEndEvent, yaml.SequenceEndEvent)):
            self._close(event)

    def _document(self, event: yaml.Event) -> None:
        self.documents += 1
        if self.documents > 1:
            self.fault("second-document", "a second document begins here", event, "keep one file for each")
            raise _TooMuch

    def _refuse_marks(self, event: yaml.NodeEvent) -> None:
        if event.anchor is not None:
            self.fault(
                "alias",
                f"'&{event.anchor}' marks a value for reuse; plans are written without such",
                event,
                "delete it",
            )
        if getattr(event, "tag", None) is not None:
            self.fault(
                "tag",
                "a value is written with '!' before it here",
                event,
                "delete it, or put the value in quotes",
            )

    def _node(self, event: yaml.NodeEvent) -> None:
        self.values += 1
        if self.values > MOST_VALUES:
            self.fault(
                "too-many-values",
                f"more than {MOST_VALUES:,} values are written here",
                event,
                "split the file",
            )
            raise _TooMuch
        if isinstance(event, yaml.ScalarEvent):
            self._scalar(event)
            return
        if len(self.open) >= DEEPEST:
            self.fault(
                "too-deep",
                f"more than {DEEPEST} levels lie within each other here",
                event,
                "a bracket may be left open",
            )
            raise _TooMuch
        if self._expects_key():
            self.fault(
                "not-a-key",
                "a list or mapping stands where a key is due",
                event,
                "put braces or brackets in quotes",
            )
            raise _TooMuch
        self._open(event)

    def _expects_key(self) -> bool:
        return bool(self.open) and isinstance(self.open[-1].data, dict) and self.open[-1].waiting is None

    def _open(self, event: yaml.NodeEvent) -> None:
        data: list[Data] | dict[str, Data] = {} if isinstance(event, yaml.MappingStartEvent) else []
        path, key = self._place()
        self.open.append(_Open(data, path, self.at(event)[0], key))

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
        end = min(self._line_end(done.start), self.at(event)[1])
        span = Span(done.start, max(done.start, end), done.key, is_scalar=False)
        self._put(done.data, span)

    def _scalar(self, event: yaml.ScalarEvent) -> None:
        if self._expects_key():
            self._key(event)
            return
        self._value("" if event.implicit[0] and event.value in _NOTHING else event.value, event)

    def _value(self, value: str, event: yaml.Event, *, dropped: bool = False) -> None:
        start, end = self.at(event)
        _, key = self._place() if not self._expects_key() else ((), None)
        if dropped and self._expects_key():
            raise _TooMuch
        letters = letters_of(self.text, start, end, value, getattr(event, "style", None)) if value else None
        self._put(value, self._tight(Span(start, end, key, letters=letters), event))

    def _tight(self, span: Span, event: yaml.Event) -> Span:
        """Return the span without the quotes of a quoted scalar, and with a key to show for an empty one."""
        if getattr(event, "style", None) in {"|", ">"}:
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

    def _key(self, event: yaml.ScalarEvent) -> None:
        top = self.open[-1]
        start, end = self.at(event)
        name = event.value
        top.waiting, top.waiting_span = name, (start, end)
        if name in top.keys:
            first = ("it is first written here", *top.keys[name])
            message = f"'{name}' is written twice"
            self.found.append(
                Found(
                    "duplicate-key",
                    message,
                    start,
                    end,
                    "delete one of them, or give it another name",
                    (first,),
                )
            )
            top.dropping = True
        elif not name.strip():
            self.found.append(
                Found(
                    "not-a-key",
                    "a name is due before this colon",
                    start,
                    max(end, start + 1),
                    "write 'name: value'",
                )
            )
            top.dropping = True
        else:
            top.keys[name] = (start, end)


def read_yaml(text: str, start: int, end: int, spans: Spans, found: list[Found]) -> Data | None:
    """Return the data in a stretch of a document's text, or None where it cannot be read.

    Args:
        spans: gets the place of every value.
        found: gets what is wrong.
    """
    builder = _Builder(text, start, spans, found)
    before = len(found)
    try:
        for event in _events(text[start:end]):
            builder.take(event)
    except _TooMuch:
        return None
    except yaml.YAMLError as error:
        found.append(found_of(error, text, start, end))
        return None
    if len(found) > before and any(one.code in {"alias", "tag"} for one in found[before:]):
        return None
    return builder.root


def _events(text: str) -> Iterator[yaml.Event]:
    events: Iterator[yaml.Event] = yaml.parse(text, Loader=yaml.SafeLoader)
    return events
