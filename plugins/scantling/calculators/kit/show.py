"""Writing figures for people: the one formatter for terminal, page and browser."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from scantling.calculators.kit.given import decimals, exactly, fine, fraction, off_by, percent
from scantling.calculators.kit.result import Figure, Value
from scantling.measure import (
    Angle,
    Area,
    Display,
    Length,
    Money,
    Rounded,
    Volume,
    Weight,
    local_decimal,
    local_marks,
    round_number,
    saw_setting,
    write_area,
    write_money,
    write_volume,
    write_weight,
)
from scantling.words import mark, say


@dataclass(frozen=True, slots=True)
class Shown:
    """A figure as people read it."""

    key: str
    name: str
    shop: str
    """What to set or mark: a value that is on the tape or the saw's scale."""
    exact: str
    """The value before rounding; empty where the shop value is exact."""
    off: str
    """Which way and how far the shop value is off; empty where it is exact."""
    over: str
    """How far that adds up to over the whole run; empty where there is no run."""
    note: str
    main: bool
    value: str
    """The exact value as a whole number or a fraction, for programs."""
    unit: str
    """What `value` counts."""

    @property
    def aside(self) -> str:
        """Return the line that stands beside the shop value."""
        is_whole = self.exact and not self.exact.startswith("≈")
        exact = say("exactly {value}", value=self.exact) if is_whole else self.exact
        return "; ".join(part for part in (exact, self.off, self.over, self.note) if part)

    def to_data(self) -> dict[str, Any]:
        """Return plain data."""
        names = ("key", "name", "value", "unit", "shop", "exact", "off", "over", "note", "main")
        return {name: getattr(self, name) for name in names}


def show(figure: Figure, display: Display, currency: str) -> Shown:
    """Return a figure as people read it."""
    value = figure.value
    if isinstance(value, Length):
        shop, exact, off, over = _length(figure, value, display)
    elif isinstance(value, Angle):
        shop, exact, off, over = _angle(figure, value)
    else:
        shop, exact, off, over = cell(value, display, currency, figure.places), "", "", ""
        if figure.unit:
            shop = f"{shop} {figure.unit}" if figure.unit != "%" else percent(shop)
        if isinstance(value, Fraction) and figure.unit != "%":
            exact = _finer(value, figure.places)
    number, unit = plain(value, figure.unit)
    return Shown(figure.key, figure.name, shop, exact, off, over, figure.note, figure.main, number, unit)


def _finer(number: Fraction, places: int) -> str:
    """Return a number as a fraction or with two more decimals, "" where its decimals were exact."""
    if (number * 10**places).denominator == 1:
        return ""
    return fraction(number) if number.denominator <= 64 else f"≈ {local_decimal(number, places + 2)}"


def cell(value: Value, display: Display, currency: str = "$", places: int = 2) -> str:
    """Return a value as it stands in a table."""
    match value:
        case Length():
            return display.length(value)
        case Angle():
            return f"{decimals(_hundredth(value), 2)}°"
        case Money():
            return write_money(value, currency)
        case Area():
            return write_area(value, system=display.system)
        case Volume():
            return write_volume(value, system=display.system)
        case Weight():
            return write_weight(value, system=display.system)
        case str():
            return value
        case int():
            return local_marks(f"{value:,}")
        case _:
            return decimals(_rounded(value, places), places)


def plain(value: Value, unit: str) -> tuple[str, str]:
    """Return the exact value as text, and what it counts."""
    match value:
        case Length():
            return str(value.inches), "in"
        case Angle():
            return str(value.degrees), "degrees"
        case Money():
            return str(value.cents), "cents"
        case Area():
            return str(value.square_inches), "sq in"
        case Volume():
            return str(value.cubic_inches), "cu in"
        case Weight():
            return str(value.pounds), "lb"
        case _:
            return str(value), unit


def _length(figure: Figure, length: Length, display: Display) -> tuple[str, str, str, str]:
    rounded = fine(length, display, figure.way) if figure.fine else display.round(length, figure.way)
    if rounded.is_exact:
        return rounded.text, "", "", ""
    return rounded.text, exactly(length, display), display.statement(rounded), _over(figure, rounded, display)


def _over(figure: Figure, rounded: Rounded, display: Display) -> str:
    if figure.times < 2:
        return ""
    whole = rounded.off * figure.times
    return _all(figure, off_by(exactly(abs(whole), display), whole))


def _all(figure: Figure, off: str) -> str:
    """Say how far a rounding is off over the whole run."""
    times = local_marks(f"{figure.times:,}")
    return say("over all {times} {run}: {off}", times=times, run=figure.run, off=off)


def _angle(figure: Figure, angle: Angle) -> tuple[str, str, str, str]:
    """Return the half degree that a saw can be set to, and what that leaves."""
    setting = saw_setting(angle)
    shop = f"{decimals(setting.degrees, 1)}°"
    if setting == angle:
        return shop, "", "", ""
    fine = decimals(_hundredth(angle), 2)
    exact = f"{fine}°" if _hundredth(angle) == angle.degrees else f"≈ {fine}°"
    off = setting - angle
    told = mark("rounded up by {size}") if off > Angle(0) else mark("rounded down by {size}")
    off_words = say(told, size=_degrees(abs(off)))
    over = _all(figure, _degrees(abs(off * figure.times))) if figure.times > 1 else ""
    return shop, exact, off_words, over


def _degrees(angle: Angle) -> str:
    fine = _hundredth(angle)
    return f"{decimals(fine, 2)}°" if fine else say("less than 0.01°")


def _hundredth(angle: Angle) -> Fraction:
    """Return degrees to two decimals, halves away from zero."""
    return _rounded(angle.degrees, 2)


def _rounded(number: Fraction, places: int) -> Fraction:
    """Return a number to so many decimals, halves away from zero."""
    return Fraction(round_number(number * 10**places), 10**places)
