"""Everything that is wrong with a plan, found in one go: as written, at usual and at offered sizes."""

from __future__ import annotations

from dataclasses import dataclass, replace

from scantling.fault import Fault, Faulty
from scantling.plan.fit import Fitter
from scantling.plan.fitted import USUAL
from scantling.plan.model import Plan
from scantling.plan.offers import offered_choices
from scantling.plan.poison import Poison
from scantling.plan.read import read_partly
from scantling.shop import Shop

_HERE = "at this size"


@dataclass(frozen=True, slots=True)
class Survey:
    """A plan as far as it could be read, and what is wrong with it."""

    plan: Plan | None
    """None where there is a fault."""
    fitter: Fitter | None
    """None where there is a fault, or no shop to fit to."""
    faults: tuple[Fault, ...]


def survey_plan(data: object, slug: str, shop: Shop | None) -> Survey:
    """Read a plan and fit it at every offered size; never raises for what an author wrote.

    Args:
        data: nested plain data, as for `read_plan`.
        shop: without one, only what does not depend on it is looked at.
    """
    faults: list[Fault] = []
    plan, poison = read_partly(data, slug, faults)
    if plan is None or shop is None:
        return Survey(None if faults else plan, None, tuple(faults))
    if not faults:
        try:
            fitter = Fitter(plan, shop)
        except Faulty:
            pass
        else:
            found = _at_offered_sizes(fitter)
            return Survey(None if found else plan, None if found else fitter, found)
    return Survey(None, None, (*faults, *_of_the_rest(plan, shop, poison)))


def _of_the_rest(plan: Plan, shop: Shop, poison: Poison) -> tuple[Fault, ...]:
    fitter = Fitter.of_faulty(plan, shop, poison)
    return (*fitter.faults, *poison.without_echoes(_at_offered_sizes(fitter)))


def _at_offered_sizes(fitter: Fitter) -> tuple[Fault, ...]:
    """Return the faults at the usual size, then those that only an offered size has, which is named."""
    _, usual = fitter.try_fit(USUAL)
    found = [replace(fault, message=fault.message.replace(_HERE, "at the usual size")) for fault in usual]
    seen = {(fault.code, fault.place) for fault in usual}
    for offered in offered_choices(fitter.plan):
        _, faults = fitter.try_fit(offered.choice)
        for fault in faults:
            if (fault.code, fault.place) not in seen:
                seen.add((fault.code, fault.place))
                found.append(replace(fault, message=_named(fault.message, f"at {offered.label}")))
    return tuple(found)


def _named(message: str, size: str) -> str:
    return message.replace(_HERE, size) if _HERE in message else f"{message} {size}"
