"""What is too long to be carried is cut at the yard, by no more cuts than it makes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import (
    Board,
    PartItem,
    Problem,
    Rules,
    StockItem,
    cut_plan,
    cuts_in_order,
    solve,
    store_cuts,
)
from scantling.fault import Faulty
from scantling.plan import Fitter, read_plan
from scantling.shop import read_shop
from tests.cutting.checking import generated, solved
from tests.support.workshop import bench_data, shop_data

LEG = PartItem("leg", "pine", 4, 20, 4)
LONG, SHORT = StockItem("8ft", "pine", 96, 4, 500), StockItem("4ft", "pine", 48, 4, 400)


def problem(*stock: StockItem, **rules: int) -> Problem:
    """Return a problem of four legs of 20, with a kerf of 1."""
    return Problem("in", 1, 3, stock, (LEG,), Rules(**rules))


def after_first_cuts(board: Board, cuts: int) -> list[int]:
    """Return how long the panels are that so many first cuts leave, those aside that are thrown away."""
    assert board.cuts is not None
    panels = [board.cuts]
    for cut, _ in cuts_in_order(board.cuts)[:cuts]:
        (panel,) = [one for one in panels if one.cut is cut]
        panels.remove(panel)
        panels += [part for part in (panel.freed, panel.rest) if part is not None]
    used = [panel for panel in panels if panel.cut or panel.is_kept or panel.piece is not None]
    return [max(panel.length, panel.width) for panel in used]


def test_the_first_cuts_make_a_board_fit() -> None:
    """Without a limit as many as it takes; they come first in the order of cuts."""
    case = problem(LONG, longest_piece=50)
    (board,) = solve(case).boards
    assert max(after_first_cuts(board, len(store_cuts(board, case)))) <= 50


def test_with_one_cut_room_is_left_for_it() -> None:
    """Pieces end to end would need two cuts; moved apart in the middle, one will do."""
    case = problem(LONG, SHORT, longest_piece=50, first_cuts=1)
    answer = solve(case)
    assert answer.cost == 500
    assert max(after_first_cuts(answer.boards[0], 1)) <= 50


def test_without_cuts_only_what_fits_is_bought() -> None:
    """A yard that cuts nothing sells only what the car takes, and the bound says what is lost by it."""
    answer = solve(problem(LONG, SHORT, longest_piece=50, first_cuts=0))
    assert [board.stock for board in answer.boards] == ["4ft", "4ft"]
    assert (answer.cost, answer.bound, answer.proved) == (800, 500, False)


def test_where_nothing_can_be_carried_there_is_no_answer() -> None:
    """The fault names the stock and the limit."""
    with pytest.raises(Faulty, match="'8ft' is longer than the 50") as caught:
        solve(problem(LONG, longest_piece=50, first_cuts=0))
    assert caught.value.faults[0].code == "too-long-to-carry"


def test_a_part_too_long_to_be_carried_is_named() -> None:
    """No cut helps it."""
    with pytest.raises(Faulty, match="'leg' is 20 long; at most 19"):
        solve(problem(LONG, longest_piece=19))


@settings(max_examples=12, deadline=None)
@given(st.integers(0, 400), st.integers(75, 130), st.one_of(st.none(), st.integers(0, 3)))
def test_nothing_too_long_goes_home(seed: int, longest: int, cuts: int | None) -> None:
    """On every kind of problem; nor does the yard cut more often than it does, or anything get cheaper."""
    data = generated(seed) | {"longest_piece": longest * 64}
    if cuts is not None:
        data["first_cuts"] = cuts
    free = solve(Problem.from_data(generated(seed)), steps=8_000)
    try:
        answer = solved(data, steps=8_000)
    except Faulty as faulty:
        found = {fault.code for fault in faulty.faults}
    else:
        found = set()
    assert found <= {"too-long-to-carry", "not-enough"}
    if found:
        return
    case = Problem.from_data(data)
    assert answer.cost >= free.bound
    for board in answer.boards:
        made = len(store_cuts(board, case))
        assert cuts is None or made <= cuts
        assert max(after_first_cuts(board, made)) <= longest * 64


def test_a_plan_asks_its_store_for_no_more_cuts_than_it_makes() -> None:
    """With one cut a sheet, each sheet of the bench is parted into two that fit."""
    data = shop_data(rules={"longest piece": "60 in", "store cuts": "1"})
    plan = Fitter(read_plan(bench_data(), "bench"), read_shop(data))
    cutting = cut_plan(plan.fit(), plan.shop)
    assert cutting.order.problem.rules.first_cuts == 1
    for board in cutting.boards:
        assert len(store_cuts(board.raw, cutting.order.problem)) <= 1


def test_in_a_plan_a_part_longer_than_the_car_is_carried_anyhow() -> None:
    """Then as much else may be as long: there is no way around that part."""
    data = shop_data(rules={"longest piece": "20 in"})
    plan = Fitter(read_plan(bench_data(), "bench"), read_shop(data))
    fitted = plan.fit()
    longest = max(max(part.blank.along, part.blank.across) for part in fitted.parts)
    order = cut_plan(fitted, plan.shop).order
    assert order.length(order.problem.rules.longest_piece or 0) == longest


def test_the_answer_without_rules_is_the_answer_with_rules_that_nothing_breaks() -> None:
    """A car that takes everything changes nothing."""
    case = Problem.from_data(generated(3))
    wide = replace(case, rules=Rules(longest_piece=10**6, first_cuts=1))
    assert solve(case, steps=20_000) == solve(wide, steps=20_000)
