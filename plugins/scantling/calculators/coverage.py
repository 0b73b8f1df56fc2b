"""How much finish or glue for so much surface."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Given, Panel, decimals
from scantling.measure import Area, Length

CUBIC_INCHES_IN_GALLON = 231
"""A US gallon, exactly (NIST Handbook 44, Appendix C)."""
LITRES_IN_GALLON = Fraction(3_785_411_784, 1_000_000_000)
"""Exactly 231 cubic inches of 2.54 cm."""
PINTS_IN_GALLON, OUNCES_IN_GALLON = 8, 128


@dataclass(frozen=True, slots=True)
class Liquid:
    """An amount of something liquid, in US gallons."""

    gallons: Fraction

    @property
    def litres(self) -> Fraction:
        """Return it in litres."""
        return self.gallons * LITRES_IN_GALLON

    @property
    def ounces(self) -> Fraction:
        """Return it in US fluid ounces."""
        return self.gallons * OUNCES_IN_GALLON

    def in_units(self, given: Given) -> tuple[Fraction, str]:
        """Return the number and unit in which a reader would buy it."""
        if given.display.system == "mm":
            return (self.litres, "l") if self.litres >= 1 else (self.litres * 1000, "ml")
        if self.gallons >= 1:
            return self.gallons, "gal"
        return (self.gallons * 4, "qt") if self.gallons * 4 >= 1 else (self.ounces, "fl oz")

    def words(self, given: Given) -> str:
        """Return it in words."""
        number, unit = self.in_units(given)
        hundredth = Fraction(int(number * 100 + Fraction(1, 2)), 100)
        return f"{decimals(hundredth, 2)} {unit}"


def faces(panels: tuple[Panel, ...]) -> Area:
    """Return the area of one face of every panel."""
    return sum((panel.length * panel.width * panel.count for panel in panels), Area(0))


def edges(panels: tuple[Panel, ...], thickness: Length) -> Area:
    """Return the area of all four edges of every panel."""
    return sum(((panel.length + panel.width) * 2 * thickness * panel.count for panel in panels), Area(0))


def gallon_covers(given: Given, number: Fraction) -> Area:
    """Return what a gallon covers, from square feet to the gallon, or square metres to the litre."""
    if given.display.system == "mm":
        return Area.of_square_metres(number * LITRES_IN_GALLON)
    return Area.of_square_feet(number)


def film(area: Area, thickness: Length) -> Liquid:
    """Return what a wet film of a thickness takes."""
    return Liquid((area * thickness).cubic_inches / CUBIC_INCHES_IN_GALLON)
