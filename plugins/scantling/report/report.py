"""Everything that is computed of one plan at one size, together."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.cutting import DEFAULT_STEPS, CuttingPlan, Memory, cut_plan
from scantling.plan import USUAL, Choice, FittedPlan, Fitter
from scantling.report.materials import MaterialsList, list_materials
from scantling.report.totals import Totals, total
from scantling.report.trace import Origin, trace
from scantling.shop import Shop


@dataclass(frozen=True, slots=True)
class Report:
    """One plan at one size: parts, cutting plan, materials, sums and traces."""

    fitted: FittedPlan
    shop: Shop
    cutting: CuttingPlan
    materials: MaterialsList
    totals: Totals
    origins: tuple[Origin, ...]


def report_on(
    fitter: Fitter, choice: Choice = USUAL, *, steps: int = DEFAULT_STEPS, memory: Memory | None = None
) -> Report:
    """Return the report on a plan at one size.

    Args:
        steps: how much work the cutting plan may take.
        memory: where answers of the solver are remembered, if anywhere.

    Raises:
        Faulty: where the plan does not work at that size.
    """
    return make_report(fitter.fit(choice), fitter.shop, steps=steps, memory=memory)


def make_report(
    fitted: FittedPlan, shop: Shop, *, steps: int = DEFAULT_STEPS, memory: Memory | None = None
) -> Report:
    """Return the report on a fitted plan.

    Raises:
        Faulty: where its parts cannot be cut from what the shop sells.
    """
    cutting = cut_plan(fitted, shop, steps=steps, memory=memory)
    materials = list_materials(fitted, cutting, shop)
    return Report(
        fitted=fitted,
        shop=shop,
        cutting=cutting,
        materials=materials,
        totals=total(fitted, cutting, materials, shop),
        origins=trace(fitted, cutting),
    )
