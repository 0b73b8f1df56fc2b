"""Putting the large pieces of a page back in the places where the host wants them.

What the search is to find goes back as soon as the host has made HTML of the Markdown; all else only when the
search has seen the page. Neither parser of the host then reads tables and figures, which are HTML already.
"""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from scantling.host.kept_file import PageFile
from scantling.pages import put_back

if TYPE_CHECKING:
    from mkdocs.structure.pages import Page

_IDS = re.compile(r'\sid="([^"]+)"')
_UNSEARCHED = re.compile(r'<\w+[^>]* data-search-exclude="')
_FOR_SEARCH = re.compile(r'\s?data-search-\w+="[^"]+"')


def give_meta(page: Page) -> None:
    """Give a page of ours its front matter, which need not be written and read for that."""
    if isinstance(page.file, PageFile):
        page.meta = {**page.meta, **page.file.ours.meta}


def put_back_words(content: str, page: Page) -> str:
    """Return the HTML of a page with the pieces that the search is to find."""
    if not isinstance(page.file, PageFile):
        return content
    pieces = page.file.pieces()
    # links of other pages may lead to places in pieces that the host does not see
    page.present_anchor_ids = {*(page.present_anchor_ids or ()), *_IDS.findall("".join(pieces))}
    if page.file.is_unsearched:
        return content
    return put_back(content, partial(_if_searched, pieces))


def _if_searched(pieces: tuple[str, ...], place: int) -> str | None:
    return None if _UNSEARCHED.match(pieces[place]) else pieces[place]


def put_back_rest(page: Page) -> None:
    """Put back what the search was not to see, without the words that tell it so."""
    if isinstance(page.file, PageFile) and page.content:
        page.file.without_pieces = page.content
        pieces = [_FOR_SEARCH.sub("", piece) for piece in page.file.pieces()]
        page.content = put_back(page.content, pieces.__getitem__)


def take_out(page: Page) -> None:
    """Let go of the pieces of a page that has been written, so that a large catalog fits into memory."""
    if isinstance(page.file, PageFile) and page.file.without_pieces:
        page.content = page.file.without_pieces
