"""The room: a floor, a wall of painted boards, and a window to one side that nobody sees."""

from __future__ import annotations

from math import radians
from typing import Any

import bpy
from mathutils import Vector
from surfaces import concrete, paint
from views import Colour

_BOARD = 0.135
"""The width of a board of the wall, in metres."""


def put_room(behind: float, wall: Colour) -> None:
    """Put the room around what stands on the floor.

    Args:
        behind: where the wall stands, in metres from the front.
    """
    _plate("floor", (0, -2, -0.05), (14, 9, 0.1), concrete((0.33, 0.315, 0.295)))
    painted = paint(wall)
    for i in range(-45, 46):
        board = _plate("board", (i * _BOARD, behind + 0.01, 1.6), (_BOARD - 0.0012, 0.02, 3.2), painted)
        _chamfered(board, 0.003)
    _chamfered(_plate("skirting", (0, behind - 0.008, 0.06), (14, 0.018, 0.12), painted), 0.004)


def put_light(middle: Vector, size: float, side: float) -> None:
    """Put the light of a window to one side, a weak one to the other, and a little from everywhere.

    Args:
        size: of the piece, in metres.
        side: -1 for a window to the left, 1 to the right.
    """
    size = max(size, 0.8)
    _window("window", middle + Vector((1.9 * side, -1.5, 1.35)) * size, middle, 1.2 * size, 120)
    _window("other", middle + Vector((-2.6 * side, -2.2, 0.9)) * size, middle, 1.8 * size, 8)
    world = bpy.data.worlds.new("room")
    bpy.context.scene.world = world
    world.use_nodes = True
    world.node_tree.nodes["Background"].inputs["Color"].default_value = (0.9, 0.95, 1.0, 1)
    world.node_tree.nodes["Background"].inputs["Strength"].default_value = 0.2


def _window(name: str, at: Vector, middle: Vector, size: float, watts: float) -> None:
    light = bpy.data.lights.new(name, "AREA")
    light.shape, light.size, light.size_y = "RECTANGLE", size, size * 1.25
    light.energy = watts * size * size
    light.color = (1.0, 0.95, 0.88) if name == "window" else (0.86, 0.93, 1.0)
    made = bpy.data.objects.new(name, light)
    made.location = at
    made.rotation_euler = (middle - at).to_track_quat("-Z", "Y").to_euler()
    bpy.context.collection.objects.link(made)


def _plate(name: str, middle: tuple[float, ...], size: tuple[float, ...], surface: Any) -> Any:
    x, y, z = (part / 2 for part in size)
    points = [(i * x, j * y, k * z) for k in (-1, 1) for i, j in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    sides = [(3, 2, 1, 0), (4, 5, 6, 7), (0, 1, 5, 4), (1, 2, 6, 5), (2, 3, 7, 6), (3, 0, 4, 7)]
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata(points, [], sides)
    mesh.materials.append(surface)
    made = bpy.data.objects.new(name, mesh)
    made.location = middle
    bpy.context.collection.objects.link(made)
    return made


def _chamfered(made: Any, far: float) -> None:
    bevel = made.modifiers.new("chamfer", "BEVEL")
    bevel.width, bevel.segments, bevel.angle_limit = far, 2, radians(30)
