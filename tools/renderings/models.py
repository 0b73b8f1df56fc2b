"""What a renderer asks of a plan: each piece as it stands, which way its grain runs, of which wood it is."""

from __future__ import annotations

from typing import Any

from scantling.drawing import Body, make_model
from scantling.geometry import Vector, cross, dot, minus, times, unit
from scantling.plan import USUAL, FittedPart, Fitter

Frame = tuple[Vector, Vector, Vector]
"""Along the length, across the width and through the thickness: of length one, square to each other."""


def model_of(fitter: Fitter) -> dict[str, Any]:
    """Return the plan's pieces at its usual size, as JSON holds them; in inches.

    Raises:
        ValueError: where some part has no place, so that there is nothing to see.
    """
    model = make_model(fitter.fit(USUAL))
    if model is None:
        raise ValueError(f"the parts of '{fitter.plan.title}' have no place")
    pieces = [_piece(body, _wood(body.part, fitter)) for body in model.bodies]
    return {"title": fitter.plan.title, "pieces": pieces}


def _wood(part: FittedPart, fitter: Fitter) -> str:
    """Return the wood of what a part is cut from, or of the part whose offcut it is."""
    source = part.part.source
    while not source.stocks:
        source = fitter.plan.parts[source.offcut_of].source
    return fitter.shop.stocks[source.stocks[0]].wood


def _piece(body: Body, wood: str) -> dict[str, Any]:
    frame = _frame(body)
    glued = body.part.part.glue_up
    return {
        "name": f"{body.part.id} {body.placed.number}",
        "wood": wood,
        "middle": body.middle,
        "frame": frame,
        "glued": [glued.how, body.part.blank.pieces] if glued is not None else None,
        "round": _rounded(body.part),
        "solids": [
            {
                "points": [_seen(minus(point, body.middle), frame) for point in solid.points],
                "sides": solid.sides,
            }
            for solid in body.solids
        ],
    }


def _frame(body: Body) -> Frame:
    along = unit(body.along)
    axis = body.placed.axes[2]
    through: Vector = (float(axis == 0), float(axis == 1), float(axis == 2))
    through = unit(minus(through, times(along, dot(through, along))))  # a leg may lean
    return along, cross(through, along), through


def _seen(point: Vector, frame: Frame) -> Vector:
    along, across, through = frame
    return dot(point, along), dot(point, across), dot(point, through)


def _rounded(part: FittedPart) -> float:
    """Return how far the edges are rounded over."""
    depths = [work.depth for work in part.work if work.work.kind == "roundover" and work.depth is not None]
    return max((depth.top / depth.bottom for depth in depths), default=0.0)
