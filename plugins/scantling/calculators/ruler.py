"""A ruler with a mark on it, for the calculators that are about reading one."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators.kit.picture import ROOM, label
from scantling.drawing import Line, Rectangle, Shape
from scantling.measure import Length

LEFT, WIDE = 24.0, ROOM - 48


def window(length: Length) -> tuple[int, int]:
    """Return the whole inches between which a ruler is drawn around a length."""
    whole = int(abs(length.inches))
    low = max(0, whole - 1)
    return low, low + 3


def inch_scale(low: int, high: int, y: float, finest: int = 16) -> list[Shape]:
    """Return a ruler in inches with marks to 1/`finest`."""
    shapes: list[Shape] = [Rectangle(LEFT, y, WIDE, 44, "edge wood")]
    step = WIDE / (high - low)
    for i in range((high - low) * finest + 1):
        part = Fraction(i, finest)
        tall = {1: 22, 2: 16, 4: 12, 8: 9}.get(part.denominator, 6)
        x = LEFT + step * float(part)
        shapes.append(Line(x, y, x, y + tall, "edge" if part.denominator <= 2 else "thin"))
        if part.denominator == 1:
            shapes.append(
                label(min(max(x, LEFT + 8), LEFT + WIDE - 12), y + 38, str(low + int(part)), look="ink")
            )
    return shapes


def mm_scale(low: int, high: int, y: float) -> list[Shape]:
    """Return a ruler in millimetres over the same inches, its marks hanging from the other edge."""
    shapes: list[Shape] = [Rectangle(LEFT, y, WIDE, 40, "edge top")]
    step = WIDE / ((high - low) * 25.4)
    first = -(-low * 254 // 10)
    for mm in range(first, int(high * 25.4) + 1):
        x = LEFT + step * (mm - low * 25.4)
        tall = 20 if mm % 10 == 0 else 14 if mm % 5 == 0 else 8
        shapes.append(Line(x, y + 40, x, y + 40 - tall, "edge" if mm % 10 == 0 else "thin"))
        if mm % 10 == 0 and LEFT + 8 < x < LEFT + WIDE - 8:
            shapes.append(label(x, y + 14, str(mm), look="ink"))
    return shapes


def pointer(length: Length, low: int, high: int, y1: float, y2: float, words: str) -> list[Shape]:
    """Return a line at a length with words above it."""
    x = LEFT + WIDE * (float(abs(length.inches)) - low) / (high - low)
    return [
        Line(x, y1, x, y2, "accent"),
        label(min(max(x, 90), ROOM - 90), y1 - 6, words, size=13, look="red strong halo"),
    ]
