"""Every number that the product computes, so that none goes unchecked.

Each file here lists what one room computes. A number enters the list together with the test in
tests/outside/ that compares it with something which nobody here wrote; the suite fails for a
quantity without such a test, and the page "What the numbers are checked against" is made from both.
"""

from __future__ import annotations

from scantling.quantities import (
    calculators,
    checks,
    cutting,
    drawing,
    formula,
    geometry,
    measure,
    plan,
    report,
    shop,
    words,
)
from scantling.quantities.quantity import Quantity

QUANTITIES: tuple[Quantity, ...] = (
    *words.QUANTITIES,
    *measure.QUANTITIES,
    *geometry.QUANTITIES,
    *formula.QUANTITIES,
    *shop.QUANTITIES,
    *plan.QUANTITIES,
    *cutting.QUANTITIES,
    *report.QUANTITIES,
    *drawing.QUANTITIES,
    *calculators.QUANTITIES,
    *checks.QUANTITIES,
)
"""Every computed quantity, grouped by room from the lowest up."""

__all__ = ["QUANTITIES", "Quantity"]
