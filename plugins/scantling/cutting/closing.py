"""Closing a board up: pieces that stand behind waste in their row move up to their neighbours.

Sections of a board are laid out one by one, so a piece that is shorter than its section leaves a gap before
the next. Where the saw frees the whole row first, each gap would have its end trimmed for nothing, and the
stop be set anew: a person lets the pieces follow each other, and one length is left at the end.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from scantling.cutting.answer import Board, Panel
from scantling.cutting.choosing import aims_of
from scantling.cutting.problem import Problem
from scantling.cutting.tree import with_cuts
from scantling.cutting.turns import cuts_in_order

Move = tuple[int, int, int]
"""A piece's number, and how far it moves towards the board's left end and its lower edge."""


def closed_up(boards: Iterable[Board], problem: Problem) -> Iterator[Board]:
    """Yield boards, the pieces of each moved up where that makes it better to cut."""
    made: dict[object, Board] = {}
    for board in boards:
        key = board.stock, tuple((p.x, p.y, p.length, p.width) for p in board.pieces)
        if key not in made:
            made[key] = _closed(board, problem)
        # boards cut alike hold other parts
        places = zip(board.pieces, made[key].pieces, strict=True)
        pieces = tuple(replace(piece, x=place.x, y=place.y) for piece, place in places)
        yield replace(made[key], pieces=pieces)


def _closed(board: Board, problem: Problem) -> Board:
    stock = next(item for item in problem.stock if item.id == board.stock)
    trims = stock.trim_ends, stock.trim_edges
    moves = () if board.cuts is None else _moves(board.cuts, problem.kerf, trims)
    far = {number: (left, down) for number, left, down in moves if left or down}
    if not far:
        return board
    pieces = tuple(
        replace(piece, x=piece.x - far.get(number, (0, 0))[0], y=piece.y - far.get(number, (0, 0))[1])
        for number, piece in enumerate(board.pieces)
    )
    moved = with_cuts(Board(board.stock, pieces), stock, problem)
    return min(board, moved, key=lambda one: _aims(one, problem))


def _aims(board: Board, problem: Problem) -> tuple[int, ...]:
    """Return how good a board is, the less the better: at last by how many cuts it takes."""
    cuts = [] if board.cuts is None else cuts_in_order(board.cuts)
    return (*aims_of([board], problem), len(cuts))


def _moves(panel: Panel, kerf: int, trims: tuple[int, int], left: int = 0, down: int = 0) -> Iterator[Move]:
    """Yield how far each piece of a panel can move up, where the panel itself moves so far."""
    if panel.cut is None:
        if panel.piece is not None:
            yield panel.piece, left, down
        return
    rest = left, down
    if _is_waste(panel.freed) and not _is_rough(panel, trims):
        gap = panel.cut.setting + kerf
        rest = (left, down + gap) if panel.cut.is_rip else (left + gap, down)
    if panel.freed is not None:
        yield from _moves(panel.freed, kerf, trims, left, down)
    if panel.rest is not None:
        yield from _moves(panel.rest, kerf, trims, *rest)


def _is_waste(panel: Panel | None) -> bool:
    return panel is None or (panel.cut is None and panel.piece is None and not panel.is_kept)


def _is_rough(panel: Panel, trims: tuple[int, int]) -> bool:
    """Return whether a cut at the start of a panel takes off the rough edge of the board."""
    way = int(panel.cut is not None and panel.cut.is_rip)
    return (panel.x, panel.y)[way] == 0 and trims[way] > 0
