"""How pieces lie on one board: sections, strips within a section, pieces within a strip.

The first cuts part a board into sections, the second part a section into strips, the third part a strip
into pieces; trimming a lone piece is free. Sections stand along the board's length, or across it
(`across`), which is the same with length and width exchanged.
"""

from __future__ import annotations

from dataclasses import dataclass

from scantling.cutting.family import Sort

Laid = tuple[int, int, int, int]
"""A piece in a strip: its kind, 1 if it is turned, and its length and width as the strip runs."""


@dataclass(frozen=True, slots=True)
class Strip:
    """Pieces in a row; as wide as the widest."""

    width: int
    pieces: tuple[Laid, ...]


@dataclass(frozen=True, slots=True)
class Section:
    """Strips side by side; as long as the longest."""

    length: int
    strips: tuple[Strip, ...]


@dataclass(frozen=True, slots=True)
class Layout:
    """All that is cut from one board."""

    sort: Sort
    across: bool
    sections: tuple[Section, ...]

    def counts(self, kinds: int) -> list[int]:
        """Return how many pieces of each kind lie here."""
        counts = [0] * kinds
        for section in self.sections:
            for strip in section.strips:
                for kind, *_ in strip.pieces:
                    counts[kind] += 1
        return counts
