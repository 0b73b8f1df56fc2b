"""How something is made up, as the search keeps it: a chain of what was put together last, back to nothing.

What shares a beginning shares the links of it, so that a million stacks can be kept at once.
"""

from __future__ import annotations

from typing import Any

Chain = tuple[Any, ...]
"""(part, copies, rest), or nothing; in a row of sections ((section, 1), rest)."""


def counts_of(chain: Chain, kinds: int) -> list[int]:
    """Return how many of each kind a pattern holds."""
    counts = [0] * kinds
    while chain:
        (section, _), chain = chain
        while section:
            strip, copies, section = section
            while strip:
                laid, number, strip = strip
                counts[laid[0]] += number * copies
    return counts


def laid_out(chain: Chain) -> list[list[list[tuple[int, int, int, int]]]]:
    """Return the sections of a pattern, each a list of strips, each a list of pieces."""
    sections = []
    while chain:
        (section, _), chain = chain
        strips = []
        while section:
            strip, copies, section = section
            pieces = []
            while strip:
                laid, number, strip = strip
                pieces += [laid] * number
            strips += [pieces] * copies
        sections.append(strips)
    return sections
