"""Drawing solids as seen from somewhere: visible sides, nearer over farther, with grain."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass

from scantling.drawing.body import Body
from scantling.drawing.grain import slanted_grain
from scantling.drawing.seam import open_edges
from scantling.drawing.shape import Group, Point, Polygon, Shape, Strokes
from scantling.geometry import Painted, Solid, Vector, View, dot, paint_order

_SHADES = ("side", "wood", "top")
"""How a side looks whose direction is most along x, y or z."""


@dataclass(frozen=True, slots=True)
class Seen:
    """Bodies in the order in which they are drawn from one direction."""

    bodies: tuple[Body, ...]
    order: tuple[tuple[int, Solid], ...]
    """Number of the body, and the convex piece of it to draw."""
    view: View

    def only(self, wanted: Container[int]) -> Seen:
        """Return the same without the bodies that are not wanted; their order stays."""
        return Seen(self.bodies, tuple(item for item in self.order if item[0] in wanted), self.view)


def look(bodies: Sequence[Body], view: View) -> Seen:
    """Return the bodies ordered from the farthest to the nearest."""
    owners = [(i, solid) for i, body in enumerate(bodies) for solid in body.solids]
    painted: list[Painted] = paint_order([solid for _, solid in owners], view)
    return Seen(tuple(bodies), tuple((owners[item.index][0], item.solid) for item in painted), view)


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
    flat = [seen.view.flat(point) for _, solid in seen.order for point in solid.points] or [
        (0.0, 0.0),
        (1.0, 1.0),
    ]
    left, right = min(x for x, _ in flat), max(x for x, _ in flat)
    top, bottom = min(y for _, y in flat), max(y for _, y in flat)
    scale = min(room.width / ((right - left) or 1.0), room.height / ((bottom - top) or 1.0))
    wide, high = (right - left) * scale, (bottom - top) * scale
    x = room.left + (room.width - wide) / 2 - left * scale
    return Stage(seen.view, scale, x, room.top - top * scale), wide, high


def draw(seen: Seen, stage: Stage, titles: Sequence[str], *, picked: Container[int] = ()) -> list[Shape]:
    """Return the bodies as shapes, each grouped under its title; picked ones are hatched."""
    pieces: dict[int, list[Solid]] = {}
    for number, solid in seen.order:
        pieces.setdefault(number, []).append(solid)
    shapes: list[Shape] = []
    for number, solid in seen.order:
        body = seen.bodies[number]
        drawn = _solid(
            solid, body, stage, f"{body.part.id}{body.placed.number}", pieces[number], number in picked
        )
        if drawn:
            shapes.append(Group(tuple(drawn), title=titles[number], part=body.part.id))
    return shapes


def _solid(
    solid: Solid,
    body: Body,
    stage: Stage,
    seed: str,
    pieces: list[Solid],
    picked: bool,  # noqa: FBT001 - one caller
) -> list[Shape]:
    shapes: list[Shape] = []
    grain: list[tuple[float, float, float, float]] = []
    for i in _visible(solid, stage.view):
        side, normal = solid.sides[i], solid.normals[i]
        if len(pieces) > 1 and _is_inner(side, normal, solid, pieces):
            continue
        outline = tuple(stage.at(solid.points[corner]) for corner in side)
        shade = _SHADES[max(range(3), key=lambda axis: abs(normal[axis]))]
        fill = "new" if picked else ""
        if len(pieces) == 1:
            shapes.append(Polygon(outline, "edge" if picked else f"edge {shade}", fill))
        else:
            shapes.append(Polygon(outline, "" if picked else shade, fill))
            ends = [(*stage.at(one), *stage.at(other)) for one, other in open_edges(solid, i, pieces)]
            shapes.append(Strokes(tuple(ends), "edge"))
        if not picked and abs(dot(normal, body.along)) < 0.9:
            grain += slanted_grain(f"{seed}{shade}", outline, stage.way(body.along)).lines
    if grain:
        shapes.append(Strokes(tuple(grain)))
    return shapes


def _visible(solid: Solid, view: View) -> Iterable[int]:
    """Yield the sides that face the eye."""
    return (i for i, normal in enumerate(solid.normals) if dot(normal, view.toward) > 1e-6)


def _is_inner(side: tuple[int, ...], normal: Vector, solid: Solid, pieces: list[Solid]) -> bool:
    """Return whether a side only parts two pieces of one body."""
    count = len(side)
    middle = (
        sum(solid.points[i][0] for i in side) / count + normal[0] * 1e-4,
        sum(solid.points[i][1] for i in side) / count + normal[1] * 1e-4,
        sum(solid.points[i][2] for i in side) / count + normal[2] * 1e-4,
    )
    return any(piece is not solid and _holds(piece, middle) for piece in pieces)


def _holds(solid: Solid, point: Vector) -> bool:
    return all(
        dot(normal, point) <= dot(normal, solid.points[side[0]])
        for side, normal in zip(solid.sides, solid.normals, strict=True)
    )
