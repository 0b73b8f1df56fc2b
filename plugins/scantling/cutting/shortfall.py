"""Strips that may end up a little narrow: where that saves a board, and by how much.

A board that is divided exactly loses a kerf to every cut, so its last strip is narrower than asked. Where
a part says how narrow it may be, the problem is solved once as asked and once with such parts at their
least. If the second costs less, such parts are made as wide as that cost allows, all of a kind alike, and
then each piece as wide as its own board has room for.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from scantling.cutting.answer import Board, Piece
from scantling.cutting.problem import PartItem, Problem, StockItem

SHARES = 32
"""In so many shares the way from a part's least width to the width asked is tried."""


def may_be_narrow(problem: Problem) -> bool:
    """Return whether any part may end up narrower than asked."""
    return any(part.least_width is not None and part.least_width < part.width for part in problem.parts)


def narrowed(problem: Problem, share: int = 0) -> Problem:
    """Return the problem with every part that may be narrower so many shares above its least width."""
    return replace(problem, parts=tuple(_at(part, share) for part in problem.parts))


def _at(part: PartItem, share: int) -> PartItem:
    if part.least_width is None or part.least_width >= part.width:
        return part
    wider = (part.width - part.least_width) * share // SHARES
    return replace(part, width=part.least_width + wider, least_width=None)


def widened(board: Board, stock: StockItem, problem: Problem) -> Board:
    """Return a board whose narrowed pieces are as wide as asked, or as there is room for."""
    asked = {part.id: part for part in problem.parts}
    pieces = list(board.pieces)
    for index, piece in enumerate(pieces):
        part = asked[piece.part]
        if piece.length != part.length or piece.width >= part.width:
            continue
        pieces[index] = _grown(pieces, index, part.width, stock, problem)
    return replace(board, pieces=tuple(pieces))


def _grown(pieces: Sequence[Piece], index: int, wanted: int, stock: StockItem, problem: Problem) -> Piece:
    """Return a piece as wide as its neighbours, its board and through-cuts let it be."""
    piece = pieces[index]
    top = stock.width - stock.trim_edges
    for other in pieces:
        beside = (
            other.x < piece.x + piece.length + problem.kerf
            and piece.x < other.x + other.length + problem.kerf
        )
        if other is not piece and beside and other.y >= piece.y + piece.width:
            top = min(top, other.y - problem.kerf)
    wide = replace(piece, width=min(wanted, top - piece.y))
    others = [other for other in pieces if other is not piece]
    if not any(_freed([*others, wide], problem.kerf, problem.stages, rip=rip) for rip in (True, False)):
        wide = piece
    return replace(wide, short_by=wanted - wide.width)


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
