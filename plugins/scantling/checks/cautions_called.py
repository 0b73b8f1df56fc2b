"""Does the author say what can hurt, wherever the work calls for it? Where not, the page says it."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from scantling.checks.caution import Caution, Topic, Work, cautions_of
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.topics import TOPICS
from scantling.cutting import CuttingPlan
from scantling.fault import Place, Severity
from scantling.plan import FittedPlan
from scantling.shop import Shop


def cautions_for(fitted: FittedPlan, shop: Shop, cutting: CuttingPlan | None = None) -> tuple[Caution, ...]:
    """Return the cautions that a plan's work calls for and that its author has not given, in a fixed order.

    Args:
        cutting: its cutting plan, where there is one.
    """
    work = Work(fitted, shop, cutting)
    written = cautions_of(fitted.plan)
    found = []
    for topic in TOPICS:
        if not topic.is_said_in(written) and topic.name not in fitted.plan.accepts:
            call = topic.calls(work)
            if call is not None and not _is_accepted(fitted, topic, call.part):
                found.append(Caution(topic.name, topic.text, topic.source, call.step))
    return tuple(found)


def _is_accepted(fitted: FittedPlan, topic: Topic, part: str) -> bool:
    return part in fitted.plan.parts and topic.name in fitted.plan.parts[part].accepts


def _asking(topic: Topic) -> Callable[[Subject], Iterator[Finding]]:
    def examine(subject: Subject) -> Iterator[Finding]:
        if subject.once(topic.name, lambda one: topic.is_said_in(cautions_of(one.plan))):
            return
        call = topic.calls(subject.here("work", lambda one: Work(one.fitted, one.shop)))
        if call is None:
            return
        steps = subject.fitted.steps
        place = steps[call.step - 1].step.place.at("title") if call.step else Place(("title",))
        about = (call.part,) if call.part else ()
        yield Finding(f"{call.why}, and no caution speaks of it", place, _help(topic), about=about)

    return examine


def _help(topic: Topic) -> str:
    return f"add a 'caution:' in your own words; until then the page says: {topic.text}"


CAUTIONS = tuple(
    Check(
        name=topic.name,
        group="Safety",
        title=topic.title,
        meaning="Where the author says nothing, the page says: “{quoted}”",
        mend="add a 'caution:' to the step or the plan, in your own words",
        severity=Severity.HINT,
        examine=_asking(topic),
        source=topic.source,
        quotes=topic.text,
    )
    for topic in TOPICS
)
"""One check for each topic."""
