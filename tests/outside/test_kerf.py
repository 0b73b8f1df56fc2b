"""What the saw leaves, against facts of the trade that anybody can try on a scrap."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.cutting import PartItem, Problem, Rules, StockItem, solve
from tests.outside.sources import checked

INCH = 32
"""Units to an inch."""
EIGHTH = INCH // 8
"""The kerf of an ordinary table saw blade."""


def boards_for(*widths: Fraction) -> int:
    """Return how many 5 1/2 in boards are bought for strips of these widths, as long as the boards are."""
    answer = solve(
        Problem(
            unit="1/32 in",
            kerf=EIGHTH,
            stages=3,
            stock=(StockItem("board", "pine", 96 * INCH, int(Fraction(11, 2) * INCH), 1000),),
            parts=tuple(
                PartItem(f"strip {number}", "pine", 1, 96 * INCH, int(width * INCH))
                for number, width in enumerate(widths)
            ),
        )
    )
    return len(answer.boards)


@checked(quantity="kerf-left", place="a 5 1/2 in board, a 4 in strip, a 1/8 in blade", kind="common practice")
def test_a_4_in_rip_leaves_1_3_8_in_of_a_5_1_2_in_board():
    """A strip of 1 3/8 in can be had beside the wide one, and none that is 1/32 in wider."""
    assert boards_for(Fraction(4), Fraction(11, 8)) == 1
    assert boards_for(Fraction(4), Fraction(45, 32)) == 2


@checked(quantity="kerf-left", place="a 5 1/2 in board, a 4 in strip, a 1/8 in blade", kind="common practice")
def test_the_offcut_of_a_4_in_rip_is_1_3_8_in_wide():
    """What falls off is told with its place and size, the kerf taken off."""
    answer = solve(
        Problem(
            unit="1/32 in",
            kerf=EIGHTH,
            stages=3,
            stock=(StockItem("board", "pine", 96 * INCH, 11 * INCH // 2, 1000),),
            parts=(PartItem("strip", "pine", 1, 96 * INCH, 4 * INCH),),
            rules=Rules(keep_length=INCH, keep_width=INCH),
        )
    )

    (offcut,) = answer.boards[0].offcuts
    assert (offcut.length, offcut.width) == (96 * INCH, 11 * INCH // 8)
    assert {offcut.y, 11 * INCH // 2 - offcut.y - offcut.width} & {0}


@checked(quantity="pieces-in-stock", place="a 5 1/2 in board, a 1/8 in blade", kind="common practice")
@pytest.mark.parametrize(
    ("width", "count", "boards"),
    [
        (Fraction(5, 2), 2, 1),  # two 2 1/2 in strips
        (Fraction(5, 2), 3, 2),  # a third does not fit
        (Fraction(43, 16), 2, 1),  # halved: two of 2 11/16 in
        (Fraction(87, 32), 2, 2),  # and not 1/32 in more
        (Fraction(11, 2), 1, 1),  # a full board needs no cut
    ],
)
def test_strips_that_fit_a_5_1_2_in_board(width, count, boards):
    """Each cut takes 1/8 in between two strips."""
    assert boards_for(*[width] * count) == boards


@checked(
    quantity="pieces-in-stock",
    place="three pieces of 100 with a kerf of 3 need 100 + 3 + 100 + 3 + 100",
    kind="common practice",
)
@pytest.mark.parametrize(("length", "boards"), [(306, 1), (305, 2)])
def test_three_pieces_need_two_kerfs(length, boards):
    """Pieces along a board take one kerf fewer than there are pieces."""
    answer = solve(
        Problem(
            unit="mm",
            kerf=3,
            stages=1,
            stock=(StockItem("bar", "pine", length, 40, 100),),
            parts=(PartItem("piece", "pine", 3, 100, 40),),
        )
    )

    assert len(answer.boards) == boards
