"""A fitted plan as a 3-D file: binary glTF 2.0 (GLB), one node for each instance.

Lengths are metres and y is up, as the format asks: x, y, z of the plan become x, z and -y. Written by
hand from the published specification (Khronos glTF 2.0); nothing but the standard library is needed.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Sequence
from struct import pack
from typing import Any

from scantling.drawing.body import Body, size_words
from scantling.drawing.model import Model
from scantling.geometry import Solid, Vector
from scantling.measure import Display

_METRE = 0.0254
_FLOAT, _SHORT, _INT = 5126, 5123, 5125
_VERTICES, _INDEXES = 34962, 34963
_WOODS: tuple[tuple[float, float, float], ...] = (
    (0.80, 0.66, 0.45),
    (0.72, 0.55, 0.35),
    (0.86, 0.75, 0.56),
    (0.64, 0.50, 0.33),
    (0.78, 0.60, 0.42),
    (0.88, 0.79, 0.63),
)
"""Colours that tell neighbouring kinds of part apart (linear red, green, blue)."""

Mesh = tuple[list[Vector], list[Vector], list[int]]


def to_glb(model: Model) -> bytes:
    """Return the piece as a GLB file.

    Instances of a kind that are alike share one mesh. Each node is named with the part's name and number,
    and carries the part's id, letter and size as words under `extras`.
    """
    writer = _Writer()
    meshes: dict[tuple[Any, ...], int] = {}
    nodes: list[dict[str, Any]] = []
    kinds = {part.id: i for i, part in enumerate(model.fitted.parts)}
    for body in model.bodies:
        vertices, normals, indexes = _mesh(body)
        key = (body.part.id, tuple((round(x, 7), round(y, 7), round(z, 7)) for x, y, z in vertices))
        if key not in meshes:
            meshes[key] = writer.mesh(
                body.part.id, vertices, normals, indexes, kinds[body.part.id] % len(_WOODS)
            )
        nodes.append(_node(body, meshes[key], model.display))
    return writer.file(nodes, model.fitted.plan.title)


def _node(body: Body, mesh: int, display: Display) -> dict[str, Any]:
    part = body.part
    return {
        "name": f"{part.id} {body.placed.number}",
        "mesh": mesh,
        "translation": [_float(value) for value in _turned(body.low)],
        "extras": {"part": part.id, "letter": part.letter, "size": size_words(part, display)},
    }


def _turned(point: Vector) -> Vector:
    x, y, z = point
    return x * _METRE, z * _METRE, -y * _METRE


def _float(value: float) -> float:
    """Return a number rounded to a tenth of a micrometre, with no negative nothing."""
    return round(value, 7) + 0.0


def _mesh(body: Body) -> Mesh:
    """Return the triangles of a body from its low corner on, each side with corners of its own."""
    vertices: list[Vector] = []
    normals: list[Vector] = []
    indexes: list[int] = []
    shared = _shared(body.solids)
    for solid in body.solids:
        for side, normal in zip(solid.sides, solid.normals, strict=True):
            if _spots(solid, side) in shared:
                continue
            first = len(vertices)
            vertices += [_from_corner(solid, corner, body.low) for corner in side]
            normals += [(normal[0], normal[2], -normal[1])] * len(side)
            for i in range(1, len(side) - 1):
                indexes += [first, first + i, first + i + 1]
    return vertices, normals, indexes


def _shared(solids: Sequence[Solid]) -> set[frozenset[Vector]]:
    """Return the sides along which two pieces of a body meet: they lie within it, and are no surface."""
    counts = Counter(_spots(solid, side) for solid in solids for side in solid.sides) if solids[1:] else {}
    return {spots for spots, count in counts.items() if count > 1}


def _spots(solid: Solid, side: Sequence[int]) -> frozenset[Vector]:
    points = (solid.points[corner] for corner in side)
    return frozenset((round(x, 6), round(y, 6), round(z, 6)) for x, y, z in points)


def _from_corner(solid: Solid, corner: int, low: Vector) -> Vector:
    x, y, z = solid.points[corner]
    return _turned((x - low[0], y - low[1], z - low[2]))


class _Writer:
    """Gathers the binary part and what describes it."""

    def __init__(self) -> None:
        self._binary = bytearray()
        self._views: list[dict[str, Any]] = []
        self._accessors: list[dict[str, Any]] = []
        self._meshes: list[dict[str, Any]] = []
        self._materials: dict[int, int] = {}

    def mesh(
        self, name: str, vertices: list[Vector], normals: list[Vector], indexes: list[int], colour: int
    ) -> int:
        """Add a mesh and return its number."""
        short = len(vertices) < 65535
        attributes = {"POSITION": self._vectors(vertices, bounded=True), "NORMAL": self._vectors(normals)}
        data = pack(f"<{len(indexes)}{'H' if short else 'I'}", *indexes)
        view = self._view(data, _INDEXES)
        primitive = {
            "attributes": attributes,
            "indices": self._accessor(view, _SHORT if short else _INT, len(indexes), "SCALAR"),
            "material": self._materials.setdefault(colour, len(self._materials)),
        }
        self._meshes.append({"name": name, "primitives": [primitive]})
        return len(self._meshes) - 1

    def _vectors(self, vectors: list[Vector], *, bounded: bool = False) -> int:
        data = pack(f"<{3 * len(vectors)}f", *(value for vector in vectors for value in vector))
        number = self._accessor(self._view(data, _VERTICES), _FLOAT, len(vectors), "VEC3")
        if bounded:
            for name, choose in (("min", min), ("max", max)):
                self._accessors[number][name] = [
                    _float(choose(vector[i] for vector in vectors)) for i in range(3)
                ]
        return number

    def _view(self, data: bytes, target: int) -> int:
        self._binary += bytes(-len(self._binary) % 4)
        view = {"buffer": 0, "byteOffset": len(self._binary), "byteLength": len(data), "target": target}
        self._views.append(view)
        self._binary += data
        return len(self._views) - 1

    def _accessor(self, view: int, kind: int, count: int, shape: str) -> int:
        self._accessors.append({"bufferView": view, "componentType": kind, "count": count, "type": shape})
        return len(self._accessors) - 1

    def file(self, nodes: Sequence[dict[str, Any]], title: str) -> bytes:
        """Return the whole file."""
        self._binary += bytes(-len(self._binary) % 4)
        described = {
            "asset": {"version": "2.0", "generator": "scantling"},
            "scene": 0,
            "scenes": [{"name": title, "nodes": list(range(len(nodes)))}],
            "nodes": list(nodes),
            "meshes": self._meshes,
            "materials": [_material(colour) for colour in self._materials],
            "accessors": self._accessors,
            "bufferViews": self._views,
            "buffers": [{"byteLength": len(self._binary)}],
        }
        text = json.dumps(described, separators=(",", ":")).encode("ascii")
        text += b" " * (-len(text) % 4)
        chunks = pack("<II", len(text), 0x4E4F534A) + text
        chunks += pack("<II", len(self._binary), 0x004E4942) + bytes(self._binary)
        return pack("<4sII", b"glTF", 2, 12 + len(chunks)) + chunks


def _material(colour: int) -> dict[str, Any]:
    rough = {"baseColorFactor": [*_WOODS[colour], 1.0], "metallicFactor": 0.0, "roughnessFactor": 0.85}
    return {"name": f"wood {colour + 1}", "pbrMetallicRoughness": rough, "doubleSided": False}
