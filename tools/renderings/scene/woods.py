"""What each wood looks like: its colours (linear red, green, blue), its rings and what else is seen of it."""

from __future__ import annotations

from dataclasses import dataclass

Colour = tuple[float, float, float]


@dataclass(frozen=True)
class Wood:
    """What sets one wood apart from another."""

    early: Colour
    late: Colour
    rings: float
    """A metre."""
    contrast: float
    rough: float = 0.5
    pores: float = 0.0
    knots: float = 0.0
    """How likely one is on each foot."""
    vary: float = 0.08
    """How far the tone goes from piece to piece."""
    plies: int = 0


WOODS = {
    "eastern white pine": Wood((0.61, 0.375, 0.155), (0.42, 0.2, 0.062), 330, 0.55, knots=0.16, vary=0.07),
    "spruce-pine-fir": Wood((0.58, 0.35, 0.14), (0.37, 0.165, 0.05), 300, 0.66, knots=0.22, vary=0.09),
    "douglas fir-larch": Wood((0.58, 0.3, 0.13), (0.33, 0.12, 0.04), 300, 0.7, knots=0.14),
    "western cedar": Wood(
        (0.37, 0.155, 0.054), (0.17, 0.054, 0.018), 380, 0.8, rough=0.68, knots=0.14, vary=0.26
    ),
    "northern red oak": Wood((0.45, 0.225, 0.085), (0.29, 0.115, 0.036), 340, 0.62, rough=0.42, pores=0.55),
    "yellow-poplar": Wood((0.55, 0.47, 0.25), (0.4, 0.33, 0.15), 260, 0.4),
    "hardwood plywood": Wood((0.63, 0.405, 0.195), (0.46, 0.245, 0.093), 150, 0.5, 0.4, vary=0.03, plies=9),
    "softwood plywood": Wood(
        (0.55, 0.315, 0.115), (0.33, 0.14, 0.04), 130, 0.75, 0.62, knots=0.2, vary=0.05, plies=7
    ),
    "hardboard": Wood((0.2, 0.11, 0.055), (0.18, 0.095, 0.045), 10, 0.1, 0.7, vary=0.02),
}
