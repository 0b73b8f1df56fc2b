"""Writing coordinates: short, and the same on every machine."""

from __future__ import annotations


def short(value: float) -> str:
    """Write a coordinate to two decimals with nothing superfluous: `12`, `0.5` as `.5`, never `-0`."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    if text.startswith("0."):
        return text[1:]
    if text.startswith("-0."):
        return "-" + text[2:]
    return "0" if text == "-0" else text


def pairs(points: tuple[tuple[float, float], ...]) -> str:
    """Write points as SVG lists them."""
    return " ".join(f"{short(x)},{short(y)}" for x, y in points)
