"""A strip may end up a little narrow where its part allows that and it saves a board; the answer says so."""

from __future__ import annotations

from dataclasses import replace

import pytest

from scantling.cutting import PartItem, Problem, Rules, StockItem, solve
from scantling.fault import Faulty

INCH = 16
KERF = 2


def problem(*parts: PartItem) -> Problem:
    """Return a problem with one kind of 5 1/2 in board, 96 in long."""
    board = StockItem("board", "pine", 96 * INCH, 11 * INCH // 2, 1000)
    return Problem("1/16 in", KERF, 3, (board,), parts, Rules(keep_length=INCH, keep_width=INCH))


def strip(name: str, width: float, least: float | None = None, count: int = 1) -> PartItem:
    """Return strips as long as the boards, of a width in inches."""
    small = None if least is None else int(least * INCH)
    return PartItem(name, "pine", count, 96 * INCH, int(width * INCH), least_width=small)


def test_a_strip_that_may_be_narrow_saves_a_board():
    """4 in and 1 1/2 in come out of 5 1/2 in if 1 3/8 in will do, and the piece says how short it is."""
    answer = solve(problem(strip("wide", 4), strip("narrow", 1.5, 1.375)))

    assert len(answer.boards) == 1
    widths = {piece.part: (piece.width, piece.short_by) for piece in answer.boards[0].pieces}
    assert widths == {"wide": (4 * INCH, 0), "narrow": (11 * INCH // 8, INCH // 8)}
    assert answer.proved


def test_without_leave_another_board_is_bought():
    """A part that says nothing of a least width is cut as wide as asked."""
    answer = solve(problem(strip("wide", 4), strip("narrow", 1.5)))

    assert len(answer.boards) == 2
    assert all(piece.short_by == 0 for board in answer.boards for piece in board.pieces)


def test_nothing_is_narrowed_for_nothing():
    """Where the strips fit as asked, they are as wide as asked."""
    answer = solve(problem(strip("wide", 4), strip("narrow", 1.25, 1)))

    assert sorted(piece.width for piece in answer.boards[0].pieces) == [5 * INCH // 4, 4 * INCH]


def test_a_narrowed_piece_is_as_wide_as_there_is_room_for():
    """Halves of a board that may be 2 in wide come out 2 11/16 in wide, not 2 in."""
    answer = solve(problem(strip("half", 2.75, 2, count=2)))

    assert len(answer.boards) == 1
    assert sum(piece.width for piece in answer.boards[0].pieces) == 11 * INCH // 2 - KERF
    assert all(piece.short_by == 11 * INCH // 4 - piece.width for piece in answer.boards[0].pieces)


def test_a_part_that_fits_no_board_as_asked_may_fit_at_its_least():
    """5 5/8 in from a 5 1/2 in board is refused, unless 5 1/2 in will do."""
    with pytest.raises(Faulty):
        solve(problem(strip("board", 5.625)))

    answer = solve(problem(strip("board", 5.625, 5.5)))
    assert answer.boards[0].pieces[0].short_by == INCH // 8


@pytest.mark.parametrize("widths", [(4, 1.5), (2.75, 2.75), (3, 2.5), (1.875, 1.875, 1.75)])
def test_leave_to_be_narrow_never_costs_more(widths):
    """Allowing a strip to be narrower cannot make the plan dearer."""
    asked = problem(*(strip(f"strip {at}", width) for at, width in enumerate(widths)))
    eased = replace(asked, parts=tuple(replace(part, least_width=part.width - KERF) for part in asked.parts))

    assert solve(eased).cost <= solve(asked).cost
