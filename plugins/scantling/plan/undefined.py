"""Names in formulas that mean nothing, and words compared with an option that are none of its choices."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

from scantling.fault import Fault, Place, did_you_mean, nearest
from scantling.formula import Formula
from scantling.plan.model import Plan, Step, Use, Work
from scantling.plan.prose import Prose

Placed = tuple[Formula | None, Place]
MEASURES = ("length", "width", "thick", "count")
"""What formulas may ask of every part."""


def check_formulas(plan: Plan, defined: Iterable[Placed], is_known: Callable[[str], bool]) -> list[Fault]:
    """Return a fault for each name in a formula that is not known, and for each choice that no option has.

    Args:
        defined: the formulas of lengths and parts; all others are found in the plan.
        is_known: tells whether a name means something.
    """
    faults: list[Fault] = []
    for formula, place in (*defined, *_others(plan)):
        if formula is None:
            continue
        for use in formula.uses:
            if not is_known(use.name):
                message = f"there is no size called '{use.name}'"
                here = Place(start=use.start, end=use.end)
                faults.append(Fault("unknown-name", message, here, _mend(use.name, plan)).under(place))
        faults += _no_choices(plan, formula, place)
    return faults


def _mend(name: str, plan: Plan) -> str:
    part, _, attribute = name.partition(".")
    if attribute and part in plan.parts:
        return f"of a part there are {', '.join(f'{part}.{measure}' for measure in MEASURES)}"
    named = [*plan.sizes, *plan.lengths, *plan.options]
    measures = [f"{part}.{measure}" for part in plan.parts for measure in MEASURES]
    if nearest(name, [*named, *measures]):
        return did_you_mean(name, [*named, *measures], kind="names")
    if name in plan.parts:
        return f"write {name}.length, or another of its measures"
    return did_you_mean(name, named, kind="sizes and lengths")


def _no_choices(plan: Plan, formula: Formula, place: Place) -> Iterator[Fault]:
    for use in formula.compared:
        option = plan.options.get(use.name)
        if option is not None and use.words not in option.choices:
            help_line = did_you_mean(use.words, option.choices, kind="choices")
            message = f"'{use.words}' is no choice of '{use.name}'"
            fault = Fault("unknown-choice", message, Place(start=use.start, end=use.end), help_line)
            yield fault.under(place)


def _others(plan: Plan) -> Iterator[Placed]:
    for join in plan.joins:
        yield join.each, join.place.at("each")
        yield join.joints, join.place.at("joints")
        yield join.depth, join.place.at("depth")
        yield join.only_if, join.place.at("only if")
    for item in plan.hardware.values():
        yield item.count, item.place.at("count")
        yield item.area, item.place.at("area")
        yield item.length, item.place.at("long")
        yield item.only_if, item.place.at("only if")
        yield from _quoted(item.note)
    for part in plan.parts.values():
        yield from _quoted(part.note)
        for work in part.work:
            yield from _of_work(work)
    for step in plan.steps:
        yield from _of_step(step)
    notes = [note.text for note in (*plan.errata, *plan.notes)]
    yield from _quoted(plan.summary, plan.intro, *plan.cautions, *notes)


def _quoted(*proses: Prose) -> Iterator[Placed]:
    for prose in proses:
        for quote in prose.quotes:
            yield quote.formula, quote.place


def _of_work(work: Work) -> Iterator[Placed]:
    for key in ("width", "depth", "length", "from end", "count", "apart"):
        yield getattr(work, key.replace(" ", "_")), work.place.at(key)
    yield from _quoted(work.note)


def _of_step(step: Step) -> Iterator[Placed]:
    yield step.only_if, step.place.at("only if")
    uses: tuple[Use, ...] = (*step.uses, *step.needs)
    for use in uses:
        yield use.count, use.count_place
    yield from _quoted(step.title, step.text, *step.cautions)
