"""Patterns that hold no more of a kind than there are."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from typing import TypeVar

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import Problem
from scantling.cutting.family import Family, families
from scantling.cutting.holding import TrueBoards
from scantling.cutting.steps import Steps
from tests.cutting.checking import generated, solved

Thing = TypeVar("Thing")
LENGTH, WIDTH = 20, 10
PARTS = st.lists(
    st.tuples(st.integers(2, 19), st.integers(2, 9), st.integers(1, 2), st.booleans(), st.integers(1, 30)),
    min_size=1,
    max_size=3,
)


def _family(parts: Sequence[tuple[int, int, int, bool, int]]) -> Family:
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
            for number, (length, width, count, may_turn, _) in enumerate(parts)
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


def _best_by_trying(family: Family, worths: Sequence[int], *, across: bool) -> int:
    """Return the most that a board can hold of the parts there are, found by trying every choice."""
    scale = family.scale
    long, wide = (WIDTH // scale, LENGTH // scale) if across else (LENGTH // scale, WIDTH // scale)
    best = 0
    for taken in product(*(range(kind.count + 1) for kind in family.kinds)):
        worth = sum(n * w for n, w in zip(taken, worths, strict=True))
        pieces = [kind for kind, n in zip(family.kinds, taken, strict=True) for _ in range(n)]
        if worth <= best:
            continue
        for turns in product(*((False, True) if kind.may_turn else (False,) for kind in pieces)):
            lying = [
                (kind.length, kind.width) if across == turned else (kind.width, kind.length)
                for kind, turned in zip(pieces, turns, strict=True)
            ]
            if _fits(lying, long, wide):
                best = worth
                break
    return best


@settings(max_examples=60, deadline=None)
@given(PARTS, st.sampled_from([0, 1]))
def test_the_best_board_is_the_one_found_by_trying_every_choice(
    parts: list[tuple[int, int, int, bool, int]], number: int
) -> None:
    """No board holds more than there are, and none that is possible is worth more."""
    family = _family(parts)
    worths = [part[4] for part in parts[: len(family.kinds)]]
    boards = TrueBoards(family, Steps(10**9))
    room = (WIDTH // family.scale, LENGTH // family.scale)
    (found,) = boards.boards(number, worths, [room if number else room[::-1]], [0])

    assert (0 if found is None else found[0]) == _best_by_trying(family, worths, across=bool(number))
    if found is not None:
        assert all(n <= kind.count for n, kind in zip(found[1], family.kinds, strict=True))
        assert found[0] == sum(n * w for n, w in zip(found[1], worths, strict=True))


@pytest.mark.parametrize("seed", [31, 40, 97, 115, 260])
def test_what_only_too_many_of_a_part_could_fill_is_ruled_out(seed: int) -> None:
    """Cheaper boards that would do if parts could be taken twice are ruled out, and the answer is proved."""
    assert solved(generated(seed)).proved
