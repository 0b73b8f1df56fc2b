"""Reckoning many named formulas that use each other, in whatever order they were written."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from scantling.fault import Fault, Faulty, Note, Place
from scantling.formula.formula import Formula, settled
from scantling.formula.value import Scope, Value


@dataclass(frozen=True, slots=True)
class Resolved:
    """What named formulas are worth, and what is wrong with them."""

    values: dict[str, Value]
    """The given values and those of every formula that could be reckoned."""
    faults: tuple[Fault, ...]
    """Each placed at `(name,)` and the characters of that formula; one for each cause."""


@dataclass(frozen=True, slots=True)
class Order:
    """The order in which a plan's formulas are reckoned; found once, used at every size."""

    formulas: tuple[tuple[str, Formula], ...]
    """Those that can be reckoned, each after all that it uses."""
    faults: tuple[Fault, ...]
    """Unknown names and circles, which no choice of sizes can mend."""

    def evaluate(self, given: Scope) -> Resolved:
        """Return the values of all formulas for the given ones; never raises for what an author wrote.

        Args:
            given: at least the names that were given to `arrange`.
        """
        values: dict[str, Value] = dict(given)
        faults: list[Fault] = []
        lost: set[str] = set()
        for name, formula in self.formulas:
            if lost and not lost.isdisjoint(formula.names):
                lost.add(name)
                continue
            try:
                values[name] = settled(formula.run(values), formula.text)
            except KeyError:
                faults += [fault.under(Place((name,))) for fault in formula.unknown(values)]
                lost.add(name)
            except Faulty as faulty:
                faults += [fault.under(Place((name,))) for fault in faulty.faults]
                lost.add(name)
        return Resolved(values, (*self.faults, *faults))


def resolve(definitions: Mapping[str, Formula], given: Scope) -> Resolved:
    """Return the values of named formulas, whatever order they were written in.

    The same as `arrange(definitions, given).evaluate(given)`.
    """
    return arrange(definitions, given).evaluate(given)


def arrange(definitions: Mapping[str, Formula], given: Iterable[str]) -> Order:
    """Find the order in which formulas can be reckoned.

    Args:
        definitions: the formulas by name.
        given: the names whose values will be given. A name that is also defined takes its definition.
    """
    known = dict.fromkeys([*definitions, *given])
    faults = [
        fault.under(Place((name,)))
        for name, formula in definitions.items()
        for fault in formula.unknown(known)
    ]
    order, stuck = _sorted(definitions)
    faults += _circles(definitions, stuck)
    lost = {fault.place.path[0] for fault in faults} | set(stuck)
    formulas = []
    for name in order:
        if name in lost or not lost.isdisjoint(definitions[name].names):
            lost.add(name)
        else:
            formulas.append((name, definitions[name]))
    return Order(tuple(formulas), tuple(faults))


def _sorted(definitions: Mapping[str, Formula]) -> tuple[list[str], list[str]]:
    """Return the names in an order of use, and those that are in a circle or wait for one."""
    waits_for = {
        name: sum(used in definitions for used in formula.names) for name, formula in definitions.items()
    }
    users: dict[str, list[str]] = {name: [] for name in definitions}
    for name, formula in definitions.items():
        for used in formula.names:
            if used in users:
                users[used].append(name)
    ready = [name for name, count in waits_for.items() if not count]
    for name in ready:  # grows as it is walked
        for user in users[name]:
            waits_for[user] -= 1
            if not waits_for[user]:
                ready.append(user)
    done = set(ready)
    return ready, [name for name in definitions if name not in done]


def _circles(definitions: Mapping[str, Formula], stuck: list[str]) -> list[Fault]:
    """Return one fault for each circle that can be reached from the stuck names."""
    faults = []
    left = set(stuck)
    seen: set[str] = set()
    for start in stuck:
        trail: dict[str, None] = {}
        name = start
        while name not in seen:
            seen.add(name)
            trail[name] = None
            name = next(used for used in definitions[name].names if used in left)
        if name in trail:
            walked = list(trail)
            faults.append(_circle(definitions, walked[walked.index(name) :]))
    return faults


def _circle(definitions: Mapping[str, Formula], members: list[str]) -> Fault:
    written = {name: i for i, name in enumerate(definitions)}
    first = min(range(len(members)), key=lambda i: written[members[i]])
    ring = [*members[first:], *members[:first]]
    uses = [
        (name, _use(definitions, name, after)) for name, after in zip(ring, [*ring[1:], ring[0]], strict=True)
    ]
    notes = tuple(Note(f"'{name}' uses it here", place) for name, place in uses[1:])
    if len(ring) == 1:
        return Fault(
            "circle", f"'{ring[0]}' is defined by itself", uses[0][1], "write it without its own name"
        )
    chain = " -> ".join([*ring, ring[0]])
    return Fault(
        "circle", f"these need each other: {chain}", uses[0][1], "give one of them a size of its own", notes
    )


def _use(definitions: Mapping[str, Formula], name: str, used: str) -> Place:
    use = next(use for use in definitions[name].uses if use.name == used)
    return Place((name,), use.start, use.end)
