"""Drawing solids as seen from somewhere: visible sides, nearer over farther, with grain."""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass

from scantling.drawing.body import Body
from scantling.drawing.grain import slanted_grain
from scantling.drawing.seam import open_edges
from scantling.drawing.shape import Group, Point, Polygon, Shape, Strokes
from scantling.geometry import Painted, Solid, Vector, View, dot, paint_order

_SHADES = ("side", "wood", "top")
"""How a side looks whose direction is most along x, y or z."""


@dataclass(frozen=True, slots=True)
class Facet:
    """A side of a solid that can be seen, on the page at the world's own scale."""

    outline: tuple[Point, ...]
    shade: str
    has_grain: bool
    """False on end grain."""
    edges: tuple[tuple[Point, Point], ...] | None
    """The stretches of its outline that are edges; None if all of it is."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A convex piece of a body in drawing order."""

    number: int
    """Of its body."""
    solid: Solid
    facets: tuple[Facet, ...]


@dataclass(frozen=True, slots=True)
class Seen:
    """Bodies in the order in which they are drawn from one direction."""

    bodies: tuple[Body, ...]
    order: tuple[Piece, ...]
    view: View

    def only(self, wanted: Container[int]) -> Seen:
        """Return the same without the bodies that are not wanted; their order stays."""
        return Seen(self.bodies, tuple(piece for piece in self.order if piece.number in wanted), self.view)


def look(bodies: Sequence[Body], view: View) -> Seen:
    """Return the bodies ordered from the farthest to the nearest."""
    owners = [(i, solid) for i, body in enumerate(bodies) for solid in body.solids]
    painted: list[Painted] = paint_order([solid for _, solid in owners], view)
    order = [(owners[item.index][0], item.solid) for item in painted]
    parts: dict[int, list[Solid]] = {}
    for number, solid in order:
        parts.setdefault(number, []).append(solid)
    pieces = tuple(
        Piece(number, solid, tuple(_facets(solid, bodies[number], parts[number], view)))
        for number, solid in order
    )
    return Seen(tuple(bodies), pieces, view)


def _facets(solid: Solid, body: Body, parts: list[Solid], view: View) -> Iterator[Facet]:
    flat = [view.flat(point) for point in solid.points]
    for i, normal in enumerate(solid.normals):
        if dot(normal, view.toward) <= 1e-6 or (len(parts) > 1 and _is_inner(i, solid, parts)):
            continue
        outline = tuple([flat[corner] for corner in solid.sides[i]])
        shade = _SHADES[_main_axis(normal)]
        edges = None
        if len(parts) > 1:
            open_ = open_edges(solid, i, parts, view.toward)
            edges = tuple((view.flat(one), view.flat(other)) for one, other in open_)
        yield Facet(outline, shade, abs(dot(normal, body.along)) < 0.9, edges)


def _main_axis(way: Vector) -> int:
    x, y, z = abs(way[0]), abs(way[1]), abs(way[2])
    if x >= y and x >= z:
        return 0
    return 1 if y >= z else 2


@dataclass(frozen=True, slots=True)
class Stage:
    """How the world is laid on the page: its scale, and where its corner lies."""

    view: View
    scale: float
    x: float
    y: float

    def at(self, point: Vector) -> Point:
        """Return the place of a point on the page."""
        x, y = self.view.flat(point)
        return x * self.scale + self.x, y * self.scale + self.y

    def on_page(self, flat: Point) -> Point:
        """Return the place on the page of a point that lies flat already."""
        return flat[0] * self.scale + self.x, flat[1] * self.scale + self.y

    def way(self, vector: Vector) -> Point:
        """Return a direction on the page."""
        x, y = self.view.flat(vector)
        return x * self.scale, y * self.scale


@dataclass(frozen=True, slots=True)
class Room:
    """The space on the page that a picture may take."""

    left: float
    top: float
    width: float
    height: float


def set_stage(seen: Seen, room: Room) -> tuple[Stage, float, float]:
    """Return the stage on which the bodies just fit the room, and the width and height they take."""
    flat = [spot for piece in seen.order for facet in piece.facets for spot in facet.outline]
    flat = flat or [(0.0, 0.0), (1.0, 1.0)]
    left, right = min(x for x, _ in flat), max(x for x, _ in flat)
    top, bottom = min(y for _, y in flat), max(y for _, y in flat)
    scale = min(room.width / ((right - left) or 1.0), room.height / ((bottom - top) or 1.0))
    wide, high = (right - left) * scale, (bottom - top) * scale
    x = room.left + (room.width - wide) / 2 - left * scale
    return Stage(seen.view, scale, x, room.top - top * scale), wide, high


def draw(seen: Seen, stage: Stage, titles: Sequence[str], *, picked: Container[int] = ()) -> list[Shape]:
    """Return the bodies as shapes, each grouped under its title; picked ones are hatched."""
    shapes: list[Shape] = []
    for piece in seen.order:
        body = seen.bodies[piece.number]
        drawn = _hatched(piece, stage) if piece.number in picked else _wood(piece, body, stage)
        if drawn:
            shapes.append(Group(tuple(drawn), title=titles[piece.number], part=body.part.id))
    return shapes


def _hatched(piece: Piece, stage: Stage) -> list[Shape]:
    shapes: list[Shape] = []
    for facet in piece.facets:
        outline = tuple(map(stage.on_page, facet.outline))
        shapes.append(Polygon(outline, "edge" if facet.edges is None else "", "new"))
        shapes += _edges(facet, stage)
    return shapes


def _wood(piece: Piece, body: Body, stage: Stage) -> list[Shape]:
    shapes: list[Shape] = []
    grain: list[tuple[float, float, float, float]] = []
    along = stage.way(body.along)
    for facet in piece.facets:
        outline = tuple(map(stage.on_page, facet.outline))
        look_ = "edge" if facet.edges is None else f"{facet.shade}-on"
        shapes.append(Polygon(outline, f"{look_} {facet.shade}"))
        shapes += _edges(facet, stage)
        if facet.has_grain:
            grain += slanted_grain(f"{body.part.id}{body.placed.number}{facet.shade}", outline, along).lines
    if grain:
        shapes.append(Strokes(tuple(grain)))
    return shapes


def _edges(facet: Facet, stage: Stage) -> list[Shape]:
    if not facet.edges:
        return []
    return [
        Strokes(tuple((*stage.on_page(one), *stage.on_page(other)) for one, other in facet.edges), "edge")
    ]


def _is_inner(number: int, solid: Solid, parts: list[Solid]) -> bool:
    """Return whether a side only parts two pieces of one body."""
    side, normal = solid.sides[number], solid.normals[number]
    count = len(side)
    middle = (
        sum(solid.points[i][0] for i in side) / count + normal[0] * 1e-4,
        sum(solid.points[i][1] for i in side) / count + normal[1] * 1e-4,
        sum(solid.points[i][2] for i in side) / count + normal[2] * 1e-4,
    )
    return any(part is not solid and _holds(part, middle) for part in parts)


def _holds(solid: Solid, point: Vector) -> bool:
    return all(
        dot(normal, point) <= dot(normal, solid.points[side[0]])
        for side, normal in zip(solid.sides, solid.normals, strict=True)
    )
