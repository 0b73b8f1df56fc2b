"""A plain outline from nothing but the overall sizes, for a plan whose parts have no place yet."""

from __future__ import annotations

from scantling.drawing.dimension_line import slanted
from scantling.drawing.shape import Line, Polygon, Scene, Shape
from scantling.drawing.stage import Stage
from scantling.geometry import CORNER, Vector
from scantling.measure import Display, Length
from scantling.plan import FittedPlan
from scantling.words import say

_MARGIN = 36.0


def plain_outline(
    fitted: FittedPlan, display: Display | None = None, *, width: float = 440.0
) -> Scene | None:
    """Return a box of the piece's overall size seen from the corner, or None where the plan names no size."""
    shown = display or Display()
    sizes = fitted.overall()
    if not sizes:
        return None
    x, y, z = (_number(sizes.get(name), sizes) for name in ("width", "depth", "height"))
    corners: list[Vector] = [
        (i * x, j * y, k * z) for k in (0, 1) for i, j in ((0, 0), (1, 0), (1, 1), (0, 1))
    ]
    flat = [CORNER.flat(corner) for corner in corners]
    left, right = min(a for a, _ in flat), max(a for a, _ in flat)
    top, bottom = min(b for _, b in flat), max(b for _, b in flat)
    scale = min((width - 2 * _MARGIN) / (right - left), width * 0.9 / (bottom - top))
    stage = Stage(CORNER, scale, (width - (right + left) * scale) / 2, 12 - top * scale)
    shapes = _box([stage.at(corner) for corner in corners])
    edges = (("width", 0, 1, (0.0, 17.0)), ("depth", 1, 2, (8.0, 15.0)), ("height", 0, 4, (-17.0, 0.0)))
    shapes += [
        slanted(stage.at(corners[one]), stage.at(corners[other]), shown.length(sizes[name]), off)
        for name, one, other, off in edges
        if name in sizes
    ]
    words = ", ".join(f"{say(name)} {shown.length(length)}" for name, length in sizes.items())
    told = say("A plain box of the overall size: {sizes}. The parts are not drawn.", sizes=words)
    return Scene(
        width,
        (bottom - top) * scale + 46,
        tuple(shapes),
        say("{plan}, overall size", plan=fitted.plan.title),
        told,
    )


def _number(length: Length | None, sizes: dict[str, Length]) -> float:
    """Return a length as a number; a size that the plan does not name is drawn as half of the largest."""
    if length is None:
        return max(other.top / other.bottom for other in sizes.values()) / 2
    return length.top / length.bottom


def _box(at: list[tuple[float, float]]) -> list[Shape]:
    hidden = ((3, 0), (3, 2), (3, 7))
    sides = (((0, 1, 5, 4), "wood"), ((1, 2, 6, 5), "side"), ((4, 5, 6, 7), "top"))
    shapes: list[Shape] = [Polygon(tuple(at[i] for i in side), f"edge {shade}") for side, shade in sides]
    return [*shapes, *(Line(*at[one], *at[other], "hidden") for one, other in hidden)]
