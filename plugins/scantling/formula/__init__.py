"""The small language in which a plan's sizes are written: `width - 2 * leg.width - 1/2 in`.

Every value has a kind (a number, a length, an area, an angle, yes or no, words), and sums between
kinds that do not fit are faults that say so. Nothing here can loop, recurse without bound or take long.
"""

from scantling.formula.formula import Formula, NameUse, WordsUse, read_formula
from scantling.formula.function import FUNCTIONS, Function
from scantling.formula.order import Order, Resolved, arrange, resolve
from scantling.formula.token import KEYWORDS
from scantling.formula.value import Scope, Value, describe, name_of, require, require_count

__all__ = [
    "FUNCTIONS",
    "KEYWORDS",
    "Formula",
    "Function",
    "NameUse",
    "Order",
    "Resolved",
    "Scope",
    "Value",
    "WordsUse",
    "arrange",
    "describe",
    "name_of",
    "read_formula",
    "require",
    "require_count",
    "resolve",
]
