"""A cutting plan: what to buy, where each piece lies, and the cuts that free it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True, slots=True)
class Piece:
    """A part as it lies on a board."""

    part: str
    x: int
    y: int
    length: int
    width: int

    def to_data(self) -> dict[str, Any]:
        """Return the piece in the form of the cutting seam."""
        return {"part": self.part, "x": self.x, "y": self.y, "length": self.length, "width": self.width}


@dataclass(frozen=True, slots=True)
class Offcut:
    """A rectangle that is left over."""

    x: int
    y: int
    length: int
    width: int

    def to_data(self) -> dict[str, Any]:
        """Return the offcut as plain data."""
        return {"x": self.x, "y": self.y, "length": self.length, "width": self.width}


@dataclass(frozen=True, slots=True)
class Board:
    """One piece of stock with all that is cut from it."""

    stock: str
    pieces: tuple[Piece, ...]
    offcuts: tuple[Offcut, ...] = ()

    def to_data(self) -> dict[str, Any]:
        """Return the board in the form of the cutting seam."""
        return {
            "stock": self.stock,
            "pieces": [piece.to_data() for piece in self.pieces],
            "offcuts": [offcut.to_data() for offcut in self.offcuts],
        }


@dataclass(frozen=True, slots=True)
class Answer:
    """A cutting plan and how near it is to the least cost."""

    cost: int
    """Whole cents."""
    bound: int
    """No cutting plan costs less than this: proven."""
    boards: tuple[Board, ...]
    steps: int = 0
    """How much work was done."""

    @property
    def proved(self) -> bool:
        """Return whether no cheaper plan exists."""
        return self.cost == self.bound

    def to_data(self) -> dict[str, Any]:
        """Return the answer in the form of the cutting seam."""
        return {
            "cost": self.cost,
            "bound": self.bound,
            "proved": self.proved,
            "boards": [board.to_data() for board in self.boards],
        }
