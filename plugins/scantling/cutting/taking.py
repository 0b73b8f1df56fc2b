"""Taking boards out of what fractions of boards cover, and leaving patterns out."""

from __future__ import annotations

from dataclasses import replace

from scantling.cutting.cover import Cover, Pattern

DEAR = 50.0
"""The price of what must not be used."""
FULL = 0.6
"""A pattern that lost pieces is kept while this much of the board is used."""


def take(cover: Cover, row: int, copies: int) -> Pattern:
    """Take copies of the pattern in a row out of what is to be covered; return it over all kinds.

    Patterns that hold more than is then left must not be used any more; their rest is added.
    """
    column = cover.mixture.basis[row]
    pattern = column.counts if column is not None else ()
    cover.mixture.take(row, copies, DEAR)
    for kind, count in enumerate(pattern):
        cover.left[kind] -= count * copies
    changed = [(kind, cover.left[kind]) for kind, count in enumerate(pattern) if count]
    cover.steps.done += len(cover.pool) // 2
    worse = [one for one in cover.pool if any(one.counts[kind] > most for kind, most in changed)]
    if worse:
        forbid(cover, {one.counts for one in worse})
        for one in worse:
            _add_rest(cover, one.counts)
    return cover.wide(pattern)


def forbid(cover: Cover, gone: set[Pattern]) -> None:
    """Use some patterns no more."""
    cover.pool = [one for one in cover.pool if one.counts not in gone]
    for at, one in enumerate(cover.mixture.basis):
        if one is not None and one.sort == 0 and one.counts in gone:
            cover.mixture.reprice(at, replace(one, cost=DEAR, sort=-1))


def _add_rest(cover: Cover, pattern: Pattern) -> None:
    rest = tuple([min(count, most) for count, most in zip(pattern, cover.left, strict=True)])
    if sum([n * size for n, size in zip(rest, cover.sizes, strict=True)]) >= FULL * cover.room:
        cover.add(rest)


def left_of(cover: Cover) -> list[int]:
    """Return how many of all kinds are left."""
    left = [0] * len(cover.lengths.wanted)
    for kind, count in zip(cover.rows, cover.left, strict=True):
        left[kind] = count
    return left


def narrowed(cover: Cover) -> Cover:
    """Return the same programme without the rows of which nothing is left."""
    used = sorted(cover.used(), reverse=True)
    known = [cover.wide(pattern) for *_, pattern in used] + [cover.wide(one.counts) for one in cover.pool]
    return Cover(cover.lengths, left_of(cover), known, cover.steps, firm=True)
