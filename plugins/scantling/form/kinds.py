"""Kinds of value that a field may hold.

Every scalar arrives as the text that the author typed, so that a fault can point at its letters
and nothing is guessed (an author's `no` or `1:30` stays what it was until a kind reads it).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Protocol

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula import Formula, read_formula
from scantling.measure import read_area, read_length, read_money, read_number

if TYPE_CHECKING:
    from scantling.form.form import Form

LONGEST_TEXT = 20_000
_DATE = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")
_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_SCALAR: dict[str, Any] = {"type": ["string", "number", "boolean"]}


class Kind(Protocol):
    """How one value is read, described and put into a schema."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> Any:
        """Return the value, or None after adding to `faults`."""
        ...

    def describe(self) -> str:
        """Return what is expected, for the format reference: "a length"."""
        ...

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value as the author writes it."""
        ...


def _scalar(data: object, place: Place, faults: list[Fault], expected: str) -> str | None:
    if isinstance(data, str):
        if data.strip() == "":
            faults.append(Fault("empty", f"nothing is written here; expected {expected}", place))
            return None
        return data
    what = (
        "a list" if isinstance(data, list) else "'key: value' lines" if isinstance(data, dict) else "nothing"
    )
    faults.append(Fault("wrong-kind", f"expected {expected} here, not {what}", place))
    return None


def _through(reader: Callable[[str], Any], text: str, place: Place, faults: list[Fault]) -> Any:
    try:
        return reader(text)
    except Faulty as faulty:
        faults.extend(
            fault.under(place if fault.place.path else Place(place.path, 0, len(text)))
            for fault in faulty.faults
        )
        return None


@dataclass(frozen=True, slots=True)
class Text:
    """Words for people, as typed."""

    longest: int = LONGEST_TEXT

    def read(self, data: object, place: Place, faults: list[Fault]) -> str | None:
        """Return the text without space around it."""
        text = _scalar(data, place, faults, "words")
        if text is not None and len(text) > self.longest:
            faults.append(Fault("too-long", f"these words are longer than {self.longest} characters", place))
            return None
        return None if text is None else text.strip()

    def describe(self) -> str:
        """Return what is expected."""
        return "words"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _SCALAR


@dataclass(frozen=True, slots=True)
class Raw:
    """Plain data that another reader takes further."""

    expected: str = "plain data"

    def read(self, data: object, place: Place, faults: list[Fault]) -> object:
        """Return the data with nothing done to it."""
        del place, faults
        return data

    def describe(self) -> str:
        """Return what is expected."""
        return self.expected

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {}


@dataclass(frozen=True, slots=True)
class Words:
    """A list of short texts; one text, or several with commas between, will do."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> tuple[str, ...]:
        """Return the texts in the author's order."""
        if isinstance(data, list):
            each = [_scalar(item, place.at(index), faults, "words") for index, item in enumerate(data)]
            return tuple(item.strip() for item in each if item is not None)
        text = _scalar(data, place, faults, "words, with commas between")
        return tuple(word for part in (text or "").split(",") if (word := part.strip()))

    def describe(self) -> str:
        """Return what is expected."""
        return "words, with commas between"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"anyOf": [_SCALAR, {"type": "array", "items": _SCALAR}]}


@dataclass(frozen=True, slots=True)
class Choice:
    """One of a few words."""

    choices: tuple[str, ...]

    def read(self, data: object, place: Place, faults: list[Fault]) -> str | None:
        """Return the word that was chosen."""
        text = _scalar(data, place, faults, "one of " + ", ".join(self.choices))
        if text is None or text.strip() in self.choices:
            return None if text is None else text.strip()
        help_line = did_you_mean(text.strip(), self.choices, kind="choices")
        faults.append(
            Fault("unknown-choice", f"'{text.strip()}' is none of the choices here", place, help=help_line)
        )
        return None

    def describe(self) -> str:
        """Return what is expected."""
        return "one of: " + ", ".join(self.choices)

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        known: list[str | bool] = list(self.choices)
        if {"yes", "no"} <= set(self.choices):
            known += [True, False]  # as which an editor may read them
        return {"enum": known}


@dataclass(frozen=True, slots=True)
class YesNo:
    """Yes or no."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> bool | None:
        """Return True for yes, False for no."""
        text = _scalar(data, place, faults, "yes or no")
        if text is None:
            return None
        word = text.strip().casefold()
        if word not in {"yes", "no", "true", "false"}:
            faults.append(
                Fault(
                    "not-yes-or-no", f"'{text.strip()}' is neither yes nor no", place, help="write yes or no"
                )
            )
            return None
        return word in {"yes", "true"}

    def describe(self) -> str:
        """Return what is expected."""
        return "yes or no"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"enum": ["yes", "no", True, False]}


def _is_day(text: str) -> bool:
    found = _DATE.fullmatch(text)
    if not found:
        return False
    year, month, day = (int(part) for part in found.groups())
    is_leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    days = 29 if month == 2 and is_leap else _DAYS[month - 1] if 1 <= month <= 12 else 0
    return 1 <= day <= days


@dataclass(frozen=True, slots=True)
class Date:
    """A day, written 2026-11-02."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> str | None:
        """Return the day as it is written, once it is known to be one."""
        text = _scalar(data, place, faults, "a day, such as 2026-11-02")
        if text is None:
            return None
        if not _is_day(text.strip()):
            message = f"'{text.strip()}' is not a day"
            faults.append(Fault("not-a-day", message, place, help="write it as 2026-11-02"))
            return None
        return text.strip()

    def describe(self) -> str:
        """Return what is expected."""
        return "a day, written 2026-11-02"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": "string", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}


@dataclass(frozen=True, slots=True)
class ReadBy:
    """A scalar that one function reads."""

    reader: Callable[[str], Any] = field(repr=False)
    """Takes the text; raises `Faulty` with places inside it."""
    expected: str

    def read(self, data: object, place: Place, faults: list[Fault]) -> Any:
        """Return what the reader makes of the text."""
        text = _scalar(data, place, faults, self.expected)
        return None if text is None else _through(self.reader, text, place, faults)

    def describe(self) -> str:
        """Return what is expected."""
        return self.expected

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _SCALAR


LENGTH = ReadBy(read_length, "a length, such as 2 1/2 in")
"""A plain length."""
AREA = ReadBy(read_area, "an area, such as 150 sq ft")
"""A plain area."""
MONEY = ReadBy(read_money, "a price, such as 4.28")
"""A price."""
NUMBER = ReadBy(read_number, "a number")
"""A plain number."""
CONDITION = ReadBy(read_formula, "a condition, such as width > 60 in")
"""A formula that is yes or no."""
COUNT = ReadBy(read_formula, "a whole number, by formula")
"""A formula that gives a whole number."""
LENGTH_FORMULA = ReadBy(read_formula, "a length, by formula")
"""A formula that gives a length."""
FORMULA = ReadBy(read_formula, "a formula")
"""A formula that gives anything."""


@dataclass(frozen=True, slots=True)
class Formulas:
    """Formulas by name."""

    expected: str = "lengths by name"

    def read(self, data: object, place: Place, faults: list[Fault]) -> dict[str, Formula]:
        """Return the formulas in the author's order."""
        return Named(FORMULA, self.expected).read(data, place, faults)

    def describe(self) -> str:
        """Return what is expected."""
        return self.expected

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": "object", "additionalProperties": _SCALAR}


@dataclass(frozen=True, slots=True)
class ListOf:
    """Several values of one kind; a single one need not be in a list."""

    each: Kind

    def read(self, data: object, place: Place, faults: list[Fault]) -> tuple[Any, ...]:
        """Return the values in the author's order, without the faulty ones."""
        if not isinstance(data, list):
            one = self.each.read(data, place, faults)
            return () if one is None else (one,)
        read = [self.each.read(item, place.at(index), faults) for index, item in enumerate(data)]
        return tuple(item for item in read if item is not None)

    def describe(self) -> str:
        """Return what is expected."""
        return f"{self.each.describe()}, or a list"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"anyOf": [self.each.schema(), {"type": "array", "items": self.each.schema()}]}


@dataclass(frozen=True, slots=True)
class Named:
    """Values of one kind by name."""

    each: Kind
    expected: str

    def read(self, data: object, place: Place, faults: list[Fault]) -> dict[str, Any]:
        """Return the values by name in the author's order, without the faulty ones."""
        if not isinstance(data, dict):
            faults.append(Fault("not-named", f"expected {self.expected}: 'name: value' lines", place))
            return {}
        made = {str(name): self.each.read(value, place.at(name), faults) for name, value in data.items()}
        return {name: value for name, value in made.items() if value is not None}

    def describe(self) -> str:
        """Return what is expected."""
        return self.expected

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": "object", "additionalProperties": self.each.schema()}


@dataclass(frozen=True, slots=True)
class Record:
    """A record with a form of its own."""

    form: Form[Any]

    def read(self, data: object, place: Place, faults: list[Fault]) -> Any:
        """Return what the form makes of the data."""
        return self.form.read(data, place, faults)

    def describe(self) -> str:
        """Return what is expected."""
        return self.form.name

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        from scantling.form.form import schema  # noqa: PLC0415 - the two modules describe each other

        return schema(self.form)


@dataclass(frozen=True, slots=True)
class EitherOf:
    """A record if the author wrote `key: value` lines, else a value of another kind."""

    record: Kind
    plain: Kind

    def read(self, data: object, place: Place, faults: list[Fault]) -> Any:
        """Return what the fitting kind makes of the data."""
        return (self.record if isinstance(data, dict) else self.plain).read(data, place, faults)

    def describe(self) -> str:
        """Return what is expected."""
        return f"{self.plain.describe()}, or {self.record.describe()}"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"anyOf": [self.plain.schema(), self.record.schema()]}
