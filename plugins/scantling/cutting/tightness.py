"""The need that leaves a list least room.

What share of the boards of a list could fractions of patterns do with? The shadow prices of that programme
are the worths by which the list is filled most nearly: what they leave over is all that the boards of the
list may waste together, so they say most about what each board must hold.

The programme is that of Gilmore and Gomory (1961) with one unknown for the share of all boards; its bound,
which ends it early, is that of Lagrange (Vanderbeck and Wolsey, 1996).
"""

from __future__ import annotations

from collections.abc import Sequence

from scantling.cutting.mixture import Column, Mixture
from scantling.cutting.needs import Need, whole
from scantling.cutting.relaxation import Relaxation, Unfinished

SHARE = -1_000_000
"""The number under which the share of all boards is known to the programme."""

DEAR = 10.0
"""What a stand-in for the largest part costs, where all boards of the list cost one."""

CLOSE = 0.2
"""The programme ends when the room that its worths leave is by this part more than the least possible."""

SLIGHTLY = 0.002
"""By this part every kind is also worth its area, so that none is worth nothing."""


def tight_need(
    relaxation: Relaxation, amounts: Sequence[int], until: int, *, most: float = 1.0
) -> Need | None:
    """Return the need that leaves a list least room; its worths are all more than nothing.

    Args:
        most: where there is room for more than this part of the boards, that is not looked for.

    Returns:
        The need, or None where there is more room.

    Raises:
        Unfinished: when the steps have reached `until`.
    """
    patterns = relaxation.patterns
    worths = _Share(relaxation, amounts, until, most).worths()
    if worths is None:
        return None
    total = sum([w * n for w, n in zip(worths, patterns.counts, strict=True)])
    area = sum([size * n for size, n in zip(patterns.sizes, patterns.counts, strict=True)])
    mixed = [
        (1 - SLIGHTLY) * worth / total + SLIGHTLY * size / area
        for worth, size in zip(worths, patterns.sizes, strict=True)
    ]
    return relaxation.need([max(1, worth) for worth in whole(mixed)])


class _Share:
    """The programme for one list."""

    def __init__(self, relaxation: Relaxation, amounts: Sequence[int], until: int, most: float) -> None:
        self.relaxation, self.patterns, self.until = relaxation, relaxation.patterns, until
        self.amounts, self.most, self.is_roomy = amounts, most, False
        self.sorts = [j for j, amount in enumerate(amounts) if amount]
        top = max(self.patterns.sizes)
        self.mixture = Mixture(
            self.patterns.counts,
            [0 if amount else None for amount in amounts],
            [DEAR * size / top for size in self.patterns.sizes],
        )
        self.best: tuple[float, list[float]] = (0.0, [])

    def worths(self) -> list[float] | None:
        """Return the worths of the kinds for which the list has least room."""
        marks = tuple((self.mixture.row_of[j], -float(self.amounts[j])) for j in self.sorts)
        pool = [self.mixture.column(0.0, j, counts) for j, counts in self.relaxation.pool if j in self.sorts]
        pool.append(Column(1.0, SHARE, (), marks))
        self.mixture.solve(pool, self._found, 300)
        return None if self.is_roomy else self.best[1]

    def _found(self, shadow: list[float]) -> list[Column]:
        """Return the patterns that gain, or none where the worths are good enough."""
        steps, patterns, mixture = self.relaxation.steps, self.patterns, self.mixture
        if steps.done > self.until:
            raise Unfinished
        if 1 - mixture.value() > self.most:
            self.is_roomy = True
            return []
        worths = [max(0.0, price) for price in shadow[: len(patterns.counts)]]
        targets = [mixture.target(j, 0.0) + 1e-7 for j in self.sorts]
        steps.done += 5 * len(worths) + mixture.work // 16
        mixture.work = 0
        held = patterns.best(worths, self.sorts, targets)
        total = sum([w * n for w, n in zip(worths, patterns.counts, strict=True)])
        most = sum(
            [
                self.amounts[j] * (found[0][0] if found else target)
                for j, target, found in zip(self.sorts, targets, held, strict=True)
            ]
        )
        if most > 0 and total / most > self.best[0]:
            self.best = total / most, worths
        share = self.best[0]
        if share > 1 or 1 - share < (1 - mixture.value()) * (1 + CLOSE):
            return []
        columns = []
        for j, found in zip(self.sorts, held, strict=True):
            for _, counts, chain in found:
                self.relaxation.pool[j, tuple(counts)] = chain
                columns.append(mixture.column(0.0, j, tuple(counts)))
        return columns
