"""Reading prices, weights and areas as people write them."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import TypeVar

from scantling.fault import did_you_mean, nearest
from scantling.measure.currency import known_signs
from scantling.measure.plain import POUNDS_PER_KILOGRAM, Money, Weight
from scantling.measure.reading_edges import begin, bound, end, is_none
from scantling.measure.scan import CM, FOOT, INCH, METRE, MINUS, MM, complain, scan_number, skip_spaces
from scantling.measure.space import Area
from scantling.words import mark, say

U = TypeVar("U", Weight, Area)


def read_money(text: str, currency: str = "$", *, negative: bool = False) -> Money:
    """Read a sum of money: `$4.28`, `4.28`, `1,204.50`, `3`.

    Args:
        negative: whether a sum below nothing makes sense.

    Raises:
        Faulty: where the text is no sum of money, or has parts of a cent.
    """
    at, below = begin(text, say("a price"))
    if currency and text.startswith(currency, at):
        at = skip_spaces(text, at + len(currency))
    stop = at
    while stop < len(text) and text[stop] in "0123456789.,":
        stop += 1
    whole, point, cents = text[at:stop].partition(".")
    if not _is_grouped(whole) or (point and not cents.isdigit()):
        is_none(text, mark("price"), _point_for_comma(text[at:stop]))
    end(text, stop, mark("price"))
    if len(cents) > 2:
        mend = say("write {whole}.{cents}", whole=whole, cents=cents[:2])
        complain("part-of-a-cent", say("a price has at most two decimals"), stop - len(cents) + 2, stop, mend)
    if below and not negative:
        complain("negative", say("a price cannot be below nothing"), skip_spaces(text, 0), stop)
    value = int(whole.replace(",", "") + cents.ljust(2, "0"))
    bound(Fraction(value, 100), at, stop)
    return Money(-value if below else value)


def read_price(text: str) -> tuple[Money, str]:
    """Read a price that may say its currency before or after the sum: `4.28`, `€ 4.28`, `4.28 EUR`.

    Returns:
        the price, and the sign or code of its currency; "" where it says none.

    Raises:
        Faulty: as for a sum of money.
    """
    sign = currency_beside(text)
    last = text.rstrip()
    return read_money(last.removesuffix(sign), "" if last.endswith(sign) else sign), sign


def currency_beside(text: str) -> str:
    """Return the sign or code of the currency that a price says after its sum or before it, "" for none."""
    last, first = text.rstrip(), text.lstrip().lstrip(MINUS).lstrip()
    return next((sign for sign in known_signs() if last.endswith(sign) or first.startswith(sign)), "")


def _point_for_comma(number: str) -> str:
    """Return how to write a price, with a point where a comma stands before the cents."""
    whole, comma, cents = number.rpartition(",")
    if comma and whole.isdigit() and len(cents) in {1, 2} and cents.isdigit():
        return say("the cents stand after a point here: {whole}.{cents}", whole=whole, cents=cents)
    return say("write it as 4.28")


def _is_grouped(whole: str) -> bool:
    first, *groups = whole.split(",")
    return (
        first.isdigit()
        and all(len(group) == 3 and group.isdigit() for group in groups)
        and (not groups or len(first) <= 3)
    )


_WITH_ARTICLE = {"weight": mark("a weight"), "area": mark("an area")}

_POUND = Weight(1)
_KILOGRAM = Weight(POUNDS_PER_KILOGRAM)
_WEIGHTS: Mapping[str, Weight] = {
    **dict.fromkeys(("lb", "lbs", "pound", "pounds"), _POUND),
    **dict.fromkeys(("oz", "ounce", "ounces"), _POUND / 16),
    **dict.fromkeys(("kg", "kilogram", "kilograms"), _KILOGRAM),
    **dict.fromkeys(("g", "gram", "grams"), _KILOGRAM / 1000),
}
_SQUARE_FOOT, _SQUARE_METRE = FOOT * FOOT, METRE * METRE
_AREAS: Mapping[str, Area] = {
    **dict.fromkeys(("sq ft", "sqft", "ft2", "ft²", "square foot", "square feet"), _SQUARE_FOOT),
    **dict.fromkeys(("sq in", "sqin", "in2", "in²", "square inch", "square inches"), INCH * INCH),
    **dict.fromkeys(
        ("sq m", "sqm", "m2", "m²", "square metre", "square metres", "square meter", "square meters"),
        _SQUARE_METRE,
    ),
    **dict.fromkeys(("sq mm", "mm2", "mm²"), MM * MM),
    **dict.fromkeys(("sq cm", "cm2", "cm²"), CM * CM),
}


def read_weight(text: str) -> Weight:
    """Read a weight: `12 lb`, `8 oz`, `5.5 kg`, `250 g`.

    Raises:
        Faulty: where the text is no weight.
    """
    number, unit = _number_and_unit(text, mark("weight"), _WEIGHTS, say("write it as 12 lb or 5.5 kg"))
    return unit * number


def read_area(text: str) -> Area:
    """Read an area: `150 sq ft`, `12 m2`, `80 sq in`.

    Raises:
        Faulty: where the text is no area.
    """
    number, unit = _number_and_unit(text, mark("area"), _AREAS, say("write it as 150 sq ft or 14 m2"))
    return unit * number


def _number_and_unit(text: str, noun: str, units: Mapping[str, U], mend: str) -> tuple[Fraction, U]:
    at, negative = begin(text, say(_WITH_ARTICLE[noun]))
    found = scan_number(text, at)
    if found is None:
        is_none(text, noun, mend)
    start = skip_spaces(text, found.end)
    name = " ".join(text[start:].split()).casefold().rstrip(".")
    if not name:
        number = text[found.start : found.end]
        complain("missing-unit", say("{number} has no unit", number=number), found.start, found.end, mend)
    if name not in units:
        near = did_you_mean(name, units, kind=say("units"), tell=say) if nearest(name, units) else mend
        complain(
            "unknown-unit",
            say("there is no unit of {noun} called '{name}'", noun=say(noun), name=name),
            start,
            len(text.rstrip()),
            near,
        )
    bound(found.value, found.start, found.end)
    return (-found.value if negative else found.value), units[name]
