"""Large pieces of HTML taken out of a page's Markdown, so that a host does not read them as words.

A host parses a page's Markdown, and then its HTML for the search. Neither has any business in our tables and
figures, which are HTML already; a short mark holds the place of each until it is put back.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from scantling.pages.finished import Page

SHORT = 80
"""Letters; a piece no longer than this stays where it is."""
_MARK = '<div data-set-aside="{}"></div>'
_MARKS = re.compile(r'<div data-set-aside="(\d+)"></div>')
_TAG = re.compile(r"<([a-z]+)[ >]")
_BETWEEN = "\0"
"""No HTML holds this sign."""


def set_aside(page: Page) -> Page:
    """Return a page with a mark for each large piece of HTML in its Markdown.

    A piece is a block between empty lines that begins with a tag and closes what it opens; our pages have
    no empty line inside one.
    """
    if page.pieces or _MARKS.search(page.markdown):
        return page
    kept: list[str] = []
    blocks = page.markdown.split("\n\n")
    for place, block in enumerate(blocks):
        if len(block) > SHORT and _is_whole(block):
            end = "\n" if block.endswith("\n") else ""
            blocks[place] = _MARK.format(len(kept)) + end
            kept.append(block.removesuffix("\n"))
    return replace(page, markdown="\n\n".join(blocks), pieces=tuple(kept))


def pieces_of(page: Page) -> tuple[str, ...]:
    """Return the pieces of a page that was set aside, read from where they lie."""
    if isinstance(page.pieces, tuple):
        return page.pieces
    return tuple(page.pieces.read().decode().split(_BETWEEN))


def as_one(pieces: tuple[str, ...]) -> bytes:
    """Return pieces as they lie in a file."""
    return _BETWEEN.join(pieces).encode()


def whole(page: Page) -> str:
    """Return a page's Markdown with everything in its place."""
    return put_back(page.markdown, pieces_of(page).__getitem__) if page.pieces else page.markdown


def put_back(words: str, piece: Callable[[int], str | None]) -> str:
    """Return Markdown or HTML with pieces in the place of their marks.

    Args:
        piece: by its number; None leaves the mark.
    """

    def put(mark: re.Match[str]) -> str:
        found = piece(int(mark[1]))
        return mark[0] if found is None else found

    return _MARKS.sub(put, words)


def _is_whole(block: str) -> bool:
    opened = _TAG.match(block)
    if opened is None:
        return False
    name = opened[1]
    opens = len(re.findall(rf"<{name}[ >]", block))
    return opens == block.count(f"</{name}>") and block.rstrip().endswith(f"</{name}>")
