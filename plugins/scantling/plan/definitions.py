"""Every name that a plan's formulas may use, and where each is written."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from scantling.fault import Fault, Place, did_you_mean
from scantling.formula import Formula, Value, read_formula
from scantling.plan.model import Part, Plan
from scantling.plan.placement_names import names_of
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
    lost: set[str]
    """Names that would be defined if something else were not faulty."""


def define(plan: Plan, shop: Shop, faults: list[Fault]) -> Definitions:
    """Return the names of `plan` as far as sizes, lengths and parts go."""
    made = Definitions({}, {}, {"kerf": shop.kerf}, set())
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
    places, lost = names_of(part, plan, faults)
    made.lost.update(lost)
    for name, formula, place in places:
        made.formulas[name] = formula
        made.places[name] = place


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
    how = part.glue_up.how if part.glue_up is not None else ""
    if not is_name(part.id):  # there is a fault of that already
        return
    for attribute, stock, multiplied in (("width", _STOCK_WIDTH, "wide"), ("thick", _STOCK_THICK, "layers")):
        if getattr(part, attribute) is not None:
            continue
        if part.id + stock in made.given:
            layers = f"{part.id}{_LAYERS} * " if how == multiplied else ""
            yield attribute, read_formula(f"{layers}{part.id}{stock}")
        elif attribute == "thick" and part.source.offcut_of in plan.parts:
            yield attribute, read_formula(f"{part.source.offcut_of}.thick")
        else:
            made.lost.add(f"{part.id}.{attribute}")
            _miss(part, attribute, faults)


def _miss(part: Part, attribute: str, faults: list[Fault]) -> None:
    """Add the fault for a measure that neither the author nor the stock gives."""
    place = part.place.at("from")
    if any(fault.place == place for fault in faults):
        return
    if attribute == "width":
        help_line = "add 'width:'; a sheet or an offcut does not give one"
        faults.append(Fault("missing-key", f"'{part.id}' needs a width", part.place, help_line))
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
        message, help_line = "these stocks are not equally thick", "name stocks of one thickness"
        faults.append(Fault("mixed-thickness", message, place, help_line))
    return found
