"""Looking into drawings."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from scantling.drawing import Group


def flat(shapes: Iterable[Any]) -> Iterator[Any]:
    """Yield every shape, whatever group it is in, as if no group were moved."""
    for shape in shapes:
        if isinstance(shape, Group):
            yield from flat(shape.shapes)
        else:
            yield shape
