"""One family: crosscut boards, or sheets and rips."""

from __future__ import annotations

from scantling.cutting.boards import solve_boards
from scantling.cutting.family import Family
from scantling.cutting.layout import Layout
from scantling.cutting.panels import PanelCutter
from scantling.cutting.search import Search
from scantling.cutting.steps import Steps
from scantling.fault import Fault, Faulty
from scantling.words import say

NAMED = 6
"""So many parts are named in a fault."""


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
        raise Faulty([_not_enough(family)])
    return layouts, bound


def _not_enough(family: Family) -> Fault:
    """Return that stock does not suffice, naming the parts: the largest first."""
    names = [name for kind in family.kinds for name, _ in kind.names]
    listed = ", ".join(f"'{name}'" for name in names[:NAMED]) + (", ..." if len(names) > NAMED else "")
    stock = ", ".join(f"{sort.item.available} of '{sort.item.id}'" for sort in family.sorts if sort.limited)
    return Fault(
        "not-enough",
        say(
            "there is not enough of '{family}' to cut {listed}",
            family=family.sorts[0].item.family,
            listed=listed,
        ),
        help=f"there are {stock}: allow more, or other sizes" if stock else "allow more, or other sizes",
    )
