"""Sums of fractions, as they come up at the bench."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators.kit import (
    Ask,
    Calculator,
    Example,
    Figure,
    Given,
    Result,
    Table,
    decimals,
    exactly,
    fraction,
    off_by,
)
from scantling.calculators.kit.picture import scene
from scantling.calculators.ruler import inch_scale, pointer, window
from scantling.drawing import Scene
from scantling.measure import Angle, Area, Length, round_length
from scantling.words import say

MARKS = (8, 16, 32, 64)


def compute(given: Given) -> Result:
    """Return what the sum comes to, and its nearest marks on a tape."""
    text, value = given.values["sum"]
    if isinstance(value, (bool, str)):
        raise given.refuse(
            "sum", say("this is a question, not a sum"), mend=say("write a sum such as 3 1/2 in + 3/4 in")
        )
    if isinstance(value, (Area, Angle)):
        figures = (Figure("value", say("It comes to"), value, main=True),)
        return Result(figures, (text,), (), (), Length(0))
    if isinstance(value, Length):
        return _length(given, text, value)
    number = Fraction(value)
    figures = (Figure("value", say("It comes to"), number, places=4, main=True),)
    return Result(
        figures,
        (f"{text} = {fraction(number)}",),
        (_table(Length(number)),),
        (say("Read as inches, the table gives the nearest marks."),),
        Length(number),
    )


def _length(given: Given, text: str, value: Length) -> Result:
    figures = (
        Figure("value", say("It comes to"), value, main=True),
        Figure("inches", say("In inches"), value.inches, "in", places=4),
        Figure("mm", say("In millimetres"), value.mm, "mm", places=2),
    )
    working = (f"{text} = {exactly(value, given.display)}",)
    return Result(figures, working, (_table(value),), (), value)


def _table(value: Length) -> Table:
    rows = []
    for finest in MARKS:
        rounded = round_length(value, denominator=finest)
        off = decimals(Fraction(round(abs(rounded.off.inches) * 10_000), 10_000), 4)
        which = say("exact") if rounded.is_exact else off_by(f"{off} in", rounded.off)
        rows.append((f"1/{finest} in", rounded.text, which))
    return Table(say("Nearest mark on a tape"), (say("Marks of"), say("Nearest"), say("Off by")), tuple(rows))


def draw(given: Given, result: Result) -> Scene:
    """Return a piece of ruler with the result on it."""
    value: Length = result.shape
    low, high = window(value)
    words = exactly(abs(value), given.display)
    shapes = [*inch_scale(low, high, 40), *pointer(value, low, high, 30, 84, words)]
    return scene(96, shapes, say("The result on a ruler"), say("{words} on a ruler.", words=words))


CALCULATOR = Calculator(
    slug="fractions",
    title="Sums with fractions",
    question="What do these fractions of an inch come to?",
    subject="numbers",
    asks=(
        Ask(
            "sum",
            "Sum",
            "sum",
            "3 1/2 in + 2 * 3/4 in",
            "89 mm + 2 * 18 mm",
            help="+, -, * and /, brackets; inches, feet and millimetres may be mixed",
        ),
    ),
    compute=compute,
    formula=("Ordinary arithmetic, with exact fractions throughout.",),
    source=("Arithmetic; 1 in = 25.4 mm exactly (NIST SP 811, Appendix B).",),
    exactness="Exact; the nearest marks are rounded, halves away from zero.",
    example=Example(
        "A rail between two legs of 2 3/4 in, 14 in deep over all, with a tenon of 1 1/8 in at each end.",
        {"sum": "14 in - 2 * 2 3/4 in + 2 * 1 1/8 in"},
    ),
    draw=draw,
    words="add fractions, subtract, tape measure, sixteenths, half of, divide by",
)
