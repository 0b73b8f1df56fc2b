"""What a calculator is."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Literal

from scantling.calculators.kit.ask import LENGTHS, Ask
from scantling.calculators.kit.given import Given
from scantling.calculators.kit.local_text import local_text
from scantling.calculators.kit.result import Result
from scantling.drawing import Plot, Scene
from scantling.measure import Display
from scantling.words import mark, say

Subject = Literal["buying", "cutting", "laying out", "joining", "wood", "finishing", "numbers"]

SUBJECTS: Mapping[Subject, str] = {
    "buying": mark("Buying wood"),
    "cutting": mark("Cutting it up"),
    "laying out": mark("Laying it out"),
    "joining": mark("Angles, drawers and doors"),
    "wood": mark("What the wood will do"),
    "finishing": mark("Screws, glue and finish"),
    "numbers": mark("Numbers at the bench"),
}
"""The headings under which the questions stand, in order."""


@dataclass(frozen=True, slots=True)
class Example:
    """A question as it came up once, with its numbers."""

    story: str
    """A sentence or two; `{temperature}` stands for what was answered to that question."""
    inputs: Mapping[str, str]
    metric: Mapping[str, str] = field(default_factory=dict)
    """What is written otherwise for readers who work in millimetres and degrees Celsius."""

    def told_inputs(self, display: Display) -> dict[str, str]:
        """Return its numbers as the language that is spoken writes them."""
        inputs = {**self.inputs, **self.metric} if display.system == "mm" else self.inputs
        return {name: local_text(text) for name, text in inputs.items()}


@dataclass(frozen=True, slots=True)
class Calculator:
    """One question that a builder asks, and all that goes with its answer."""

    slug: str
    title: str
    question: str
    """The question in the reader's words."""
    subject: Subject
    asks: tuple[Ask, ...]
    compute: Callable[[Given], Result]
    """Works the answer out exactly; raises `Faulty` where answers do not go together."""
    formula: tuple[str, ...]
    """The formula in words and signs, a line each."""
    source: tuple[str, ...]
    """Where formula and figures come from."""
    exactness: str
    """What is exact, and what is a rule of thumb."""
    example: Example
    draw: Callable[[Given, Result], Scene]
    caution: str = ""
    plot: Callable[[Given, Result], Plot] | None = None
    words: str = ""
    """Other words by which somebody may look for it."""
    features: tuple[str, ...] = ()
    """Beginnings of words that a plan is found by; plans with one of them are linked."""
    checks: tuple[str, ...] = ()
    """Checks of a plan that ask the same question, by name."""

    def told_formula(self) -> tuple[str, ...]:
        """Return the lines of the formula in the language that is spoken."""
        return tuple(map(say, self.formula))

    def told_source(self) -> tuple[str, ...]:
        """Return the lines of the source in the language that is spoken."""
        return tuple(map(say, self.source))

    @property
    def has_lengths(self) -> bool:
        """True where a length is asked for: whoever answers may choose how lengths are shown."""
        return any(ask.kind in LENGTHS for ask in self.asks)

    def ask(self, name: str) -> Ask:
        """Return the question of that name."""
        return next(ask for ask in self.asks if ask.name == name)
