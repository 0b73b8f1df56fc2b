"""One question that a calculator asks, and reading what a carpenter types in answer to it."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, Literal

from scantling.calculators.kit.lists import (
    read_formula_text,
    read_lengths,
    read_prices,
    read_rectangles,
    without_currency,
)
from scantling.calculators.kit.local_text import local_text
from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.measure import (
    Display,
    Length,
    LongUnit,
    Way,
    in_plain_marks,
    read_angle,
    read_length,
    read_money,
    read_number,
    read_weight,
    round_number,
)
from scantling.words import mark, say

Kind = Literal[
    "length",
    "thickness",
    "count",
    "number",
    "percent",
    "angle",
    "money",
    "temperature",
    "weight",
    "choice",
    "lengths",
    "rectangles",
    "prices",
    "sum",
]

MEANT: Mapping[str, str] = {
    "length": mark("a length"),
    "thickness": mark("a thickness, or quarters such as 5/4"),
    "count": mark("a whole number"),
    "number": mark("a number"),
    "percent": mark("a number of percent"),
    "angle": mark("an angle in degrees"),
    "money": mark("a price"),
    "temperature": mark("a temperature such as 70 °F or 21 °C"),
    "weight": mark("a weight such as 40 lb or 18 kg"),
    "choice": mark("one of a list"),
    "lengths": mark("lengths with commas between, such as 4 of 22 1/2 in, 2 of 30 in"),
    "rectangles": mark("rectangles with commas between, such as 4 of 30 x 12 in, 2 of 8 x 5 in"),
    "prices": mark("lengths and prices with commas between, such as 8 ft = 4.28, 10 ft = 5.60"),
    "sum": mark("a sum such as 3 1/2 in + 2 * 3/4 in"),
}
"""What is expected for each kind, in words."""


LENGTHS = {"length", "thickness", "lengths", "rectangles", "prices", "sum"}
"""Kinds of answer in which a length stands."""

_NUMBER = re.compile(r"[\d.,]*\d")


@dataclass(frozen=True, slots=True)
class Ask:
    """One question that a calculator asks."""

    name: str
    """The key in an address and on the command line."""
    label: str
    """What the reader sees, in a few words."""
    kind: Kind
    usual: str = ""
    """What stands there until the reader types; empty where the question may be left open."""
    metric: str = ""
    """The same for a reader who works in millimetres."""
    least: str = ""
    """The least that is taken, written as a reader would."""
    most: str = ""
    """The most that is taken."""
    bare: LongUnit | None = None
    """What a number without a unit is measured in; None for inches, or millimetres where those are shown."""
    choices: tuple[str, ...] = ()
    optional: bool = False
    """True where the question may be left open."""
    help: str = ""
    """A line for who is unsure."""

    def standing(self, display: Display) -> str:
        """Return what stands in the field until the reader types."""
        return local_text(self.metric if self.metric and display.system == "mm" else self.usual)

    def shown(self, text: str) -> str:
        """Return an answer as people read it: a choice in the language that is spoken."""
        return say(text) if text in self.choices else text

    def read(self, text: str, display: Display) -> Any:
        """Return what the text means, or None for an open question.

        Raises:
            Faulty: with what is wrong, the place being the question's own name.
        """
        if not text.strip() and self.optional:
            return None
        try:
            value = self._value(in_plain_marks(text), display)
            self._bound(value, text, display)
        except Faulty as faulty:
            raise Faulty([self._own(fault) for fault in faulty.faults]) from None
        return value

    def _value(self, text: str, display: Display) -> Any:
        return _READERS[self.kind](self, text, display)

    def _own(self, fault: Fault) -> Fault:
        moved = fault.under(Place((self.name,)))
        mend = moved.help
        if moved.code in {"too-large", "too-many-digits"} and self.most and not mend:
            mend = nearest_is(local_text(self.most))
        elif moved.code == "negative":
            mend = nearest_is(local_text(self.least or "0"))
        elif moved.code == "part-of-a-cent":
            mend = nearest_is(_NUMBER.search(mend)[0])  # type: ignore[index]
        elif moved.code == "empty" and self.usual:
            mend = say(
                "write {meant}, such as {usual}", meant=say(MEANT[self.kind]), usual=local_text(self.usual)
            )
        return Fault(moved.code, f"{say(self.label)}: {moved.message}", moved.place, mend, moved.notes)

    def _bound(self, value: Any, text: str, display: Display) -> None:
        """Refuse what is below the least or above the most."""
        if self.least and value < self._value(self.least, display):
            _refuse("too-small", text, self._limit(self.least, display, "up"))
        if self.most and value > self._value(self.most, display):
            _refuse("too-large", text, self._limit(self.most, display, "down"))

    def _limit(self, limit: str, display: Display, way: Way) -> str:
        """Return a bound as a reader would type it who works in millimetres, or as it is."""
        if display.system == "mm" and self.kind in {"length", "thickness"}:
            return display.round(self._value(limit, display), way).text
        if display.system == "mm" and self.kind == "temperature":
            return f"{round_number((self._value(limit, display) - 32) * Fraction(5, 9), way)} °C"
        return local_text(limit)


def nearest_is(text: str) -> str:
    """Return the help line that names the nearest answer that works."""
    return say("the nearest that works is {text}", text=text)


def _refuse(code: str, text: str, limit: str) -> None:
    told = mark("{text} is too small") if code == "too-small" else mark("{text} is too large")
    place = Place(start=0, end=len(text))
    raise Faulty([Fault(code, say(told, text=text.strip()), place, nearest_is(limit))])


def _length(ask: Ask, text: str, display: Display) -> Length:
    unit: LongUnit = "mm" if display.system == "mm" else (ask.bare or "in")
    return read_length(text, unit)


def _thickness(ask: Ask, text: str, display: Display) -> Length:
    """Read a thickness; quarters (`5/4`) are inches whatever is shown."""
    bare = text.strip()
    if bare.endswith("/4") and bare[:-2].isdigit():
        return read_length(bare, "in")
    return _length(ask, text, display)


def _count(ask: Ask, text: str, display: Display) -> int:
    del ask, display
    number = read_number(text)
    if number.denominator != 1:
        place = Place(start=0, end=len(text))
        whole = int(number) if number > 0 else 0
        mend = nearest_is(str(max(whole, 1)))
        raise Faulty([Fault("not-whole", say("{text} is no whole number", text=text.strip()), place, mend)])
    return number.numerator


def _number(ask: Ask, text: str, display: Display) -> Fraction:
    del ask, display
    return read_number(text)


def _percent(ask: Ask, text: str, display: Display) -> Fraction:
    del ask, display
    return read_number(text.strip().removesuffix("%"))


def _angle(ask: Ask, text: str, display: Display) -> Any:
    """Read an angle; a bare number is degrees."""
    del ask, display
    bare = text.strip()
    if bare and bare[-1].isdigit():
        return read_angle(f"{bare} deg")
    return read_angle(text)


def _money(ask: Ask, text: str, display: Display) -> Any:
    del ask, display
    return read_money(without_currency(text))


def _weight(ask: Ask, text: str, display: Display) -> Any:
    """Read a weight; a bare number is pounds, or kilograms where millimetres are shown."""
    del ask
    bare = text.strip()
    if bare and bare[-1].isdigit():
        return read_weight(f"{bare} {'kg' if display.system == 'mm' else 'lb'}")
    return read_weight(text)


def _temperature(ask: Ask, text: str, display: Display) -> Fraction:
    """Return degrees Fahrenheit."""
    del ask
    bare = text.strip().replace("°", " ").rstrip()
    celsius = display.system == "mm"
    if bare[-1:] in {"F", "f", "C", "c"}:
        celsius = bare[-1] in {"C", "c"}
        bare = bare[:-1]
    degrees = read_number(bare)
    return degrees * Fraction(9, 5) + 32 if celsius else degrees


def _choice(ask: Ask, text: str, display: Display) -> str:
    del display
    wanted = " ".join(text.split()).casefold()
    for choice in ask.choices:
        if wanted in {choice.casefold(), say(choice).casefold()}:
            return choice
    place = Place(start=0, end=len(text))
    mend = did_you_mean(wanted, map(say, ask.choices), kind=say("choices"), tell=say)
    raise Faulty(
        [Fault("unknown-choice", say("'{text}' is none of the choices", text=text.strip()[:40]), place, mend)]
    )


_READERS: Mapping[Kind, Callable[[Ask, str, Display], Any]] = {
    "length": _length,
    "thickness": _thickness,
    "count": _count,
    "number": _number,
    "percent": _percent,
    "angle": _angle,
    "money": _money,
    "temperature": _temperature,
    "weight": _weight,
    "choice": _choice,
    "lengths": lambda ask, text, display: read_lengths(text, _unit(ask, display)),
    "rectangles": lambda ask, text, display: read_rectangles(text, _unit(ask, display)),
    "prices": lambda ask, text, display: read_prices(text, _unit(ask, display)),
    "sum": lambda ask, text, display: read_formula_text(text, _unit(ask, display)),
}


def _unit(ask: Ask, display: Display) -> LongUnit:
    return "mm" if display.system == "mm" else (ask.bare or "in")
