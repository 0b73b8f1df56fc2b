"""Filling board after board, each as full as it can be."""

from __future__ import annotations

from dataclasses import replace

from scantling.cutting import Problem
from scantling.cutting.family import Family, families
from scantling.cutting.fullest import Fullest
from scantling.cutting.greedy import greedy
from scantling.cutting.rebuild import OpenBoard, Rebuilder
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.thrift import pieces_of
from tests.cutting.checking import generated

MUCH = 10**9


def _family(seed: int, times: int = 1) -> Family:
    data = generated(seed)
    data["parts"] = [dict(part, count=part["count"] * times) for part in data["parts"]]
    (family,) = families(Problem.from_data(data))
    return family


def _held(family: Family, boards: list[OpenBoard]) -> list[int]:
    return [sum(pieces_of(board).count(kind) for board in boards) for kind, _ in enumerate(family.kinds)]


def test_three_sheets_hold_all_that_the_areas_let_hope_for() -> None:
    """Where laying piece after piece leaves some over, filling each sheet as well as can be does not."""
    family = _family(17)
    sorts = [2, 2, 2]
    boards, left = Fullest(family, Steps(MUCH)).fill(sorts)
    laid = Rebuilder(family, sorts, Steps(MUCH), Chance())

    assert not any(left)
    assert _held(family, boards) == [kind.count for kind in family.kinds]
    assert laid.run(1) is None


def test_what_finds_no_place_is_told() -> None:
    """One sheet holds some of the pieces; what it holds and what is left are all that are wanted."""
    family = _family(17)
    (board,), left = Fullest(family, Steps(MUCH)).fill([2])

    assert any(left)
    held = _held(family, [board])
    assert [a + b for a, b in zip(held, left, strict=True)] == [kind.count for kind in family.kinds]


def test_boards_bought_so_cost_less_than_boards_laid_piece_by_piece() -> None:
    """Twice a small problem: every piece is there once, and the boards are cheaper."""
    family = _family(17, times=2)
    boards = Fullest(family, Steps(MUCH)).buy(MUCH, 7)
    laid = greedy(family, Steps(MUCH))

    assert boards is not None
    assert laid is not None
    assert _held(family, boards) == [kind.count for kind in family.kinds]
    price = sum(family.sorts[board[0]].price for board in boards)
    assert price < sum(layout.sort.price for layout in laid)


def test_nothing_is_bought_beyond_what_is_to_be_had() -> None:
    """With one board of each sort to be had, not all pieces can be cut, and no boards are returned."""
    family = _family(17, times=2)
    few = replace(family, sorts=tuple(replace(sort, most=1) for sort in family.sorts))
    assert Fullest(few, Steps(MUCH)).buy(MUCH, 7) is None


def test_what_would_take_too_long_is_given_up_early() -> None:
    """With leave for a fraction of the work, little more than a board's is done."""
    family = _family(17, times=2)
    whole, part = Steps(MUCH), Steps(MUCH)
    Fullest(family, whole).buy(MUCH, 7)
    assert Fullest(family, part).buy(whole.done // 20, 7) is None
    assert part.done < whole.done // 2
