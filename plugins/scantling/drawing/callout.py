"""Letters in circles beside a picture, each with a line to what it names, and the key below."""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass

from scantling.drawing.arrow import numbered
from scantling.drawing.cover import Cover, spots
from scantling.drawing.lettering import text_width, wrap
from scantling.drawing.shape import Circle, Line, Point, Shape, Text
from scantling.drawing.spread import spread
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
    hidden = Cover(seen, stage)
    for place, piece in enumerate(seen.order):
        if piece.number not in wanted:
            continue
        letter = seen.bodies[piece.number].part.letter
        for outline in hidden.outlines[place]:
            for area, spot in spots(outline):
                if area > best.get(letter, (0.0, (0.0, 0.0)))[0] and not hidden.at(spot, place):
                    best[letter] = (area, spot)
    return [Target(letter, *spot) for letter, (_, spot) in best.items()]


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
