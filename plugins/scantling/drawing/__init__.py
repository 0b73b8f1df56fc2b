"""Drawings: a scene of flat shapes in one look, and SVG made of it."""

from scantling.drawing.arrow import arrow, numbered
from scantling.drawing.board_picture import BoardPicture, CutPicture, OffcutPicture, PiecePicture
from scantling.drawing.body import Body, is_drawable, make_bodies, size_words
from scantling.drawing.corner_view import corner_view, exploded_view
from scantling.drawing.cut_diagram import cut_diagram, told
from scantling.drawing.cut_order import cut_order
from scantling.drawing.detail import detail_drawing
from scantling.drawing.detail_words import work_words
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.elevation import FACES, elevation
from scantling.drawing.escape import escape
from scantling.drawing.fit_check import (
    check_fit,
    find_blocked,
    find_broken_through,
    find_clashes,
    find_gaps,
    find_wrong_size,
)
from scantling.drawing.glb import to_glb
from scantling.drawing.lettering import shorten, text_width, wrap
from scantling.drawing.look import LOOKS, PATTERNS, dark_style
from scantling.drawing.model import Model, make_model
from scantling.drawing.outline import plain_outline
from scantling.drawing.pictures import Picture, all_pictures, details, head_picture
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
from scantling.drawing.step_picture import Built, build_up, step_picture, step_pictures
from scantling.drawing.svg import to_svg
from scantling.drawing.template import Template, templates
from scantling.drawing.tile import Tile, tiles

__all__ = [
    "FACES",
    "LOOKS",
    "PATTERNS",
    "Axis",
    "BoardPicture",
    "Body",
    "Built",
    "Circle",
    "Curve",
    "CutPicture",
    "Group",
    "Line",
    "Mark",
    "Model",
    "Move",
    "OffcutPicture",
    "Path",
    "Picture",
    "PiecePicture",
    "Plot",
    "Point",
    "Polygon",
    "Polyline",
    "Rectangle",
    "Scene",
    "Shape",
    "Strokes",
    "Template",
    "Text",
    "Tile",
    "across",
    "all_pictures",
    "arrow",
    "build_up",
    "check_fit",
    "corner_view",
    "cut_diagram",
    "cut_order",
    "dark_style",
    "detail_drawing",
    "details",
    "elevation",
    "escape",
    "exploded_view",
    "find_blocked",
    "find_broken_through",
    "find_clashes",
    "find_gaps",
    "find_wrong_size",
    "head_picture",
    "is_drawable",
    "make_bodies",
    "make_model",
    "numbered",
    "plain_outline",
    "plot_scene",
    "round_ticks",
    "shorten",
    "size_words",
    "step_picture",
    "step_pictures",
    "templates",
    "text_width",
    "tiles",
    "to_glb",
    "to_svg",
    "told",
    "upright",
    "work_words",
    "wrap",
]
