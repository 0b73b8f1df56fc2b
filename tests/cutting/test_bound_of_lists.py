"""The bound where more shopping lists are possible than are looked at."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from scantling.cutting.needs import Need
from scantling.cutting.search import Amounts, Search, Verdict
from scantling.cutting.steps import Steps


class _Excluding:
    """Fills only what costs 2,000; from the second look on it excludes each list that it is asked about."""

    prices = (1, 2)
    most = (2_000, 1_000)
    large = insists = False

    def __init__(self) -> None:
        self.needs = [Need((1,), (1, 2), 1_000)]

    def cost(self, found: Sequence[Any]) -> int:
        return 2_000 if found else 0

    def first(self) -> list[Any] | None:
        return ["all"]

    def sharpen(self) -> bool:
        return False

    def excluded(self, _amounts: Amounts, effort: int) -> bool:
        return effort > 1

    def fill(self, _amounts: Amounts, _effort: int) -> list[Any] | Verdict:
        return Verdict.UNDECIDED


def test_lists_not_looked_at_keep_the_bound_down() -> None:
    """Two hundred lists of the least cost are excluded, but there are more of them."""
    _, bound = Search(_Excluding(), Steps(1_000_000)).run()

    assert bound == 1_000
