"""A cutting plan: what to buy, where each piece lies, and the cuts that free it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True, slots=True)
class Piece:
    """A part as it lies on a board."""

    part: str
    x: int
    """Along the board, from its left end."""
    y: int
    """Across the board, from its lower edge."""
    length: int
    """Along the board, as it lies."""
    width: int
    short_by: int = 0
    """How much narrower than asked it ends up, where its part allows that."""
    shorter_by: int = 0
    """How much shorter than asked it ends up, likewise."""

    def to_data(self) -> dict[str, Any]:
        """Return the piece in the form of the cutting seam."""
        data = {"part": self.part, "x": self.x, "y": self.y, "length": self.length, "width": self.width}
        less = {"short_by": self.short_by, "shorter_by": self.shorter_by}
        return data | {key: value for key, value in less.items() if value}


@dataclass(frozen=True, slots=True)
class Offcut:
    """A rectangle that is left over and kept."""

    x: int
    y: int
    length: int
    width: int

    def to_data(self) -> dict[str, Any]:
        """Return the offcut as plain data."""
        return {"x": self.x, "y": self.y, "length": self.length, "width": self.width}


@dataclass(frozen=True, slots=True)
class Cut:
    """One cut, right through a panel."""

    number: int
    """When it is made, from 1."""
    is_rip: bool
    """A rip runs along the board; otherwise it is a crosscut."""
    setting: int
    """Fence or stop: how wide or long what falls off is, measured from the panel's lower edge or left end.

    Nothing or less where only the blade's edge trims the panel."""
    warning: str = ""
    """Why a person should not make this cut as it is, or ""."""
    at_store: bool = False
    """Whether the store makes it, since the panel is too long to be carried."""

    @property
    def kind(self) -> str:
        """Return "rip" or "crosscut"."""
        return "rip" if self.is_rip else "crosscut"


@dataclass(frozen=True, slots=True)
class Panel:
    """A rectangle of a board: a piece, an offcut, waste, or what a cut parts in two."""

    x: int
    y: int
    length: int
    width: int
    piece: int | None = None
    """Which of the board's pieces this is."""
    is_kept: bool = False
    cut: Cut | None = None
    freed: Panel | None = None
    """What falls off."""
    rest: Panel | None = None
    """What stays, beyond the kerf; None where the kerf takes all of it."""

    def to_data(self) -> dict[str, Any]:
        """Return the panel and all that is cut from it as plain data."""
        data: dict[str, Any] = {"x": self.x, "y": self.y, "length": self.length, "width": self.width}
        if self.cut is None:
            if self.piece is not None:
                data["piece"] = self.piece
            else:
                data["kept"] = self.is_kept
            return data
        data["cut"] = {"number": self.cut.number, "kind": self.cut.kind, "setting": self.cut.setting}
        if self.cut.at_store:
            data["cut"]["at_store"] = True
        if self.cut.warning:
            data["cut"]["warning"] = self.cut.warning
        data["freed"] = self.freed.to_data() if self.freed else None
        data["rest"] = self.rest.to_data() if self.rest else None
        return data


@dataclass(frozen=True, slots=True)
class Board:
    """One piece of stock with all that is cut from it."""

    stock: str
    pieces: tuple[Piece, ...]
    offcuts: tuple[Offcut, ...] = ()
    cuts: Panel | None = None
    """The whole board, as the root of the tree of cuts."""

    def to_data(self) -> dict[str, Any]:
        """Return the board in the form of the cutting seam."""
        data: dict[str, Any] = {
            "stock": self.stock,
            "pieces": [piece.to_data() for piece in self.pieces],
            "offcuts": [offcut.to_data() for offcut in self.offcuts],
        }
        if self.cuts is not None:
            data["cuts"] = self.cuts.to_data()
        return data


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
