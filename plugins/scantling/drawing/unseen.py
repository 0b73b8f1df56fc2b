"""New parts that others hide: dashed outlines over the picture, and a spot for their letters to point at."""

from __future__ import annotations

from collections.abc import Collection

from scantling.drawing.callout import Target
from scantling.drawing.shape import Point, Shape, Strokes
from scantling.drawing.stage import Piece, Seen, Stage


def unseen(seen: Seen, new: Collection[int], targets: Collection[Target]) -> list[Piece]:
    """Return the solids of each new kind of part of which nothing can be seen, in drawing order."""
    told = {target.letter for target in targets}
    return [
        piece
        for piece in seen.order
        if piece.number in new and piece.facets and seen.bodies[piece.number].part.letter not in told
    ]


def dashed(pieces: Collection[Piece], stage: Stage) -> list[Shape]:
    """Return the edges of hidden solids as dashed lines, each edge once."""
    lines: dict[tuple[Point, Point], None] = {}
    for piece in pieces:
        for facet in piece.facets:
            edges = facet.edges
            if edges is None:
                edges = tuple(zip(facet.outline, (*facet.outline[1:], facet.outline[0]), strict=True))
            for one, other in edges:
                ends = tuple(sorted((_rounded(stage.on_page(one)), _rounded(stage.on_page(other)))))
                lines[ends[0], ends[1]] = None
    return [Strokes(tuple((*one, *other) for one, other in lines), "unseen")] if lines else []


def hidden_targets(seen: Seen, stage: Stage, pieces: Collection[Piece]) -> list[Target]:
    """Return for each hidden kind the middle of its nearest solid's side, which a letter points at."""
    found: dict[str, Target] = {}
    for piece in pieces:
        outline = [stage.on_page(spot) for spot in piece.facets[0].outline]
        letter = seen.bodies[piece.number].part.letter
        x, y = (sum(axis) / len(outline) for axis in zip(*outline, strict=True))
        found[letter] = Target(letter, x, y)
    return list(found.values())


def _rounded(point: Point) -> Point:
    return round(point[0], 2), round(point[1], 2)
