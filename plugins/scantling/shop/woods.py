"""Woods and panels by name: what weight, stiffness and movement are computed from.

Sources: FPL-GTR-190, *Wood Handbook* (2010), Tables 4-3 (shrinkage) and 5-3 (specific gravity and
stiffness of clear wood at 12 % moisture), and NDS 2018 Table 12.3.3A (specific gravity of species
groups, ovendry volume). Two bases of specific gravity are in use; each row says which is its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

WATER = Fraction(624, 10)
"""Weight of water, lb/ft3, as the handbook's and the NDS formulas use it."""
MOISTURE = 12
"""Moisture content, percent, at which weights are given."""


@dataclass(frozen=True, slots=True)
class Wood:
    """One species, species group or panel."""

    name: str
    gravity: Fraction
    """Specific gravity: ovendry mass over the volume that `basis` names."""
    basis: str
    """"12%" (Wood Handbook Table 5-3), "ovendry" (NDS) or "panel" (weight as sold)."""
    stiffness: int
    """Modulus of elasticity of clear wood, psi; 0 where none was found."""
    radial: Fraction
    tangential: Fraction
    """Shrinkage green to ovendry, percent of the green dimension; 0 for panels."""
    source: str

    @property
    def density(self) -> Fraction:
        """Return the weight in lb/ft3 at 12 % moisture."""
        if self.basis == "12%":
            return WATER * self.gravity * (1 + Fraction(MOISTURE, 100))
        if self.basis == "ovendry":
            return (
                WATER
                * self.gravity
                / (1 + Fraction(9, 1000) * self.gravity * MOISTURE)
                * (1 + Fraction(MOISTURE, 100))
            )
        return WATER * self.gravity


def _wood(
    name: str, gravity: str, basis: str, stiffness: int, radial: str, tangential: str, source: str
) -> Wood:
    return Wood(name, Fraction(gravity), basis, stiffness, Fraction(radial), Fraction(tangential), source)


_HANDBOOK = "FPL-GTR-190 Tables 4-3 and 5-3"
_GROUP = "NDS 2018 Table 12.3.3A"
_MEMORY = "from memory"
WOODS: dict[str, Wood] = {
    wood.name: wood
    for wood in (
        _wood("spruce-pine-fir", "0.42", "ovendry", 1_400_000, "0", "0", _GROUP),
        _wood("douglas fir-larch", "0.50", "ovendry", 1_600_000, "4.8", "7.6", _GROUP),
        _wood("southern pine", "0.55", "ovendry", 1_410_000, "4.8", "7.4", _GROUP),
        _wood("hem-fir", "0.43", "ovendry", 1_300_000, "0", "0", _GROUP),
        _wood("western cedar", "0.36", "ovendry", 1_110_000, "2.4", "5.0", _GROUP),
        _wood("white ash", "0.60", "12%", 1_740_000, "4.9", "7.8", _HANDBOOK),
        _wood("red alder", "0.41", "12%", 1_380_000, "4.4", "7.3", _HANDBOOK),
        _wood("quaking aspen", "0.38", "12%", 1_180_000, "3.5", "6.7", _HANDBOOK),
        _wood("american basswood", "0.37", "12%", 1_460_000, "6.6", "9.3", _HANDBOOK),
        _wood("american beech", "0.64", "12%", 1_720_000, "5.5", "11.9", _HANDBOOK),
        _wood("yellow birch", "0.62", "12%", 2_010_000, "7.3", "9.5", _HANDBOOK),
        _wood("black cherry", "0.50", "12%", 1_490_000, "3.7", "7.1", _HANDBOOK),
        _wood("red maple", "0.54", "12%", 1_640_000, "4.0", "8.2", _HANDBOOK),
        _wood("sugar maple", "0.63", "12%", 1_830_000, "4.8", "9.9", _HANDBOOK),
        _wood("northern red oak", "0.63", "12%", 1_820_000, "4.0", "8.6", _HANDBOOK),
        _wood("white oak", "0.68", "12%", 1_780_000, "5.6", "10.5", _HANDBOOK),
        _wood("black walnut", "0.55", "12%", 1_680_000, "5.5", "7.8", _HANDBOOK),
        _wood("yellow-poplar", "0.42", "12%", 1_580_000, "4.6", "8.2", _HANDBOOK),
        _wood("eastern white pine", "0.35", "12%", 1_240_000, "2.1", "6.1", _HANDBOOK),
        _wood("ponderosa pine", "0.40", "12%", 1_290_000, "3.9", "6.2", _HANDBOOK),
        _wood("softwood plywood", "0.55", "panel", 1_200_000, "0", "0", _MEMORY),
        _wood("hardwood plywood", "0.58", "panel", 1_200_000, "0", "0", _MEMORY),
        _wood("hardboard", "0.95", "panel", 0, "0", "0", _MEMORY),
        _wood("medium-density fibreboard", "0.77", "panel", 400_000, "0", "0", _MEMORY),
    )
}
"""Every wood and panel known, by its name in lower case."""


def wood_named(name: str) -> Wood | None:
    """Return the wood of that name, whatever its capitals, or None."""
    return WOODS.get(name.strip().casefold())
