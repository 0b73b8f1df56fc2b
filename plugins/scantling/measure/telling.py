"""In which units findings are told, which are made far from the reader who chose the units."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from scantling.measure.rounding import System

_TOLD: ContextVar[System] = ContextVar("told", default="in")


def told_system() -> System:
    """Return the units of what is told just now: inches, unless `telling_in` has said otherwise."""
    return _TOLD.get()


@contextmanager
def telling_in(system: System) -> Iterator[None]:
    """Tell lengths and weights of findings in these units, for what runs within."""
    token = _TOLD.set(system)
    try:
        yield
    finally:
        _TOLD.reset(token)
