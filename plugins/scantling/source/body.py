"""The body of a plan: the words before the first heading, then one step a heading."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from scantling.fault import did_you_mean, nearest
from scantling.plan import STEP
from scantling.source.document import Found
from scantling.source.spans import Path, Span, Spans
from scantling.source.yaml_data import Data

STEP_KEYS = tuple(one.key for one in STEP.fields if one.key not in {"title", "text"})
_HEADING = re.compile(r"##(?:[ \t]+(?P<title>.*?))?(?:[ \t]+#+)?[ \t]*$")
_FENCE = re.compile(r" {0,3}(?P<fence>`{3,}|~{3,})(?P<rest>.*)$")
_KEY_LINE = re.compile(r"(?P<key>[A-Za-z]+(?: [a-z]+){0,2})[ \t]*:(?:[ \t]+(?P<value>.*?))?[ \t]*$")
_SILENCE = re.compile(r"(?P<check>[^:]+?)\s*:\s*(?P<reason>.*)", re.DOTALL)


@dataclass(frozen=True, slots=True)
class _Line:
    text: str
    start: int

    @property
    def end(self) -> int:
        return self.start + len(self.text)

    @property
    def is_blank(self) -> bool:
        return not self.text.strip()


def read_body(text: str, start: int, spans: Spans, found: list[Found]) -> dict[str, Data]:
    """Return `intro` and `steps` as far as they are written.

    Args:
        text: the whole file, whose body begins at `start`.
        spans: gets the place of every value.
        found: gets what is wrong.
    """
    made: dict[str, Data] = {}
    steps: list[Data] = []
    for heading, lines in _sections(text, start):
        if heading is None:
            _Section((), text, spans, found, made).put_words("intro", lines)
            continue
        step = _Section(("steps", len(steps)), text, spans, found, {})
        step.put_title(heading)
        step.put_words("text", lines[step.read_keys(lines) :])
        steps.append(step.data)
    if steps:
        made["steps"] = steps
    return made


def _lines(text: str, start: int) -> Iterator[_Line]:
    while start < len(text):
        end = text.find("\n", start)
        end = len(text) if end < 0 else end
        yield _Line(text[start:end], start)
        start = end + 1


def _sections(text: str, start: int) -> Iterator[tuple[_Line | None, list[_Line]]]:
    """Yield the lines before the first heading, then each heading with the lines below it."""
    heading: _Line | None = None
    lines: list[_Line] = []
    fence = ""
    for line in _lines(text, start):
        marks = _FENCE.match(line.text)
        if marks and not fence:
            fence = marks["fence"]
        elif marks and marks["fence"].startswith(fence) and not marks["rest"].strip():
            fence = ""
        if not fence and _HEADING.match(line.text):
            yield heading, lines
            heading, lines = line, []
        else:
            lines.append(line)
    yield heading, lines


@dataclass(slots=True)
class _Section:
    """A heading and what stands below it, while its lines are read."""

    path: Path
    text: str
    spans: Spans
    found: list[Found]
    data: dict[str, Data]
    keys: dict[str, tuple[int, int]] = field(default_factory=dict)

    def put_words(self, name: str, lines: list[_Line]) -> None:
        """Put words under `name`, without blank lines around them."""
        written = [line for line in lines if not line.is_blank]
        if written:
            start, end = written[0].start, written[-1].end
            self.data[name] = self.text[start:end]
            self.spans.by_path[(*self.path, name)] = Span(start, end)

    def put_title(self, heading: _Line) -> None:
        title = _HEADING.match(heading.text)
        words = (title and title["title"]) or ""
        self.data["title"] = words
        whole = Span(heading.start, heading.end, is_scalar=False)
        at = heading.start + title.start("title") if title and words else heading.start
        self.spans.by_path[self.path] = whole
        self.spans.by_path[(*self.path, "title")] = Span(at, at + len(words) if words else heading.end)

    def read_keys(self, lines: list[_Line]) -> int:
        """Read the `key: value` lines under the heading; return the number of the first line of words."""
        number = 0
        while number < len(lines):
            line = lines[number]
            key = _KEY_LINE.match(line.text)
            if line.is_blank and not self.keys:
                number += 1
                continue
            if not key or not self._is_key(key["key"], line):
                break
            end = number + 1
            while end < len(lines) and lines[end].text.startswith("  ") and not lines[end].is_blank:
                end += 1
            self._read_key(key, line, lines[end - 1].end)
            number = end
        return number

    def _is_key(self, name: str, line: _Line) -> bool:
        """Return whether this is a key; of one that is nearly known, after adding a fault."""
        folded = name.casefold()
        if folded in STEP_KEYS:
            return True
        if not nearest(folded, STEP_KEYS):
            return False
        help_line = did_you_mean(folded, STEP_KEYS, kind="keys")
        message = f"a step has no '{name}'"
        self.found.append(Found("unknown-key", message, line.start, line.start + len(name), help_line))
        return True

    def _read_key(self, key: re.Match[str], line: _Line, end: int) -> None:
        name = key["key"].casefold()
        if name not in STEP_KEYS:
            return
        here = (line.start, line.start + len(key["key"]))
        at = line.start + (key.start("value") if key["value"] else key.end())
        value = self.text[at:end].rstrip()
        span = Span(at, at + len(value), here) if value else Span(*here, here)
        if name == "accept":
            self._silence(value, at, here)
        elif name == "caution" and name in self.data:
            self._another(name, value, span)
        elif name in self.keys:
            first = ("it is first written here", *self.keys[name])
            self.found.append(
                Found("duplicate-key", f"'{name}' is written twice", *here, "write it once", (first,))
            )
        else:
            self.data[name] = value
            self.spans.by_path[(*self.path, name)] = span
        self.keys.setdefault(name, here)

    def _another(self, name: str, value: str, span: Span) -> None:
        """Add a value to those that a key has already."""
        path = (*self.path, name)
        listed = self.data[name]
        if not isinstance(listed, list):
            self.spans.by_path[(*path, 0)] = self.spans.by_path[path]
            listed = [listed]
            self.data[name] = listed
        self.spans.by_path[(*path, len(listed))] = span
        listed.append(value)

    def _silence(self, value: str, at: int, key: tuple[int, int]) -> None:
        """Add one silenced check; it is written `accept: name of the check: the reason`."""
        parts = _SILENCE.fullmatch(value)
        check, reason = (parts["check"], parts["reason"]) if parts else (value, "")
        start = at + (parts.start("reason") if parts else 0)
        accepted = self.data.setdefault("accept", {})
        assert isinstance(accepted, dict)
        accepted[check] = reason
        path = (*self.path, "accept")
        self.spans.by_path.setdefault(path, Span(*key, key, is_scalar=False))
        whole = (at, at + len(check)) if check else key
        span = Span(start, start + len(reason), whole) if reason else Span(*whole, whole)
        self.spans.by_path[(*path, check)] = span
