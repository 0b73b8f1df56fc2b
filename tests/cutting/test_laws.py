"""Laws that hold for any cutting problem."""

from __future__ import annotations

from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import cuts_in_order
from tests.cutting.checking import crosscut_problem, generated, scaled, shuffled, solved

SEEDS = st.integers(0, 2_000)


@settings(max_examples=25)
@given(SEEDS)
def test_the_same_problem_has_the_same_answer(seed: int) -> None:
    """Solving twice gives the same boards, piece for piece."""
    assert solved(generated(seed), steps=100_000) == solved(generated(seed), steps=100_000)


@settings(max_examples=25)
@given(SEEDS, st.integers(0, 99))
def test_the_order_of_the_input_changes_nothing(seed: int, mix: int) -> None:
    """Stock and parts in another order give the same answer."""
    data = generated(seed)
    assert solved(data, steps=100_000) == solved(shuffled(data, mix), steps=100_000)


@settings(max_examples=25)
@given(SEEDS, st.integers(2, 40))
def test_the_unit_changes_nothing(seed: int, times: int) -> None:
    """Counted in a smaller unit, every piece lies at the same place."""
    data = generated(seed)
    answer, finer = solved(data, steps=100_000), solved(scaled(data, times), steps=100_000)
    assert (answer.cost, answer.bound) == (finer.cost, finer.bound)

    for board, fine in zip(answer.boards, finer.boards, strict=True):
        assert [(p.part, p.x * times, p.y * times) for p in board.pieces] == [
            (p.part, p.x, p.y) for p in fine.pieces
        ]


RULES = {"least_rip_length": 768, "least_strip_width": 48, "keep_length": 768, "keep_width": 128}


@settings(max_examples=12)
@given(SEEDS, st.integers(2, 40), st.integers(0, 99))
def test_neither_unit_nor_order_changes_the_cuts(seed: int, times: int, mix: int) -> None:
    """With a shop's rules the same cuts are made in the same order and the same offcuts are kept."""
    data = generated(seed) | RULES
    answer = solved(data, steps=50_000)
    finer = solved(shuffled(scaled(data, times), mix), steps=50_000)
    for board, fine in zip(answer.boards, finer.boards, strict=True):
        assert board.cuts is not None
        assert fine.cuts is not None
        assert [
            (cut.number, cut.is_rip, cut.setting * times, panel.x * times, panel.y * times)
            for cut, panel in cuts_in_order(board.cuts)
        ] == [
            (cut.number, cut.is_rip, cut.setting, panel.x, panel.y) for cut, panel in cuts_in_order(fine.cuts)
        ]
        assert [(o.x * times, o.y * times) for o in board.offcuts] == [(o.x, o.y) for o in fine.offcuts]


@settings(max_examples=25)
@given(SEEDS, st.data())
def test_another_choice_of_stock_never_raises_a_proved_cost(seed: int, data: st.DataObject) -> None:
    """With one more kind of stock to choose from, the cost proved least is no higher."""
    full = generated(seed)
    left_out = data.draw(st.sampled_from(full["stock"]))
    fewer = dict(full, stock=[item for item in full["stock"] if item is not left_out])
    longest = max((item["length"], item["width"]) for item in fewer["stock"]) if fewer["stock"] else (0, 0)
    if any(part["length"] > longest[0] or part["width"] > longest[1] for part in full["parts"]):
        return
    more, less = solved(full), solved(fewer)
    assert more.bound <= less.cost
    if more.proved:
        assert more.cost <= less.cost


def _least_by_trying(lengths: list[int], counts: list[int], stock: list[tuple[int, int]], kerf: int) -> int:
    """Return the least cost, found by trying every set of parts on every board."""
    known: dict[tuple[int, ...], int] = {(0,) * len(counts): 0}

    def least(left: tuple[int, ...]) -> int:
        if left not in known:
            first = next(i for i, n in enumerate(left) if n)
            best = 10**9
            for taken in product(*(range(n + 1) for n in left)):
                used = sum(n * (length + kerf) for n, length in zip(taken, lengths, strict=True)) - kerf
                prices = [price for length, price in stock if used <= length]
                if taken[first] and prices:
                    rest = tuple(a - b for a, b in zip(left, taken, strict=True))
                    best = min(best, min(prices) + least(rest))
            known[left] = best
        return known[left]

    return least(tuple(counts))


@settings(max_examples=60)
@given(
    st.lists(st.integers(5, 60), min_size=1, max_size=4, unique=True),
    st.lists(st.tuples(st.integers(60, 130), st.integers(1, 400)), min_size=1, max_size=3),
    st.integers(0, 3),
    st.data(),
)
def test_small_problems_have_the_cost_that_trying_everything_finds(
    lengths: list[int], stock: list[tuple[int, int]], kerf: int, data: st.DataObject
) -> None:
    """Crosscutting a few parts costs what an exhaustive search says, and is proved."""
    counts = [data.draw(st.integers(1, 3)) for _ in lengths]
    answer = solved(crosscut_problem(lengths, counts, stock, kerf))
    assert (answer.cost, answer.proved) == (_least_by_trying(lengths, counts, stock, kerf), True)


@settings(max_examples=40)
@given(
    st.lists(st.integers(5, 60), min_size=1, max_size=5, unique=True),
    st.lists(st.tuples(st.integers(60, 130), st.integers(1, 400)), min_size=2, max_size=4),
    st.integers(0, 3),
    st.data(),
)
def test_another_length_on_sale_never_raises_the_cost_of_crosscutting(
    lengths: list[int], stock: list[tuple[int, int]], kerf: int, data: st.DataObject
) -> None:
    """A few parts crosscut are always proved, so one more length to choose from cannot cost more."""
    counts = [data.draw(st.integers(1, 4)) for _ in lengths]
    more, less = (solved(crosscut_problem(lengths, counts, some, kerf)) for some in (stock, stock[:-1]))
    assert more.proved
    assert more.cost <= less.cost
