"""Counting work, so that the build and the browser stop at the same answer."""

from __future__ import annotations

DEFAULT_STEPS = 1_400_000
"""A step is some microseconds of work in CPython; see docs/explain/cutting.md."""


class Steps:
    """How much work may still be done."""

    __slots__ = ("done", "most")

    def __init__(self, most: int) -> None:
        self.most = most
        self.done = 0

    def take(self, count: int) -> bool:
        """Do `count` steps of work; return whether there was leave for them."""
        self.done += count
        return self.done <= self.most

    @property
    def left(self) -> int:
        """Return how many steps may still be done."""
        return max(0, self.most - self.done)


FACTOR, SUMMAND, MASK = 6364136223846793005, 1442695040888963407, (1 << 64) - 1
"""The constants of the linear congruential generator of Knuth's MMIX."""


class Chance:
    """Repeatable choices that look random: the same on every machine."""

    __slots__ = ("state",)

    def __init__(self, seed: int = 1) -> None:
        self.state = seed

    def below(self, limit: int) -> int:
        """Return a whole number from 0 up to, but not including, `limit`."""
        self.state = (self.state * FACTOR + SUMMAND) & MASK
        return (self.state >> 33) % limit
