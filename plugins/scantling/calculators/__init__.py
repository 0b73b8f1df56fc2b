"""The questions that a builder asks away from any plan, answered with picture, formula and source.

One file a calculator; `run` answers from what a reader types, and `Answer` gives the same words to the
terminal, the built page and the browser.
"""

from scantling.calculators.kit import (
    MEANT,
    SUBJECTS,
    Answer,
    Ask,
    Calculator,
    Example,
    Figure,
    Result,
    Shown,
    Table,
    fault_data,
)
from scantling.calculators.registry import SLUGS, calculator, calculators
from scantling.calculators.run import run, run_example

__all__ = [
    "MEANT",
    "SLUGS",
    "SUBJECTS",
    "Answer",
    "Ask",
    "Calculator",
    "Example",
    "Figure",
    "Result",
    "Shown",
    "Table",
    "calculator",
    "calculators",
    "fault_data",
    "run",
    "run_example",
]
