"""Which cuts to ask the store for, so that a sheet or a long board fits the car."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from scantling.cutting import CutBoard, CuttingPlan, Panel
from scantling.measure import Display, Length
from scantling.report.materials import NOTHING
from scantling.words import mark, say


@dataclass(frozen=True, slots=True)
class StoreCut:
    """One first cut of a board or sheet."""

    board: CutBoard
    is_rip: bool
    setting: Length
    """How wide or long the piece that falls off is."""


def store_cuts(cutting: CuttingPlan, longest: Length | None) -> tuple[StoreCut, ...]:
    """Return the first cuts after which nothing is longer than the car takes, board by board."""
    if longest is None:
        return ()
    most = longest.inches * cutting.order.per_inch
    return tuple(
        StoreCut(board, panel.cut.is_rip, cutting.order.length(panel.cut.setting))
        for board in cutting.boards
        if max(board.sale.length, board.sale.width) > longest and board.raw.cuts is not None
        for panel in _first(board.raw.cuts, most)
        if panel.cut is not None and cutting.order.length(panel.cut.setting) > NOTHING
    )


def _first(panel: Panel, most: Fraction) -> Iterator[Panel]:
    """Yield the panels that are cut because they are too long, outer ones first."""
    if panel.cut is None or max(panel.length, panel.width) <= most:
        return
    yield panel
    for part in (panel.freed, panel.rest):
        if part is not None:
            yield from _first(part, most)


def store_words(cuts: tuple[StoreCut, ...], display: Display) -> list[str]:
    """Say what to ask the store for, a line for each board: "3/4 plywood no. 1: crosscut at 48 in"."""
    lines: dict[str, list[str]] = {}
    for cut in cuts:
        told = mark("rip at {size}") if cut.is_rip else mark("crosscut at {size}")
        lines.setdefault(cut.board.name, []).append(say(told, size=display.length(cut.setting)))
    return [f"{name}: {say(', then ').join(told)}" for name, told in lines.items()]
