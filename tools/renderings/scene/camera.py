"""The camera: far enough away that the whole piece is in the picture, and in its middle."""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, radians, sin

import bpy
from mathutils import Vector
from views import Seen

_LENS, _FILM = 58.0, 36.0
"""Of the lens and of the film's width, in millimetres."""


def put_camera(points: Sequence[Vector], seen: Seen, shape: float) -> None:
    """Put the camera.

    Args:
        points: what must be in the picture.
        shape: how high the picture is for its width.
    """
    turn, rise = radians(seen.turn), radians(seen.rise)
    back = Vector((sin(turn) * cos(rise), -cos(turn) * cos(rise), sin(rise)))
    right = Vector((cos(turn), sin(turn), 0))
    up = right.cross(-back)
    middle = sum(points, Vector()) / len(points)
    half = _FILM / _LENS / 2
    far = 1.0
    for _ in range(60):  # each time a little nearer to where both sides are filled
        flat = []
        for point in points:
            way = point - middle
            deep = max(far - way.dot(back), 0.05)
            flat.append((way.dot(right) / deep / half, way.dot(up) / deep / half / shape))
        wide = (min(x for x, _ in flat), max(x for x, _ in flat))
        high = (min(y for _, y in flat), max(y for _, y in flat))
        middle += right * (sum(wide) / 2 * half * far) + up * (sum(high) / 2 * half * shape * far)
        far *= max(wide[1] - wide[0], high[1] - high[0]) / 2 / seen.fill
    made = bpy.data.objects.new("camera", bpy.data.cameras.new("camera"))
    made.data.lens, made.data.sensor_width = _LENS, _FILM
    made.location = middle + back * far
    made.rotation_euler = (-back).to_track_quat("-Z", "Y").to_euler()
    bpy.context.collection.objects.link(made)
    bpy.context.scene.camera = made
