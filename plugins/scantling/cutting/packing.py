"""Whether given boards can hold all parts: a search that fills one board after another.

The longest part left must lie on some board, so each board that is filled holds it. What is tried for a
board is every set of parts that wastes no more than all the boards together can waste, and that no
exchange with a part left over would improve.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from scantling.cutting.lengths import Lengths
from scantling.cutting.needs import Need
from scantling.cutting.steps import Steps

Filled = tuple[int, tuple[int, ...]]
"""A sort of stock and how many of each kind one board of it holds."""


class OutOfSteps(Exception):
    """The search was broken off."""


def pack(
    lengths: Lengths, amounts: Sequence[int], needs: Sequence[Need], steps: Steps, leave: int
) -> list[Filled] | None:
    """Return how to fill the boards of a shopping list, or None where that is impossible.

    Raises:
        OutOfSteps: after `leave` steps.
    """
    search = _Search(lengths, needs, steps, steps.done + leave)
    if search.deeper(list(lengths.counts), list(amounts), [need.slack(amounts) for need in needs]):
        return search.filled[::-1]
    return None


class _Search:
    def __init__(self, lengths: Lengths, needs: Sequence[Need], steps: Steps, end: int) -> None:
        self.lengths, self.needs, self.steps, self.end = lengths, needs, steps, end
        self.failed: set[tuple[tuple[int, ...], tuple[int, ...]]] = set()
        self.filled: list[Filled] = []

    def deeper(self, left: list[int], boards: list[int], slacks: list[int]) -> bool:
        longest = next((k for k, count in enumerate(left) if count), None)
        if longest is None:
            return True
        if min(slacks, default=0) < 0:
            return False
        state = (tuple(left), tuple(boards))
        if state in self.failed:
            return False
        self.steps.done += 10
        if self.steps.done > self.end:
            raise OutOfSteps
        wanted, rooms = self.lengths.wanted, self.lengths.rooms
        reach = _reachable(wanted, left, rooms[-1])
        tops = [(reach[0] & ((2 << room) - 1)).bit_length() - 1 for room in rooms]
        slack = sum(n * top for n, top in zip(boards, tops, strict=False)) - sum(
            a * n for a, n in zip(wanted, left, strict=False)
        )
        if slack < 0:
            self.failed.add(state)
            return False
        for j, pattern, worse in self.choices(left, boards, slacks, longest, tops, slack, reach):
            boards[j] -= 1
            rest = [a - b for a, b in zip(left, pattern, strict=False)]
            if self.deeper(rest, boards, worse):
                boards[j] += 1
                self.filled.append((j, tuple(pattern)))
                return True
            boards[j] += 1
        self.failed.add(state)
        return False

    def choices(
        self,
        left: list[int],
        boards: list[int],
        slacks: list[int],
        longest: int,
        tops: list[int],
        slack: int,
        reach: list[int],
    ) -> list[tuple[int, list[int], list[int]]]:
        """Return what is worth trying: a sort of board, what it holds, and the slacks then left."""
        wanted, rooms = self.lengths.wanted, self.lengths.rooms
        found = []
        for j, count in enumerate(boards):
            if not count or rooms[j] < wanted[longest]:
                continue
            for pattern, waste in _patterns(
                wanted, left, longest, rooms[j], slack + rooms[j] - tops[j], reach, self.steps
            ):
                if self.steps.done > self.end:
                    raise OutOfSteps
                worse = []
                for need, have in zip(self.needs, slacks, strict=False):
                    have -= need.holds[j]
                    for worth, n in zip(need.worths, pattern, strict=False):
                        if n:
                            have += worth * n
                    if have < 0:
                        break
                    worse.append(have)
                else:
                    self.steps.done += len(wanted) // 2
                    if not _improvable(wanted, left, pattern, longest, waste):
                        found.append((waste, len([n for n in pattern if n]), j, pattern, worse))
        found.sort(key=lambda one: one[:2])
        return [(j, pattern, worse) for _, _, j, pattern, worse in found]


def _reachable(wanted: Sequence[int], left: Sequence[int], room: int) -> list[int]:
    """Return, for each kind, a set of bits: the sums that it and the kinds after it can make."""
    mask = (2 << room) - 1
    bits = 1
    found = [1]
    for length, count in zip(reversed(wanted), reversed(left), strict=False):
        copies = 1
        while count > 0:
            take = min(copies, count)
            bits |= (bits << (length * take)) & mask
            count -= take
            copies *= 2
        found.append(bits)
    found.reverse()
    return found


def _patterns(
    wanted: Sequence[int],
    left: Sequence[int],
    longest: int,
    room: int,
    waste: int,
    reach: Sequence[int],
    steps: Steps,
) -> Iterator[tuple[list[int], int]]:
    """Yield sets of parts that hold the longest and leave at most `waste`, and what they leave."""
    pattern = [0] * len(wanted)
    pattern[longest] = 1
    size = len(wanted)

    def deeper(kind: int, space: int) -> Iterator[tuple[list[int], int]]:
        steps.done += 1
        if kind == size:
            if space <= waste:
                yield list(pattern), space
            return
        low = max(0, space - waste)
        if not (reach[kind] >> low) & ((2 << (space - low)) - 1):
            return
        length, before = wanted[kind], pattern[kind]
        most = min(left[kind] - before, space // length)
        for copies in range(most, -1, -1):
            pattern[kind] = before + copies
            yield from deeper(kind + 1, space - copies * length)
        pattern[kind] = before

    yield from deeper(longest, room - wanted[longest])


def _improvable(
    wanted: Sequence[int], left: Sequence[int], pattern: Sequence[int], longest: int, waste: int
) -> bool:
    """Return whether a part left over could replace some parts here and fill the board at least as well.

    Those parts would fit where that part lies in any complete answer, so nothing is lost by leaving
    this pattern out.
    """
    for kind, (have, used) in enumerate(zip(left, pattern, strict=False)):
        if have == used:
            continue
        length = wanted[kind]
        if length <= waste:
            return True
        bits = 1
        for other in range(longest, len(wanted)):
            copies = pattern[other] - (other == longest)
            if other == kind or not copies or wanted[other] > length:
                continue
            for _ in range(copies):
                bits |= bits << wanted[other]
        low = length - waste
        bits &= (2 << length) - 1
        if low <= 0:
            return True
        if bits >> low:
            return True
    return False
