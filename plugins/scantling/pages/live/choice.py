"""A reader's choice: from what they typed or what an address says to values, and back to words."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula import Value
from scantling.measure import (
    Angle,
    Display,
    Length,
    in_plain_marks,
    local_marks,
    read_angle,
    read_length,
    read_number,
    write_decimal,
)
from scantling.plan import Choice, Plan, Size, write_choice
from scantling.words import ENGLISH, say, spoken

MOST_POSITIONS = 400
"""Places of a slider; a finer range is thinned."""
LONGEST_TYPED = 200
_NOT_OURS = {"h", "q"}
"""Words that the theme puts into addresses."""
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_SAFE = frozenset("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~/")


@dataclass(slots=True)
class ReadChoice:
    """What could be read, and what could not."""

    sizes: dict[str, Value] = field(default_factory=dict)
    options: dict[str, str] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)

    def choice(self) -> Choice:
        """Return it for the engine."""
        return Choice(dict(self.sizes), dict(self.options))


def read_choice(plan: Plan, pairs: Iterable[tuple[str, str]], display: Display) -> ReadChoice:
    """Return what names and texts choose; a bare number is in the reader's units."""
    read = ReadChoice()
    for name, text in pairs:
        if name in plan.sizes:
            _read_size(plan.sizes[name], text.strip(), display, read)
        elif name in plan.options:
            _read_option(plan, name, text.strip(), read)
        elif name not in _NOT_OURS:
            known = [*plan.sizes, *plan.options]
            help_line = did_you_mean(name, known, kind=say("sizes and options"), tell=say)
            message = say("this plan has no size or option '{name}'", name=_short(name))
            read.faults.append(Fault("unknown-name", message, Place(), help_line))
    return read


def _read_size(size: Size, text: str, display: Display, read: ReadChoice) -> None:
    place = Place(("sizes", size.name))
    if not text:
        return
    try:
        value = _read_value(size, in_plain_marks(text[:LONGEST_TYPED]), display)
    except Faulty as faulty:
        read.faults += [replace(fault, place=place) for fault in faulty.faults]
        return
    if not size.least <= value <= size.most:  # type: ignore[operator]
        low, high = (show(end, display) for end in (size.least, size.most))
        message = say(
            "{size} may be from {least} to {most}; {value} is outside",
            size=size.name,
            least=low,
            most=high,
            value=show(value, display),
        )
        read.faults.append(
            Fault("outside-range", message, place, say("choose from {least} to {most}", least=low, most=high))
        )
        return
    read.sizes[size.name] = value


def _read_value(size: Size, text: str, display: Display) -> Value:
    if isinstance(size.usual, Length):
        return read_length(text, display.system)
    if isinstance(size.usual, Angle):
        return read_angle(text if any(sign in text for sign in "d°") else f"{text} deg")
    return read_number(text)


def _read_option(plan: Plan, name: str, word: str, read: ReadChoice) -> None:
    option = plan.options[name]
    if word in option.choices:
        read.options[name] = word
        return
    help_line = did_you_mean(word[:LONGEST_TYPED], option.choices, kind=say("choices"), tell=say)
    message = say("'{word}' is no choice of '{option}'", word=_short(word), option=name)
    read.faults.append(Fault("unknown-choice", message, Place(("options", name)), help_line))


def _short(words: str) -> str:
    return words if len(words) <= 40 else f"{words[:40]}…"


def show(value: Value, display: Display) -> str:
    """Write a value exactly for the reader's units: `36 in`, `914.4 mm`; what has no short form as it is."""
    if isinstance(value, Length) and display.system == "mm":
        tenths = value.mm * 10
        if tenths.denominator == 1:
            text = write_decimal(value.mm, 1).replace(",", "")
            return local_marks(f"{text.removesuffix('.0')} mm")
    return local_marks(write_choice(value).replace(",", ""))


def display_data(display: Display) -> dict[str, object]:
    """Return how a site shows lengths, and its language where it is another than English, for its scripts."""
    shown: dict[str, object] = {"units": display.system, "fraction": display.denominator}
    return shown if spoken() is ENGLISH else {**shown, "language": spoken().code}


def day_of(data: object) -> str:
    """Return a day as a page kept it, 2026-11-09; "" for anything else."""
    return data if isinstance(data, str) and _DAY.fullmatch(data) else ""


def positions(size: Size) -> list[Value]:
    """Return the places of a size's slider: its steps from least to most, and what the author names."""
    count = size.count_steps()
    stride = max(1, -(-count // MOST_POSITIONS))
    steps = [size.at(index) for index in range(0, count + 1, stride)]
    places = dict.fromkeys([*steps, size.most, size.usual, *size.offered])
    return sorted(places, key=lambda place: size.steps_from(place, size.least))


def position_of(value: Value, places: list[Value]) -> int:
    """Return the slider's place for a value: the last that is not beyond it."""
    return max((index for index, place in enumerate(places) if place <= value), default=0)  # type: ignore[operator]


def address_of(plan: Plan, choice: Choice, start: Choice) -> str:
    """Return the query of an address for a choice: what differs from where the page starts.

    Example:
        `width=36in&depth=14in`
    """
    pairs = [
        (name, _short_value(value))
        for name, value in choice.sizes.items()
        if value != start.sizes.get(name, plan.sizes[name].usual)
    ]
    pairs += [
        (name, word)
        for name, word in choice.options.items()
        if word != start.options.get(name, plan.options[name].usual)
    ]
    return "&".join(f"{_quoted(name)}={_quoted(text)}" for name, text in pairs)


def _short_value(value: Value) -> str:
    text = write_choice(value)
    if isinstance(value, Fraction | str):
        return text
    number, _, unit = text.rpartition(" ")
    return local_marks(number.replace(" ", "-").replace(",", "")) + unit


def _quoted(words: str) -> str:
    return "".join(
        letter
        if letter in _SAFE
        else "+"
        if letter == " "
        else "".join(f"%{byte:02X}" for byte in letter.encode("utf-8", "replace"))
        for letter in words
    )


def whole_choice(plan: Plan, choice: Choice) -> Choice:
    """Return a choice with everything spelled out."""
    sizes: Mapping[str, Value] = {name: size.usual for name, size in plan.sizes.items()}
    options = {name: option.usual for name, option in plan.options.items()}
    return Choice({**sizes, **choice.sizes}, {**options, **choice.options})
