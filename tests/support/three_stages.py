"""The least cost of a few pieces by trying everything: every set of them, every way of cutting it in stages.

It shares no thought with the solver: all sets of pieces that one board gives are listed, and an integer
programme (HiGHS, in scipy) covers the pieces with them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cached_property
from itertools import product
from typing import Any

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

NEVER = 10**9


def least_cost(data: dict[str, Any]) -> int:
    """Return the least cost of a cutting problem of a few pieces, whose stock has no trim."""
    trial = _Trial.of(data)
    columns = [
        (stock["price"], [pieces >> piece & 1 for piece in range(trial.count)])
        for stock in data["stock"]
        for pieces in range(1, 1 << trial.count)
        if trial.is_cut_from(pieces, (stock["length"], stock["width"]), data["stages"])
    ]
    found = milp(
        np.array([price for price, _ in columns]),
        constraints=LinearConstraint(np.array([covered for _, covered in columns]).T, lb=1),
        bounds=Bounds(0, 1),
        integrality=np.ones(len(columns)),
    )
    assert found.success
    return round(found.fun)


@dataclass
class _Trial:
    """Pieces by number; a set of them is a number with a bit for each."""

    sides: list[list[tuple[int, int]]]
    """Of each piece, length and width in each way that it may lie."""
    kerf: int
    known: dict[tuple[int, int, int, int], int] = field(default_factory=dict)

    @classmethod
    def of(cls, data: dict[str, Any]) -> _Trial:
        sides = []
        for part in data["parts"]:
            lies = [(part["length"], part["width"])]
            if part["grain"] == "any":
                lies.append((part["width"], part["length"]))
            sides += [lies] * part["count"]
        return cls(sides, data["kerf"])

    @property
    def count(self) -> int:
        return len(self.sides)

    def is_cut_from(self, pieces: int, board: tuple[int, int], stages: int) -> bool:
        """Return whether a board gives the pieces, crosscut first or ripped first."""
        return any(self._laid(pieces, axis, board[1 - axis], stages) <= board[axis] for axis in (0, 1))

    def _laid(self, pieces: int, axis: int, across: int, stages: int) -> int:
        """Return the least length along an axis of groups of the pieces side by side, parted by saw cuts."""
        best = {0: -self.kerf}
        for some in range(1, pieces + 1):
            if some & pieces == some:
                first = some & -some
                best[some] = min(
                    self._group(group, axis, across, stages - 1) + self.kerf + best[some ^ group]
                    for group in _subsets(some)
                    if group & first
                )
        return best[pieces]

    def _group(self, group: int, axis: int, across: int, stages: int) -> int:
        """Return the least size along an axis of a strip that gives a group, parted the other way."""
        if group & (group - 1) == 0:
            (lies,) = (sides for piece, sides in enumerate(self.sides) if group >> piece & 1)
            return min((one[axis] for one in lies if one[1 - axis] <= across), default=NEVER)
        if stages == 0:
            return NEVER
        key = group, axis, across, stages
        if key not in self.known:
            self.known[key] = self._least_strip(*key)
        return self.known[key]

    def _least_strip(self, group: int, axis: int, across: int, stages: int) -> int:
        low, high = 0, len(self._sizes[axis])
        while low < high:
            middle = (low + high) // 2
            if self._laid(group, 1 - axis, self._sizes[axis][middle], stages) <= across:
                high = middle
            else:
                low = middle + 1
        return self._sizes[axis][low] if low < len(self._sizes[axis]) else NEVER

    @cached_property
    def _sizes(self) -> list[list[int]]:
        """Return, for each axis, every size that some of the pieces have side by side."""
        found = []
        for axis in (0, 1):
            choices = [(0, *(lies[axis] + self.kerf for lies in sides)) for sides in self.sides]
            found.append(sorted({sum(chosen) - self.kerf for chosen in product(*choices)} - {-self.kerf}))
        return found


def _subsets(pieces: int) -> Iterator[int]:
    """Yield every set within a set but the empty one."""
    some = pieces
    while some:
        yield some
        some = (some - 1) & pieces
