"""Every picture of a plan at one size, by name."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.drawing.corner_view import corner_view, exploded_view
from scantling.drawing.detail import detail_drawing
from scantling.drawing.elevation import FACES, elevation
from scantling.drawing.model import Model, make_model
from scantling.drawing.outline import plain_outline
from scantling.drawing.shape import Scene
from scantling.drawing.step_picture import step_pictures
from scantling.measure import Display
from scantling.plan import FittedPlan


@dataclass(frozen=True, slots=True)
class Picture:
    """One picture."""

    name: str
    """corner, front, side, top, exploded, step or detail."""
    scene: Scene
    step: int = 0
    """The number of the step that it belongs to, for a step picture."""
    part: str = ""
    """The part that it shows, for a detail."""


def head_picture(fitted: FittedPlan, display: Display | None = None, *, width: float = 440.0) -> Scene | None:
    """Return the picture for a catalog card: the piece from the corner, else its overall outline."""
    model = make_model(fitted, display)
    if model is None:
        return plain_outline(fitted, display, width=width)
    return corner_view(model, width=width, sizes=False)


def all_pictures(model: Model, *, width: float = 440.0) -> Iterator[Picture]:
    """Yield every picture of a placed plan: the whole, its elevations, apart, its steps, its joinery."""
    yield Picture("corner", corner_view(model, width=width))
    for name in FACES:
        yield Picture(name, elevation(model, name, width=width))
    yield Picture("exploded", exploded_view(model, width=width))
    for step, scene in zip(model.fitted.steps, step_pictures(model, width=width), strict=True):
        if scene is not None:
            yield Picture("step", scene, step=step.number)
    yield from details(model.fitted, model.display, width=width)


def details(
    fitted: FittedPlan, display: Display, *, width: float = 440.0, face: float = 1.0
) -> Iterator[Picture]:
    """Yield the detail of each part that has work done on it, placed or not."""
    for part in fitted.parts:
        scene = detail_drawing(part, display, width=width, face=face)
        if scene is not None:
            yield Picture("detail", scene, part=part.id)
