"""Render one model as a JPEG: runs where `bpy` is, and reads what `tools.renderings` wrote."""

from __future__ import annotations

import json
from argparse import ArgumentParser, Namespace
from pathlib import Path

import bpy
from camera import put_camera
from mathutils import Vector
from pieces import put_pieces
from room import put_light, put_room
from views import SEEN, Seen

_SHAPE = 0.75


def main(given: Namespace) -> None:
    """Put the scene together and render it."""
    model = json.loads(given.model.read_text("utf-8"))
    seen = SEEN.get(given.model.stem, Seen())
    bpy.ops.wm.read_factory_settings(use_empty=True)
    _settle(given)
    put_pieces(model)
    bpy.context.view_layer.update()
    points = [
        made.matrix_world @ corner.co
        for made in bpy.context.collection.objects
        for corner in made.data.vertices
    ]
    low, high = (Vector(choose(p[i] for p in points) for i in range(3)) for choose in (min, max))
    put_room(high.y + seen.gap * 0.0254, seen.wall)
    put_light((low + high) / 2, (high - low).length * 0.75, -1 if seen.turn > 0 else 1)
    put_camera(points, seen, _SHAPE)
    bpy.ops.render.render(write_still=True)


def _settle(given: Namespace) -> None:
    scene = bpy.context.scene
    scene.render.engine = "CYCLES"
    cycles = scene.cycles
    cycles.shading_system = True  # wood.osl
    cycles.samples, cycles.seed = given.samples, 7
    cycles.use_denoising, cycles.denoiser = True, "OPENIMAGEDENOISE"
    cycles.denoising_prefilter, cycles.denoising_quality = "FAST", "BALANCED"
    cycles.max_bounces = 4
    render = scene.render
    render.threads_mode, render.threads = "FIXED", given.threads
    render.resolution_x, render.resolution_y = given.width, round(given.width * _SHAPE)
    render.image_settings.file_format, render.image_settings.quality = "JPEG", given.quality
    render.filepath = str(given.picture.resolve())
    scene.view_settings.view_transform = "AgX"
    scene.view_settings.look = given.look
    scene.view_settings.exposure = given.exposure


if __name__ == "__main__":
    parser = ArgumentParser(description=__doc__)
    parser.add_argument("model", type=Path)
    parser.add_argument("picture", type=Path)
    parser.add_argument("--width", type=int, default=1600)
    parser.add_argument("--samples", type=int, default=32)
    parser.add_argument("--threads", type=int, default=1)
    parser.add_argument("--quality", type=int, default=86)
    parser.add_argument("--exposure", type=float, default=0.15)
    parser.add_argument("--look", default="AgX - Medium High Contrast")
    main(parser.parse_args())
