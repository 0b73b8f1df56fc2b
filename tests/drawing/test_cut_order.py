"""The order of cuts: each goes through all of one piece, none through a part, and every part comes free."""

from __future__ import annotations

import random
from fractions import Fraction

import pytest

from scantling.cutting import solve
from scantling.cutting.reading import read_problem
from scantling.drawing import cut_order
from scantling.measure import Length
from tests.tools import make_problems

KERF = Fraction(1, 8)


def take_apart(length, width, kerf, cuts):
    """Return the rectangles that are left after sawing; a cut that goes through no whole one fails."""
    rects = [(Fraction(0), Fraction(0), length, width)]
    for cut in cuts:
        x1, y1, x2, y2 = (
            Fraction(value).limit_denominator(4096) for value in (cut.x1, cut.y1, cut.x2, cut.y2)
        )
        for rect in rects:
            left, top, right, low = rect
            if x1 == x2 and left < x1 < right and (top, low) == (y1, y2):
                half = min(kerf / 2, x1 - left, right - x1)
                parts = [(left, top, x1 - half, low), (x1 + half, top, right, low)]
                break
            if y1 == y2 and top < y1 < low and (left, right) == (x1, x2):
                half = min(kerf / 2, y1 - top, low - y1)
                parts = [(left, top, right, y1 - half), (left, y1 + half, right, low)]
                break
        else:
            pytest.fail(f"cut {cut.number} goes through no whole piece")
        rects.remove(rect)
        rects += [part for part in parts if part[2] > part[0] and part[3] > part[1]]
    return rects


def random_layout(draw, box, depth):
    """Return pieces of a layout that can be sawn, by cutting a box at random."""
    x1, y1, x2, y2 = box
    way = draw.randrange(2)
    low, high = (x1, x2) if way == 0 else (y1, y2)
    if depth == 0 or high - low < 6 or draw.random() < 0.15:
        return [] if draw.random() < 0.15 else [box]
    at = low + Fraction(draw.randint(16, int((high - low - 2) * 8)), 8)
    halves = (
        [(x1, y1, at, y2), (at + KERF, y1, x2, y2)]
        if way == 0
        else [(x1, y1, x2, at), (x1, at + KERF, x2, y2)]
    )
    return [piece for half in halves for piece in random_layout(draw, half, depth - 1)]


def boxes(pieces):
    """Return pieces as the function takes them."""
    return [tuple(Length(value) for value in (x1, y1, x2 - x1, y2 - y1)) for x1, y1, x2, y2 in pieces]


def order(length, width, pieces, kept=(), kerf=KERF):
    """Return the cuts of a layout."""
    say = lambda value: f"{value.inches}"  # noqa: E731 - short
    return cut_order(Length(length), Length(width), Length(kerf), boxes(pieces), boxes(kept), say)


@pytest.mark.parametrize("seed", range(200))
def test_every_piece_of_a_layout_comes_free(seed):
    """Sawn in order, the cuts leave exactly the pieces, and the offcuts that are kept, beside waste."""
    draw = random.Random(seed)
    pieces = random_layout(draw, (Fraction(0), Fraction(0), Fraction(96), Fraction(48)), 5)
    kept, pieces = pieces[:1], pieces[1:]
    cuts = order(96, 48, pieces, kept)

    left = take_apart(Fraction(96), Fraction(48), KERF, cuts)
    assert set(pieces) | set(kept) <= set(left)
    assert [cut.number for cut in cuts] == list(range(1, len(cuts) + 1))


@pytest.mark.parametrize("kind", ["boards", "sheets", "rips"])
def test_every_piece_of_the_solver_s_answers_comes_free(kind):
    """So it is with the cutting plans of generated problems."""
    for seed in range(12):
        problem = read_problem(make_problems.problem(seed, kind))
        stock = {one.id: one for one in problem.stock}
        for board in solve(problem, steps=20_000).boards:
            whole = stock[board.stock]
            pieces = [
                tuple(Fraction(v) for v in (p.x, p.y, p.x + p.length, p.y + p.width)) for p in board.pieces
            ]
            cuts = order(whole.length, whole.width, pieces, kerf=Fraction(problem.kerf))
            left = take_apart(Fraction(whole.length), Fraction(whole.width), Fraction(problem.kerf), cuts)
            assert set(pieces) <= set(left)


def test_settings_are_what_the_saw_is_set_to():
    """A rip names the distance to the fence, a crosscut the length to the stop, both from the last cut."""
    pieces = [
        (0, 0, 40, Fraction(5, 2)),
        (0, Fraction(21, 8), 40, Fraction(41, 8)),
        (Fraction(321, 8), 0, 60, Fraction(11, 2)),
    ]
    cuts = order(96, Fraction(11, 2), [tuple(map(Fraction, piece)) for piece in pieces])

    assert [cut.setting for cut in cuts] == [
        "crosscut at 40",
        "crosscut at 159/8",
        "rip, fence at 5/2",
        "rip, fence at 5/2",
    ]


def test_ends_and_edges_are_trimmed_first():
    """Where the layout leaves the rough end and the rough edge, they are cut off."""
    piece = tuple(map(Fraction, (1, 1, 30, 40)))
    cuts = order(96, 48, [piece])

    assert [cut.setting for cut in cuts] == [
        "trim the edge straight",
        "rip, fence at 39",
        "trim the end square",
        "crosscut at 29",
    ]
