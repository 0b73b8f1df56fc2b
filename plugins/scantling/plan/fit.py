"""Fitting a plan to a size."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from fractions import Fraction
from functools import cached_property

from scantling.fault import Fault, Faulty, Note, Place, did_you_mean
from scantling.formula import Order, Value, arrange, name_of
from scantling.measure import Area, Length, write_length
from scantling.plan.definitions import ATTRIBUTES, define
from scantling.plan.fit_parts import fit_part
from scantling.plan.fit_rest import fit_bought, fit_rest
from scantling.plan.fitted import USUAL, Choice, FittedPart, FittedPlan
from scantling.plan.model import Part, Plan, Size
from scantling.plan.placement_fit import place_parts
from scantling.plan.poison import Poison
from scantling.plan.read_sizes import is_within
from scantling.plan.to_buy import names_to_buy
from scantling.plan.undefined import check_formulas
from scantling.shop import Shop

LATELY = 8
"""Fits that are remembered: a plan is looked over at the sizes that it offers, then reported on at each."""


class Fitter:
    """A plan and a shop, made ready to be fitted at many sizes.

    Raises:
        Faulty: on making one, with every fault that is there whatever the size.
    """

    def __init__(self, plan: Plan, shop: Shop) -> None:
        self._prepare(plan, shop, Poison())
        if self.faults:
            raise Faulty(self.faults)

    @classmethod
    def of_faulty(cls, plan: Plan, shop: Shop, poison: Poison) -> Fitter:
        """Return a fitter of a plan of which some is missing, to find what is wrong with the rest.

        Its `faults` are those that are there whatever the size; `try_fit` gives those at one size.
        """
        fitter = cls.__new__(cls)
        fitter._prepare(plan, shop, poison)  # noqa: SLF001 - the class's own
        return fitter

    def _prepare(self, plan: Plan, shop: Shop, poison: Poison) -> None:
        faults: list[Fault] = []
        self.plan = plan
        self.shop = shop
        self._lately: dict[object, tuple[FittedPlan | None, tuple[Fault, ...]]] = {}
        self._names = define(plan, shop, faults)
        given = [*plan.sizes, *plan.options, *self._names.given]
        self._order = arrange(self._names.formulas, [*given, *self._missing(poison)])
        faults += [self._placed(fault) for fault in self._order.faults if fault.code != "unknown-name"]
        defined = [(formula, self._places(name)) for name, formula in self._names.formulas.items()]
        names = {*given, *self._names.formulas, *self._names.lost, "surface"}
        faults += check_formulas(plan, defined, lambda name: name in names or poison.has(name))
        self.faults = tuple(poison.without_echoes(faults))

    def _missing(self, poison: Poison) -> Iterator[str]:
        """Yield the names that formulas may use though a fault keeps them from having a value."""
        yield from sorted(self._names.lost)
        for formula in self._names.formulas.values():
            yield from (name for name in formula.names if poison.has(name))

    def _places(self, name: str) -> Place:
        return self._names.places.get(name, Place(("parts",)))

    def _placed(self, fault: Fault) -> Fault:
        """Return a fault that names a formula as one that names its place in the plan."""
        notes = tuple(Note(note.message, note.place and self._moved(note.place)) for note in fault.notes)
        return replace(fault, place=self._moved(fault.place), notes=notes)

    def _moved(self, place: Place) -> Place:
        moved = self._places(str(place.path[0]))
        if moved.path[-1] in ATTRIBUTES or moved.path[0] == "lengths" or "place" in moved.path:
            return Place(moved.path, place.start, place.end)
        return Place(moved.path)

    def fit(self, choice: Choice = USUAL) -> FittedPlan:
        """Return the plan at one size.

        Raises:
            Faulty: with every fault at that size.
        """
        fitted, faults = self.try_fit(choice)
        if faults or fitted is None:
            raise Faulty(faults)
        return fitted

    def try_fit(self, choice: Choice = USUAL) -> tuple[FittedPlan | None, tuple[Fault, ...]]:
        """Return the plan at one size as far as it can be fitted, and every fault at that size."""
        key = tuple(choice.sizes.items()), tuple(choice.options.items())
        if key not in self._lately:
            while len(self._lately) >= LATELY:
                del self._lately[next(iter(self._lately))]
            self._lately[key] = self._try_fit(choice)
        return self._lately[key]

    def _try_fit(self, choice: Choice) -> tuple[FittedPlan | None, tuple[Fault, ...]]:
        faults: list[Fault] = []
        given = self._given(choice, faults)
        if faults:
            return None, tuple(faults)
        base = self._base(given, self._order, faults)
        fitted = place_parts(fit_rest(base, self.shop, faults), faults)
        return fitted, tuple(faults)

    def fit_to_buy(self, choice: Choice = USUAL) -> FittedPlan:
        """Return the plan at one size with only what decides what is bought, much quicker than `fit`: parts
        without place and work, what is trimmed off, joins and hardware.

        Raises:
            Faulty: where it cannot be bought; no fault is looked for in a place, a step or in words.
        """
        faults: list[Fault] = []
        given = self._given(choice, faults)
        if not faults:
            fitted = fit_bought(self._base(given, self._order_to_buy, faults), self.shop, faults)
        if faults:
            raise Faulty(faults)
        return fitted

    @cached_property
    def _order_to_buy(self) -> Order:
        """The formulas that decide what is bought."""
        wanted = names_to_buy(self.plan, self._names.formulas)
        formulas = tuple(named for named in self._order.formulas if named[0] in wanted)
        return Order(formulas, self._order.faults)

    def _base(self, given: Mapping[str, Value], order: Order, faults: list[Fault]) -> FittedPlan:
        """Return the plan with its sizes, values and parts, and nothing that stands around them."""
        resolved = order.evaluate({**self._names.given, **given})
        values = resolved.values
        known = set(self._order.faults)
        at_this_size = [
            fault for fault in resolved.faults if fault not in known and fault.code != "unknown-name"
        ]
        faults += [self._placed(fault) for fault in at_this_size if not self._is_absent(fault, values)]
        parts, broken = self._parts(values, faults)
        return FittedPlan(
            plan=self.plan,
            sizes={name: given[name] for name in self.plan.sizes},
            options={name: str(given[name]) for name in self.plan.options},
            values=_with_sums(self.plan, values, parts, broken),
            parts=parts,
        )

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

    def _parts(
        self, values: Mapping[str, Value], faults: list[Fault]
    ) -> tuple[tuple[FittedPart, ...], tuple[str, ...]]:
        """Return the parts that are there, and the names of those that a fault keeps from being fitted."""
        fitted: list[FittedPart] = []
        broken = []
        for part in self.plan.parts.values():
            before = len(faults)
            host = self.plan.parts.get(part.source.offcut_of)
            found = fit_part(part, host, values, self.shop, faults)
            if found is not None:
                fitted.append(found)
            elif len(faults) > before or not self._is_settled(part, values):
                broken.append(part.id)
        return tuple(fitted), tuple(broken)

    def _is_settled(self, part: Part, values: Mapping[str, Value]) -> bool:
        """Return whether it is known that a part is not there at this size."""
        return values.get(f"{part.id}.count") == 0 or values.get(f"{part.id}.only if") is False


def _with_sums(
    plan: Plan, values: Mapping[str, Value], parts: tuple[FittedPart, ...], broken: tuple[str, ...]
) -> dict[str, Value]:
    """Return the values with the area of all parts, and how many there are of each at this size."""
    scope = {**values, **{f"{name}.count": Fraction(0) for name in plan.parts}}
    for part in parts:
        scope[f"{part.id}.count"] = Fraction(part.count)
    for name in broken:
        scope.pop(f"{name}.count", None)
    if not broken:
        scope["surface"] = sum((part.surface * part.count for part in parts), Area(Fraction(0)))
    return scope


def _chosen_size(size: Size, value: Value, faults: list[Fault]) -> Value:
    if name_of(value) != name_of(size.usual):
        message = f"{size.name} is {name_of(size.usual)}, not {name_of(value)}"
        faults.append(Fault("wrong-unit", message, size.place, f"write {name_of(size.usual)}"))
    elif not is_within(size, value):
        low, high = (_shown(end) for end in (size.least, size.most))
        message = f"{size.name} may be from {low} to {high}; {_shown(value)} is outside"
        faults.append(Fault("outside-range", message, size.place, f"choose from {low} to {high}"))
    return value


def _shown(value: Value) -> str:
    return write_length(value, denominator=64) if isinstance(value, Length) else str(value)
