"""The examples of the documentation: what stands in a fenced block below `<!-- run: kind; more -->`."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
PAGES = [ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "docs").rglob("*.md"))]
_MARK = re.compile(r"<!-- run: (?P<kind>[^;>]+?)(?:; (?P<more>.*?))? -->\n+(?P<fence>`{3,})")
_FENCE = re.compile(
    r"^(?P<fence>`{3,})(?P<language>\w*)[^\n]*\n(?P<text>.*?)^(?P=fence)[ \t]*$", re.MULTILINE | re.DOTALL
)


@dataclass(frozen=True, slots=True)
class Example:
    """One fenced block."""

    page: str
    line: int
    kind: str
    more: str
    language: str
    text: str

    def __str__(self) -> str:
        return f"{self.page}:{self.line}"


def examples_of(page: Path) -> Iterator[Example]:
    """Yield every fenced block of a page; one without a mark has an empty kind."""
    text = page.read_text("utf-8")
    marks = {found.start("fence"): found for found in _MARK.finditer(text)}
    for fence in _FENCE.finditer(text):
        mark = marks.get(fence.start())
        yield Example(
            page.relative_to(ROOT).as_posix(),
            text.count("\n", 0, fence.start()) + 1,
            mark["kind"] if mark else "",
            (mark["more"] or "") if mark else "",
            fence["language"],
            fence["text"],
        )


def all_examples() -> list[Example]:
    """Return every fenced block of the documentation."""
    return [example for page in PAGES if page.exists() for example in examples_of(page)]


_CHANGE = re.compile(r"<!-- run: (?P<kind>change [^;>]+?); (?P<more>.*?) -->")


def steps_of(kinds: set[str]) -> list[Example]:
    """Return what the pages have a reader do, in order: blocks of some kinds, and changes told in words."""
    steps = [example for example in all_examples() if example.kind.split(" ", 1)[0] in kinds]
    for page in PAGES:
        text = page.read_text("utf-8") if page.exists() else ""
        name = page.relative_to(ROOT).as_posix()
        steps += [
            Example(name, text.count("\n", 0, found.start()) + 1, found["kind"], found["more"], "", "")
            for found in _CHANGE.finditer(text)
        ]
    return sorted(steps, key=lambda step: (step.page, step.line))
