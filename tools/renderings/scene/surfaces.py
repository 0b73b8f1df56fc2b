"""The surfaces: wood by its shader, painted boards and a sealed concrete floor."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from tempfile import mkdtemp
from typing import Any

import bpy
from woods import WOODS, Colour, Wood

_SHADER = Path(__file__).with_name("wood.osl")
_ASKED = {
    **dict.fromkeys(("At", "Chance"), "Vector"),
    **dict.fromkeys(("Early", "Late"), "Color"),
    **dict.fromkeys(("Strips", "Wide", "Layers", "Thick", "Rings", "Contrast"), "Float"),
    **dict.fromkeys(("Pores", "Knots", "Vary", "Plies"), "Float"),
}
"""What wood.osl is given."""


@cache
def wood(name: str) -> Any:
    """Return the surface of a wood; what is a piece's own it asks of the object."""
    kind = WOODS[name]
    surface, nodes, links, base = _surface(name, kind.rough)
    script = _script(nodes)
    for name_of, value in _given(kind).items():
        script.inputs[name_of].default_value = value
    links.new(nodes.new("ShaderNodeTexCoord").outputs["Object"], script.inputs["At"])
    for own in ("Chance", "Strips", "Wide", "Layers", "Thick"):
        asked = nodes.new("ShaderNodeAttribute")
        asked.attribute_type = "OBJECT"
        asked.attribute_name = own
        links.new(asked.outputs["Vector" if own == "Chance" else "Factor"], script.inputs[own])
    links.new(script.outputs["Colour"], base.inputs["Base Color"])
    _bumped(nodes, links, base, script.outputs["Height"], 0.00035)
    return surface


def _script(nodes: Any) -> Any:
    """Return a node of the shader; its sockets are made here, since the module holds nothing that asks it."""
    script = nodes.new("ShaderNodeScript")
    script.mode = "EXTERNAL"
    script.filepath = _compiled()
    for name, kind in _ASKED.items():
        script.inputs.new(f"NodeSocket{kind}", name, identifier=name)
    script.outputs.new("NodeSocketColor", "Colour", identifier="Colour")
    script.outputs.new("NodeSocketFloat", "Height", identifier="Height")
    return script


@cache
def _compiled() -> str:
    import _cycles  # noqa: PLC0415 - is there once bpy is

    made = Path(mkdtemp()) / "wood.oso"
    if not _cycles.osl_compile(str(_SHADER), str(made)):
        raise RuntimeError("wood.osl does not compile")
    return str(made)


def _given(kind: Wood) -> dict[str, Any]:
    return {
        "Early": (*kind.early, 1),
        "Late": (*kind.late, 1),
        "Rings": kind.rings,
        "Contrast": kind.contrast,
        "Pores": kind.pores,
        "Knots": kind.knots,
        "Vary": kind.vary,
        "Plies": kind.plies,
    }


def paint(colour: Colour) -> Any:
    """Return a coat of paint on a wall, a little uneven."""
    surface, nodes, links, base = _surface("paint", 0.55)
    base.inputs["Base Color"].default_value = (*colour, 1)
    _bumped(nodes, links, base, _noise(nodes, 60, 4).outputs["Factor"], 0.0006)
    return surface


def concrete(colour: Colour) -> Any:
    """Return a floor of sealed concrete, clouded."""
    surface, nodes, links, base = _surface("concrete", 0.42)
    blend = nodes.new("ShaderNodeMix")
    blend.data_type = "RGBA"
    links.new(_noise(nodes, 2.2, 9).outputs["Factor"], blend.inputs["Factor"])
    blend.inputs[6].default_value = (*(part * 0.72 for part in colour), 1)
    blend.inputs[7].default_value = (*(part * 1.2 for part in colour), 1)
    links.new(blend.outputs[2], base.inputs["Base Color"])
    _bumped(nodes, links, base, _noise(nodes, 130, 5).outputs["Factor"], 0.0005)
    return surface


def _surface(name: str, rough: float) -> tuple[Any, Any, Any, Any]:
    surface = bpy.data.materials.new(name)
    surface.use_nodes = True
    nodes = surface.node_tree.nodes
    base = nodes["Principled BSDF"]
    base.inputs["Roughness"].default_value = rough
    return surface, nodes, surface.node_tree.links, base


def _noise(nodes: Any, scale: float, detail: float) -> Any:
    noise = nodes.new("ShaderNodeTexNoise")
    noise.inputs["Scale"].default_value = scale
    noise.inputs["Detail"].default_value = detail
    return noise


def _bumped(nodes: Any, links: Any, base: Any, height: Any, deep: float) -> None:
    bump = nodes.new("ShaderNodeBump")
    bump.inputs["Distance"].default_value = deep
    links.new(height, bump.inputs["Height"])
    links.new(bump.outputs["Normal"], base.inputs["Normal"])
