"""From parts and stock to a cutting plan, with a proven bound on its cost."""

from scantling.cutting.answer import Answer, Board, Offcut, Piece
from scantling.cutting.problem import PartItem, Problem, Rules, StockItem
from scantling.cutting.solve import solve
from scantling.cutting.steps import DEFAULT_STEPS

__all__ = [
    "DEFAULT_STEPS", "Answer", "Board", "Offcut", "PartItem", "Piece", "Problem", "Rules", "StockItem", "solve",
]  # fmt: skip
