"""A fitted plan as plain data: `plan.json`, and what `scantling show --json` prints.

Lengths stand as exact inches in words ("35 1/2") and as shown; money as whole cents.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from scantling.cutting import Cut, CutBoard, CutPiece, KeptOffcut, Panel, cuts_in_order
from scantling.formula import Value
from scantling.measure import (
    Display,
    Length,
    Money,
    Weight,
    write_board_feet,
    write_linear,
    write_money,
    write_weight,
)
from scantling.plan import FittedPart, FittedStep, FittedUse
from scantling.report.materials import StockLine, WareLine
from scantling.report.report import Report
from scantling.report.totals import Totals
from scantling.report.words import (
    exact_inches,
    origin_words,
    part_notes,
    percent,
    plain_text,
    write_thick,
    write_value,
)

VERSION = 1
"""Raised when a key changes its meaning; new keys do not raise it."""


def plan_data(report: Report, display: Display) -> dict[str, Any]:
    """Return a whole report as JSON-able data, in a fixed order."""
    fitted, plan, shop = report.fitted, report.fitted.plan, report.shop
    write = _Writer(display, shop.currency)
    return {
        "scantling": VERSION,
        "plan": plan.slug,
        "title": plain_text_title(plan.title),
        "summary": plain_text(fitted.summary, display),
        "author": plan.author,
        "licence": plan.licence,
        "revised": plan.revised,
        "sizes": {name: write.value(value) for name, value in fitted.sizes.items()},
        "options": dict(fitted.options),
        "overall": {axis: write.length(length) for axis, length in fitted.overall().items()},
        "prices_of": shop.prices_of,
        "currency": shop.currency,
        "totals": write.totals(report.totals),
        "materials": [write.line(line) for _, lines in report.materials.by_shelf() for line in lines],
        "cut_list": [write.part(part) for part in fitted.parts],
        "trace": [
            {
                "letter": origin.part.letter,
                "part": origin.part.id,
                "count": origin.count,
                "from": origin_words(origin, display),
            }
            for origin in report.origins
        ],
        "cutting": write.cutting(report),
        "joins": [
            {
                "first": join.join.first,
                "second": join.join.second,
                "with": join.join.how,
                "joints": join.joints,
                "fastener": join.fastener,
                "fasteners": join.fasteners,
                "glue": join.join.glue,
            }
            for join in fitted.joins
        ],
        "steps": [write.step(step) for step in fitted.steps],
        "cautions": [plain_text(caution, display) for caution in fitted.cautions],
    }


def plain_text_title(title: str) -> str:
    """Return a title on one line."""
    return " ".join(title.split())


class _Writer:
    """Writes values the way the reader chose."""

    def __init__(self, display: Display, currency: str) -> None:
        self.display = display
        self.currency = currency

    def length(self, length: Length) -> dict[str, str]:
        return {"in": exact_inches(length), "text": self.display.length(length)}

    def thick(self, length: Length) -> dict[str, str]:
        return {"in": exact_inches(length), "text": write_thick(length, self.display)}

    def value(self, value: Value) -> dict[str, str]:
        if isinstance(value, Length):
            return self.length(value)
        return {"text": write_value(value, self.display)}

    def money(self, money: Money) -> dict[str, Any]:
        return {"cents": money.cents, "text": write_money(money, self.currency)}

    def weight(self, weight: Weight | None) -> dict[str, str] | None:
        if weight is None:
            return None
        return {"lb": _decimal(weight.pounds), "text": write_weight(weight, system=self.display.system)}

    def totals(self, totals: Totals) -> dict[str, Any]:
        return {
            "cost": self.money(totals.cost),
            "wood_cost": self.money(totals.wood_cost),
            "board_feet_nominal": write_board_feet(totals.board_feet_nominal),
            "board_feet_actual": write_board_feet(totals.board_feet),
            "linear_feet": write_linear(totals.linear_feet, system=self.display.system),
            "sheets": totals.sheets,
            "sheet_area": write_value(totals.sheet_area, self.display),
            "weight": self.weight(totals.weight),
            "yield": None if totals.yield_ is None else percent(totals.yield_),
        }

    def line(self, line: StockLine | WareLine) -> dict[str, Any]:
        shared = {
            "shelf": line.shelf,
            "quantity": line.quantity,
            "unit_price": self.money(line.unit_price),
            "cost": self.money(line.cost),
        }
        if isinstance(line, WareLine):
            return {
                "item": line.ware.key,
                "sold": line.ware.sold,
                **shared,
                "needed": _decimal(line.needed),
                "area": None if line.area is None else write_value(line.area, self.display),
                "length": None if line.length is None else self.length(line.length),
                "for": line.why,
            }
        nominal = line.board_feet_nominal
        return {
            "item": line.stock.key,
            "sold": line.sale.label,
            **shared,
            "owned": line.is_owned,
            "thick": self.thick(line.stock.thick),
            "width": self.length(line.sale.width),
            "length": self.length(line.sale.length),
            "board_feet_nominal": None if nominal is None else write_board_feet(nominal),
            "board_feet_actual": write_board_feet(line.board_feet),
            "weight": self.weight(line.weight),
        }

    def part(self, part: FittedPart) -> dict[str, Any]:
        return {
            "letter": part.letter,
            "part": part.id,
            "count": part.count,
            "length": self.length(part.length),
            "width": self.length(part.width),
            "thick": self.thick(part.thick),
            "from": " or ".join(part.part.source.stocks),
            "from_offcut_of": part.part.source.offcut_of,
            "blank": {
                "pieces": part.blank.pieces * part.count,
                "along": self.length(part.blank.along),
                "across": self.length(part.blank.across),
            },
            "notes": part_notes(part, self.display),
        }

    def cutting(self, report: Report) -> dict[str, Any]:
        cutting = report.cutting
        return {
            "cost": self.money(cutting.cost),
            "bound": self.money(cutting.bound),
            "proved": cutting.is_proved,
            "kerf": self.length(report.shop.kerf),
            "boards": [self.board(board, cutting.order.length) for board in cutting.boards],
            "from_offcuts": [
                {
                    "part": piece.part.id,
                    "of": piece.strip.of,
                    "strip": piece.strip_number,
                    "x": self.length(piece.x),
                }
                for piece in cutting.from_offcuts
            ],
        }

    def board(self, board: CutBoard, of_units: Callable[[int], Length]) -> dict[str, Any]:
        cuts = cuts_in_order(board.raw.cuts) if board.raw.cuts is not None else []
        return {
            "board": board.name,
            "stock": board.stock.key,
            "sold": board.sale.label,
            "length": self.length(board.sale.length),
            "width": self.length(board.sale.width),
            "pieces": [self.piece(piece) for piece in board.pieces],
            "offcuts": [self.offcut(offcut) for offcut in board.offcuts],
            "cuts": [self.cut(cut, panel, of_units) for cut, panel in cuts],
        }

    def cut(self, cut: Cut, panel: Panel, of_units: Callable[[int], Length]) -> dict[str, Any]:
        """Return a cut with the panel that it parts; the setting is 0 or less where the blade only trims."""
        return {
            "number": cut.number,
            "kind": cut.kind,
            "setting": self.length(of_units(cut.setting)),
            "x": self.length(of_units(panel.x)),
            "y": self.length(of_units(panel.y)),
            "length": self.length(of_units(panel.length)),
            "width": self.length(of_units(panel.width)),
            "at_store": cut.at_store,
            "warning": cut.warning,
        }

    def piece(self, piece: CutPiece) -> dict[str, Any]:
        return {"letter": piece.part.letter, "part": piece.part.id, "number": piece.number, **self.box(piece)}

    def offcut(self, offcut: KeptOffcut) -> dict[str, Any]:
        return self.box(offcut)

    def box(self, box: CutPiece | KeptOffcut) -> dict[str, Any]:
        return {
            "x": self.length(box.x),
            "y": self.length(box.y),
            "length": self.length(box.length),
            "width": self.length(box.width),
        }

    def step(self, step: FittedStep) -> dict[str, Any]:
        return {
            "number": step.number,
            "title": plain_text(step.title, self.display),
            "uses": _uses(step.uses),
            "needs": _uses(step.needs),
            "tools": list(step.step.tools),
            "text": plain_text(step.text, self.display),
            "cautions": [plain_text(caution, self.display) for caution in step.cautions],
        }


def _uses(uses: tuple[FittedUse, ...]) -> list[Mapping[str, Any]]:
    return [{"name": use.name, "count": use.count} for use in uses]


def _decimal(number: Fraction) -> str:
    """Return a number to two decimals, without trailing noughts."""
    hundredths = int(number * 100 + Fraction(1, 2))
    text = f"{hundredths // 100}.{hundredths % 100:02d}"
    return text.rstrip("0").rstrip(".")
