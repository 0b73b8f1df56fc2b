"""Parts that may end up a little smaller: where that saves a board, and by how much.

A board that is divided exactly loses a kerf to every cut, so its last strip is narrower than asked, or its
last length shorter. Where a part says how narrow or how short it may be, the problem is solved once as asked
and once with such parts at their least. If the second costs less, such parts are made as large as that cost
allows, all of a kind alike, and then each piece as large as its own board has room for.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from scantling.cutting.answer import Board, Piece
from scantling.cutting.problem import PartItem, Problem, StockItem

SHARES = 32
"""In so many shares the way from a part's least size to the size asked is tried."""


def may_be_less(problem: Problem) -> bool:
    """Return whether any part may end up narrower or shorter than asked."""
    return any(least_of(part) != (part.length, part.width) for part in problem.parts)


def least_of(part: PartItem) -> tuple[int, int]:
    """Return the least length and width that serve."""
    length = part.length if part.least_length is None else min(part.least_length, part.length)
    width = part.width if part.least_width is None else min(part.least_width, part.width)
    return length, width


def lessened(problem: Problem, share: int = 0) -> Problem:
    """Return the problem with every part that may be smaller so many shares above its least size."""
    return replace(problem, parts=tuple(_at(part, share) for part in problem.parts))


def _at(part: PartItem, share: int) -> PartItem:
    length, width = least_of(part)
    return replace(
        part,
        length=length + (part.length - length) * share // SHARES,
        width=width + (part.width - width) * share // SHARES,
        least_length=None,
        least_width=None,
    )


def enlarged(board: Board, stock: StockItem, problem: Problem, cut: Mapping[str, PartItem]) -> Board:
    """Return a board whose smaller pieces are as large as asked, or as there is room for.

    Args:
        problem: with the parts as asked.
        cut: the parts as they were cut.
    """
    asked = {part.id: part for part in problem.parts}
    pieces = list(board.pieces)
    for index in range(len(pieces)):
        part, was = asked[pieces[index].part], cut[pieces[index].part]
        turned = (pieces[index].length, pieces[index].width) != (was.length, was.width)
        for is_width, wanted in ((True, part.width), (False, part.length)):
            # the width of a piece that is turned lies along the board
            pieces[index] = _grown(pieces, index, is_width != turned, wanted, stock, problem)
        piece = pieces[index]
        length, width = (piece.width, piece.length) if turned else (piece.length, piece.width)
        pieces[index] = replace(piece, short_by=part.width - width, shorter_by=part.length - length)
    return Board(board.stock, tuple(pieces))


def _grown(
    pieces: Sequence[Piece],
    index: int,
    across: bool,  # noqa: FBT001
    wanted: int,
    stock: StockItem,
    problem: Problem,
) -> Piece:
    """Return a piece as large in one direction as its neighbours, its board and through-cuts let it be."""
    piece = pieces[index]
    start, size = _extent(piece, across)
    if size >= wanted:
        return piece
    top = stock.width - stock.trim_edges if across else stock.length - stock.trim_ends
    low, long = _extent(piece, not across)
    for other in pieces:
        beside, reach = _extent(other, not across)
        begins, _ = _extent(other, across)
        if (
            other is not piece
            and begins >= start + size
            and beside < low + long + problem.kerf
            and low < beside + reach + problem.kerf
        ):
            top = min(top, begins - problem.kerf)
    large = min(wanted, top - start)
    grown = replace(piece, width=large) if across else replace(piece, length=large)
    others = [other for other in pieces if other is not piece]
    if large > size and any(
        _freed([*others, grown], problem.kerf, problem.stages, rip=rip) for rip in (True, False)
    ):
        return grown
    return piece


def _extent(piece: Piece, across: bool) -> tuple[int, int]:  # noqa: FBT001
    """Return where a piece begins and how large it is, across the board or along it."""
    return (piece.y, piece.width) if across else (piece.x, piece.length)


def _freed(pieces: Sequence[Piece], kerf: int, stages: int, *, rip: bool) -> bool:
    """Return whether so many runs of through-cuts, by turns, free every piece."""
    if len(pieces) <= 1:
        return True
    if stages == 0:
        return False
    return all(_freed(group, kerf, stages - 1, rip=not rip) for group in _parted(pieces, kerf, rip=rip))


def _parted(pieces: Sequence[Piece], kerf: int, *, rip: bool) -> list[list[Piece]]:
    """Return the groups into which all through-cuts of one direction part some pieces."""
    groups: list[list[Piece]] = []
    reach = 0
    for piece in sorted(pieces, key=lambda piece: piece.y if rip else piece.x):
        start, size = (piece.y, piece.width) if rip else (piece.x, piece.length)
        if not groups or start >= reach + kerf:
            groups.append([])
            reach = start + size
        groups[-1].append(piece)
        reach = max(reach, start + size)
    return groups
