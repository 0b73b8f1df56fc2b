"""The choice among equally cheap answers: the offcut most worth keeping, then the fewest settings."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import Answer, Problem, settings_of, solve
from scantling.cutting.choosing import Chooser, aims_of
from scantling.cutting.family import families
from scantling.cutting.shopping import solve_family
from scantling.cutting.steps import Steps
from tests.cutting.checking import crosscut_problem, generated, solved

Pattern = tuple[int, ...]
KEEP = 12


def every_answer(data: dict[str, Any]) -> Iterator[list[tuple[int, Pattern]]]:
    """Yield every way to crosscut the parts of a small problem, boards as their length and what they hold."""
    parts, kerf = data["parts"], data["kerf"]

    def fill(left: Pattern) -> Iterator[list[tuple[int, Pattern]]]:
        first = next((i for i, n in enumerate(left) if n), None)
        if first is None:
            yield []
            return
        for taken in product(*(range(n + 1) for n in left)):
            used = sum(n * (part["length"] + kerf) for n, part in zip(taken, parts, strict=True)) - kerf
            if taken[first]:
                rest = tuple(a - b for a, b in zip(left, taken, strict=True))
                for number, item in enumerate(data["stock"]):
                    if used <= item["length"]:
                        for others in fill(rest):
                            yield [(number, taken), *others]

    return fill(tuple(part["count"] for part in parts))


def measures(boards: list[tuple[int, Pattern]], data: dict[str, Any]) -> tuple[int, int, int, int]:
    """Return cost, boards, the longest kept offcut below nothing, and settings; the less the better."""
    longest, keep = 0, data.get("keep_length", 0)
    stops = 0
    for number, pattern in boards:
        used = sum(
            n * (part["length"] + data["kerf"]) for n, part in zip(pattern, data["parts"], strict=True)
        )
        left = data["stock"][number]["length"] - used
        if left >= max(1, keep):
            longest = max(longest, left)
    for number, pattern in set(boards):
        used = sum(
            n * (part["length"] + data["kerf"]) for n, part in zip(pattern, data["parts"], strict=True)
        )
        ends_with_a_part = used - data["kerf"] == data["stock"][number]["length"]
        stops += len([n for n in pattern if n]) - (ends_with_a_part and 1 in pattern)
    return sum(data["stock"][number]["price"] for number, _ in boards), len(boards), -longest, stops


def of_answer(answer: Answer, data: dict[str, Any]) -> tuple[int, int, int, int]:
    """Return the same of an answer, its offcuts and settings as its trees of cuts have them."""
    longest = max((offcut.length for board in answer.boards for offcut in board.offcuts), default=0)
    return answer.cost, len(answer.boards), -longest, settings_of(answer.boards)


LENGTHS = st.lists(st.integers(8, 45), min_size=1, max_size=3, unique=True)
STOCK = st.lists(st.tuples(st.integers(45, 100), st.sampled_from((5, 6, 8))), min_size=1, max_size=2)


@settings(max_examples=80, deadline=None)
@given(LENGTHS, STOCK, st.integers(0, 2), st.sampled_from((0, KEEP)), st.data())
def test_no_way_of_crosscutting_a_few_parts_leaves_a_better_offcut(
    lengths: list[int], stock: list[tuple[int, int]], kerf: int, keep: int, data: st.DataObject
) -> None:
    """Every way is tried: none costs less, needs fewer boards, or leaves a longer offcut that is kept."""
    counts = [data.draw(st.integers(1, 2)) for _ in lengths]
    case = crosscut_problem(lengths, counts, stock, kerf, keep_length=keep)
    best = min(measures(boards, case) for boards in every_answer(case))
    assert of_answer(solved(case), case)[:3] == best[:3]


@settings(max_examples=60, deadline=None)
@given(LENGTHS, st.tuples(st.integers(60, 110), st.just(7)), st.integers(0, 2), st.data())
def test_of_two_boards_none_are_set_less_often(
    lengths: list[int], stock: tuple[int, int], kerf: int, data: st.DataObject
) -> None:
    """Where two boards of a length are cut, no equally good way has fewer settings of the stop."""
    counts = [data.draw(st.integers(1, 3)) for _ in lengths]
    case = crosscut_problem(lengths, counts, [stock], kerf)
    answer = solved(case)
    if len(answer.boards) <= 2:
        best = min(
            measures(boards, case) for boards in every_answer(case) if len(boards) == len(answer.boards)
        )
        assert of_answer(answer, case) == best


def test_what_is_left_over_lies_together() -> None:
    """Four of 24 in fill one board of 96 in, so that the other is left 56 in long in one piece."""
    answer = solved(crosscut_problem([24, 20], [4, 2], [(96, 5)], 0))
    assert [offcut.length for board in answer.boards for offcut in board.offcuts] == [56]


def test_too_short_an_offcut_is_worth_nothing() -> None:
    """Offcuts shorter than the shop keeps do not count: then the settings decide."""
    case = crosscut_problem([40, 30, 20], [2, 2, 2], [(96, 5)], 0, keep_length=80)
    assert of_answer(solved(case), case) == min(measures(boards, case) for boards in every_answer(case))


@pytest.mark.parametrize("first", range(0, 45, 9))
def test_the_choice_worsens_nothing(first: int) -> None:
    """On sheets, rips and boards: as cheap, as few pieces of stock, and no aim worse than before."""
    for seed in range(first, first + 9):
        given_problem = Problem.from_data(generated(seed))
        for family in families(given_problem):
            layouts, _ = solve_family(family, Steps(50_000))
            chooser = Chooser(family, given_problem)
            before, after = chooser.placed(layouts), chooser.boards(layouts)
            assert aims_of(after, given_problem) <= aims_of(before, given_problem)


def test_the_choice_helps() -> None:
    """Over some sheets it leaves larger offcuts: by a fifth at least, together."""
    before = after = 0
    for seed in range(2, 40, 3):
        given_problem = Problem.from_data(generated(seed))
        (family,) = families(given_problem)
        layouts, _ = solve_family(family, Steps(50_000))
        chooser = Chooser(family, given_problem)
        before -= aims_of(chooser.placed(layouts), given_problem)[4]
        after -= aims_of(chooser.boards(layouts), given_problem)[4]
    assert after * 5 > before * 6


def test_an_offcut_that_can_be_kept_comes_before_few_settings() -> None:
    """The aims stand in their order: a longer offcut is worth another setting."""
    case = crosscut_problem([50, 30, 10], [1, 2, 2], [(100, 5)], 0, keep_length=KEEP)
    assert of_answer(solved(case), case) == min(measures(boards, case) for boards in every_answer(case))


def test_solving_counts_no_boards_that_hold_nothing() -> None:
    """However parts are shared out, each board that is bought is used."""
    for seed in range(0, 30, 3):
        assert all(board.pieces for board in solve(Problem.from_data(generated(seed)), steps=50_000).boards)
