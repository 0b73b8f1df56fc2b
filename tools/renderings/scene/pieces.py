"""The pieces of a model as objects, each with its edges eased and its own luck in wood."""

from __future__ import annotations

from typing import Any
from zlib import crc32

import bpy
from mathutils import Matrix, Vector
from surfaces import wood

INCH = 0.0254
_EASED = 0.045
"""How far a sharp edge is sanded off, in inches."""


def put_pieces(model: dict[str, Any]) -> list[Any]:
    """Put every piece in its place and return them."""
    return [_put(piece) for piece in model["pieces"]]


def _put(piece: dict[str, Any]) -> Any:
    made = bpy.data.objects.new(piece["name"], _mesh(piece, piece["solids"][0]))
    bpy.context.collection.objects.link(made)
    along, across, through = (Vector(way) for way in piece["frame"])
    made.matrix_world = (
        Matrix.Translation(Vector(piece["middle"]) * INCH)
        @ Matrix((along, across, through)).transposed().to_4x4()
    )
    for solid in piece["solids"][1:]:
        _joined(made, piece, solid)
    points = [point for solid in piece["solids"] for point in solid["points"]]
    wide, thick = (max(p[i] for p in points) - min(p[i] for p in points) for i in (1, 2))
    how, count = piece["glued"] or ("", 1)
    made["Chance"] = _chance(piece["name"])
    made["Strips"] = float(count if how == "wide" else 1)
    made["Layers"] = float(count if how == "layers" else 1)
    made["Wide"], made["Thick"] = wide * INCH, thick * INCH
    _ease(made, max(_EASED, min(piece["round"], thick * 0.45)), piece["round"] > 0)
    return made


def _mesh(piece: dict[str, Any], solid: dict[str, Any]) -> Any:
    mesh = bpy.data.meshes.new(piece["name"])
    mesh.from_pydata([Vector(point) * INCH for point in solid["points"]], [], solid["sides"])
    mesh.validate()
    mesh.materials.append(wood(piece["wood"]))
    return mesh


def _joined(made: Any, piece: dict[str, Any], solid: dict[str, Any]) -> None:
    """Join a further chunk of a lapped or notched piece to its first."""
    other = bpy.data.objects.new("chunk", _mesh(piece, solid))
    bpy.context.collection.objects.link(other)
    other.matrix_world = made.matrix_world
    join = made.modifiers.new("join", "BOOLEAN")
    join.operation, join.solver, join.object = "UNION", "EXACT", other
    other.hide_render = True


def _ease(made: Any, far: float, is_round: bool) -> None:  # noqa: FBT001 - of one caller
    bevel = made.modifiers.new("eased", "BEVEL")
    bevel.width = far * INCH
    bevel.segments = 5 if is_round else 2
    bevel.limit_method = "ANGLE"
    bevel.harden_normals = True
    bevel.use_clamp_overlap = True
    for side in made.data.polygons:
        side.use_smooth = True


def _chance(name: str) -> tuple[float, float, float]:
    """Return three numbers from 0 to 1 that are the same each time."""
    one, two, three = (crc32(f"{name} {i}".encode()) / 0xFFFFFFFF for i in range(3))
    return one, two, three
