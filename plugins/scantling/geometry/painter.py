"""The order in which solids are drawn so that the nearer cover the farther.

Two convex solids that do not stand in each other are parted by a plane; the one on the eye's side of
it is drawn later. Where such pairs close a circle (three boards that each lie over the next), one
solid is cut in two along the plane that parts it from its neighbour, and the pieces are ordered again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from scantling.geometry.apart import divider, straight_gap
from scantling.geometry.solid import Plane, Solid, clip
from scantling.geometry.vector import Vector, dot, times
from scantling.geometry.view import View

_LEVEL = 1e-9
_MOST_SPLITS = 200


@dataclass(frozen=True, slots=True)
class Painted:
    """A solid, or a piece of one, in drawing order."""

    index: int
    """Which of the solids given."""
    solid: Solid


@dataclass(slots=True)
class _Shadow:
    """A solid with what it covers on the page."""

    index: int
    solid: Solid
    left: float
    right: float
    top: float
    bottom: float
    flat: list[tuple[float, float]]
    spans: list[tuple[float, float]]
    """For an upright box: from where to where it reaches square to each of its slanted edges."""
    _outline: list[tuple[float, float]] | None = None

    @property
    def outline(self) -> list[tuple[float, float]]:
        """Its outline on the page."""
        if self._outline is None:
            self._outline = _hull(self.flat)
        return self._outline


def paint_order(solids: Sequence[Solid], view: View) -> list[Painted]:
    """Return the solids from the farthest to the nearest, split where there is no order without it.

    Solids that stand in each other (a shelf in its groove) are ordered by the direction in which they
    do so least.
    """
    slants = _slants(view)
    shadows = [_shadow(i, solid, view, slants) for i, solid in enumerate(solids)]
    before = _covers(shadows, view)
    for _ in range(_MOST_SPLITS):
        order, circle = _sorted(before)
        if not circle:
            return [Painted(shadows[i].index, shadows[i].solid) for i in order]
        cut = _split(shadows, circle, before, view)
        if cut is None:
            break
        _renew(shadows, before, cut, view)
    rest = sorted(circle, key=lambda i: max(view.depth(point) for point in shadows[i].solid.points))
    return [Painted(shadows[i].index, shadows[i].solid) for i in [*order, *rest]]


def _renew(shadows: list[_Shadow], before: dict[int, list[int]], cut: int, view: View) -> None:
    """Find anew what the two pieces of a solid that was cut cover; the second is the last of all."""
    last = len(shadows) - 1
    before[cut], before[last] = [], []
    for others in before.values():
        if cut in others:
            others.remove(cut)
    for i in (cut, last):
        for j in range(last if i == last else len(shadows)):
            if i != j:
                _compare(shadows, i, j, before, view)


def _slants(view: View) -> list[Vector]:
    """Return the directions on the page that are square to the slanted edges of an upright box, each as
    how far a point goes along it for one step along x, y and z. Boxes around outlines tell the others apart.
    """
    ways = [view.flat(axis) for axis in ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))]
    slants = []
    for x, y in ways:
        if abs(x) > _LEVEL and abs(y) > _LEVEL:
            far = sqrt(x * x + y * y)
            one, two, three = ((u * y - v * x) / far for u, v in ways)
            slants.append((one, two, three))
    return slants


def _shadow(index: int, solid: Solid, view: View, slants: list[Vector]) -> _Shadow:
    flat = [view.flat(point) for point in solid.points]
    xs, ys = [x for x, _ in flat], [y for _, y in flat]
    spans = [_span(solid, slant) for slant in slants] if solid.is_box else []
    return _Shadow(index, solid, min(xs), max(xs), min(ys), max(ys), flat, spans)


def _span(box: Solid, slant: Vector) -> tuple[float, float]:
    """Return from where to where a box reaches along a direction on the page."""
    least = most = 0.0
    for low, high, by in zip(box.low, box.high, slant, strict=True):
        least += by * (low if by > 0 else high)
        most += by * (high if by > 0 else low)
    return least, most


def _hull(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Return the outline of points (Andrew's monotone chain)."""
    ordered = sorted(set(points))
    if len(ordered) < 3:
        return ordered
    halves: list[list[tuple[float, float]]] = []
    for run in (ordered, ordered[::-1]):
        half: list[tuple[float, float]] = []
        for x, y in run:
            while len(half) > 1:
                (x1, y1), (x2, y2) = half[-2], half[-1]
                if (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1) > 1e-12:
                    break
                half.pop()
            half.append((x, y))
        halves.append(half[:-1])
    return halves[0] + halves[1]


def _covers(shadows: list[_Shadow], view: View) -> dict[int, list[int]]:
    """Return for each solid those that must be drawn before it."""
    before: dict[int, list[int]] = {i: [] for i in range(len(shadows))}
    order = sorted(range(len(shadows)), key=lambda i: shadows[i].left)
    for place, i in enumerate(order):
        one = shadows[i]
        for j in order[place + 1 :]:
            if shadows[j].left >= one.right - _LEVEL:
                break
            _compare(shadows, i, j, before, view)
    return before


def _compare(shadows: list[_Shadow], i: int, j: int, before: dict[int, list[int]], view: View) -> None:
    """Note which of two solids must be drawn before the other, if either."""
    one, other = shadows[i], shadows[j]
    if other.top >= one.bottom - _LEVEL or one.top >= other.bottom - _LEVEL:
        return
    if other.left >= one.right - _LEVEL or one.left >= other.right - _LEVEL:
        return
    nearer = _nearer(one, other, view)
    if nearer > 0:
        before[i].append(j)
    elif nearer < 0:
        before[j].append(i)


def _nearer(one: _Shadow, other: _Shadow, view: View) -> int:
    """Return 1 if `one` may cover `other`, -1 the other way round, 0 if neither covers the other."""
    if one.solid.is_box and other.solid.is_box:
        if _boxes_apart(one, other):
            return 0
        _, way = straight_gap(one.solid, other.solid)
    elif _flat_apart(one.outline, other.outline):
        return 0
    else:
        way = divider(one.solid, other.solid)
    side = dot(way, view.toward)
    if abs(side) < _LEVEL:  # they stand in each other, as a board in a dado seen along it
        side = _nearest(other, view) - _nearest(one, view)
    return 0 if abs(side) < _LEVEL else (-1 if side > 0 else 1)


def _nearest(shadow: _Shadow, view: View) -> float:
    return max(view.depth(point) for point in shadow.solid.points)


def _boxes_apart(one: _Shadow, other: _Shadow) -> bool:
    """Return whether two upright boxes have no area in common on the page, where those around them do."""
    return any(
        least >= high - _LEVEL or low >= most - _LEVEL
        for (low, high), (least, most) in zip(one.spans, other.spans, strict=True)
    )


def _flat_apart(one: list[tuple[float, float]], other: list[tuple[float, float]]) -> bool:
    """Return whether two convex outlines have no area in common (separating axis theorem)."""
    for outline, against in ((one, other), (other, one)):
        x1, y1 = outline[-1]
        for x2, y2 in outline:
            across, along = y2 - y1, x1 - x2
            far = sqrt(across * across + along * along)
            if far > 1e-12:
                limit = (x1 * across + y1 * along) - _LEVEL * far
                if all(x * across + y * along >= limit for x, y in against):
                    return True
            x1, y1 = x2, y2
    return False


def _sorted(before: dict[int, list[int]]) -> tuple[list[int], list[int]]:
    """Return the numbers in order, those that came first first, and those that no order can place."""
    waits = {i: len(others) for i, others in before.items()}
    after: dict[int, list[int]] = {i: [] for i in before}
    for i, others in before.items():
        for other in others:
            after[other].append(i)
    ready = [i for i, count in waits.items() if not count]
    for i in ready:  # grows as it is walked
        for later in after[i]:
            waits[later] -= 1
            if not waits[later]:
                ready.append(later)
    done = set(ready)
    return ready, [i for i in before if i not in done]


def _split(shadows: list[_Shadow], stuck: list[int], before: dict[int, list[int]], view: View) -> int | None:
    """Cut one solid of a circle along the plane that parts two others of it; return which, if one was cut."""
    ring = _ring(stuck, before)
    members = dict.fromkeys(ring)
    for i in ring:
        for j in before[i]:
            if j not in members:
                continue
            plane = _between(shadows[i].solid, divider(shadows[i].solid, shadows[j].solid))
            others = [k for k in ring if k not in {i, j}]
            cut = next((k for k in (*others, i, j) if _cut(shadows, k, plane, view)), None)
            if cut is not None:
                return cut
    return None


def _between(one: Solid, way: Vector) -> Plane:
    return Plane(way, max(dot(way, point) for point in one.points))


def _cut(shadows: list[_Shadow], number: int, plane: Plane, view: View) -> bool:
    whole = shadows[number]
    near = clip(whole.solid, plane)
    far = clip(whole.solid, Plane(times(plane.normal, -1.0), -plane.most))
    if near is None or far is None or near is whole.solid or far is whole.solid:
        return False
    shadows[number] = _shadow(whole.index, near, view, [])
    shadows.append(_shadow(whole.index, far, view, []))
    return True


def _ring(stuck: list[int], before: dict[int, list[int]]) -> list[int]:
    """Return one circle among the numbers that wait for each other."""
    waiting = set(stuck)
    trail: dict[int, None] = {}
    here = stuck[0]
    while here not in trail:
        trail[here] = None
        here = next(j for j in before[here] if j in waiting)
    walked = list(trail)
    return walked[walked.index(here) :]
