"""How each plan is seen: from which side, and before which wall."""

from __future__ import annotations

from dataclasses import dataclass

Colour = tuple[float, float, float]
WHITE, SAGE, HARBOUR, SAND, SLATE = (
    (0.62, 0.60, 0.55), (0.30, 0.35, 0.27), (0.22, 0.30, 0.36), (0.52, 0.44, 0.34), (0.16, 0.19, 0.21),
)  # fmt: skip


@dataclass(frozen=True)
class Seen:
    """Where the camera stands, and the paint on the wall."""

    turn: float = 32
    """Degrees to the right of straight ahead; negative to the left."""
    rise: float = 17
    """Degrees above level."""
    wall: Colour = WHITE
    gap: float = 3
    """From its back to the wall, in inches."""
    fill: float = 0.8
    """How much of the picture's narrower way it takes."""


SEEN = {
    "book-bin": Seen(wall=SAND, turn=35, rise=20),
    "drawer-cabinet": Seen(wall=HARBOUR, turn=-33, rise=16),
    "entry-bench": Seen(wall=SAGE, turn=30, rise=16),
    "herb-planter": Seen(wall=WHITE, turn=-32, rise=24, gap=14),
    "oak-side-table": Seen(wall=SLATE, turn=32, rise=18, gap=6),
    "picket-headboard": Seen(wall=HARBOUR, turn=-24, rise=9, gap=1),
    "plant-stand": Seen(wall=SAGE, turn=34, rise=20, gap=4),
    "plywood-bookcase": Seen(wall=SLATE, turn=28, rise=9, gap=1),
    "potting-bench": Seen(wall=WHITE, turn=-30, rise=14, gap=4),
    "sheet-workbench": Seen(wall=SAGE, turn=34, rise=17, gap=18),
    "sliding-door-console": Seen(wall=SAND, turn=-28, rise=14, gap=2),
    "splayed-stool": Seen(wall=HARBOUR, turn=30, rise=20, gap=14),
}
