"""The tree of cuts: it frees just the pieces and offcuts, in so many stages, and as safely as can be."""

from __future__ import annotations

import random
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.cutting import Panel, PartItem, Piece, Problem, Rules, StockItem, cuts_in_order, replay, solve
from scantling.cutting.sawing import NARROW, SHORT, Saw
from tests.cutting.checking import generated

Rect = tuple[int, int, int, int]
KERF = 1
SAFE = Rules(least_rip_length=12, least_strip_width=3, keep_length=8, keep_width=3)


def inner(panel: Panel | None) -> Iterator[Panel]:
    """Yield every panel that is cut."""
    if panel is not None and panel.cut is not None:
        yield panel
        yield from inner(panel.freed)
        yield from inner(panel.rest)


def pieces_of(panel: Panel | None) -> list[int]:
    """Return the pieces that a panel holds."""
    if panel is None:
        return []
    if panel.cut is None:
        return [] if panel.piece is None else [panel.piece]
    return [*pieces_of(panel.freed), *pieces_of(panel.rest)]


def stages(panel: Panel | None, last: bool | None = None) -> int:
    """Return how often the direction of cuts changes until only lone pieces are left."""
    if panel is None or panel.cut is None or len(pieces_of(panel)) < 2:
        return 0
    deeper = max(stages(panel.freed, panel.cut.is_rip), stages(panel.rest, panel.cut.is_rip))
    return deeper + (panel.cut.is_rip != last)


@pytest.mark.parametrize("shape", range(3))
def test_carrying_out_the_tree_gives_just_the_pieces_and_the_offcuts(shape: int) -> None:
    """On boards, rips and sheets, with the rules of a shop; in no more stages than the problem allows."""
    rules = Rules(least_rip_length=768, least_strip_width=48, keep_length=768, keep_width=128)
    for seed in range(shape, 60, 3):
        problem = replace(Problem.from_data(generated(seed)), rules=rules)
        for board in solve(problem, steps=30_000).boards:
            assert board.cuts is not None
            left = replay(board.cuts, problem.kerf)
            made = {p.piece: (p.x, p.y, p.length, p.width) for p in left if p.piece is not None}
            assert made == {n: (p.x, p.y, p.length, p.width) for n, p in enumerate(board.pieces)}
            kept = sorted((p.x, p.y, p.length, p.width) for p in left if p.is_kept)
            assert kept == sorted((o.x, o.y, o.length, o.width) for o in board.offcuts)
            assert stages(board.cuts) <= problem.stages


@pytest.mark.parametrize("shape", range(3))
def test_each_cut_that_is_not_safe_is_warned_of_and_no_other(shape: int) -> None:
    """A rip of a short piece, or of a narrow strip that is wanted, carries its warning."""
    rules = Rules(least_rip_length=1200, least_strip_width=96)
    for seed in range(shape, 45, 3):
        problem = replace(Problem.from_data(generated(seed)), rules=rules)
        for board in solve(problem, steps=30_000).boards:
            for panel in inner(board.cuts):
                assert panel.cut is not None
                narrow = panel.freed is not None and panel.freed.width < 96 and pieces_of(panel.freed)
                expected = SHORT if panel.length < 1200 else NARROW if narrow else ""
                assert panel.cut.warning == (expected if panel.cut.is_rip else "")


def layout(draw: random.Random) -> tuple[Rect, list[Rect]]:
    """Return a board and pieces in sections, strips and rows on it, as an answer lays them."""
    boxes: list[Rect] = []
    x = top = 0
    for _ in range(draw.randint(1, 3)):
        y, reach = 0, x
        for _ in range(draw.randint(1, 3)):
            at, width = x, 0
            for _ in range(draw.randint(1, 2)):
                size = draw.choice((2, 4, 9, 14, 20)), draw.choice((2, 3, 4, 7))
                boxes.append((at, y, *size))
                at, width = at + size[0] + KERF, max(width, size[1])
            y, reach = y + width + KERF, max(reach, at)
        x, top = reach, max(top, y)
    whole = (0, 0, x - KERF + draw.choice((0, 1, 5, 15)), top - KERF + draw.choice((0, 1, 5)))
    if draw.random() < 0.5:
        return whole, boxes
    return (0, 0, whole[3], whole[2]), [(y, x, width, length) for x, y, length, width in boxes]


def best_of_all(boxes: tuple[Rect, ...], whole: Rect, most: int, rules: Rules) -> tuple[int, int] | None:
    """Return the fewest unsafe cuts, then the largest offcut, over every order of cuts there is."""
    assert rules.least_rip_length is not None
    assert rules.least_strip_width is not None

    def worth(length: int, width: int) -> int:
        fits = max(length, width) >= rules.keep_length and min(length, width) >= rules.keep_width
        return length * width if fits else 0

    @cache
    def best(panel: Rect, inside: tuple[Rect, ...], last: int, left: int) -> tuple[int, int] | None:
        if not inside:
            return 0, -worth(panel[2], panel[3])
        if inside == (panel,):
            return 0, 0
        lone = len(inside) == 1
        found: list[tuple[int, int]] = []
        for way in (0, 1):
            again = left if lone else left - (way != last)
            if again < 0:
                continue
            begin, size = panel[way], panel[2 + way]
            places = {box[way] + box[2 + way] for box in inside} | {min(b[way] for b in inside) - KERF}
            for at in places:
                before = tuple(box for box in inside if box[way] + box[2 + way] <= at)
                after = tuple(box for box in inside if box[way] >= at + KERF)
                if len(before) + len(after) < len(inside) or not begin <= at < begin + size:
                    continue
                one, two = list(panel), list(panel)
                one[2 + way], two[way], two[2 + way] = at - begin, at + KERF, begin + size - at - KERF
                unsafe = way == 1 and (
                    panel[2] < rules.least_rip_length
                    or (bool(before) and at - begin < rules.least_strip_width)
                )
                parts: list[tuple[int, int] | None] = []
                if one[2 + way] > 0:
                    parts.append(best((*one,), before, way, again))
                if two[2 + way] > 0:
                    parts.append(best((*two,), after, way, again))
                if None not in parts:
                    known = [part for part in parts if part is not None]
                    found.append((sum(p[0] for p in known) + unsafe, min([p[1] for p in known], default=0)))
        return min(found, default=None)

    return best(whole, boxes, -1, most)


@settings(max_examples=150, deadline=None)
@given(st.integers(0, 10**6), st.integers(2, 4))
def test_no_order_of_cuts_is_safer_or_leaves_a_better_offcut(seed: int, most: int) -> None:
    """Every order is tried on boards of a few pieces: rip long and crosscut after, where that can be done."""
    whole, made = layout(random.Random(seed))
    boxes = tuple(sorted(made[:6]))
    pieces = [Piece("p", *box) for box in boxes]
    wanted = best_of_all(boxes, whole, most, SAFE)
    if wanted is None:
        with pytest.raises(ValueError, match="stages"):
            Saw(pieces, KERF, most, SAFE).board(whole[2], whole[3])
        return
    score = Saw(pieces, KERF, most, SAFE).board(whole[2], whole[3]).score
    assert (score[1], score[2]) == wanted


def test_a_strip_is_ripped_long_and_crosscut_after() -> None:
    """Four short slats side by side in pairs: the rips go through both pairs before the crosscut."""
    stock = StockItem("board", "pine", 30, 9, 500)
    slat = PartItem("slat", "pine", 4, 10, 4)
    (board,) = solve(Problem("in", 1, 3, (stock,), (slat,), SAFE)).boards
    assert board.cuts is not None
    cuts = [cut for cut, _ in cuts_in_order(board.cuts)]
    assert not any(cut.warning for cut in cuts)
    assert cuts[0].is_rip or cuts[0].setting > 12


def test_cuts_that_share_a_setting_stand_together() -> None:
    """However many boards there are, a setting that is left is not needed again at the same depth."""
    for seed in range(0, 30, 3):
        for board in solve(Problem.from_data(generated(seed)), steps=30_000).boards:
            assert board.cuts is not None
            run = [cut.setting for cut, _ in cuts_in_order(board.cuts)]
            assert len(set(run)) == 1 + sum(a != b for a, b in pairwise(run))
