"""The 3-D file of a plan at one size, as bytes and as text."""

from __future__ import annotations

from base64 import b64encode

from scantling.drawing import make_model, to_glb
from scantling.measure import Display
from scantling.plan import FittedPlan

MODEL_FILE = "plan.glb"
"""Its name beside the page."""


def model_file(fitted: FittedPlan, display: Display) -> bytes | None:
    """Return the 3-D file, or None where the parts have no place or are too many to draw.

    Args:
        display: how the sizes that each part carries are written.
    """
    model = make_model(fitted, display)
    return None if model is None else to_glb(model)


def model_text(fitted: FittedPlan, display: Display) -> str:
    """Return the 3-D file in base64, as an answer in JSON carries it; "" where there is none."""
    return b64encode(model_file(fitted, display) or b"").decode("ascii")
