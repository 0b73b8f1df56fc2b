"""Find the numbers in a document that nobody accounts for.

A number in plan.json is either what the author wrote (its key is named as given) or something that the
product computed, and then a quantity names the key under which it stands.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from scantling.quantities import Quantity

_NUMBER = re.compile(
    r"[≈$€£\s]*[-+]?\d+([.,]\d+)*(\s*/\s*\d+|\s+\d+/\d+)?(\s*[a-z%°²$€£\"']+){0,2}", re.IGNORECASE
)


def numbers(data: object, path: tuple[str, ...] = ()) -> Iterator[tuple[str, object]]:
    """Yield each number of nested plain data with the keys that lead to it, joined by dots.

    Places in a list are left out of the path, so that every part of a plan has the same one. Text counts as a
    number when it is one with at most two words behind it: "35 1/2", "12.5 board feet", "$ 18.50".
    """
    if isinstance(data, dict):
        for key, value in data.items():
            yield from numbers(value, (*path, str(key)))
    elif isinstance(data, list | tuple):
        for value in data:
            yield from numbers(value, path)
    elif isinstance(data, bool):
        return
    elif isinstance(data, int | float) or (isinstance(data, str) and _NUMBER.fullmatch(data.strip())):
        yield ".".join(path), data


FORMS = {"in", "mm", "lb", "cents", "text"}
"""Keys under which one number stands in several forms: exact, and as shown."""


def stands_under(path: str, key: str) -> bool:
    """Return whether a path ends in a key: `cost.total` and `total` both name `report.cost.total`.

    A `*` in a key stands for any one step, as where authors choose the names.
    """
    steps, named = path.split("."), key.split(".")
    tail = steps[-len(named) :]
    return len(tail) == len(named) and all(
        want in ("*", have) for want, have in zip(named, tail, strict=True)
    )


def without_form(path: str) -> str:
    """Return a path without a last step that only says in which form the number stands there."""
    above, _, last = path.rpartition(".")
    return above if above and last in FORMS else path


def unexplained(data: object, given: Iterable[str], quantities: Iterable[Quantity]) -> list[str]:
    """Return the paths of numbers that are neither given by the author nor a listed quantity."""
    explained = [*given, *(key for quantity in quantities for key in quantity.keys)]
    paths = dict.fromkeys(without_form(path) for path, _ in numbers(data))
    return [path for path in paths if not any(stands_under(path, key) for key in explained)]
