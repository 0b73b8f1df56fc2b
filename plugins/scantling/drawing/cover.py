"""What of a body can be seen, and what others hide."""

from __future__ import annotations

from scantling.drawing.shape import Point
from scantling.drawing.stage import Seen, Stage


def find_visible(seen: Seen) -> set[int]:
    """Return which bodies can be seen, by their numbers: not those that others hide wholly."""
    found: set[int] = set()
    hidden = Cover(seen, Stage(seen.view, 1.0, 0.0, 0.0))
    for place, piece in enumerate(seen.order):
        if piece.number not in found:
            places = (spot for outline in hidden.outlines[place] for _, spot in spots(outline))
            if any(not hidden.at(spot, place) for spot in places):
                found.add(piece.number)
    return found


class Cover:
    """Which places on the page later solids cover."""

    def __init__(self, seen: Seen, stage: Stage) -> None:
        self.outlines = [
            [list(map(stage.on_page, facet.outline)) for facet in piece.facets] for piece in seen.order
        ]
        self._boxed = [[(_bounds(outline), outline) for outline in outlines] for outlines in self.outlines]

    def at(self, spot: Point, place: int) -> bool:
        """Return whether something drawn after the solid at `place` covers a spot."""
        x, y = spot
        return any(
            left < x < right and top < y < bottom and _inside(outline, spot)
            for boxed in self._boxed[place + 1 :]
            for (left, right, top, bottom), outline in boxed
        )


def _bounds(outline: list[Point]) -> tuple[float, float, float, float]:
    xs, ys = [x for x, _ in outline], [y for _, y in outline]
    return min(xs), max(xs), min(ys), max(ys)


def _inside(outline: list[Point], spot: Point) -> bool:
    signs = 0
    x, y = spot
    x1, y1 = outline[-1]
    for x2, y2 in outline:
        turn = (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)
        signs |= 1 if turn > 1e-9 else (2 if turn < -1e-9 else 0)
        x1, y1 = x2, y2
    return signs != 3


def spots(outline: list[Point]) -> list[tuple[float, Point]]:
    """Return places on a side, each with how much it is worth."""
    x, y = sum(p[0] for p in outline) / len(outline), sum(p[1] for p in outline) / len(outline)
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs))
    inner = [(area * 0.8, (x + (px - x) * 0.7, y + (py - y) * 0.7)) for px, py in outline]
    return [(area, (x, y)), *inner]
