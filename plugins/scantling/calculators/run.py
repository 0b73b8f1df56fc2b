"""The door's two questions: this calculator with these answers, and its worked example."""

from __future__ import annotations

from collections.abc import Mapping

from scantling.calculators.kit import Answer, answer
from scantling.calculators.registry import SLUGS, calculator
from scantling.fault import Fault, Faulty, did_you_mean
from scantling.measure import Display
from scantling.words import say

USUAL_DISPLAY = Display()


def run(slug: str, texts: Mapping[str, str], display: Display = USUAL_DISPLAY, currency: str = "$") -> Answer:
    """Return what a calculator answers to what a reader typed.

    A question that is not in `texts` keeps its usual answer. What is wrong with the answers stands in
    `Answer.faults`, each with the question's name as its place.

    Raises:
        Faulty: where there is no calculator of that name.

    Example:
        `run("equal-spaces", {"opening": "36 in", "dividers": "5"}).to_text()`
    """
    name = slug.strip().casefold().replace("_", "-").replace(" ", "-")
    if name not in SLUGS:
        mend = did_you_mean(name, SLUGS, kind=say("calculators"), tell=say)
        raise Faulty(
            [
                Fault(
                    "unknown-calculator",
                    say("there is no calculator called '{name}'", name=slug[:40]),
                    help=mend,
                )
            ]
        )
    return answer(calculator(name), texts, display, currency)


def run_example(slug: str, display: Display = USUAL_DISPLAY, currency: str = "$") -> Answer:
    """Return the answer to a calculator's worked example."""
    return run(slug, calculator(slug).example.told_inputs(display), display, currency)
