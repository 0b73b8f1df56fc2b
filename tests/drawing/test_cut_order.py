"""The cuts of a diagram are the cutting plan's own: made in order, they leave its pieces and offcuts."""

from __future__ import annotations

from fractions import Fraction

import pytest

from scantling.cutting import PartItem, Problem, Rules, StockItem, cut_plan, solve
from scantling.cutting.reading import read_problem
from scantling.drawing import cut_order
from scantling.drawing.cut_order import steps_told
from scantling.measure import Length
from scantling.plan import USUAL, Choice, offered_choices
from scantling.source import load_plan
from tests.checks.demo import PLANS, SLUGS, shop
from tests.tools import make_problems


def units(number):
    """Return so many units, an inch each, as a length."""
    return Length(number)


def order(board, kerf, letters=None):
    """Return the cuts of a board of an answer."""
    letters = letters or ["ABCDEFGH"[number % 8] for number in range(len(board.pieces))]
    return cut_order(board.cuts, kerf, letters, units, lambda value: f"{value.inches}")


def take_apart(length, width, kerf, cuts):
    """Return the rectangles that are left after sawing; a cut that goes through no whole one fails."""
    rects = [(0, 0, length, width)]
    for cut in cuts:
        x1, y1, x2, y2 = (Fraction(value) for value in (cut.x1, cut.y1, cut.x2, cut.y2))
        for rect in rects:
            left, low, right, top = rect
            if x1 == x2 and left < x1 < right and (low, top) == (y1, y2):
                half = min(kerf / 2, x1 - left, right - x1)
                parts = [(left, low, x1 - half, top), (x1 + half, low, right, top)]
                break
            if y1 == y2 and low < y1 < top and (left, right) == (x1, x2):
                half = min(kerf / 2, y1 - low, top - y1)
                parts = [(left, low, right, y1 - half), (left, y1 + half, right, top)]
                break
        else:
            pytest.fail(f"cut {cut.number} goes through no whole piece")
        rects.remove(rect)
        rects += [part for part in parts if part[2] > part[0] and part[3] > part[1]]
    return rects


def corners(thing):
    """Return the ends of a piece or an offcut."""
    return thing.x, thing.y, thing.x + thing.length, thing.y + thing.width


@pytest.mark.parametrize("kind", ["boards", "sheets", "rips"])
def test_sawing_as_drawn_leaves_the_pieces_and_the_offcuts(kind):
    """Beside them, only the rough edges are left."""
    for seed in range(12):
        problem = read_problem(make_problems.problem(seed, kind))
        stock = {one.id: one for one in problem.stock}
        for board in solve(problem, steps=20_000).boards:
            whole = stock[board.stock]
            cuts = order(board, problem.kerf)
            left = take_apart(whole.length, whole.width, Fraction(problem.kerf), cuts)
            wanted = [*map(corners, (*board.pieces, *board.offcuts))]
            assert all(left.count(one) == wanted.count(one) for one in wanted)
            trims = [one for one in left if one not in wanted]
            assert all(x2 < whole.trim_ends or y2 < whole.trim_edges for _, _, x2, y2 in trims)
            assert [cut.number for cut in cuts] == list(range(1, len(cuts) + 1))


def some_sizes(plan):
    """Return the usual size, everything at its least and at its most, and what is offered."""
    least = Choice({name: size.least for name, size in plan.sizes.items()}, {})
    most = Choice({name: size.most for name, size in plan.sizes.items()}, {})
    return [USUAL, least, most, *(offered.choice for offered in offered_choices(plan))]


@pytest.mark.parametrize("slug", SLUGS)
def test_sawing_as_drawn_leaves_the_blanks_of_every_demo_plan(slug):
    """So it is at the usual size, the least, the most and each offered; no waste is worth keeping."""
    fitter = load_plan(PLANS / slug / "plan.md", shop()).fitter
    for choice in some_sizes(fitter.plan):
        fitted, _ = fitter.try_fit(choice)
        if fitted is None:
            continue
        cutting = cut_plan(fitted, shop(), steps=20_000)
        problem = cutting.order.problem
        for board in cutting.boards:
            raw = board.raw
            cuts = order(raw, problem.kerf, ["A"] * len(raw.pieces))
            left = take_apart(raw.cuts.length, raw.cuts.width, Fraction(problem.kerf), cuts)
            wanted = [*map(corners, raw.pieces), *map(corners, raw.offcuts)]
            assert all(left.count(one) == wanted.count(one) for one in wanted)

            waste = [one for one in left if one not in wanted]
            rules = problem.rules
            assert not any(
                max(right - x, top - y) >= rules.keep_length and min(right - x, top - y) >= rules.keep_width
                for x, y, right, top in waste
            )


def solved(*parts, rules=None, width=11, length=96):
    """Return the only board of an answer; sizes are in inches, the kerf is one."""
    stock = StockItem("board", "pine", length, width, 1000)
    problem = Problem("in", 1, 3, (stock,), parts, rules or Rules(keep_length=6, keep_width=2))
    (board,) = solve(problem).boards
    return board


def test_the_list_says_setting_what_falls_off_and_what_stays():
    """Cuts with one setting stand together, and settings are those of fence and stop."""
    board = solved(PartItem("leg", "pine", 3, 20, 11), PartItem("rail", "pine", 1, 15, 11))

    assert steps_told(order(board, 1, list("AAAB"))) == [
        ("1\N{EN DASH}3", "crosscut at 20: A ×3 off, leaves B"),
        ("4", "crosscut at 15: B off, leaves offcut"),
    ]


def test_ends_and_edges_are_trimmed_first():
    """The rough end and the rough edge are cut off; the end goes first, since that leaves a larger offcut."""
    stock = StockItem("sheet", "ply", 96, 48, 1000, trim_ends=2, trim_edges=2)
    problem = Problem("in", 1, 3, (stock,), (PartItem("top", "ply", 1, 60, 40),), Rules(keep_width=4))
    (board,) = solve(problem).boards

    assert [cut.setting for cut in order(board, 1)] == [
        "trim the end square",
        "crosscut at 60",
        "trim the edge straight",
        "rip, fence at 40",
    ]


def test_an_unsafe_cut_carries_its_warning():
    """A strip narrower than is safe to rip is told at its cut."""
    rules = Rules(least_strip_width=2)
    board = solved(PartItem("slat", "pine", 1, 96, 1), rules=rules)

    assert [bool(cut.warning) for cut in order(board, 1)] == [True]
