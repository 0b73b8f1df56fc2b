"""Letters in circles beside a picture, each with a line to what it names, and the key below."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass

from scantling.drawing.arrow import numbered
from scantling.drawing.cut_diagram import spread
from scantling.drawing.lettering import text_width, wrap
from scantling.drawing.shape import Circle, Line, Point, Shape, Text
from scantling.drawing.stage import Seen, Stage

_KEY = 11.5
_ROW = 17.0


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the key."""

    letter: str
    words: str


@dataclass(frozen=True, slots=True)
class Target:
    """What a letter points at."""

    letter: str
    x: float
    y: float


def find_targets(seen: Seen, stage: Stage, wanted: Container[int]) -> list[Target]:
    """Return for each kind of part among the wanted bodies a place where one of them can be seen best."""
    best: dict[str, tuple[float, Point]] = {}
    hidden = _Cover(seen, stage)
    for place, piece in enumerate(seen.order):
        if piece.number not in wanted:
            continue
        letter = seen.bodies[piece.number].part.letter
        for outline in hidden.outlines[place]:
            for area, spot in _spots(outline):
                if area > best.get(letter, (0.0, (0.0, 0.0)))[0] and not hidden.at(spot, place):
                    best[letter] = (area, spot)
    return [Target(letter, *spot) for letter, (_, spot) in best.items()]


def find_visible(seen: Seen) -> set[int]:
    """Return which bodies can be seen, by their numbers: not those that others hide wholly."""
    found: set[int] = set()
    hidden = _Cover(seen, Stage(seen.view, 1.0, 0.0, 0.0))
    for place, piece in enumerate(seen.order):
        if piece.number not in found:
            spots = (spot for outline in hidden.outlines[place] for _, spot in _spots(outline))
            if any(not hidden.at(spot, place) for spot in spots):
                found.add(piece.number)
    return found


class _Cover:
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


def _spots(outline: list[Point]) -> list[tuple[float, Point]]:
    """Return places on a side, each with how much it is worth."""
    x, y = sum(p[0] for p in outline) / len(outline), sum(p[1] for p in outline) / len(outline)
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    area = abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs))
    inner = [(area * 0.8, (x + (px - x) * 0.7, y + (py - y) * 0.7)) for px, py in outline]
    return [(area, (x, y)), *inner]


def callouts(targets: Sequence[Target], left: float, right: float, top: float, bottom: float) -> list[Shape]:
    """Return the letters in two columns at `left` and `right`, with lines to their targets."""
    middle = (left + right) / 2
    ordered = sorted(targets, key=lambda target: (target.x, target.y))
    half = len(ordered) // 2
    sides = [
        [
            target
            for i, target in enumerate(ordered)
            if target.x < middle - 1 or (target.x <= middle + 1 and i < half)
        ]
    ]
    sides.append([target for target in ordered if target not in sides[0]])
    shapes: list[Shape] = []
    for x, column in ((left, sides[0]), (right, sides[1])):
        column.sort(key=lambda target: (target.y, target.x))
        places = spread([target.y for target in column], 22.0, top, bottom)
        for target, y in zip(column, places, strict=True):
            shapes += [
                Line(x, y, target.x, target.y, "thin"),
                Circle(target.x, target.y, 1.8, "solid"),
                numbered(x, y, target.letter, size=11),
            ]
    return shapes


def key_lines(entries: Sequence[Entry], y: float, width: float) -> tuple[list[Shape], float]:
    """Return the key in as many columns as there is room for, and where it ends."""
    if not entries:
        return [], y
    widest = max(text_width(entry.words, _KEY) for entry in entries) + 34
    columns = max(1, min(len(entries), int((width - 12) // widest)))
    rows = -(-len(entries) // columns)
    room = (width - 20) / columns
    shapes: list[Shape] = []
    if columns == 1:
        for entry in entries:
            y += _ROW
            shapes.append(Text(10, y, entry.letter, _KEY, look="red strong"))
            for i, line in enumerate(wrap(entry.words, _KEY, width - 44)):
                y += 14 if i else 0
                shapes.append(Text(30, y, line, _KEY))
        return shapes, y
    for i, entry in enumerate(entries):
        x, row = 10 + (i // rows) * room, y + (i % rows + 1) * _ROW
        shapes += [Text(x, row, entry.letter, _KEY, look="red strong"), Text(x + 20, row, entry.words, _KEY)]
    return shapes, y + rows * _ROW
