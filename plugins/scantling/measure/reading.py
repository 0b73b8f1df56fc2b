"""Reading quantities as people write them; every fault points at the characters that are wrong."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Literal, NoReturn, TypeVar

from scantling.fault import did_you_mean
from scantling.measure.plain import POUNDS_PER_KILOGRAM, Angle, Money, Weight
from scantling.measure.scan import (
    CM,
    FOOT,
    INCH,
    METRE,
    MINUS,
    MM,
    complain,
    scan_amount,
    scan_number,
    scan_word,
    skip_spaces,
)
from scantling.measure.space import Area, Length

LongUnit = Literal["in", "ft", "mm", "cm", "m"]
"""A unit in which a bare number can be declared to be."""
LONGEST_TEXT = 60
LARGEST = 1_000_000
"""The most that is read of anything, in its own unit: inches for a length."""

U = TypeVar("U", Weight, Area)

_UNITS: Mapping[str, Length] = {"in": INCH, "ft": FOOT, "mm": MM, "cm": CM, "m": METRE}


def read_length(text: str, unit: LongUnit | None = None) -> Length:
    """Read a length: `2 1/2 in`, `2-1/2"`, `2½"`, `8'`, `7 ft 6 1/2 in`, `38mm`, `1.2 m`.

    Args:
        unit: what a number that stands alone is measured in; None where one must say.

    Raises:
        Faulty: where the text is no length; the fault's place holds the characters that are wrong.
    """
    at, negative = _begin(text, "a length")
    found = scan_amount(text, at)
    if found is None:
        complain(
            "not-a-length",
            f"'{text.strip()}' is no length",
            at,
            len(text.rstrip()),
            "write it as 12 1/2 in or 318 mm",
        )
    value = found.value
    if isinstance(value, Fraction):
        if skip_spaces(text, found.end) < len(text):
            _not_a_unit(text, found.end)
        if unit is None:
            number = text[found.start : found.end]
            complain(
                "missing-unit",
                f"{number} has no unit",
                found.start,
                found.end,
                f"write {number} in or {number} mm",
            )
        value = _UNITS[unit] * value
    if isinstance(value, Angle):
        complain(
            "not-a-length",
            "this is an angle; a length is wanted",
            found.start,
            found.end,
            "write it as 12 in or 12 mm",
        )
    _end(text, found.end, "length")
    _bound(value.inches, found.start, found.end)
    return -value if negative else value


def read_number(text: str) -> Fraction:
    """Read a number without a unit: `3`, `2.5`, `2 1/2`, `-1/4`.

    Raises:
        Faulty: where the text is no number.
    """
    at, negative = _begin(text, "a number")
    found = scan_number(text, at)
    if found is None:
        complain(
            "not-a-number",
            f"'{text.strip()}' is no number",
            at,
            len(text.rstrip()),
            "write it as 3, 2.5 or 2 1/2",
        )
    _end(text, found.end, "number")
    _bound(found.value, found.start, found.end)
    return -found.value if negative else found.value


def read_angle(text: str) -> Angle:
    """Read an angle: `45 deg`, `45°`, `22.5 degrees`.

    Raises:
        Faulty: where the text is no angle.
    """
    at, negative = _begin(text, "an angle")
    found = scan_amount(text, at)
    if found is None or not isinstance(found.value, Angle):
        complain(
            "not-an-angle", f"'{text.strip()}' is no angle", at, len(text.rstrip()), "write it as 45 deg"
        )
    _end(text, found.end, "angle")
    _bound(found.value.degrees, found.start, found.end)
    return -found.value if negative else found.value


def read_money(text: str, currency: str = "$", *, negative: bool = False) -> Money:
    """Read a sum of money: `$4.28`, `4.28`, `1,204.50`, `3`.

    Args:
        negative: whether a sum below nothing makes sense.

    Raises:
        Faulty: where the text is no sum of money, or has parts of a cent.
    """
    at, below = _begin(text, "a price")
    if currency and text.startswith(currency, at):
        at = skip_spaces(text, at + len(currency))
    end = at
    while end < len(text) and text[end] in "0123456789.,":
        end += 1
    digits = text[at:end]
    whole, _, cents = digits.partition(".")
    if not _is_grouped(whole) or not (cents.isdigit() or digits == whole):
        complain(
            "not-a-price",
            f"'{text.strip()}' is no price",
            at,
            max(end, len(text.rstrip())),
            "write it as 4.28",
        )
    _end(text, end, "price")
    if len(cents) > 2:
        complain(
            "part-of-a-cent",
            "a price has at most two decimals",
            end - len(cents) + 2,
            end,
            f"write {whole}.{cents[:2]}",
        )
    if below and not negative:
        complain("negative", "a price cannot be below nothing", at - 1, end)
    value = int(whole.replace(",", "")) * 100 + int(cents.ljust(2, "0") or 0)
    _bound(Fraction(value, 100), at, end)
    return Money(-value if below else value)


def _is_grouped(whole: str) -> bool:
    first, *groups = whole.split(",")
    return (
        first.isdigit()
        and all(len(group) == 3 and group.isdigit() for group in groups)
        and (not groups or len(first) <= 3)
    )


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
    number, unit = _number_and_unit(text, "weight", _WEIGHTS, "write it as 12 lb or 5.5 kg")
    return unit * number


def read_area(text: str) -> Area:
    """Read an area: `150 sq ft`, `12 m2`, `80 sq in`.

    Raises:
        Faulty: where the text is no area.
    """
    number, unit = _number_and_unit(text, "area", _AREAS, "write it as 150 sq ft or 14 m2")
    return unit * number


def _number_and_unit(text: str, noun: str, units: Mapping[str, U], mend: str) -> tuple[Fraction, U]:
    at, negative = _begin(text, f"an {noun}" if noun == "area" else f"a {noun}")
    found = scan_number(text, at)
    stop = len(text.rstrip())
    if found is None:
        complain(f"not-a-{noun}", f"'{text.strip()}' is no {noun}", at, stop, mend)
    begin = skip_spaces(text, found.end)
    name = " ".join(text[begin:].split()).casefold().rstrip(".")
    if not name:
        number = text[found.start : found.end]
        complain("missing-unit", f"{number} has no unit", found.start, found.end, mend)
    if name not in units:
        near = did_you_mean(name, units, kind="units")
        complain("unknown-unit", f"there is no unit of {noun} called '{name}'", begin, stop, near)
    _bound(found.value, found.start, found.end)
    return (-found.value if negative else found.value), units[name]


def _begin(text: str, wanted: str) -> tuple[int, bool]:
    """Return where the number begins and whether a minus stands before it."""
    if len(text) > LONGEST_TEXT:
        complain(
            "too-long",
            f"this is too long for {wanted}: over {LONGEST_TEXT} characters",
            LONGEST_TEXT,
            len(text),
        )
    at = skip_spaces(text, 0)
    if at == len(text):
        complain("empty", f"nothing is written here; {wanted} is wanted", 0, len(text))
    if text[at] in MINUS:
        return skip_spaces(text, at + 1), True
    return at, False


def _end(text: str, at: int, noun: str) -> None:
    if skip_spaces(text, at) < len(text):
        _left_over(text, skip_spaces(text, at), noun)


def _left_over(text: str, begin: int, noun: str) -> NoReturn:
    stop = max(len(text.rstrip()), begin + 1)
    if text[begin] == ",":
        complain(
            "comma",
            f"a comma has no place in a {noun}",
            begin,
            begin + 1,
            "write decimals with a point, as in 2.5",
        )
    complain(
        "left-over",
        f"'{text[begin:stop]}' is left over after the {noun}",
        begin,
        stop,
        f"take it away, or write the {noun} alone",
    )


def _not_a_unit(text: str, at: int) -> NoReturn:
    begin = skip_spaces(text, at)
    word = scan_word(text, begin)
    if not word:
        _left_over(text, begin, "length")
    near = did_you_mean(word, ("in", "inches", "ft", "feet", "mm", "cm", "m"), kind="units")
    complain("unknown-unit", f"there is no unit of length called '{word}'", begin, begin + len(word), near)


def _bound(value: Fraction, start: int, end: int) -> None:
    if abs(value) > LARGEST:
        complain("too-large", f"this is more than {LARGEST:,}: nothing in a workshop is so large", start, end)
