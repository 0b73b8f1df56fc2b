"""Inches and millimetres."""

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
    fraction,
    off_by,
)
from scantling.calculators.kit.picture import scene
from scantling.calculators.ruler import inch_scale, mm_scale, pointer, window
from scantling.drawing import Scene
from scantling.measure import Length, round_length
from scantling.words import say

MARKS = (8, 16, 32, 64)


def compute(given: Given) -> Result:
    """Return the length in the other unit, and the nearest marks."""
    length = given.length("length")
    figures = (
        Figure("mm", say("In millimetres"), length.mm, "mm", places=3, main=True),
        Figure("inches", say("In inches"), length.inches, "in", places=4, main=True),
        Figure("sixteenths", say("Nearest sixteenth"), round_length(length).text, main=True),
        Figure("feet", say("In feet"), length.feet, "ft", places=4),
    )
    rows = []
    for finest in MARKS:
        rounded = round_length(length, denominator=finest)
        off = decimals(Fraction(round(abs(rounded.off.mm) * 1000), 1000), 3)
        which = say("exact") if rounded.is_exact else off_by(f"{off} mm", rounded.off)
        rows.append((f"1/{finest} in", rounded.text, which))
    whole = round_length(length, system="mm")
    off = decimals(Fraction(round(abs(whole.off.mm) * 1000), 1000), 3)
    rows.append(("1 mm", whole.text, say("exact") if whole.is_exact else off_by(f"{off} mm", whole.off)))
    inches = length.inches
    written = fraction(inches) if inches.denominator <= 1000 else decimals(inches, 6)
    working = (f"{written} in × 25.4 = {decimals(length.mm, 4)} mm",)
    table = Table(say("Nearest mark"), (say("Marks of"), say("Nearest"), say("Off by")), tuple(rows))
    return Result(figures, working, (table,), _remarks(length), length)


def _remarks(length: Length) -> tuple[str, ...]:
    if Length(0) < length < Length(Fraction(3, 2)):
        return (
            (
                say(
                    "For a groove or a joint, fit to the piece itself: sheets and boards vary more than a"
                    " conversion does."
                )
            ),
        )
    return ()


def draw(given: Given, result: Result) -> Scene:
    """Return both scales side by side with the length on them."""
    length: Length = result.shape
    low, high = window(length)
    words = f"{decimals(Fraction(round(length.mm * 100), 100), 2)} mm"
    shapes = [
        *mm_scale(low, high, 40),
        *inch_scale(low, high, 80),
        *pointer(length, low, high, 30, 124, words),
    ]
    return scene(
        136,
        shapes,
        say("Both scales"),
        say("{words} and {length} are at the same place.", words=words, length=given.write(length)),
    )


CALCULATOR = Calculator(
    slug="convert",
    title="Inches and millimetres",
    question="What is that in inches, or in millimetres?",
    subject="numbers",
    asks=(
        Ask(
            "length",
            "Length",
            "length",
            "18 mm",
            "3/4 in",
            "0 in",
            "1000 ft",
            help="18 mm, 3/4 in, 7 ft 6 1/2 in",
        ),
    ),
    compute=compute,
    formula=("1 in = 25.4 mm",),
    source=("NIST SP 811, Appendix B; 16 CFR 500.19: exactly 2.54 cm.",),
    exactness="The conversion is exact; the nearest marks are rounded, halves away from zero.",
    example=Example(
        "The hinge's sheet asks for a hole 35 mm across: which drill comes near?", {"length": "35 mm"}
    ),
    draw=draw,
    words="metric, imperial, mm to inch, sixteenths, conversion, feet",
)
