"""Pieces of a row follow each other: nobody trims an end between two of them for nothing."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from scantling.cutting import Panel, PartItem, Problem, Rules, StockItem, cuts_in_order, solve
from tests.cutting.checking import generated
from tests.tools.verify_cuts import verify

RULES = Rules(least_rip_length=96, least_strip_width=4, keep_length=96, keep_width=16)


def slats(**more: int) -> Problem:
    """Return boards that are ripped in two and crosscut into long and short slats, in eighths of an inch."""
    stock = (
        StockItem("6 ft", "cedar", 576, 28, 684, **more),
        StockItem("8 ft", "cedar", 768, 28, 912, **more),
    )
    long, short = PartItem("slat", "cedar", 14, 96, 13), PartItem("lower slat", "cedar", 12, 88, 13)
    return Problem("1/8 in", 1, 3, stock, (long, short), RULES)


def trimmed(root: Panel) -> list[Panel]:
    """Return the panels of which waste is cut off before a piece."""
    found = [panel for _, panel in cuts_in_order(root)]
    return [one for one in found if one.freed is not None and _is_waste(one.freed) and one.rest is not None]


def _is_waste(panel: Panel) -> bool:
    return panel.cut is None and panel.piece is None and not panel.is_kept


def test_no_end_is_trimmed_between_two_slats_of_a_row() -> None:
    """Rows of long and short slats, in other numbers here and there, are crosscut one after another."""
    boards = solve(slats()).boards

    assert sorted(board.stock for board in boards) == ["6 ft", "8 ft"]
    for board in boards:
        assert board.cuts is not None
        assert trimmed(board.cuts) == []


def test_the_rough_end_of_a_board_is_still_trimmed() -> None:
    """Where the shop trims ends, no piece moves up into the rough end."""
    for board in solve(slats(trim_ends=4)).boards:
        assert min(piece.x for piece in board.pieces) >= 4


@pytest.mark.parametrize("seed", [4, 52])
def test_an_answer_closed_up_is_still_an_answer(seed: int) -> None:
    """The verifier, which shares no code with the solver, passes it with the rules of a shop too."""
    problem = Problem.from_data(generated(seed))
    rules = Rules(least_rip_length=768, least_strip_width=48, keep_length=768, keep_width=128)
    answer = solve(replace(problem, rules=rules), steps=30_000)

    assert all(trimmed(board.cuts) == [] for board in answer.boards if board.cuts is not None)
    verify(generated(seed), json.loads(json.dumps(answer.to_data())))
