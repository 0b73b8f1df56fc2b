"""Asking every check at every size, and telling each fault once, at the smallest change that shows it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from scantling.checks.check import Check, Subject, at_size
from scantling.checks.sizes import sweep_choices, usual_choice
from scantling.fault import Fault, Faulty, Place
from scantling.formula import Value
from scantling.measure import Display, Length
from scantling.plan import Choice, Fitter, Plan

Key = tuple[str, Place]


@dataclass(slots=True)
class _Seen:
    """One kind of fault at one place, and the sizes at which it shows."""

    fault: Fault
    choice: Choice
    failing: list[Choice]


def examine(fitter: Fitter, checks: Iterable[Check], choice: Choice | None = None) -> list[Fault]:
    """Return what the checks find at one size (the usual one if none is given)."""
    choice = choice or usual_choice(fitter.plan)
    return list(_faults_at(fitter, tuple(checks), choice, first=True))


def sweep(fitter: Fitter, checks: Iterable[Check]) -> list[Fault]:
    """Return what the checks find over the whole range of sizes, each fault once."""
    checks = tuple(checks)
    seen: dict[Key, _Seen] = {}
    tried: list[Choice] = []
    for choice in sweep_choices(fitter.plan):
        for fault in _faults_at(fitter, checks, choice, first=not tried):
            key = (fault.code, fault.place)
            if key not in seen:
                seen[key] = _Seen(fault, choice, [])
            seen[key].failing.append(choice)
        tried.append(choice)
    return [
        at_size(found.fault, where_it_fails(fitter.plan, tried, found.failing))
        for found in _nearest(fitter, checks, seen)
    ]


def _faults_at(fitter: Fitter, checks: tuple[Check, ...], choice: Choice, *, first: bool) -> Iterator[Fault]:
    try:
        fitted = fitter.fit(choice)
    except Faulty as faulty:
        yield from faulty.faults
        return
    subject = Subject(fitter.plan, fitter.shop, choice, fitted)
    for check in checks:
        if first or check.every_size:
            yield from check.faults(subject)


def _nearest(fitter: Fitter, checks: tuple[Check, ...], seen: dict[Key, _Seen]) -> Iterator[_Seen]:
    """Yield each fault as it reads at the failing size that is nearest to the usual one."""
    usual = usual_choice(fitter.plan)
    for key, found in seen.items():
        nearest = min(found.failing, key=lambda choice: distance(fitter.plan, usual, choice))
        if nearest is not found.choice:
            again = _faults_at(fitter, checks, nearest, first=False)
            found.fault = next((fault for fault in again if (fault.code, fault.place) == key), found.fault)
        found.choice = nearest
        yield found


def distance(plan: Plan, usual: Choice, other: Choice) -> tuple[int, Fraction]:
    """Return how far a choice is from the usual one: names changed, then steps moved."""
    changed = [name for name in usual.sizes if other.sizes[name] != usual.sizes[name]]
    options = sum(other.options[name] != word for name, word in usual.options.items())
    steps = sum(
        abs((other.sizes[name] - usual.sizes[name]) / plan.sizes[name].step)  # type: ignore[operator]
        for name in changed
    )
    return len(changed) + options, Fraction(steps)


def where_it_fails(plan: Plan, tried: list[Choice], failing: list[Choice]) -> str:
    """Say at which sizes something fails: "" for the usual one, else the smallest change that shows it.

    Example:
        `at width 21 in and below`
    """
    usual = usual_choice(plan)
    nearest = min(failing, key=lambda choice: distance(plan, usual, choice))
    changed = [name for name in usual.sizes if nearest.sizes[name] != usual.sizes[name]]
    options = [name for name, word in usual.options.items() if nearest.options[name] != word]
    if len(changed) == 1 and not options:
        return _along(plan, changed[0], nearest, tried, failing)
    words = [f"{name} {_shown(nearest.sizes[name])}" for name in changed]
    words += [f"{name} '{nearest.options[name]}'" for name in options]
    return "at " + " with ".join(words) if words else ""


def _along(plan: Plan, name: str, nearest: Choice, tried: list[Choice], failing: list[Choice]) -> str:
    """Say from where on a size fails, looking only at choices that change nothing else."""
    value = nearest.sizes[name]
    below = value < plan.sizes[name].usual  # type: ignore[operator]
    others = {key: size for key, size in nearest.sizes.items() if key != name}

    def beyond(choice: Choice) -> bool:
        alone = (
            all(choice.sizes[key] == size for key, size in others.items())
            and choice.options == nearest.options
        )
        at = choice.sizes[name]
        return alone and (at <= value if below else at >= value)  # type: ignore[operator]

    end = plan.sizes[name].least if below else plan.sizes[name].most
    whole_way = sum(map(beyond, tried)) == sum(map(beyond, failing)) and value != end
    direction = (" and below" if below else " and above") if whole_way else ""
    return f"at {name} {_shown(value)}{direction}"


def _shown(value: Value) -> str:
    return Display("in", 64).length(value) if isinstance(value, Length) else str(value)
