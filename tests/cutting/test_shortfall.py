"""A part may end up a little small where it allows that and it saves a board; the answer says so."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import PartItem, Problem, Rules, StockItem, replay, solve
from scantling.drawing import told
from scantling.fault import Faulty
from scantling.measure import Display, read_length
from scantling.pages.board_pictures import board_picture
from scantling.plan import Choice, Fitter, read_plan
from scantling.report import report_on
from scantling.shop import read_shop
from tests.support.workshop import shop_data

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


def length(name: str, long: float, least: float | None = None, count: int = 1) -> PartItem:
    """Return full-width parts of a length in inches that may end up a little shorter."""
    small = None if least is None else int(least * INCH)
    return PartItem(name, "pine", count, int(long * INCH), 11 * INCH // 2, least_length=small)


def test_a_part_that_may_be_short_saves_a_board():
    """Four of 24 in come out of 8 ft if 23 7/8 in will do; each is as long as its board lets it be."""
    answer = solve(problem(length("shelf", 24, 23.875, count=4)))

    assert len(answer.boards) == 1
    pieces = answer.boards[0].pieces
    assert sum(piece.length for piece in pieces) == 96 * INCH - 3 * KERF
    assert all(piece.length + piece.shorter_by == 24 * INCH for piece in pieces)
    assert all(piece.length >= 23.875 * INCH for piece in pieces)
    assert any("shorter_by" in piece.to_data() for piece in pieces)


def test_without_leave_a_length_is_cut_as_asked():
    """Two boards are bought where 24 in must be 24 in."""
    assert len(solve(problem(length("shelf", 24, count=4))).boards) == 2


WIDTHS = st.lists(
    st.tuples(st.integers(16, 70), st.integers(0, 4), st.integers(1, 3), st.integers(20, 96)),
    min_size=1,
    max_size=4,
)


@settings(max_examples=40, deadline=None)
@given(WIDTHS, st.booleans())
def test_leave_to_be_smaller_is_never_abused(rows, turnable):
    """No piece is smaller than its least, each says what it lacks and comes free, and nothing costs more."""
    parts = tuple(
        PartItem(
            f"strip {at}",
            "pine",
            count,
            long * INCH,
            width,
            turnable,
            long * INCH - less,
            max(1, width - less),
        )
        for at, (width, less, count, long) in enumerate(rows)
    )
    eased = problem(*parts)
    answer = solve(eased, steps=20_000)
    asked = {part.id: part for part in parts}
    for board in answer.boards:
        for piece in board.pieces:
            part = asked[piece.part]
            size = piece.length + piece.shorter_by, piece.width + piece.short_by
            turned = piece.length + piece.short_by, piece.width + piece.shorter_by
            assert size == (part.length, part.width) or turned == (part.width, part.length)
            assert 0 <= piece.short_by <= part.width - part.least_width
            assert 0 <= piece.shorter_by <= part.length - part.least_length
        made = {leaf.piece for leaf in replay(board.cuts, KERF) if leaf.piece is not None}
        assert made == set(range(len(board.pieces)))

    strict = replace(eased, parts=tuple(replace(p, least_length=None, least_width=None) for p in parts))
    assert answer.cost <= solve(strict, steps=20_000).cost


def test_nothing_is_smaller_where_as_asked_costs_no_more():
    """Leave that saves nothing is not used."""
    parts = (strip("a", 2.5, 2.25, count=2), strip("b", 5, 4.75))
    assert all(not piece.short_by for board in solve(problem(*parts)).boards for piece in board.pieces)


SLATS = {
    "title": "Slatted shelf",
    "sizes": {"depth": {"usual": "5 1/2 in", "from": "4 in", "to": "11 in", "by": "1/8 in"}},
    "parts": {
        "slat": {
            "from": "1x6",
            "count": "4",
            "length": "60 in",
            "width": "depth / 4",
            "least width": "1 1/4 in",
        },
        "rail": {"from": "1x6", "count": "2", "length": "20 in", "width": "depth / 2"},
    },
}


@pytest.mark.parametrize("depth", ["5 3/8 in", "5 1/2 in", "5 3/4 in", "7 in"])
def test_a_plan_tells_at_every_width_what_ends_up_narrow(depth):
    """The diagram's words name each slat that is narrower than asked, and no other."""
    shop = read_shop(shop_data())
    plan = read_plan(SLATS, "shelf")
    report = report_on(Fitter(plan, shop), Choice({"depth": read_length(depth)}, {}))
    for board in report.cutting.boards:
        picture = board_picture([board], report, Display())
        short = [piece for piece in board.pieces if piece.short_by.inches]
        words = told(picture)
        assert words.count("ends up") == len({piece.width for piece in short})
        for piece in short:
            assert f"ends up {Display().length(piece.width)} wide" in words
            assert piece.width.inches >= Fraction(5, 4)
