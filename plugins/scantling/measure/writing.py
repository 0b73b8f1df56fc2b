"""Writing quantities for people: fractions of an inch, millimetres, feet, money."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from scantling.measure.currency import money_form
from scantling.measure.plain import Angle, Money, Weight
from scantling.measure.quantity import Number, Way, round_number
from scantling.measure.rounding import Rounded, System, round_steps
from scantling.measure.space import Area, Length, Volume
from scantling.words import say, spoken


def write_decimal(number: Number, places: int) -> str:
    """Write a number with so many decimals, halves away from zero, and thousands commas."""
    scaled = round_number(number * 10**places)
    whole, rest = divmod(abs(scaled), 10**places)
    decimals = f".{rest:0{places}d}" if places else ""
    return f"{'-' if scaled < 0 else ''}{whole:,}{decimals}"


def write_fraction(number: Number) -> str:
    """Write a number exactly, as a workshop does: `2 1/2`, `23/32`, `96`, `-1 1/4`."""
    whole, rest = divmod(abs(number.numerator), number.denominator)
    parts = [str(whole)] if whole or not rest else []
    if rest:
        parts.append(f"{rest}/{number.denominator}")
    return ("-" if number < 0 else "") + " ".join(parts)


def write_number(number: Number) -> str:
    """Write a number: whole or decimal where that is exact in four places, else a fraction, else `≈`."""
    scaled = number * 10_000
    if scaled.denominator == 1:
        text = write_decimal(number, 4)
        return text.rstrip("0").rstrip(".")
    return write_fraction(number) if number.denominator <= 64 else "≈" + write_decimal(number, 4)


def write_length(length: Length, *, system: System = "in", denominator: int = 16, feet: bool = False) -> str:
    """Write a length to the nearest 1/`denominator` in, or the nearest mm.

    Args:
        feet: write feet and inches, where the system is inches: `7 ft 6 1/2 in`, `8 ft`.
    """
    return round_length(length, system=system, denominator=denominator, feet=feet).text


def round_length(
    length: Length, *, system: System = "in", denominator: int = 16, way: Way = "nearest", feet: bool = False
) -> Rounded:
    """Return a length as it is shown, with what the rounding changed."""
    return _rounded(length, system, denominator, way, feet)


@lru_cache(maxsize=4096)
def _rounded(length: Length, system: System, denominator: int, way: Way, feet: bool) -> Rounded:  # noqa: FBT001
    """Round and write a length; lists, diagrams and words of one plan show the same ones over and over."""
    shown = round_steps(length, system=system, denominator=denominator, way=way)
    return Rounded(shown, spell_length(shown, system=system, feet=feet), shown - length)


def spell_length(length: Length, *, system: System, feet: bool = False) -> str:
    """Write a length as it stands, with no rounding; millimetres must be whole."""
    if system == "mm":
        return f"{length.mm.numerator} mm"
    if feet and abs(length) >= Length(12):
        whole, rest = divmod(abs(length).inches, 12)
        sign = "-" if length < Length(0) else ""
        return f"{sign}{whole} ft" + (f" {write_fraction(rest)} in" if rest else "")
    return f"{write_fraction(length.inches)} in"


def write_area(area: Area, *, system: System = "in") -> str:
    """Write an area in square feet or square metres, to two decimals."""
    if system == "mm":
        return f"{local_decimal(area.square_metres, 2)} m²"
    return f"{local_decimal(area.square_feet, 2)} sq ft"


def write_volume(volume: Volume, *, system: System = "in") -> str:
    """Write a volume in cubic feet to two decimals, or cubic metres to four."""
    if system == "mm":
        return f"{local_decimal(volume.cubic_metres, 4)} m³"
    return f"{local_decimal(volume.cubic_feet, 2)} cu ft"


def write_weight(weight: Weight, *, system: System = "in") -> str:
    """Write a weight in pounds, or in kilograms where lengths are in millimetres, to one decimal."""
    if system == "mm":
        return f"{local_decimal(weight.kilograms, 1)} kg"
    return f"{local_decimal(weight.pounds, 1)} lb"


def write_board_feet(board_feet: Number) -> str:
    """Write a number of board feet, to two decimals."""
    return f"{local_decimal(board_feet, 2)} bd ft"


def write_linear(length: Length, *, system: System = "in") -> str:
    """Write a total of lengths: linear feet, or metres, to two decimals."""
    if system == "mm":
        return f"{local_decimal(length.mm / 1000, 2)} m"
    return say("{feet} linear ft", feet=local_decimal(length.feet, 2))


def write_money(money: Money, currency: str = "$") -> str:
    """Write a sum of money as its locale does: `$1,204.50`, `-$4.28`; `1.204,50 €` in German.

    Args:
        currency: a sign, in the way of the language that is spoken; or a `Currency` with a locale.
    """
    form = money_form(currency)
    amount = write_decimal(Fraction(abs(money.cents), 100), 2).translate(_marks(form.decimal, form.thousands))
    return _signed(form.below if money.cents < 0 else form.pattern, amount, currency)


def write_round_money(money: Money, currency: str = "$") -> str:
    """Write a sum of money, without its cents where there are none: `$250`."""
    if money.cents % 100:
        return write_money(money, currency)
    form = money_form(currency)
    amount = write_decimal(abs(money.cents) // 100, 0).translate(_marks(form.decimal, form.thousands))
    return _signed(form.below if money.cents < 0 else form.pattern, amount, currency)


def plain_money(money: Money) -> str:
    """Write a sum as it is typed in any language, with a point and no sign: `1204.50`."""
    return write_decimal(Fraction(money.cents, 100), 2).replace(",", "")


def _signed(pattern: str, amount: str, sign: str) -> str:
    """Return an amount with its sign; letters stand apart from digits (CLDR, currency spacing)."""
    if sign[-1:].isalpha():
        pattern = pattern.replace("¤#", "¤\u00a0#")
    return pattern.replace("#", amount).replace("¤", sign).strip("\u00a0")


def _marks(decimal: str, thousands: str) -> dict[int, str]:
    return {ord("."): decimal, ord(","): thousands}


def local_marks(text: str) -> str:
    """Return a number as written here, `1,204.5`, with the marks of the language that is spoken."""
    language = spoken()
    if language.decimal == ".":
        return text
    return text.translate(_marks(language.decimal, language.thousands))


def local_decimal(number: Number, places: int) -> str:
    """Write a number with so many decimals, as the language that is spoken does."""
    return local_marks(write_decimal(number, places))


def write_angle(angle: Angle) -> str:
    """Write an angle to the nearest tenth of a degree, whole where that is exact: `45°`, `22.5°`."""
    tenths = round_number(angle.degrees * 10)
    return f"{local_marks(write_number(Fraction(tenths, 10)))}°"


def saw_setting(angle: Angle) -> Angle:
    """Return the nearest half degree, which is as fine as the scale of a mitre saw can be set by eye.

    Common practice, no source.
    """
    return Angle(Fraction(round_number(angle.degrees * 2), 2))
