"""What was made of a plan, with everything large in it laid aside on disk."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from scantling.build.cache import Cache
from scantling.build.stored import Piece, stack
from scantling.pages import Finished, Page, SideFile, as_one, raw, set_aside


def lean(finished: Finished, cache: Cache) -> Finished:
    """Return pages and files with their contents in the cache, where there is one."""
    if cache.folder is None:
        return finished
    pages = [set_aside(page) for page in finished.pages]
    large: list[bytes] = [as_one(page.pieces) for page in pages if isinstance(page.pieces, tuple)]
    large += [raw(file.source) for file in finished.files if not isinstance(file.source, Piece)]
    kept = iter(stack(cache, large))
    return replace(
        finished,
        pages=tuple(_with_pieces(page, kept) for page in pages),
        files=tuple(
            file if isinstance(file.source, Piece) else SideFile(file.path, next(kept))
            for file in finished.files
        ),
    )


def _with_pieces(page: Page, kept: Iterator[bytes | Piece]) -> Page:
    if not isinstance(page.pieces, tuple):
        return page
    found = next(kept)
    return replace(page, pieces=found) if isinstance(found, Piece) else page
