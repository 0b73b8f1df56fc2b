"""The formulas of the checks: how far a shelf sags, how wide wood swells, what tips a piece over.

Exact in what they are given; wood itself differs from board to board by a fifth and more.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.measure import Length, Weight

CREEP = Fraction(3, 2)
"""How much further a shelf sags in the end under its load (NDS 3.5.2, seasoned lumber; from memory)."""
SIMPLE_EVEN = Fraction(5, 384)
"""Sag in the middle, both ends resting, load spread evenly (FPL-GTR-190 Table 9-1)."""


def shelf_sag(span: Length, thick: Length, stiffness: Fraction, load: Fraction) -> Length:
    """Return how far a shelf sags in the middle at once, its ends resting, the load spread evenly.

    FPL-GTR-190 Eq. 9-2 without its term for shear, some 1 or 2 percent for shelves. The depth of the shelf
    cancels out: a deeper shelf carries more.

    Args:
        stiffness: modulus of elasticity, psi.
        load: pounds on each square foot.
    """
    per_width = load / 144 * span.inches
    section = thick.inches**3 / 12
    return Length(SIMPLE_EVEN * per_width * span.inches**3 / (stiffness * section))


def movement(width: Length, shrinkage: Fraction, dry: Fraction, damp: Fraction) -> Length:
    """Return how much wider a board is at one moisture content than at another, across the grain.

    FPL-GTR-190 Eq. 13-2, its coefficient from Eq. 13-3 at 10 % moisture, as its Table 13-5 has it;
    good from 6 to 14 % moisture.

    Args:
        shrinkage: green to ovendry, percent.
        dry: moisture content, percent.
        damp: moisture content, percent.
    """
    coefficient = 1 / (3000 / shrinkage - 20)
    return width * (coefficient * (damp - dry))


@dataclass(frozen=True, slots=True)
class Standing:
    """A piece of furniture as a block that stands on its edge: what it weighs, how deep and high it is."""

    weight: Weight
    depth: Length
    height: Length

    @property
    def pull(self) -> Weight:
        """Return the pull forwards at the top that begins to tip it, empty.

        Moments about the front edge; the weight is taken to act in the middle of the depth.
        """
        return self.weight * (self.depth / (2 * self.height))

    def drawer_load(self, out: Length) -> Weight:
        """Return the load that begins to tip it, resting so far in front of its front edge."""
        return self.weight * (self.depth / (2 * out))
