"""Marking what differs between a page at one size and the same page at the author's."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from scantling.pages.html import tag
from scantling.words import say

_TOKEN = re.compile(r"<[^>]*>|[^<]+")
_ROW = re.compile(r"<(?:tr|li|p|dt|figure|div)[ >]")
_NAME = re.compile(r' (?:data-check|data-part|data-row|id)="([^"]*)"| class="[^"]*(sc-fact--\w+)')


@dataclass(slots=True)
class _Row:
    """A stretch of HTML that begins with a row, an item or a paragraph."""

    key: str
    kind: str = ""
    tokens: list[str] = field(default_factory=list)

    def words(self) -> list[str]:
        return [token for token in self.tokens if _is_words(token)]


def mark_changes(html: str, drawn: str) -> str:
    """Return HTML with a mark around each text that differs from what the author's size has in its place.

    Args:
        drawn: the same fragment at the author's size.
    """
    if html == drawn:
        return html
    before = {row.key: row.words() for row in _rows(drawn)}
    return "".join(_marked(row, before.get(row.key)) for row in _rows(html))


def _rows(html: str) -> Iterator[_Row]:
    """Yield rows, each with a key that it also has at another size: what it is about, else its place.

    Places are counted for each kind of row, so that a figure more or less moves no paragraph.
    """
    seen: dict[str, int] = {}
    row = _Row("")
    for token in _TOKEN.findall(html):
        if _ROW.match(token):
            yield _numbered(row, seen)
            row = _Row(_name(token))
            row.kind = token.split(maxsplit=1)[0].strip("<>")
        elif not row.key:
            row.key = _name(token)
        row.tokens.append(token)
    yield _numbered(row, seen)


def _name(token: str) -> str:
    found = _NAME.search(token) if token.startswith("<") else None
    return (found[1] or found[2]) if found else ""


def _numbered(row: _Row, seen: dict[str, int]) -> _Row:
    name = f"{row.kind} {row.key}"
    seen[name] = seen.get(name, 0) + 1
    row.key = f"{name} {seen[name]}"
    return row


def _marked(row: _Row, before: list[str] | None) -> str:
    """Return a row with its changes marked; of a row that the author's size lacks, only the first words."""
    written = []
    at = 0
    for token in row.tokens:
        if _is_words(token):
            known = before is not None and at < len(before)
            was = before[at] if before is not None and at < len(before) else ""
            is_changed = token != was if before is not None else at == 0
            written.append(_mark(token, was if known else "") if is_changed else token)
            at += 1
        else:
            written.append(token)
    return "".join(written)


def _is_words(token: str) -> bool:
    return not token.startswith("<") and any(letter.isalnum() for letter in token)


def _mark(words: str, was: str) -> str:
    inner = words.strip()
    start = words.index(inner)
    told = say("as drawn: {was}", was=was.strip().replace('"', "&quot;"))
    title = f' title="{told}"' if was and len(was) < 120 else ""
    mark = tag("mark", inner, class_="sc-changed").replace("<mark", f"<mark{title}", 1)
    return words[:start] + mark + words[start + len(inner) :]
