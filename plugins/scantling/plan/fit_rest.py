"""Fitting what stands around the parts: work on them, joins, hardware, steps and words."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from scantling.fault import Fault, Faulty, Place
from scantling.formula import Formula, Value
from scantling.plan.fit_hardware import fit_hardware, fit_joins
from scantling.plan.fitted import (
    FittedErratum,
    FittedPart,
    FittedPlan,
    FittedProse,
    FittedStep,
    FittedUse,
    FittedWork,
    Quoted,
)
from scantling.plan.model import Erratum, Step, Use, Work
from scantling.plan.prose import Prose
from scantling.plan.trimmings import trimmings
from scantling.plan.values import as_count, as_length, as_yes
from scantling.plan.work_reach import faults_of_reach
from scantling.shop import Shop
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Scope:
    """What formulas may use, and where faults go."""

    values: Mapping[str, Value]
    faults: list[Fault]

    def value(self, formula: Formula | None, place: Place) -> Value | None:
        """Return what a formula comes to, or None if there is none or, after adding a fault, it has no value.

        A name that is missing here is missing because of a fault that is known already.
        """
        if formula is None or not all(name in self.values for name in formula.names):
            return None
        try:
            return formula.evaluate(self.values)
        except Faulty as faulty:
            self.faults.extend(fault.under(place) for fault in faulty.faults)
            return None

    def holds(self, formula: Formula | None, place: Place) -> bool:
        """Return whether a condition holds; no condition holds always."""
        if formula is None:
            return True
        return as_yes(self.value(formula, place), say("this condition"), place, self.faults) is True

    def prose(self, prose: Prose) -> FittedProse:
        """Return the prose with its quotes evaluated."""
        pieces: list[str | Quoted] = []
        for piece in prose.pieces:
            if isinstance(piece, str):
                pieces.append(piece)
                continue
            value = self.value(piece.formula, piece.place)
            if value is not None:
                pieces.append(Quoted(value, piece))
        return FittedProse(tuple(pieces))


def fit_rest(base: FittedPlan, shop: Shop, faults: list[Fault]) -> FittedPlan:
    """Return the whole fitted plan, adding to `faults` what is wrong with it.

    Args:
        base: the plan with its sizes, values and parts.
    """
    plan = base.plan
    scope = Scope(base.values, faults)
    parts = tuple(_with_work(part, scope) for part in base.parts)
    joins = fit_joins(plan, shop, parts, scope)
    return replace(
        base,
        parts=parts,
        offcuts=trimmings(parts, shop.kerf),
        joins=joins,
        hardware=fit_hardware(plan, shop, parts, joins, scope),
        steps=_steps(plan.steps, parts, scope),
        summary=scope.prose(plan.summary),
        intro=scope.prose(plan.intro),
        cautions=tuple(scope.prose(caution) for caution in plan.cautions),
        errata=_dated(plan.errata, scope),
        notes=_dated(plan.notes, scope),
    )


def fit_bought(base: FittedPlan, shop: Shop, faults: list[Fault]) -> FittedPlan:
    """Return the plan with what is bought beside its parts, adding to `faults`; its words are left out."""
    scope = Scope(base.values, faults)
    joins = fit_joins(base.plan, shop, base.parts, scope)
    hardware = fit_hardware(base.plan, shop, base.parts, joins, scope)
    return replace(base, offcuts=trimmings(base.parts, shop.kerf), joins=joins, hardware=hardware)


def _dated(notes: Iterable[Erratum], scope: Scope) -> tuple[FittedErratum, ...]:
    return tuple(FittedErratum(note, scope.prose(note.text)) for note in notes)


def _with_work(part: FittedPart, scope: Scope) -> FittedPart:
    if not part.part.work and not part.part.note:
        return part
    work = tuple(_work(part.id, work, scope) for work in part.part.work)
    for one in work:
        scope.faults.extend(faults_of_reach(part, one))
    return replace(part, work=work, note=scope.prose(part.part.note))


def _work(part: str, work: Work, scope: Scope) -> FittedWork:
    def length(key: str, name: str) -> object:
        place = work.place.at(name)
        value = scope.value(getattr(work, key), place)
        return as_length(
            value,
            say("'{name}' of the {kind} in '{part}'", name=name, kind=say(work.kind), part=part),
            place,
            scope.faults,
            or_zero=True,
        )

    count = as_count(
        scope.value(work.count, work.place.at("count")),
        say("the count of {kind}s", kind=say(work.kind)),
        work.place.at("count"),
        scope.faults,
    )
    measures = {key: length(key, name) for key, name in _MEASURES.items()}
    return FittedWork(work=work, count=count, note=scope.prose(work.note), **measures)  # type: ignore[arg-type]


_MEASURES = {"width": "width", "depth": "depth", "length": "length", "from_end": "from end", "apart": "apart"}


def _steps(steps: Iterable[Step], parts: tuple[FittedPart, ...], scope: Scope) -> tuple[FittedStep, ...]:
    counts = {part.id: part.count for part in parts}
    present = [step for step in steps if scope.holds(step.only_if, step.place.at("only if"))]
    return tuple(_step(step, number, counts, scope) for number, step in enumerate(present, 1))


def _step(step: Step, number: int, counts: Mapping[str, int], scope: Scope) -> FittedStep:
    used = [FittedUse(use.name, _used(use, counts.get(use.name, 0), scope)) for use in step.uses]
    needed = [FittedUse(use.name, _used(use, 0, scope)) for use in step.needs]
    return FittedStep(
        step=step,
        number=number,
        title=scope.prose(step.title),
        text=scope.prose(step.text),
        uses=tuple(use for use in used if use.count),
        needs=tuple(needed),
        cautions=tuple(scope.prose(caution) for caution in step.cautions),
    )


def _used(use: Use, all_of_them: int, scope: Scope) -> int:
    if use.count is None:
        return all_of_them
    value = scope.value(use.count, use.count_place)
    count = as_count(value, say("the count of '{name}'", name=use.name), use.count_place, scope.faults)
    return 0 if count is None else count
