"""All that a board can hold, when few pieces are wanted."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from typing import TypeVar

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import Problem
from scantling.cutting.every_board import every_board
from scantling.cutting.family import Family, families
from scantling.cutting.steps import Steps
from tests.cutting.checking import generated, solved

Thing = TypeVar("Thing")
LENGTH, WIDTH = 20, 10
PARTS = st.lists(
    st.tuples(st.integers(2, 19), st.integers(2, 9), st.integers(1, 2), st.booleans()),
    min_size=1,
    max_size=3,
)


def _family(parts: Sequence[tuple[int, int, int, bool]]) -> Family:
    data = {
        "unit": "in",
        "kerf": 0,
        "stages": 3,
        "stock": [{"id": "s", "family": "f", "length": LENGTH, "width": WIDTH, "price": 100}],
        "parts": [
            {
                "id": f"p{number}",
                "from": "f",
                "count": count,
                "length": max(length, width),
                "width": min(length, width),
                "grain": "any" if may_turn else "length",
            }
            for number, (length, width, count, may_turn) in enumerate(parts)
        ],
    }
    return families(Problem.from_data(data))[0]


def _shared_out(things: Sequence[Thing]) -> Iterator[list[list[Thing]]]:
    """Yield every way to share things out among heaps."""
    if not things:
        yield []
        return
    for heaps in _shared_out(things[1:]):
        yield [[things[0]], *heaps]
        for place, heap in enumerate(heaps):
            yield [*heaps[:place], [things[0], *heap], *heaps[place + 1 :]]


def _fits(rectangles: list[tuple[int, int]], long: int, wide: int) -> bool:
    """Return whether rectangles can be cut in three stages, found by trying every sharing-out."""
    least: dict[tuple[tuple[int, int], ...], int] = {}

    def section(pieces: list[tuple[int, int]]) -> int:
        key = tuple(sorted(pieces))
        if key not in least:
            least[key] = min(
                (
                    max(sum(piece[0] for piece in strip) for strip in strips)
                    for strips in _shared_out(pieces)
                    if sum(max(piece[1] for piece in strip) for strip in strips) <= wide
                ),
                default=long + 1,
            )
        return least[key]

    return any(sum(map(section, sections)) <= long for sections in _shared_out(rectangles))


def _held_by_trying(family: Family) -> set[tuple[int, ...]]:
    """Return all that a board can hold of the parts there are, found by trying every choice."""
    held = set()
    sort = family.sorts[0]
    for taken in product(*(range(kind.count + 1) for kind in family.kinds)):
        pieces = [kind for kind, n in zip(family.kinds, taken, strict=True) for _ in range(n)]
        for turns in product(*((False, True) if kind.may_turn else (False,) for kind in pieces)):
            lying = [
                (kind.width, kind.length) if turned else (kind.length, kind.width)
                for kind, turned in zip(pieces, turns, strict=True)
            ]
            if _fits(lying, sort.length, sort.width) or _fits(
                [one[::-1] for one in lying], sort.width, sort.length
            ):
                held.add(taken)
                break
    return held


@settings(max_examples=15, deadline=None)
@given(PARTS, st.integers(0, 150))
def test_every_board_is_found(parts: list[tuple[int, int, int, bool]], least: int) -> None:
    """What is found is all that a board can hold of so much area, without what another board holds too."""
    family = _family(parts)
    areas = [kind.length * kind.width for kind in family.kinds]
    counts = [kind.count for kind in family.kinds]
    found = {held for held, _ in every_board(family, counts, 0, areas, least, Steps(10**9), 10**9)}

    large = {
        taken
        for taken in _held_by_trying(family)
        if sum(n * area for n, area in zip(taken, areas, strict=True)) >= max(1, least)
    }
    assert found == {one for one in large if not any(_is_less(one, other) for other in large)}


def _is_less(one: tuple[int, ...], other: tuple[int, ...]) -> bool:
    return one != other and all(a <= b for a, b in zip(one, other, strict=True))


@pytest.mark.parametrize("seed", [13, 25, 31, 97, 115, 260])
def test_what_fractions_of_boards_could_do_is_ruled_out_by_trying_everything(seed: int) -> None:
    """With few pieces, cheaper boards that only fractions could fill are ruled out; the answer is proved."""
    assert solved(generated(seed)).proved
