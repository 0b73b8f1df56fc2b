"""Solids in space: how they lie to each other, how they look from somewhere, how a brace fits."""

from scantling.geometry.apart import divider, parting
from scantling.geometry.brace import SEATS, Brace, fit_brace
from scantling.geometry.painter import Painted, paint_order
from scantling.geometry.solid import NEAR, Plane, Solid, box, carve, clip, planes_of
from scantling.geometry.vector import Vector, cross, dot, minus, plus, size, times, unit
from scantling.geometry.view import CORNER, FRONT, SIDE, TOP, View

__all__ = [
    "CORNER",
    "FRONT",
    "NEAR",
    "SEATS",
    "SIDE",
    "TOP",
    "Brace",
    "Painted",
    "Plane",
    "Solid",
    "Vector",
    "View",
    "box",
    "carve",
    "clip",
    "cross",
    "divider",
    "dot",
    "fit_brace",
    "minus",
    "paint_order",
    "parting",
    "planes_of",
    "plus",
    "size",
    "times",
    "unit",
]
