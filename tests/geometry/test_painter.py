"""Hidden surfaces: what is drawn last is what the eye meets first, checked against a z-buffer."""

from __future__ import annotations

import random

import numpy as np
import pytest

from scantling.geometry import CORNER, FRONT, SIDE, TOP, View, box, clip, cross, paint_order, unit
from scantling.geometry.solid import Plane

GRID = 30


def random_boxes(seed, wanted, *, whole):
    """Return boxes that do not stand in each other; `whole` ones often touch."""
    draw = random.Random(seed)
    found = []
    for _ in range(wanted * 20):
        if len(found) == wanted:
            break
        if whole:
            low = [draw.randint(0, 9) for _ in range(3)]
            high = [value + draw.choice((1, 1, 1, 2, 6, 9)) for value in low]
        else:
            low = [draw.uniform(0, 9) for _ in range(3)]
            high = [value + draw.choice((0.3, 1, 7)) * draw.uniform(0.5, 1) for value in low]
        if all(any(high[i] <= b[i] or t[i] <= low[i] for i in range(3)) for b, t in found):
            found.append((low, high))
    return found


def random_view(seed):
    """Return a view from a random direction."""
    draw = random.Random(seed)
    toward = unit(tuple(draw.gauss(0, 1) for _ in range(3)))
    right = unit(cross((0.0, 0.0, 1.0), toward))
    return View(right, cross(toward, right), toward)


def eyes(view, solids):
    """Return the points of a grid of rays that covers everything, on the page."""
    flat = np.array([view.flat(point) for solid in solids for point in solid.points])
    (left, top), (right, bottom) = flat.min(0), flat.max(0)
    xs = left + (np.arange(GRID) + 0.4142) / GRID * (right - left)
    ys = top + (np.arange(GRID) + 0.5772) / GRID * (bottom - top)
    return np.stack(np.meshgrid(xs, ys), -1).reshape(-1, 2)


def nearest(view, solids, rays):
    """Return which solid each ray meets first, -1 for none, and whether that is beyond doubt.

    A z-buffer: each ray is cut by the half spaces of each solid, and the greatest depth wins. It
    takes nothing from the code under test but corners and side normals.
    """
    right, up, toward = (np.array(v) for v in (view.right, view.up, view.toward))
    start = rays[:, :1] * right - rays[:, 1:] * up
    depths = []
    for solid in solids:
        points = np.array(solid.points)
        low, high = np.full(len(rays), -1e9), np.full(len(rays), 1e9)
        for side in solid.sides:
            a, b, c = points[list(side[:3])]
            normal = np.cross(b - a, c - a)
            normal = normal / np.linalg.norm(normal)
            rest, slope = start @ normal - a @ normal, toward @ normal
            if abs(slope) < 1e-12:
                low = np.where(rest > 0, 2e9, low)
            elif slope > 0:
                high = np.minimum(high, -rest / slope)
            else:
                low = np.maximum(low, -rest / slope)
        depths.append(np.where(high - low > 1e-6, high, -1e9))
    depths = np.array(depths)
    best = depths.argmax(0)
    ordered = np.sort(depths, 0)
    doubt = (
        ((ordered[-1] - ordered[-2] < 1e-6) & (ordered[-1] > -1e8))
        if len(solids) > 1
        else np.zeros(len(rays), bool)
    )
    return np.where(depths.max(0) < -1e8, -1, best), ~doubt


def painted(view, order, rays):
    """Return which solid is drawn last over each ray."""
    seen = np.full(len(rays), -1)
    sure = np.ones(len(rays), bool)
    for item in order:
        for side in item.solid.sides:
            corners = np.array([view.flat(item.solid.points[i]) for i in side])
            edges = np.roll(corners, -1, 0) - corners
            area = corners[:, 0] @ np.roll(corners[:, 1], -1) - corners[:, 1] @ np.roll(corners[:, 0], -1)
            if abs(area) < 1e-9:
                continue
            lengths = np.maximum(np.linalg.norm(edges, axis=1), 1e-12)
            rest = rays[:, None, :] - corners[None]
            heights = (edges[:, 0] * rest[..., 1] - edges[:, 1] * rest[..., 0]) / lengths * np.sign(area)
            seen[(heights > 0).all(1)] = item.index
            sure &= np.abs(heights.min(1)) > 1e-6
    return seen, sure


def check(solids, view):
    """Compare the painter with the z-buffer at every ray that is beyond doubt."""
    order = paint_order(solids, view)
    rays = eyes(view, solids)
    met, clear = nearest(view, solids, rays)
    seen, sure = painted(view, order, rays)
    asked = clear & sure

    assert asked.mean() > 0.9
    assert (met[asked] == seen[asked]).all()
    return len(order) - len(solids)


@pytest.mark.parametrize("seed", range(40))
def test_boxes_hide_each_other_as_a_z_buffer_says(seed):
    """Random boxes that do not stand in each other are drawn right from fixed and random directions."""
    for turn in range(4):
        key = 1000 * seed + turn
        solids = [box(tuple(low), tuple(high)) for low, high in random_boxes(key, 16, whole=turn % 2 == 0)]
        views = (CORNER, (FRONT, SIDE, TOP)[key % 3], random_view(key))
        for view in views:
            check(solids, view)


@pytest.mark.parametrize("seed", range(12))
def test_cut_solids_hide_each_other_as_a_z_buffer_says(seed):
    """So are boxes with corners cut off by slanted planes."""
    draw = random.Random(seed)
    solids = []
    for low, high in random_boxes(5000 + seed, 10, whole=False):
        middle = [(a + b) / 2 for a, b in zip(low, high, strict=True)]
        normal = tuple(draw.gauss(0, 1) for _ in range(3))
        most = sum(n * m for n, m in zip(normal, middle, strict=True)) + 0.1
        solids.append(clip(box(tuple(low), tuple(high)), Plane(normal, most)))
    for view in (CORNER, random_view(seed)):
        check([solid for solid in solids if solid], view)


def rings():
    """Return three boards, each over the next as seen along (1, 1, 1)."""
    return [
        box((0.0, 2.0, 1.0), (9.0, 3.0, 2.0)),
        box((1.0, 0.0, 2.0), (2.0, 9.0, 3.0)),
        box((2.0, 1.0, 0.0), (3.0, 2.0, 9.0)),
    ]


def test_a_ring_takes_a_split():
    """Three boards, each before the next and behind the one after, cannot be drawn whole."""
    toward = unit((1.0, 1.0, 1.0))
    right = unit(cross((0.0, 0.0, 1.0), toward))
    view = View(right, cross(toward, right), toward)

    assert check(rings(), view) >= 1
    for seed in range(60):
        check(rings(), random_view(seed))


def test_the_order_does_not_depend_on_chance():
    """The same solids give the same order."""
    solids = [box(tuple(low), tuple(high)) for low, high in random_boxes(7, 20, whole=True)]

    assert paint_order(solids, CORNER) == paint_order(solids, CORNER)
