"""What a cut diagram shows of one board or sheet, free of how it was worked out."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PiecePicture:
    """One blank as it lies: lengths in the board's own unit, words as they are shown."""

    x: float
    """From the board's left end."""
    y: float
    """From its upper edge."""
    length: float
    """Along the board."""
    width: float
    letter: str
    name: str
    size: str
    part: str = ""
    """The part's id, for the page to find."""
    short: str = ""
    """That it ends up smaller than asked, in words, or ""."""


@dataclass(frozen=True, slots=True)
class OffcutPicture:
    """A rectangle that is kept."""

    x: float
    y: float
    length: float
    width: float
    size: str


@dataclass(frozen=True, slots=True)
class CutPicture:
    """One cut, from end to end along the middle of its kerf."""

    x1: float
    y1: float
    x2: float
    y2: float
    number: int
    setting: str
    """What the saw is set to, in words: "rip, fence at 2 1/2 in"."""
    freed: tuple[str, ...] = ()
    """What falls off: letters of pieces, or that it is an offcut or waste."""
    rest: tuple[str, ...] = ()
    """What stays, likewise; nothing where the kerf takes it."""
    warning: str = ""
    """Why a person should not make this cut as it is, or ""."""


@dataclass(frozen=True, slots=True)
class BoardPicture:
    """One board or sheet with everything that its diagram shows."""

    name: str
    """How the lists call it: "2x4 no. 1"."""
    size: str
    """What is bought: "8 ft" or "48 in × 96 in"."""
    length: float
    width: float
    kerf: float
    pieces: tuple[PiecePicture, ...]
    offcuts: tuple[OffcutPicture, ...] = ()
    cuts: tuple[CutPicture, ...] = ()
    length_shown: str = ""
    width_shown: str = ""
    """The measures of the board for its dimension lines; "" for none."""
    like_this: int = 1
    """How many boards are cut alike."""
    has_grain: bool = True
    """False for a sheet without grain; else it runs along the length."""
