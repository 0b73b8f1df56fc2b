"""From parts and stock to a cutting plan, with a proven bound on its cost."""

from scantling.cutting.along import costs_along
from scantling.cutting.answer import Answer, Board, Cut, Offcut, Panel, Piece
from scantling.cutting.choosing import settings_of, store_cuts
from scantling.cutting.for_plan import (
    CutBoard,
    CutPiece,
    CuttingPlan,
    KeptOffcut,
    Lot,
    cut_plan,
    cut_together,
    plan_problem,
)
from scantling.cutting.memory import Memory
from scantling.cutting.order import Order, Wanted, write_order
from scantling.cutting.problem import PartItem, Problem, Rules, StockItem
from scantling.cutting.solve import Cost, solve, solve_cost
from scantling.cutting.steps import DEFAULT_STEPS
from scantling.cutting.tree import replay
from scantling.cutting.trimmings import OffcutPiece
from scantling.cutting.turns import cuts_in_order

__all__ = [
    "DEFAULT_STEPS",
    "Answer",
    "Board",
    "Cost",
    "Cut",
    "CutBoard",
    "CutPiece",
    "CuttingPlan",
    "KeptOffcut",
    "Lot",
    "Memory",
    "Offcut",
    "OffcutPiece",
    "Order",
    "Panel",
    "PartItem",
    "Piece",
    "Problem",
    "Rules",
    "StockItem",
    "Wanted",
    "costs_along",
    "cut_plan",
    "cut_together",
    "cuts_in_order",
    "plan_problem",
    "replay",
    "settings_of",
    "solve",
    "solve_cost",
    "store_cuts",
    "write_order",
]
