"""Every name that a plan's formulas may use, and where each is written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.fault import Fault, Place, did_you_mean
from scantling.formula import Formula, Value, read_formula
from scantling.plan.model import Part, Plan
from scantling.plan.usable import is_name
from scantling.shop import Shop, Stock

_STOCK_WIDTH, _STOCK_THICK, _LAYERS = ".stock width", ".stock thick", ".layers"
ATTRIBUTES = {
    "count": "count",
    "length": "length",
    "width": "width",
    "thick": "thick",
    "only if": "only_if",
    "longer": "longer",
    "wider": "wider",
    "cut to fit": "cut_to_fit",
    "least width": "least_width",
}
"""Formulas of a part: what formulas call it, and the field that holds it."""


@dataclass(frozen=True, slots=True)
class Definitions:
    """The formulas of a plan by name, with their places, and the names that the shop gives."""

    formulas: dict[str, Formula]
    places: dict[str, Place]
    given: dict[str, Value]


def define(plan: Plan, shop: Shop, faults: list[Fault]) -> Definitions:
    """Return the names of `plan` as far as sizes, lengths and parts go."""
    made = Definitions({}, {}, {"kerf": shop.kerf})
    for name, formula in plan.lengths.items():
        made.formulas[name] = formula
        made.places[name] = Place(("lengths", name))
    for part in plan.parts.values():
        _define_part(part, plan, shop, made, faults)
    for hardware in plan.hardware.values():
        ware = shop.wares.get(hardware.ware)
        if ware is not None and is_name(hardware.id):
            made.given.update({f"{hardware.id}.{name}": length for name, length in ware.clearances.items()})
            if ware.long is not None:
                made.given[f"{hardware.id}.long"] = ware.long
    return made


def _define_part(part: Part, plan: Plan, shop: Shop, made: Definitions, faults: list[Fault]) -> None:
    stocks = stocks_of(part, shop, faults)
    if stocks:
        made.given[part.id + _STOCK_THICK] = stocks[0].thick
        if all(stock.width == stocks[0].width for stock in stocks) and stocks[0].width is not None:
            made.given[part.id + _STOCK_WIDTH] = stocks[0].width
    for attribute, formula, place in _part_formulas(part):
        made.formulas[f"{part.id}.{attribute}"] = formula
        made.places[f"{part.id}.{attribute}"] = place
    for attribute, formula in _usual_formulas(part, plan, made, faults):
        made.formulas[f"{part.id}.{attribute}"] = formula
        made.places[f"{part.id}.{attribute}"] = part.place


def _part_formulas(part: Part) -> Iterator[tuple[str, Formula, Place]]:
    for attribute, key in ATTRIBUTES.items():
        formula = getattr(part, key)
        if formula is not None:
            yield attribute, formula, part.place.at(attribute)
    if part.glue_up is not None:
        yield "layers", part.glue_up.count, part.place.at("glued up")
    if part.ends is not None:
        for side, cut in (("left", part.ends.left), ("right", part.ends.right)):
            if cut.angle is not None:
                yield f"{side} angle", cut.angle, part.place.at("ends")


def _usual_formulas(
    part: Part, plan: Plan, made: Definitions, faults: list[Fault]
) -> Iterator[tuple[str, Formula]]:
    """Yield width and thickness where the author left them to the stock."""
    host = plan.parts.get(part.source.offcut_of)
    if part.width is None:
        if part.id + _STOCK_WIDTH in made.given:
            wide = part.glue_up is not None and part.glue_up.how == "wide"
            yield (
                "width",
                read_formula(
                    f"{part.id}{_LAYERS} * {part.id}{_STOCK_WIDTH}" if wide else part.id + _STOCK_WIDTH
                ),
            )
        else:
            help_line = "add 'width:'; a sheet or an offcut does not give one"
            faults.append(Fault("missing-key", f"'{part.id}' needs a width", part.place, help_line))
    if part.thick is None:
        if part.id + _STOCK_THICK in made.given:
            layered = part.glue_up is not None and part.glue_up.how == "layers"
            yield (
                "thick",
                read_formula(
                    f"{part.id}{_LAYERS} * {part.id}{_STOCK_THICK}" if layered else part.id + _STOCK_THICK
                ),
            )
        elif host is not None:
            yield "thick", read_formula(f"{host.id}.thick")
        else:
            faults.append(Fault("missing-key", f"'{part.id}' needs a thickness", part.place, "add 'thick:'"))


def stocks_of(part: Part, shop: Shop, faults: list[Fault]) -> list[Stock]:
    """Return the stocks that `part` may be cut from, with a fault for each that the shop does not sell."""
    found = []
    place = part.place.at("from")
    for name in part.source.stocks:
        stock = shop.stocks.get(name)
        if stock is None:
            help_line = did_you_mean(name, shop.stocks, kind="stocks")
            faults.append(Fault("unknown-stock", f"the shop file has no stock '{name}'", place, help_line))
            continue
        if all(sale.price is None for sale in stock.sales):
            help_line = f"add prices to '{name}' in the shop file"
            faults.append(Fault("no-price", f"no size of '{name}' has a price", place, help_line))
            continue
        found.append(stock)
    if found and any(stock.thick != found[0].thick for stock in found):
        faults.append(
            Fault(
                "mixed-thickness", "these stocks are not equally thick", place, "name stocks of one thickness"
            )
        )
    return found
