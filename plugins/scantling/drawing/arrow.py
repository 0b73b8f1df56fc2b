"""Arrows and marks."""

from __future__ import annotations

from math import sqrt

from scantling.drawing.shape import Circle, Group, Line, Polygon, Text


def arrow(x1: float, y1: float, x2: float, y2: float, *, head: float = 7.0, look: str = "accent") -> Group:
    """Return an arrow from the first point to the second."""
    far = sqrt((x2 - x1) ** 2 + (y2 - y1) ** 2) or 1.0
    along, across = (x2 - x1) / far, (y2 - y1) / far
    back_x, back_y = x2 - along * head, y2 - across * head
    half = head * 0.42
    tip = (
        (x2, y2),
        (back_x - across * half, back_y + along * half),
        (back_x + across * half, back_y - along * half),
    )
    filled = "mark" if look == "accent" else "solid"
    return Group((Line(x1, y1, back_x, back_y, look), Polygon(tip, filled)))


def numbered(x: float, y: float, number: str, *, size: float = 10.0) -> Group:
    """Return a number in a circle."""
    radius = size * (0.78 if len(number) < 2 else 0.92)
    return Group(
        (Circle(x, y, radius, "thin paper"), Text(x, y + size * 0.36, number, size, "middle", "red strong"))
    )
