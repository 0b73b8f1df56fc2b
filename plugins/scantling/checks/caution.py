"""What a caution is: what can hurt, where in the plan, and who says so."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from scantling.checks.saying import words_of
from scantling.cutting import CuttingPlan
from scantling.plan import FittedPlan, Plan, Prose
from scantling.shop import Shop

GENERAL = "the manual of the tool, which comes first"
"""The source of a caution that is common practice."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One thing that can hurt, as a page shows it where the author says nothing of it."""

    topic: str
    """Its name: "caution-narrow-strips" is the check that asks for it, and what `accept:` silences."""
    text: str
    source: str
    """A document and place, or what the reader should defer to."""
    where: int | None
    """The number of the step to which it belongs, or None for the whole plan."""


@dataclass(frozen=True, slots=True)
class Work:
    """A fitted plan, with what is bought for it, before the eyes of a caution."""

    fitted: FittedPlan
    shop: Shop
    cutting: CuttingPlan | None = None
    """Which boards are ripped how; without it, what the parts alone tell."""

    def step_with(self, *words: str) -> int | None:
        """Return the number of the first step whose tools or needs hold one of the words."""
        for step in self.fitted.steps:
            named = (*step.step.tools, *(use.name for use in step.step.needs))
            if any(word in name.casefold() for name in named for word in words):
                return step.number
        return None

    def step_of(self, part: str) -> int | None:
        """Return the number of the first step that speaks of cutting a part, or uses it."""
        for step in self.fitted.steps:
            quoted = {name for quote in step.step.text.quotes for name in quote.formula.names}
            if any(name.startswith(f"{part}.") for name in quoted) or any(
                use.name == part for use in step.uses
            ):
                return step.number
        return None

    @property
    def words(self) -> str:
        """Return title and tags, in lower case."""
        plan = self.fitted.plan
        return " | ".join((plan.title, *plan.tags, plan.room)).casefold()


@dataclass(frozen=True, slots=True)
class Topic:
    """One kind of work that can hurt: when it is there, and what is said of it."""

    name: str
    title: str
    """The question of its check."""
    text: str
    source: str
    said: re.Pattern[str]
    """An author's caution that holds this speaks of it."""
    calls: Callable[[Work], Called]
    """Whether a plan's work calls for it."""

    def is_said_in(self, proses: Iterable[Prose]) -> bool:
        """Return whether one of the author's cautions speaks of it."""
        return any(self.said.search(words_of(prose)) for prose in proses)


@dataclass(frozen=True, slots=True)
class Call:
    """The work of a plan that calls for a caution."""

    why: str
    """What of it: "'edging' is 5/8 in wide"."""
    step: int | None = None
    part: str = ""


Called = Call | None
"""What calls for a caution, or None."""


def cautions_of(plan: Plan) -> tuple[Prose, ...]:
    """Return every caution that the author wrote, for the plan and for its steps."""
    return (*plan.cautions, *(caution for step in plan.steps for caution in step.cautions))
