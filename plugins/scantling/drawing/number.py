"""Writing coordinates: short, and the same on every machine."""

from __future__ import annotations

from functools import lru_cache


@lru_cache(maxsize=4096)
def short(value: float) -> str:
    """Write a coordinate to two decimals with nothing superfluous: `12`, `0.5` as `.5`, never `-0`."""
    text = f"{value:.2f}"
    if text[-1] == "0":
        text = text[:-3] if text[-2] == "0" else text[:-1]
    if text[0] == "0":
        return text[1:] or "0"
    if text[:2] == "-0":
        return f"-{text[2:]}" if len(text) > 2 else "0"
    return text


def pairs(points: tuple[tuple[float, float], ...]) -> str:
    """Write points as SVG lists them."""
    return " ".join(f"{short(x)},{short(y)}" for x, y in points)
