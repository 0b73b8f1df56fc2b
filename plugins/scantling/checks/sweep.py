"""Asking every check at every size, and telling each fault once, at the smallest change that shows it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from scantling.checks.accepts import misnamed_accepts, unused_accepts
from scantling.checks.check import Check, Subject, at_size
from scantling.checks.sizes import sweep_choices, usual_choice
from scantling.fault import Fault, Faulty, Place
from scantling.formula import Value
from scantling.measure import Length
from scantling.plan import Choice, Fitter, Plan, offered_choices, write_choice

Key = tuple[str, Place]


@dataclass(slots=True)
class _Seen:
    """One kind of fault at one place, and the sizes at which it shows."""

    fault: Fault
    choice: Choice
    failing: list[Choice]


@dataclass(slots=True)
class _Asking:
    """A plan under its checks, and what is remembered from size to size."""

    fitter: Fitter
    checks: tuple[Check, ...]
    memo: dict[str, object] = field(default_factory=dict)
    silenced: set[Place] = field(default_factory=set)

    def at(self, choice: Choice, *, first: bool) -> Iterator[Fault]:
        """Yield what is found at one size: what keeps the plan from being fitted, or what the checks say."""
        try:
            fitted = self.fitter.fit(choice)
        except Faulty as faulty:
            yield from faulty.faults
            return
        subject = Subject(self.fitter.plan, self.fitter.shop, choice, fitted, self.memo)
        for check in self.checks:
            if not first and not check.every_size:
                continue
            for told in check.ask(subject):
                if told.silenced is None:
                    yield told.fault
                else:
                    self.silenced.add(told.silenced)


def examine(fitter: Fitter, checks: Iterable[Check], choice: Choice | None = None) -> list[Fault]:
    """Return what the checks find at one size (the usual one if none is given)."""
    asking = _Asking(fitter, tuple(checks))
    found = list(asking.at(choice or usual_choice(fitter.plan), first=True))
    return [*found, *misnamed_accepts(fitter.plan, _names(asking.checks))]


def examine_offered(fitter: Fitter, checks: Iterable[Check]) -> list[Fault]:
    """Return what the checks find at the usual size and at those that get a page, each fault once."""
    offered = (one.choice for one in offered_choices(fitter.plan))
    usual = usual_choice(fitter.plan)
    spelled = (Choice({**usual.sizes, **one.sizes}, {**usual.options, **one.options}) for one in offered)
    asking = _Asking(fitter, tuple(checks))
    found = _over(asking, [usual, *spelled])
    return [*found, *misnamed_accepts(fitter.plan, _names(asking.checks))]


def sweep(fitter: Fitter, checks: Iterable[Check], choices: Iterable[Choice] | None = None) -> list[Fault]:
    """Return what the checks find over the whole range of sizes, each fault once.

    Args:
        choices: what is tried, every size and option spelled out; what `sweep_choices` gives if left out.
    """
    asking = _Asking(fitter, tuple(checks))
    found = _over(asking, list(sweep_choices(fitter.plan) if choices is None else choices))
    names = _names(asking.checks)
    return [
        *found,
        *misnamed_accepts(fitter.plan, names),
        *unused_accepts(fitter.plan, names, asking.silenced),
    ]


def _names(checks: Iterable[Check]) -> tuple[str, ...]:
    return tuple(check.name for check in checks)


def _over(asking: _Asking, tried: list[Choice]) -> list[Fault]:
    seen: dict[Key, _Seen] = {}
    for index, choice in enumerate(tried):
        for fault in asking.at(choice, first=index == 0):
            found = seen.setdefault((fault.code, fault.place), _Seen(fault, choice, []))
            if not found.failing or found.failing[-1] is not choice:
                found.failing.append(choice)
    plan = asking.fitter.plan
    return [
        at_size(found.fault, where_it_fails(plan, tried, found.failing)) for found in _nearest(asking, seen)
    ]


def _nearest(asking: _Asking, seen: dict[Key, _Seen]) -> Iterator[_Seen]:
    """Yield each fault as it reads at the failing size that is nearest to the usual one."""
    plan = asking.fitter.plan
    usual = usual_choice(plan)
    for key, found in seen.items():
        nearest = min(found.failing, key=lambda choice: distance(plan, usual, choice))
        if nearest is not found.choice:
            again = asking.at(nearest, first=False)
            found.fault = next((fault for fault in again if (fault.code, fault.place) == key), found.fault)
        found.choice = nearest
        yield found


def distance(plan: Plan, usual: Choice, other: Choice) -> tuple[int, Fraction]:
    """Return how far a choice is from the usual one: names changed, then steps moved."""
    changed = [name for name in usual.sizes if other.sizes[name] != usual.sizes[name]]
    options = sum(other.options[name] != word for name, word in usual.options.items())
    steps = (plan.sizes[name].steps_from(other.sizes[name], usual.sizes[name]) for name in changed)
    return len(changed) + options, sum(steps, Fraction(0))


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
    words = [f"{name} {write_choice(nearest.sizes[name])}" for name in changed]
    words += [f"{name} '{nearest.options[name]}'" for name in options]
    return "at " + " and ".join(words) if words else ""


def _along(plan: Plan, name: str, nearest: Choice, tried: list[Choice], failing: list[Choice]) -> str:
    """Say from where on a size fails, looking only at choices that change nothing else."""
    value = nearest.sizes[name]
    below = _less(value, plan.sizes[name].usual)
    others = {key: size for key, size in nearest.sizes.items() if key != name}

    def beyond(choice: Choice) -> bool:
        alone = (
            all(choice.sizes[key] == size for key, size in others.items())
            and choice.options == nearest.options
        )
        at = choice.sizes[name]
        return alone and (at == value or _less(at, value) == below)

    end = plan.sizes[name].least if below else plan.sizes[name].most
    whole_way = sum(map(beyond, tried)) == sum(map(beyond, failing)) and value != end
    direction = (" and below" if below else " and above") if whole_way else ""
    return f"at {name} {write_choice(value)}{direction}"


def _less(one: Value, other: Value) -> bool:
    if isinstance(one, Length):
        return isinstance(other, Length) and one < other
    return one < other  # type: ignore[operator]
