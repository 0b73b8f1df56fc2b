"""Which cuts to ask the store for, so that a sheet or a long board fits the car."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.cutting import CutBoard, CuttingPlan
from scantling.cutting import store_cuts as too_long
from scantling.measure import Display, Length
from scantling.report.materials import NOTHING
from scantling.words import counted, mark, say


@dataclass(frozen=True, slots=True)
class StoreCut:
    """One first cut of a board or sheet."""

    board: CutBoard
    is_rip: bool
    setting: Length
    """How wide or long the piece that falls off is."""


def store_cuts(cutting: CuttingPlan) -> tuple[StoreCut, ...]:
    """Return the first cuts after which nothing is longer than the car takes, board by board, in order."""
    return tuple(
        StoreCut(board, panel.cut.is_rip, cutting.order.length(panel.cut.setting))
        for board in cutting.boards
        for panel in too_long(board.raw, cutting.order.problem)
        if panel.cut is not None and cutting.order.length(panel.cut.setting) > NOTHING
    )


def store_words(cuts: tuple[StoreCut, ...], display: Display) -> list[str]:
    """Say what to ask the store for, a line for each: "3/4 plywood no. 1, 1 cut: crosscut at 48 in"."""
    lines: dict[str, list[str]] = {}
    for cut in cuts:
        told = mark("rip at {size}") if cut.is_rip else mark("crosscut at {size}")
        lines.setdefault(cut.board.name, []).append(say(told, size=display.length(cut.setting)))
    return [
        counted(
            "{board}, {count} cut: {cuts}",
            "{board}, {count} cuts: {cuts}",
            len(told),
            board=name,
            cuts=say(", then ").join(told),
        )
        for name, told in lines.items()
    ]
