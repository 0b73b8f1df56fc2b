"""Moving a piece of HTML to another page: its addresses change, and what may not come along stays behind."""

from __future__ import annotations

from collections.abc import Callable, Collection
from html.parser import HTMLParser

from scantling.pages.html import attribute

ADDRESSES = ("href", "src", "poster")
_VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}


def moved(html: str, to: Callable[[str], str], *, without: Collection[str] = ()) -> str:
    """Return well-formed HTML with every address changed.

    Args:
        html: what the build has made; not what a stranger wrote.
        to: from an address to the new one.
        without: elements that are left behind with all that is in them.
    """
    mover = _Mover(to, without)
    mover.feed(html)
    mover.close()
    return "".join(mover.written)


class _Mover(HTMLParser):
    def __init__(self, to: Callable[[str], str], without: Collection[str]) -> None:
        super().__init__(convert_charrefs=False)
        self.written: list[str] = []
        self._to = to
        self._without = without
        self._left: list[str] = []
        """Open elements that are left behind, outermost first."""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Write an element's beginning, or start to leave it behind."""
        if self._left or tag in self._without:
            if tag not in _VOID:
                self._left.append(tag)
            return
        written = "".join(self._attribute(name, value) for name, value in attrs)
        self.written.append(f"<{tag}{written}>")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Write an element that is closed at once, as SVG has them."""
        if not self._left and tag not in self._without:
            written = "".join(self._attribute(name, value) for name, value in attrs)
            self.written.append(f"<{tag}{written}/>")

    def handle_endtag(self, tag: str) -> None:
        """Write an element's end, or come to the end of what is left behind."""
        if not self._left:
            self.written.append(f"</{tag}>")
        elif tag in self._left:
            while self._left.pop() != tag:
                pass

    def handle_data(self, data: str) -> None:
        """Write words."""
        self._write(data)

    def handle_entityref(self, name: str) -> None:
        """Write a sign that is written by its name."""
        self._write(f"&{name};")

    def handle_charref(self, name: str) -> None:
        """Write a sign that is written by its number."""
        self._write(f"&#{name};")

    def _write(self, words: str) -> None:
        if not self._left:
            self.written.append(words)

    def _attribute(self, name: str, value: str | None) -> str:
        if value is None:
            return attribute(name, True)
        if name in ADDRESSES:
            value = self._to(value)
        elif name == "srcset":
            value = ", ".join(self._candidate(one) for one in value.split(", "))
        return attribute(name, value)

    def _candidate(self, written: str) -> str:
        """Return one picture of several, of which a browser takes the one that fits."""
        address, space, width = written.strip().partition(" ")
        return self._to(address) + space + width
