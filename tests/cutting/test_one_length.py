"""Many pieces from one length of stock, and large problems: bounded work, sound answers."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import Problem, solve
from scantling.cutting.least_boards import least_boards
from scantling.cutting.refill import filled, fullest_first
from scantling.cutting.steps import Steps
from tests.tools.verify_cuts import verify


def _problem(stock: list[tuple[int, int]], parts: list[tuple[int, int]]) -> dict[str, Any]:
    return {
        "unit": "1",
        "kerf": 0,
        "stages": 3,
        "stock": [
            {"id": f"s{i}", "family": "f", "length": length, "width": 1, "price": price}
            for i, (length, price) in enumerate(stock)
        ],
        "parts": [
            {"id": f"p{i}", "from": "f", "count": count, "length": length, "width": 1, "grain": "length"}
            for i, (length, count) in enumerate(parts)
        ],
    }


@pytest.mark.parametrize(
    ("room", "parts", "least"),
    [
        (100, [(45, 97), (36, 610), (31, 395), (14, 211)], 453),
        (110, [(20, 48), (45, 35), (50, 24), (55, 10), (75, 8)], 47),
    ],
)
def test_worked_examples_are_cut_from_the_least_rolls(
    room: int, parts: list[tuple[int, int]], least: int
) -> None:
    """Chvátal (Linear Programming, 1983, ch. 13) and the AMPL book's cutting example; both from memory."""
    data = _problem([(room, 1)], parts)
    answer = solve(Problem.from_data(data))
    verify(data, answer.to_data())
    assert (answer.cost, answer.proved) == (least, True)


@settings(max_examples=60)
@given(st.lists(st.integers(1, 60), min_size=1, max_size=40), st.integers(60, 120))
def test_no_bound_exceeds_what_an_answer_needs(pieces: list[int], room: int) -> None:
    """Boards filled one after another hold every piece, and are no fewer than the bound."""
    boards = fullest_first(pieces, room, Steps(10**9))
    wanted = sorted(set(pieces), reverse=True)
    low = least_boards(wanted, [pieces.count(n) for n in wanted], room, Steps(10**9))
    assert sorted(n for board in boards for n in board) == sorted(pieces)
    assert all(sum(board) <= room for board in boards)
    assert low <= len(boards)


@settings(max_examples=60)
@given(st.lists(st.integers(1, 40), max_size=10), st.integers(1, 100))
def test_a_board_is_filled_as_full_as_trying_everything_fills_it(pieces: list[int], room: int) -> None:
    """No choice of the pieces lies nearer to the length of the board."""
    sums = {0}
    for length in pieces:
        sums |= {at + length for at in sums if at + length <= room}
    taken, rest = filled(pieces, room)
    assert sum(taken) == max(sums)
    assert sorted(taken + rest) == sorted(pieces)


def test_the_work_allowed_is_kept_to_with_very_many_kinds() -> None:
    """Three hundred lengths from three kinds of board have a sound answer within about the steps allowed."""
    parts = [(100 + 37 * i % 1301, 1) for i in range(300)]
    data = _problem([(3072, 500), (3840, 640), (4608, 760)], parts)
    answer = solve(Problem.from_data(data), steps=300_000)
    verify(data, answer.to_data())
    assert answer.bound <= answer.cost <= answer.bound * 1.1
    assert answer.steps < 1_500_000
