"""Fitting a plan to a size."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula import Value, arrange, name_of
from scantling.measure import Area, Length, write_length
from scantling.plan.definitions import ATTRIBUTES, define
from scantling.plan.fit_parts import fit_part
from scantling.plan.fit_rest import fit_rest
from scantling.plan.fitted import USUAL, Choice, FittedPart, FittedPlan
from scantling.plan.model import Plan, Size
from scantling.plan.trimmings import trimmings
from scantling.shop import Shop


class Fitter:
    """A plan and a shop, made ready to be fitted at many sizes.

    Raises:
        Faulty: on making one, with every fault that is there whatever the size.
    """

    def __init__(self, plan: Plan, shop: Shop) -> None:
        faults: list[Fault] = []
        self.plan = plan
        self.shop = shop
        self._names = define(plan, shop, faults)
        given = [*plan.sizes, *plan.options, *self._names.given]
        self._order = arrange(self._names.formulas, given)
        faults += [self._placed(fault) for fault in self._order.faults]
        if faults:
            raise Faulty(faults)

    def _placed(self, fault: Fault) -> Fault:
        """Return a fault that names a formula as one that names its place in the plan."""
        name = str(fault.place.path[0])
        place = self._names.places.get(name, Place(("parts",)))
        start = fault.place.start if place.path[-1] in ATTRIBUTES or place.path[0] == "lengths" else None
        end = fault.place.end if start is not None else None
        return Fault(
            fault.code, fault.message, Place(place.path, start, end), fault.help, fault.notes, fault.severity
        )

    def fit(self, choice: Choice = USUAL) -> FittedPlan:
        """Return the plan at one size.

        Raises:
            Faulty: with every fault at that size.
        """
        faults: list[Fault] = []
        given = self._given(choice, faults)
        if faults:
            raise Faulty(faults)
        resolved = self._order.evaluate({**self._names.given, **given})
        values = resolved.values
        faults += [self._placed(fault) for fault in resolved.faults if not self._is_absent(fault, values)]
        parts = self._parts(values, faults)
        if faults:
            raise Faulty(faults)
        scope = dict(values)
        scope["surface"] = sum((part.surface * part.count for part in parts), Area(Fraction(0)))
        for part in self.plan.parts.values():
            scope[f"{part.id}.count"] = Fraction(next((fit.count for fit in parts if fit.id == part.id), 0))
        sizes = {name: given[name] for name in self.plan.sizes}
        options = {name: str(given[name]) for name in self.plan.options}
        fitted = fit_rest(
            self.plan, self.shop, sizes, options, scope, parts, trimmings(parts, self.shop.kerf), faults
        )
        if faults:
            raise Faulty(faults)
        return fitted

    def _given(self, choice: Choice, faults: list[Fault]) -> dict[str, Value]:
        for name in [*choice.sizes, *choice.options]:
            known = self.plan.sizes if name in choice.sizes else self.plan.options
            if name not in known:
                help_line = did_you_mean(
                    name, [*self.plan.sizes, *self.plan.options], kind="sizes and options"
                )
                faults.append(
                    Fault("unknown-name", f"this plan has no size or option '{name}'", Place(), help_line)
                )
        given: dict[str, Value] = {
            name: _chosen_size(size, choice.sizes.get(name, size.usual), faults)
            for name, size in self.plan.sizes.items()
        }
        for name, option in self.plan.options.items():
            word = choice.options.get(name, option.usual)
            if word not in option.choices:
                help_line = did_you_mean(word, option.choices, kind="choices")
                faults.append(
                    Fault("unknown-choice", f"'{word}' is no choice of '{name}'", option.place, help_line)
                )
            given[name] = word
        return given

    def _is_absent(self, fault: Fault, values: Mapping[str, Value]) -> bool:
        """Return whether a fault is in a part that is not there at this size."""
        part = str(fault.place.path[0]).rpartition(".")[0]
        if part not in self.plan.parts:
            return False
        return values.get(f"{part}.only if") is False or values.get(f"{part}.count") == 0

    def _parts(self, values: Mapping[str, Value], faults: list[Fault]) -> tuple[FittedPart, ...]:
        fitted = [fit_part(part, values, self.shop, faults) for part in self.plan.parts.values()]
        return tuple(part for part in fitted if part is not None)


def _chosen_size(size: Size, value: Value, faults: list[Fault]) -> Value:
    if name_of(value) != name_of(size.usual):
        message = f"{size.name} is {name_of(size.usual)}, not {name_of(value)}"
        faults.append(Fault("wrong-unit", message, size.place, f"write {name_of(size.usual)}"))
    elif not size.least <= value <= size.most:  # type: ignore[operator]
        low, high = (_shown(end) for end in (size.least, size.most))
        message = f"{size.name} may be from {low} to {high}; {_shown(value)} is outside"
        faults.append(Fault("outside-range", message, size.place, f"choose from {low} to {high}"))
    return value


def _shown(value: Value) -> str:
    return write_length(value, denominator=64) if isinstance(value, Length) else str(value)
