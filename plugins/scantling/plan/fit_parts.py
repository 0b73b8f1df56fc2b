"""Fitting one part: finished size, blank, and whether any stock holds it."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from scantling.fault import Fault, Place
from scantling.formula import Value
from scantling.measure import Angle, Length, write_length
from scantling.plan.fitted import Blank, FittedEnd, FittedPart, FittedProse
from scantling.plan.model import EndCut, GlueUp, Part
from scantling.plan.values import NOTHING, as_angle, as_count, as_length, as_yes
from scantling.shop import Shop, Stock

MOST_OF_A_PART = 2000


def fit_part(part: Part, values: Mapping[str, Value], shop: Shop, faults: list[Fault]) -> FittedPart | None:
    """Return the part at this size, or None if it is not there or, after adding to `faults`, faulty."""
    before = len(faults)
    if (
        as_yes(
            values.get(f"{part.id}.only if", True),
            f"whether '{part.id}' is there",
            part.place.at("only if"),
            faults,
        )
        is not True
    ):
        return None
    count = as_count(
        values.get(f"{part.id}.count"), f"the count of '{part.id}'", part.place.at("count"), faults
    )
    if count == 0:
        return None
    if count is not None and count > MOST_OF_A_PART:
        faults.append(
            Fault(
                "too-many",
                f"{count} of '{part.id}' are more than {MOST_OF_A_PART}",
                part.place.at("count"),
                "mend the formula",
            )
        )
    length, width, thick = (
        as_length(values.get(f"{part.id}.{side}"), f"the {name} of '{part.id}'", part.place.at(side), faults)
        for side, name in (("length", "length"), ("width", "width"), ("thick", "thickness"))
    )
    if count is None or length is None or width is None or thick is None or len(faults) > before:
        return None
    blank, layer = _blank(part, length, width, thick, values, shop, faults)
    ends = _ends(part, values, faults)
    if blank is None or len(faults) > before:
        return None
    return FittedPart(part, count, length, width, thick, layer, blank, ends, (), FittedProse(()))


def _allowance(part: Part, name: str, values: Mapping[str, Value], faults: list[Fault]) -> Length:
    value = values.get(f"{part.id}.{name}")
    found = as_length(value, f"'{name}' of '{part.id}'", part.place.at(name), faults, or_zero=True)
    return NOTHING if found is None else found


def _blank(
    part: Part,
    length: Length,
    width: Length,
    thick: Length,
    values: Mapping[str, Value],
    shop: Shop,
    faults: list[Fault],
) -> tuple[Blank | None, Length]:
    long = (
        length + _allowance(part, "longer", values, faults) + _allowance(part, "cut to fit", values, faults)
    )
    wider = _allowance(part, "wider", values, faults)
    least = as_length(
        values.get(f"{part.id}.least width"),
        f"the least width of '{part.id}'",
        part.place.at("least width"),
        faults,
    )
    if least is not None and least > width:
        faults.append(
            Fault(
                "least-above",
                f"the least width of '{part.id}' is above its width",
                part.place.at("least width"),
                "make it smaller",
            )
        )
    stocks = [shop.stocks[name] for name in part.source.stocks]
    pieces, across, layer = 1, width + wider, thick
    if part.glue_up is not None:
        made = _glue_up(part, part.glue_up, width, thick, wider, stocks[0], values, faults)
        if made is None:
            return None, thick
        pieces, across, layer = made
    along, over = (across, long) if part.grain == "width" else (long, across)
    blank = Blank(
        along, over, pieces, part.grain == "any", over - (width - least) if least is not None else over
    )
    _check_stock(part, blank, thick, stocks, faults)
    return blank, layer


def _glue_up(
    part: Part,
    glue_up: GlueUp,
    width: Length,
    thick: Length,
    wider: Length,
    stock: Stock,
    values: Mapping[str, Value],
    faults: list[Fault],
) -> tuple[int, Length, Length] | None:
    """Return (pieces, width of each, thickness of each), or None after adding a fault."""
    place = part.place.at("glued up")
    pieces = as_count(values.get(f"{part.id}.layers"), f"the {glue_up.how} of '{part.id}'", place, faults)
    if pieces is None:
        return None
    if pieces < 1:
        faults.append(
            Fault("not-positive", f"'{part.id}' is glued up from nothing", place, "write at least '2 layers'")
        )
        return None
    full = stock.width if stock.width is not None else width + wider
    if glue_up.how == "layers":
        across = width + wider if wider > NOTHING or stock.width is None else full
        _check_glued("thick", pieces * stock.thick, thick, part, faults)
        _check_glued("wide", across, width, part, faults)
        return pieces, across, stock.thick
    across = (width + wider) / pieces if wider > NOTHING else full
    _check_glued("wide", pieces * across, width, part, faults)
    _check_glued("thick", stock.thick, thick, part, faults)
    return pieces, across, thick


def _check_glued(side: str, have: Length, want: Length, part: Part, faults: list[Fault]) -> None:
    if have < want:
        shown = (
            f"{write_length(have, denominator=64)} {side}, thinner than"
            if side == "thick"
            else f"{write_length(have, denominator=64)} {side}, narrower than"
        )
        message = f"'{part.id}' is glued up {shown} the {write_length(want, denominator=64)} it should be"
        faults.append(Fault("glue-up-too-small", message, part.place.at("glued up"), "glue up more pieces"))


def _check_stock(part: Part, blank: Blank, thick: Length, stocks: list[Stock], faults: list[Fault]) -> None:
    if not stocks:
        return
    if part.glue_up is None and thick > stocks[0].thick:
        message = f"'{part.id}' is {write_length(thick, denominator=64)} thick, its stock {write_length(stocks[0].thick, denominator=64)}"
        faults.append(
            Fault(
                "thicker-than-stock",
                message,
                part.place.at("thick" if part.thick else "from"),
                "glue up layers, or name thicker stock",
            )
        )
    if any(_holds(stock, blank.along, blank.least_across) for stock in stocks):
        return
    if blank.may_turn and any(_holds(stock, blank.least_across, blank.along) for stock in stocks):
        return
    longest = max(stock.longest for stock in stocks)
    side, want, have = (
        ("longer", blank.along, longest)
        if blank.along > longest
        else ("wider", blank.across, max(s.widest for s in stocks))
    )
    place = part.place.at("length" if side == "longer" or part.width is None else "width")
    message = f"'{part.id}' needs {write_length(want, denominator=64)}, {side} than any {stocks[0].key} ({write_length(have, denominator=64)})"
    faults.append(
        Fault(
            f"{side}-than-stock",
            message,
            place,
            "name larger stock, glue the part up, or narrow the range of sizes",
        )
    )


def _holds(stock: Stock, along: Length, across: Length) -> bool:
    return any(
        sale.price is not None
        and along <= sale.length - 2 * stock.trim_ends
        and (across <= sale.width - 2 * stock.trim_edges or (across == sale.width))
        for sale in stock.sales
    )


def _ends(part: Part, values: Mapping[str, Value], faults: list[Fault]) -> tuple[FittedEnd, FittedEnd] | None:
    if part.ends is None:
        return None
    return _end(part, "left", part.ends.left, values, faults), _end(
        part, "right", part.ends.right, values, faults
    )


def _end(part: Part, side: str, cut: EndCut, values: Mapping[str, Value], faults: list[Fault]) -> FittedEnd:
    square = Angle(Fraction(0))
    if cut.angle is None:
        return FittedEnd("square", square)
    place: Place = part.place.at("ends")
    angle = as_angle(values.get(f"{part.id}.{side} angle"), f"the {side} end of '{part.id}'", place, faults)
    return FittedEnd(cut.kind, angle if angle is not None else square)
