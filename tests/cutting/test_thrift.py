"""Much to cut from sheets: an answer made cheaper, within the work allowed."""

from __future__ import annotations

from typing import Any

import pytest

from scantling.cutting import Problem
from scantling.cutting.family import Family, families
from scantling.cutting.greedy import greedy
from scantling.cutting.layout import Layout
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.thrift import Thrift
from tests.cutting.checking import solved

STOCK = [(100, 1000), (60, 400)]


def _problem(pieces: int, sizes: int, seed: int) -> dict[str, Any]:
    """Return different parts and square sheets to cut them from."""
    chance = Chance(seed)
    parts = [(15 + chance.below(45), 15 + chance.below(45)) for _ in range(pieces)]
    return {
        "unit": "1",
        "kerf": 0,
        "stages": 3,
        "stock": [
            {"id": f"s{n}", "family": "f", "length": n, "width": n, "price": p} for n, p in STOCK[:sizes]
        ],
        "parts": [
            {"id": f"p{i}", "from": "f", "count": 1, "length": length, "width": width, "grain": "length"}
            for i, (length, width) in enumerate(parts)
        ],
    }


def _begun(data: dict[str, Any]) -> tuple[Family, list[Layout]]:
    """Return the family and an answer made by filling board after board."""
    family = families(Problem.from_data(data))[0]
    answer = greedy(family, Steps(1 << 30))
    assert answer is not None
    return family, answer


def _cost(layouts: list[Layout]) -> int:
    return sum(layout.sort.price for layout in layouts)


@pytest.mark.parametrize("sizes", [1, 2])
def test_an_answer_becomes_cheaper(sizes: int) -> None:
    """Every piece still has its place, and the boards cost less than those filled one after another."""
    family, before = _begun(_problem(100, sizes, 1))
    steps = Steps(200_000)

    after = Thrift(family, before, steps, Chance()).run(0, steps.most)

    held = [sum(one) for one in zip(*(layout.counts(len(family.kinds)) for layout in after), strict=True)]
    spent, saved = _cost(after), _cost(before) - _cost(after)
    assert held == [kind.count for kind in family.kinds]
    assert spent > 0
    assert saved > 0


def test_the_work_stops_at_its_limit() -> None:
    """A turn that was begun may pass what is allowed, and no more; nothing is lost by stopping."""
    family, before = _begun(_problem(300, 2, 5))
    steps = Steps(5_000)

    after = Thrift(family, before, steps, Chance()).run(0, steps.most)

    saved = _cost(before) - _cost(after)
    assert steps.done < 10_000
    assert saved >= 0


def test_no_work_is_done_where_the_answer_is_the_least() -> None:
    """What costs no more than the bound is left as it is."""
    family, before = _begun(_problem(40, 1, 6))
    steps = Steps(100_000)

    after = Thrift(family, before, steps, Chance()).run(_cost(before), steps.most)

    assert steps.done == 0
    assert len(after) == len(before)


def test_many_parts_from_several_sheets_are_cut_near_their_bound() -> None:
    """A hundred and fifty different parts cost less than a tenth more than what is proved."""
    answer = solved(_problem(150, 2, 7), steps=600_000)

    assert answer.bound <= answer.cost < answer.bound * 1.1
