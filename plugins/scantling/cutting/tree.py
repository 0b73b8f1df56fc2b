"""The tree of cuts of a board, and carrying it out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from scantling.cutting.answer import Board, Cut, Offcut, Panel, Piece
from scantling.cutting.problem import Problem, StockItem
from scantling.cutting.sawing import Rect, Saw, Sawn, parts_of, warning
from scantling.cutting.turns import numbered


def with_cuts(board: Board, stock: StockItem, problem: Problem) -> Board:
    """Return a board with its tree of cuts, and with the offcuts that are worth keeping."""
    trims = stock.trim_ends, stock.trim_edges
    saw = Saw(board.pieces, problem.kerf, problem.stages, problem.rules, trims)
    sawn = saw.board(stock.length, stock.width)
    tree = _panel((0, 0, stock.length, stock.width), sawn, tuple(range(len(board.pieces))), board, problem)
    root = numbered(tree, problem.rules.longest_piece)
    return replace(board, cuts=root, offcuts=tuple(_kept(root)))


def _panel(rect: Rect, sawn: Sawn, ids: Sequence[int], board: Board, problem: Problem) -> Panel:
    """Return a panel cut as was decided.

    Args:
        ids: the pieces that lie on it.
    """
    if sawn.setting is None:
        return Panel(*rect, piece=ids[0] if ids else None, is_kept=sawn.score[2] < 0)
    way = int(sawn.is_rip)
    one, two = parts_of(rect, way, sawn.setting, problem.kerf)
    longest = problem.rules.longest_piece
    at_store = longest is not None and max(rect[2:]) > longest
    first = [i for i in ids if _lies_in(board.pieces[i], one)]
    others = [i for i in ids if i not in first]
    return Panel(
        *rect,
        cut=Cut(0, sawn.is_rip, sawn.setting, warning(rect, way, one, first, problem.rules), at_store),
        freed=None if sawn.freed is None else _panel(one, sawn.freed, first, board, problem),
        rest=None if sawn.rest is None else _panel(two, sawn.rest, others, board, problem),
    )


def _lies_in(piece: Piece, rect: Rect) -> bool:
    x, y, length, width = rect
    return x <= piece.x and piece.x + piece.length <= x + length and y <= piece.y <= y + width - piece.width


def _kept(panel: Panel) -> list[Offcut]:
    if panel.cut is None:
        return [Offcut(panel.x, panel.y, panel.length, panel.width)] if panel.is_kept else []
    return [offcut for part in (panel.freed, panel.rest) if part is not None for offcut in _kept(part)]


def replay(root: Panel, kerf: int) -> list[Panel]:
    """Make the cuts one after another, knowing only the board's size and the settings; return what is left.

    The panels carry which piece each is and what is kept, as the tree says; where they are and how large
    they are comes from the cutting.
    """
    done: list[Panel] = []

    def make(place: Rect, told: Panel | None) -> None:
        if told is None or told.cut is None:
            panel = Panel(*place)
            done.append(panel if told is None else replace(panel, piece=told.piece, is_kept=told.is_kept))
            return
        freed, rest = parts_of(place, int(told.cut.is_rip), told.cut.setting, kerf)
        if told.cut.setting > 0:
            make(freed, told.freed)
        if rest[2] > 0 and rest[3] > 0:
            make(rest, told.rest)

    make((0, 0, root.length, root.width), root)
    return done
