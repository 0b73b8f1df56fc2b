"""Convex solids: what planes cut off, and how far two are apart."""

from __future__ import annotations

import random
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.geometry import Plane, box, carve, clip, cross, dot, minus, parting, planes_of, unit

UNIT = box((0.0, 0.0, 0.0), (4.0, 3.0, 2.0))
NUMBERS = st.floats(-1, 1, allow_nan=False)
NORMALS = st.tuples(NUMBERS, NUMBERS, NUMBERS).filter(lambda v: max(map(abs, v)) > 0.1)


def turned(plane):
    """Return the plane that keeps the other side."""
    return Plane(tuple(-part for part in plane.normal), -plane.most)


def is_closed(solid):
    """Return whether every edge is shared by two sides that run along it in opposite directions."""
    edges = [pair for side in solid.sides for pair in pairwise((*side, side[0]))]
    return len(set(edges)) == len(edges) and all((b, a) in set(edges) for a, b in edges)


@given(NORMALS, st.floats(0.1, 0.9))
def test_both_sides_of_a_cut_make_the_whole(normal, share):
    """The volumes on the two sides of any plane add up, and both pieces are closed and convex."""
    heights = [dot(normal, point) for point in UNIT.points]
    plane = Plane(normal, min(heights) + share * (max(heights) - min(heights)))
    pieces = [clip(UNIT, plane), clip(UNIT, turned(plane))]

    assert sum(piece.volume for piece in pieces) == pytest.approx(24)
    for piece in pieces:
        assert is_closed(piece)
        for inner in planes_of(piece):
            assert max(dot(inner.normal, point) for point in piece.points) <= inner.most + 1e-6


@given(st.lists(st.tuples(NORMALS, st.floats(-1, 2)), max_size=4))
def test_a_cut_solid_holds_the_points_that_the_planes_keep(cuts):
    """Volume by counting random points on the kept side of every plane agrees."""
    solid = UNIT
    draw = np.random.default_rng(1).uniform((0, 0, 0), (4, 3, 2), (4000, 3))
    kept = np.ones(len(draw), bool)
    for normal, most in cuts:
        kept &= draw @ np.array(normal) <= most
        if solid is not None:
            solid = clip(solid, Plane(normal, most))

    volume = solid.volume if solid is not None else 0.0
    assert volume == pytest.approx(24 * kept.mean(), abs=24 * 4 * 0.5 / 4000**0.5)


def test_carving_takes_exactly_the_block_out():
    """What is left around a block that is carved out is the whole without it."""
    block = box((1.0, 1.0, 0.0), (2.0, 3.0, 5.0))
    pieces = carve(UNIT, planes_of(block))

    assert sum(piece.volume for piece in pieces) == pytest.approx(24 - 1 * 2 * 2)
    assert all(parting(piece, block)[0] > -1e-9 for piece in pieces)
    assert carve(UNIT, planes_of(block.moved((10.0, 0.0, 0.0))))[0].volume == pytest.approx(24)


def random_solid(draw):
    """Return a box somewhere with two corners cut off."""
    low = tuple(draw.uniform(0, 4) for _ in range(3))
    solid = box(low, tuple(value + draw.uniform(0.5, 3) for value in low))
    for _ in range(2):
        normal = tuple(draw.gauss(0, 1) for _ in range(3))
        cut = clip(solid, Plane(normal, dot(normal, solid.middle) + 0.2))
        solid = cut or solid
    return solid


@pytest.mark.parametrize("seed", range(150))
def test_parting_is_true_and_tight(seed):
    """The direction parts the solids by the gap, and only solids with a gap below nothing share points."""
    draw = random.Random(seed)
    one, other = random_solid(draw), random_solid(draw)
    gap, way = parting(one, other)

    here, there = (max(dot(way, p) for p in one.points), min(dot(way, p) for p in other.points))
    assert there - here == pytest.approx(gap, abs=1e-9)
    away = other.moved(tuple(part * -gap for part in way))
    assert parting(one, away)[0] == pytest.approx(0, abs=1e-7) or gap > 0
    if gap < -1e-6:
        # they share points: a point inside both is found by clipping one with the other
        shared = one
        for plane in planes_of(other):
            shared = clip(shared, plane) if shared else None
        assert shared is not None
    if gap > 1e-6:
        shared = one
        for plane in planes_of(other):
            shared = clip(shared, plane) if shared else None
        assert shared is None


def test_directions_are_square_to_what_they_cross():
    """The vector product is square to both, and a direction of length one stays so."""
    one, other = (1.0, 2.0, 3.0), (-2.0, 0.5, 1.0)

    assert dot(cross(one, other), one) == pytest.approx(0)
    assert dot(unit(minus(one, other)), unit(minus(one, other))) == pytest.approx(1)
