"""Are the tools of every step among the tools of the plan?"""

from __future__ import annotations

from collections.abc import Iterator

from scantling.checks.check import Check, Finding, Subject
from scantling.fault import Severity, did_you_mean


def _examine(subject: Subject) -> Iterator[Finding]:
    if not subject.plan.tools:
        return
    known = {word for tool in subject.plan.tools for word in ways(tool)}
    for step in subject.plan.steps:
        missing = [tool for tool in step.tools if not known & ways(tool)]
        if missing:
            help_line = did_you_mean(missing[0], subject.plan.tools, kind="tools")
            if not help_line.startswith("did you mean"):
                help_line = f"add '{missing[0]}' to the plan's 'tools:'"
            listed = ", ".join(missing)
            yield Finding(f"the plan's list of tools has no {listed}", step.place.at("tools"), help_line)


def ways(tool: str) -> set[str]:
    """Return a tool's name and each of its alternatives: "brad nailer or hammer"."""
    name = tool.casefold().strip()
    return {name, *(word.strip() for word in name.split(" or "))}


TOOLS_LISTED = Check(
    name="tools-listed",
    group="Counts",
    title="Are the tools of every step in the plan's list?",
    meaning="A reader chooses a plan by the tools that it takes; one that turns up half-way stops the work.",
    mend="add the tool to the plan's 'tools:'",
    severity=Severity.WARNING,
    examine=_examine,
    every_size=False,
)
"""Looks for tools that only a step names."""
