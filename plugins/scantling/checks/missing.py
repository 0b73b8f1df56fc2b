"""Does the plan say what a reader chooses by, and what one who cannot see the picture needs?"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Place, Severity
from scantling.plan import Plan

_TITLE = Place(("title",))


def _lacking(
    name: str,
    title: str,
    meaning: str,
    message: str,
    mend: str,
    is_there: Callable[[Plan], bool],
    severity: Severity = Severity.WARNING,
) -> Check:
    def examine(subject: Subject) -> Iterator[Finding]:
        if not is_there(subject.plan):
            yield Finding(message, _TITLE)

    return Check(name, "Words", title, meaning, mend, severity, examine, every_size=False)


def _alt_text(subject: Subject) -> Iterator[Finding]:
    for step in subject.plan.steps:
        if step.picture and not step.picture_alt.strip():
            yield Finding(
                "those who cannot see this picture are not told what it shows", step.place.at("picture")
            )
    photo = subject.plan.photo
    if photo is not None and not photo.alt.strip():
        yield Finding("those who cannot see this photo are not told what it shows", photo.place.at("alt"))


SUMMARY_MISSING = _lacking(
    "summary-missing",
    "Is there a summary?",
    "The catalog shows one sentence about each plan.",
    "this plan has no summary",
    "add 'summary:', one sentence for the catalog",
    lambda plan: bool(plan.summary),
)
"""Looks for the summary."""
TAGS_MISSING = _lacking(
    "tags-missing",
    "Is there a word to find it by?",
    "Readers find a plan by its tags.",
    "this plan has no tags",
    "add 'tags: [bench, entry]', words to find it by",
    lambda plan: bool(plan.tags),
)
"""Looks for tags."""
SKILL_MISSING = _lacking(
    "skill-missing",
    "Does it say how much practice it takes?",
    "A beginner wants to know before buying the wood.",
    "this plan does not say how much practice it takes",
    "add 'skill: first project', 'some practice' or 'experienced'",
    lambda plan: bool(plan.skill),
)
"""Looks for the skill."""
TOOLS_MISSING = _lacking(
    "tools-missing",
    "Does it list its tools?",
    "A reader chooses a plan by the tools that it takes.",
    "this plan lists no tools",
    "add 'tools: [mitre saw, drill]'",
    lambda plan: bool(plan.tools),
)
"""Looks for the tools of the whole plan."""
STEPS_MISSING = _lacking(
    "steps-missing",
    "Are there steps?",
    "A cut list alone tells nobody how the parts come together.",
    "this plan has no steps",
    "add a '## heading' for each step below the front matter",
    lambda plan: bool(plan.steps),
)
"""Looks for steps."""
PICTURE_MISSING = _lacking(
    "picture-missing",
    "Is there a picture?",
    "A picture is drawn from the places of the parts; a plan without places shows a photo, or nothing.",
    "this plan has neither a photo nor a part with a place, so it shows no picture",
    "give the parts a 'place:', or add a 'photo:'",
    lambda plan: plan.photo is not None or any(part.placement for part in plan.parts.values()),
    Severity.HINT,
)
"""Looks for a photo, or for places from which one is drawn."""
ALT_MISSING = Check(
    name="alt-missing",
    group="Words",
    title="Is every picture told to those who cannot see it?",
    meaning="A reader who listens to the page hears the words beside a picture, or nothing.",
    mend="add 'picture alt:', what the picture shows",
    severity=Severity.WARNING,
    examine=_alt_text,
    every_size=False,
    source="Web Content Accessibility Guidelines 2.2, 1.1.1 Non-text content",
)
"""Looks for the words beside pictures."""
