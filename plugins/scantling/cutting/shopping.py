"""One family: crosscut boards, or sheets and rips."""

from __future__ import annotations

from scantling.cutting.boards import solve_boards
from scantling.cutting.family import Family
from scantling.cutting.layout import Layout
from scantling.cutting.panels import PanelCutter
from scantling.cutting.search import Search
from scantling.cutting.steps import Steps
from scantling.fault import Fault, Faulty


def solve_family(family: Family, steps: Steps) -> tuple[list[Layout], int]:
    """Return layouts for all pieces of a family, and a bound on the cost.

    Raises:
        Faulty: where no way was found to cut all parts from what is to be had.
    """
    if family.one_width is not None:
        layouts, bound = solve_boards(family, steps)
    else:
        layouts, bound = Search(PanelCutter(family, steps), steps).run()
    if layouts is None:
        name = family.sorts[0].item.family
        raise Faulty(
            [
                Fault(
                    "not-enough",
                    f"there is not enough of '{name}' to cut all its parts",
                    help="allow more, or other sizes",
                )
            ]
        )
    return layouts, bound
