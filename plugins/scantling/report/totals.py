"""Sums over a whole plan: cost, board feet, weight, and how much of the wood becomes furniture."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from scantling.cutting import CutBoard, CuttingPlan
from scantling.measure import Area, Length, Money, Weight
from scantling.plan import FittedPart, FittedPlan
from scantling.report.materials import NOTHING, MaterialsList
from scantling.report.weights import part_weight
from scantling.shop import Shop


@dataclass(frozen=True, slots=True)
class Totals:
    """What a plan comes to."""

    cost: Money
    wood_cost: Money
    board_feet: Fraction
    """Actual volume of the boards bought, in board feet; sheets are counted by area instead."""
    board_feet_nominal: Fraction
    """As a yard counts softwood: by nominal size."""
    linear_feet: Length
    """Boards bought, end to end."""
    sheets: int
    sheet_area: Area
    weight: Weight | None
    """Of the finished piece, at 12 % moisture, hardware apart; None where a wood is not known."""
    yield_: Fraction | None
    """Share of the wood bought that becomes blanks, by volume."""


def total(fitted: FittedPlan, cutting: CuttingPlan, materials: MaterialsList, shop: Shop) -> Totals:
    """Return the sums over a plan."""
    boards = [line for line in materials.stocks if not line.stock.is_sheet]
    sheets = [line for line in materials.stocks if line.stock.is_sheet]
    return Totals(
        cost=materials.cost,
        wood_cost=materials.wood_cost,
        board_feet=sum((line.board_feet for line in boards), Fraction(0)),
        board_feet_nominal=sum((line.board_feet_nominal or Fraction(0) for line in boards), Fraction(0)),
        linear_feet=sum((line.length for line in boards), NOTHING),
        sheets=sum(line.quantity for line in sheets),
        sheet_area=sum((line.area for line in sheets), Area(0)),
        weight=_weight(fitted, shop),
        yield_=yield_of(cutting.boards),
    )


def _weight(fitted: FittedPlan, shop: Shop) -> Weight | None:
    weights = [part_weight(part, _stock_key(part, fitted), shop.stocks) for part in fitted.parts]
    known = [
        weight * part.count for weight, part in zip(weights, fitted.parts, strict=True) if weight is not None
    ]
    return sum(known, Weight(0)) if len(known) == len(weights) else None


def _stock_key(part: FittedPart, fitted: FittedPlan) -> str:
    """Return the stock whose wood a part is of: its own, or that of the part whose offcut it is."""
    host = fitted.plan.parts.get(part.part.source.offcut_of)
    return next(iter((*(host.source.stocks if host else ()), *part.part.source.stocks)))


def yield_of(boards: Iterable[CutBoard]) -> Fraction | None:
    """Return the share of some boards' volume that becomes blanks, or None for no boards."""
    boards = tuple(boards)
    bought = sum((_volume(board) for board in boards), Fraction(0))
    used = sum(
        (
            (piece.length * piece.width * board.stock.thick).cubic_inches
            for board in boards
            for piece in board.pieces
        ),
        Fraction(0),
    )
    return used / bought if bought else None


def _volume(board: CutBoard) -> Fraction:
    return (board.sale.length * board.sale.width * board.stock.thick).cubic_inches
