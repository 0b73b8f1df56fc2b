"""Trying out all that the boards of a list can hold."""

from __future__ import annotations

import pytest

from scantling.cutting import Problem
from scantling.cutting.exhaustion import Exhaustion
from scantling.cutting.family import Family, families
from scantling.cutting.holding import PanelPatterns
from scantling.cutting.needs import Need
from scantling.cutting.relaxation import Relaxation, Unfinished
from scantling.cutting.steps import Steps
from scantling.cutting.tightness import tight_need
from tests.cutting.checking import generated, solved

NEVER = 10**12


def _family(seed: int) -> Family:
    (family,) = families(Problem.from_data(generated(seed)))
    return family


def _tight(family: Family, amounts: tuple[int, ...], steps: Steps) -> Need:
    need = tight_need(Relaxation(PanelPatterns(family, steps), steps), amounts, NEVER)
    assert need is not None
    return need


@pytest.mark.parametrize(("seed", "amounts"), [(110, (1, 0, 1)), (2, (0, 1, 2)), (10, (0, 1, 2, 0, 0))])
def test_boards_that_fractions_of_patterns_could_use_are_ruled_out(
    seed: int, amounts: tuple[int, ...]
) -> None:
    """The worths of the list exclude nothing, but no choice of whole boards holds all pieces."""
    family, steps = _family(seed), Steps(NEVER)
    need = _tight(family, amounts, steps)
    assert need.slack(amounts) >= 0
    assert Exhaustion(family, amounts, [need], steps).run(NEVER) is None


@pytest.mark.parametrize(("seed", "amounts"), [(122, (1, 0, 1)), (107, (0, 1, 1))])
def test_boards_that_can_be_filled_are_filled(seed: int, amounts: tuple[int, ...]) -> None:
    """What the boards are to hold is all that is wanted, and no board is used that is not on the list."""
    family, steps = _family(seed), Steps(NEVER)
    chosen = Exhaustion(family, amounts, [_tight(family, amounts, steps)], steps).run(NEVER)
    assert chosen is not None
    assert all(sum(sort == j for sort, _ in chosen) <= amount for j, amount in enumerate(amounts))
    held = [sum(n) for n in zip(*[counts for _, (counts, _) in chosen], strict=True)]
    assert all(a >= kind.count for a, kind in zip(held, family.kinds, strict=True))


def test_what_was_broken_off_is_taken_up_again() -> None:
    """With little leave again and again, the end is the same as with much at once."""
    family, steps, amounts = _family(2), Steps(NEVER), (0, 1, 2)
    exhaustion = Exhaustion(family, amounts, [_tight(family, amounts, steps)], steps)
    broken = 0
    while True:
        try:
            found = exhaustion.run(steps.done + 40_000)
            break
        except Unfinished:
            broken += 1
            assert broken < 20
    assert broken
    assert found is None


def test_no_need_leaves_a_list_less_room() -> None:
    """The worths that leave least room leave less than areas do, and never less than is wasted."""
    family, steps, amounts = _family(122), Steps(NEVER), (1, 0, 1)
    need = _tight(family, amounts, steps)
    area = sum(kind.length * kind.width * kind.count for kind in family.kinds)
    room = sum(a * sort.length * sort.width for a, sort in zip(amounts, family.sorts, strict=True))
    assert 0 <= need.slack(amounts) / need.total < room / area - 1


def test_what_whole_boards_leave_over_is_tried_out_too() -> None:
    """Where most boards are taken from fractions of patterns, some kinds are not wanted any more."""
    data = generated(1)
    data["parts"] = [{**part, "count": part["count"] * 4} for part in data["parts"]]
    answer = solved(data)
    assert answer.cost <= 4 * solved(generated(1)).cost
