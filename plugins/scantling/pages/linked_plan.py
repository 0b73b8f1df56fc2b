"""A plan as other pages link to it: its words, and what it costs at the sizes that it offers."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.measure import Length, Money
from scantling.pages.plan_page import AtSize


@dataclass(frozen=True, slots=True)
class Ladder:
    """One of a plan's dimensions, with the plan's cost at each size that is offered of it alone."""

    name: str
    """What the plan calls the dimension."""
    usual: Length
    costs: tuple[tuple[Length, Money], ...]
    """Smallest first; the usual size among them."""


@dataclass(frozen=True, slots=True)
class LinkedPlan:
    """A plan that another page may send its reader to."""

    slug: str
    title: str
    words: tuple[str, ...]
    """By which it is found: tags, parts, materials."""
    ladders: tuple[Ladder, ...] = ()

    def has(self, feature: str) -> bool:
        """Return whether one of its words begins with the feature, or has a word that does."""
        return any(f" {feature}" in f" {word.casefold()}" for word in self.words)


def ladders_of(sizes: Sequence[AtSize]) -> tuple[Ladder, ...]:
    """Return each dimension of which a plan offers other sizes with everything else as usual.

    Args:
        sizes: the plan at each offered size, the usual one first.
    """
    usual = sizes[0].report
    ladders = []
    for name, size in usual.fitted.plan.sizes.items():
        if not isinstance(size.usual, Length):
            continue
        costs = {size.usual: usual.totals.cost}
        for other in sizes[1:]:
            choice = other.offered.choice
            value = choice.sizes.get(name)
            if isinstance(value, Length) and len(choice.sizes) == 1 and not choice.options:
                costs[value] = other.report.totals.cost
        if len(costs) > 1:
            ladders.append(Ladder(name, size.usual, tuple(sorted(costs.items(), key=lambda pair: pair[0]))))
    return tuple(ladders)
