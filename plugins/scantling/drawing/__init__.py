"""Drawings: a scene of flat shapes in one look, and SVG made of it."""

from scantling.drawing.arrow import arrow, numbered
from scantling.drawing.board_picture import BoardPicture, CutPicture, OffcutPicture, PiecePicture
from scantling.drawing.cut_diagram import cut_diagram, told
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.escape import escape
from scantling.drawing.lettering import shorten, text_width, wrap
from scantling.drawing.look import LOOKS, PATTERNS, dark_style
from scantling.drawing.plot import Axis, Curve, Mark, Plot, plot_scene, round_ticks
from scantling.drawing.shape import (
    Circle,
    Group,
    Line,
    Move,
    Path,
    Point,
    Polygon,
    Polyline,
    Rectangle,
    Scene,
    Shape,
    Strokes,
    Text,
)
from scantling.drawing.svg import to_svg

__all__ = [
    "LOOKS",
    "PATTERNS",
    "Axis",
    "BoardPicture",
    "Circle",
    "Curve",
    "CutPicture",
    "Group",
    "Line",
    "Mark",
    "Move",
    "OffcutPicture",
    "Path",
    "PiecePicture",
    "Plot",
    "Point",
    "Polygon",
    "Polyline",
    "Rectangle",
    "Scene",
    "Shape",
    "Strokes",
    "Text",
    "across",
    "arrow",
    "cut_diagram",
    "dark_style",
    "escape",
    "numbered",
    "plot_scene",
    "round_ticks",
    "shorten",
    "text_width",
    "to_svg",
    "told",
    "upright",
    "wrap",
]
