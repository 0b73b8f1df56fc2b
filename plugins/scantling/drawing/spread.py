"""Keeping things apart that want to stand too close together."""

from __future__ import annotations


def spread(wanted: list[float], apart: float, least: float, most: float) -> list[float]:
    """Return places near the wanted ones (which rise), at least `apart`, between two ends if they fit."""
    placed: list[float] = []
    for at in wanted:
        placed.append(max(at, placed[-1] + apart if placed else least))
    limit = most
    for i in range(len(placed) - 1, -1, -1):
        placed[i] = min(placed[i], limit)
        limit = placed[i] - apart
    return placed
