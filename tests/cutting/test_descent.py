"""Many pieces from one length: good patterns, fractions of boards, and whole boards from them."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting.cover import Cover
from scantling.cutting.descent import Descent
from scantling.cutting.lengths import Lengths
from scantling.cutting.listed import worthy_patterns
from scantling.cutting.steps import Chance, Steps
from scantling.cutting.tabled import good_patterns

LONG = 10**9


def _lengths(room: int, parts: list[tuple[int, int]]) -> Lengths:
    parts = sorted(parts, reverse=True)
    counts = tuple(count for _, count in parts)
    return Lengths(tuple(n for n, _ in parts), counts, (room,), (1,), (sum(counts),), (False,), (0,))


def _alone(lengths: Lengths) -> list[tuple[int, ...]]:
    """Return the patterns of one piece each."""
    size = len(lengths.wanted)
    return [tuple(int(at == kind) for at in range(size)) for kind in range(size)]


@settings(max_examples=60)
@given(
    st.dictionaries(
        st.integers(1, 30), st.tuples(st.integers(1, 3), st.integers(1, 50)), min_size=1, max_size=5
    ),
    st.integers(30, 60),
)
def test_the_first_pattern_is_the_best_and_all_of_them_fit(
    kinds: dict[int, tuple[int, int]], room: int
) -> None:
    """Trying every pattern finds none worth more; each is worth what is said."""
    sizes, most = list(kinds), [count for count, _ in kinds.values()]
    worths = [float(worth) for _, worth in kinds.values()]
    every = product(*[range(count + 1) for count in most])
    best = max(
        sum(n * w for n, w in zip(counts, worths, strict=True))
        for counts in every
        if sum(n * size for n, size in zip(counts, sizes, strict=True)) <= room
    )
    found = good_patterns(sizes, most, worths, room, 5, Steps(LONG))
    assert found[0][0] == best
    for worth, counts in found:
        assert sum(n * size for n, size in zip(counts, sizes, strict=True)) <= room
        assert all(n <= count for n, count in zip(counts, most, strict=True))
        assert sum(n * w for n, w in zip(counts, worths, strict=True)) == worth


@settings(max_examples=200)
@given(
    st.dictionaries(
        st.integers(5, 60), st.tuples(st.integers(1, 3), st.integers(-9, 9)), min_size=1, max_size=8
    ),
    st.integers(60, 110),
)
def test_a_list_of_entries_finds_what_a_table_finds(kinds: dict[int, tuple[int, int]], room: int) -> None:
    """The best pattern is worth as much either way; each fits; none worth the least or less is named."""
    sizes, most = list(kinds), [count for count, _ in kinds.values()]
    worths = [(size + more / 4) / room for size, (_, more) in kinds.items()]
    best = good_patterns(sizes, most, worths, room, 1, Steps(LONG))[0][0]
    listed = worthy_patterns(sizes, most, worths, room, 9, 0.97, Steps(LONG))
    if best > 0.98:
        assert abs(listed[0][0] - best) < 1e-9
    for worth, counts in listed:
        assert 0.97 < worth < best + 1e-9
        assert sum(n * size for n, size in zip(counts, sizes, strict=True)) <= room
        assert all(n <= count for n, count in zip(counts, most, strict=True))
        assert abs(sum(n * w for n, w in zip(counts, worths, strict=True)) - worth) < 1e-9


def test_fractions_of_boards_prove_a_worked_example() -> None:
    """Chvátal (Linear Programming, 1983, ch. 13; from memory): 452.25 rolls, in fractions."""
    lengths = _lengths(100, [(45, 97), (36, 610), (31, 395), (14, 211)])
    cover = Cover(lengths, lengths.counts, _alone(lengths), Steps(LONG))
    assert not cover.solve(452, LONG)
    assert 452 < cover.bound <= 452.25 + 1e-6
    assert cover.solve(453, LONG)
    assert 452.25 - 1e-6 <= cover.value() <= 453 + 1e-6


def _triplets(boards: int, seed: int) -> list[int]:
    """Return pieces that fill boards of 1,000 three by three, and only so (after Falkenauer, 1996)."""
    chance, pieces = Chance(seed), []
    for _ in range(boards):
        one = 380 + chance.below(111)
        two = 250 + chance.below((1000 - one) // 2 - 249)
        pieces += [one, two, 1000 - one - two]
    return pieces


@pytest.mark.parametrize("seed", [1, 2, 3, 4])
def test_boards_that_three_pieces_fill_just_so_are_found(seed: int) -> None:
    """Twenty boards hold sixty pieces without any waste, and hold each piece once."""
    pieces = _triplets(20, seed)
    lengths = _lengths(1000, [(length, pieces.count(length)) for length in set(pieces)])
    steps = Steps(LONG)
    root = Cover(lengths, lengths.counts, _alone(lengths), steps)
    assert root.solve(20, LONG)
    descent, chance, found = Descent(lengths, root, steps), Chance(), None
    for _ in range(20):
        found = descent.run(20, LONG)
        if found is not None:
            break
        descent.stir(chance)
    assert found is not None
    assert len(found) == 20
    assert tuple(map(sum, zip(*found, strict=True))) == lengths.counts
    for pattern in found:
        assert sum(n * length for n, length in zip(pattern, lengths.wanted, strict=True)) == 1000
