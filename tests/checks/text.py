"""A demonstration plan as text, to be broken in one place: where its parts, joins and steps stand."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

_STEP = re.compile(r"^## .*$", re.MULTILINE)
_NEED = re.compile(r"(?P<count>\d+|\{[^{}]*\})?\s*(?P<name>[^,{}]+)")


@dataclass(frozen=True)
class Step:
    """One `##` section: where it begins and ends in the plan's text."""

    start: int
    end: int
    text: str

    @property
    def title_at(self) -> int:
        return self.start + 3

    def value(self, key: str) -> tuple[int, str] | None:
        """Return offset and text of a `key: value` line under the heading."""
        head = self.text.split("\n\n", 1)[0]
        found = re.search(rf"^{key}: (.*)$", head, re.MULTILINE)
        return (self.start + found.start(1), found[1]) if found else None

    @property
    def is_optional(self) -> bool:
        """True if the step is there only at some sizes."""
        return self.value("only if") is not None

    def listed(self, key: str) -> list[tuple[int, str, str]]:
        """Return offset, count and name of each item of `uses:` or `needs:`."""
        value = self.value(key)
        if value is None:
            return []
        at, text = value
        items = []
        start = 0
        for item in re.split(r",(?![^{]*\})", text):
            bare = item.strip()
            found = re.fullmatch(r"(?:(\d+|\{[^{}]*\})\s+)?(.+)", bare)
            begin = at + start + len(item) - len(item.lstrip())
            items.append((begin, found[1] or "", found[2]))
            start += len(item) + 1
        return items


@dataclass(frozen=True)
class Text:
    """A plan's text."""

    text: str

    @property
    def steps(self) -> list[Step]:
        """Return its steps in order."""
        starts = [found.start() for found in _STEP.finditer(self.text)]
        ends = [*starts[1:], len(self.text)]
        return [Step(a, b, self.text[a:b]) for a, b in zip(starts, ends, strict=True)]

    def section(self, name: str) -> tuple[int, int]:
        """Return where the lines below a top key of the front matter begin and end."""
        found = re.search(rf"^{name}:[^\n]*\n((?:(?:  .*|#.*)?\n)*)", self.text, re.MULTILINE)
        return (found.start(1), found.end(1)) if found else (0, 0)

    @property
    def parts(self) -> dict[str, tuple[int, int]]:
        """Return where each part's key begins and its block ends, by name."""
        start, end = self.section("parts")
        keys = [
            (found.start(1), found[1])
            for found in re.finditer(r"^  ([a-z][\w ]*):", self.text[start:end], re.MULTILINE)
        ]
        offsets = [start + at for at, _ in keys]
        ends = [*offsets[1:], end]
        return {name: (at, stop) for (_, name), at, stop in zip(keys, offsets, ends, strict=True)}

    def part_value(self, name: str, key: str) -> tuple[int, str] | None:
        """Return offset and text of a key in a part's block."""
        start, end = self.parts[name]
        found = re.search(rf"^    {key}: (.*)$", self.text[start:end], re.MULTILINE)
        return (start + found.start(1), found[1]) if found else None

    @property
    def joins(self) -> Iterator[tuple[int, dict[str, tuple[int, str]]]]:
        """Yield each join that stands on one line: its offset, and offset and text of its values."""
        start, end = self.section("joins")
        for line in re.finditer(r"^  - \{(.*)\}$", self.text[start:end], re.MULTILINE):
            values = {
                found[1]: (start + line.start(1) + found.start(2), found[2])
                for found in re.finditer(r"(\w+): ([^,{}]+)", line[1])
            }
            yield start + line.start(), values

    def top(self, key: str) -> int:
        """Return where the value of a top key begins."""
        return re.search(rf"^{key}: *", self.text, re.MULTILINE).end()

    def with_(self, start: int, end: int, words: str) -> str:
        """Return the text with some characters replaced."""
        return self.text[:start] + words + self.text[end:]

    def at(self, offset: int) -> tuple[int, int]:
        """Return line and column of a character."""
        return self.text.count("\n", 0, offset) + 1, offset - self.text.rfind("\n", 0, offset)
