"""What every calculator is made of: questions, figures, answers."""

from scantling.calculators.kit.answer import Answer, fault_data, fault_lines
from scantling.calculators.kit.ask import MEANT, Ask, nearest_is
from scantling.calculators.kit.calculator import SUBJECTS, Calculator, Example
from scantling.calculators.kit.given import Given, decimals, exactly, fine, fraction, off_by, percent
from scantling.calculators.kit.lists import Batch, Offer, Panel
from scantling.calculators.kit.result import Figure, Result, Table, Value
from scantling.calculators.kit.run import answer
from scantling.calculators.kit.show import Shown, cell, show

__all__ = [
    "MEANT",
    "SUBJECTS",
    "Answer",
    "Ask",
    "Batch",
    "Calculator",
    "Example",
    "Figure",
    "Given",
    "Offer",
    "Panel",
    "Result",
    "Shown",
    "Table",
    "Value",
    "answer",
    "cell",
    "decimals",
    "exactly",
    "fault_data",
    "fault_lines",
    "fine",
    "fraction",
    "nearest_is",
    "off_by",
    "percent",
    "show",
]
