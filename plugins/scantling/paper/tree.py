"""The fragments of a plan page as a tree of plain data, for the typesetter.

Page and paper say the same because paper typesets the page's own fragments; nothing is worded twice.
"""

from __future__ import annotations

import re
from html.parser import HTMLParser
from typing import Any

from scantling.measure import hold

Node = str | dict[str, Any]
"""Text, or an element: `t` its tag, `c` its class, `k` its children, and the attributes that print."""
EMPTY_TAGS = {"img", "input", "br", "hr", "meta", "link"}
BLOCKS = {"p", "div", "ul", "ol", "li", "dl", "table", "tbody", "thead", "tr", "figure", "blockquote", "pre"}
"""Elements after which white space is none of the words'."""
CHUNK = 24
"""Letters after which a longer word may be broken."""
ZERO_WIDTH_SPACE = "\u200b"
_LONG = re.compile(rf"\S{{{CHUNK + 1},}}")
PRINTED = ("src", "alt", "colspan", "href", "width", "height", "scope", "data-part")
"""Attributes that the typesetter looks at."""


def tree_of(html: str) -> list[Node]:
    """Return the nodes of a fragment; text between blocks that is only white space is dropped."""
    builder = _Builder()
    builder.feed(html)
    builder.close()
    return builder.top


class _Builder(HTMLParser):
    """Builds the tree while the parser reads."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.top: list[Node] = []
        self._open: list[tuple[str, list[Node]]] = [("", self.top)]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Open an element."""
        given = dict(attrs)
        node: dict[str, Any] = {"t": tag, "c": given.get("class") or "", "k": []}
        node.update({name.replace("data-", ""): given[name] or "" for name in PRINTED if name in given})
        self._open[-1][1].append(node)
        if tag not in EMPTY_TAGS:
            self._open.append((tag, node["k"]))

    def handle_endtag(self, tag: str) -> None:
        """Close the element, and whatever was left open in it."""
        for depth in range(len(self._open) - 1, 0, -1):
            if self._open[depth][0] == tag:
                del self._open[depth:]
                return

    def handle_data(self, data: str) -> None:
        """Add text."""
        before = self._open[-1][1]
        if data.strip() or (before and data and not _is_block(before[-1])):
            self._open[-1][1].append(breakable(" ".join(data.split("\n"))))


def _is_block(node: Node) -> bool:
    return isinstance(node, dict) and node["t"] in BLOCKS


def breakable(words: str) -> str:
    """Return words with places to break one that is too long for any line, and measures kept on one line."""
    return _LONG.sub(
        lambda found: ZERO_WIDTH_SPACE.join(
            found[0][at : at + CHUNK] for at in range(0, len(found[0]), CHUNK)
        ),
        hold(words),
    )
