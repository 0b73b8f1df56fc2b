"""Names that were probably meant."""

from __future__ import annotations

from collections.abc import Callable, Iterable

LONGEST_COMPARED = 60
MOST_OFFERED = 4


def edit_distance(one: str, other: str) -> int:
    """Return how many letters must be changed, added, dropped or swapped with a neighbour.

    The restricted Damerau-Levenshtein distance.
    """
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        before, last, row = row, before, [i]
        for j, against in enumerate(other, 1):
            cost = min(row[j - 1] + 1, before[j] + 1, before[j - 1] + (letter != against))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == against:
                cost = min(cost, last[j - 2] + 1)
            row.append(cost)
    return row[-1]


def nearest(name: str, known: Iterable[str]) -> list[str]:
    """Return the names in `known` that `name` was probably meant to be, best first, at most four."""
    folded = name.casefold()[:LONGEST_COMPARED]
    allowed = max(1, len(folded) // 3)
    ranked = sorted(
        (edit_distance(folded, other.casefold()[:LONGEST_COMPARED]), other) for other in dict.fromkeys(known)
    )
    return [other for distance, other in ranked if distance <= allowed][:MOST_OFFERED]


def _as_written(words: str, /, **values: object) -> str:
    return words.format_map(values)


def did_you_mean(
    name: str, known: Iterable[str], *, kind: str, tell: Callable[..., str] = _as_written
) -> str:
    """Return the help line for an unknown name.

    Args:
        kind: what was expected, in the plural ("parts"), for when nothing is near.
        tell: who tells it: `say` of `scantling.words` where a reader sees it; English for authors.
    """
    known = list(known)
    close = nearest(name, known)
    if len(close) == 1:
        return tell("did you mean '{name}'?", name=close[0])
    if close:
        return tell("did you mean one of {names}?", names=_listed(close, tell))
    if not known:
        return tell("there are no {kind} here yet", kind=kind)
    names = _listed(sorted(known)[:12], tell)
    return tell("the {kind} here are {names}", kind=kind, names=names)


def _listed(names: Iterable[str], tell: Callable[..., str]) -> str:
    return ", ".join(tell("'{name}'", name=name) for name in names)
