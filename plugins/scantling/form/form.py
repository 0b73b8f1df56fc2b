"""A form: the fields that one kind of record may have."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from scantling.fault import Fault, Place, did_you_mean, nearest
from scantling.form.kinds import Kind

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Field:
    """One line of a form."""

    key: str
    """As the author writes it."""
    kind: Kind
    meaning: str
    """What it says, in one sentence for the format reference."""
    required: bool = False
    default: Any = None
    """The value when the author leaves it out, and in place of one that cannot be read. A required field
    that has one does not keep the record from being made, so that the rest of it is looked at too."""
    example: str = ""

    @property
    def attribute(self) -> str:
        """Return the name of the field in the record that the form makes."""
        return self.key.replace(" ", "_")


@dataclass(frozen=True, slots=True)
class Form(Generic[T]):
    """The fields of one kind of record, and what is made of them."""

    name: str
    """What such a record is called, with its article: "a part"."""
    make: Callable[..., T]
    """Called with one keyword a field, plus `found_at`, its place, if it has what is required."""
    fields: tuple[Field, ...]
    meaning: str = ""
    short: str = ""
    """The field that a bare value fills, for records that mostly need one."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> T | None:
        """Return the record that `data` describes, adding to `faults` all that is wrong with it.

        A faulty record is made too, as far as it can be; None where something required is missing.
        """
        if self.short and not isinstance(data, dict):
            data = {self.short: data}
            return self._read_fields(data, place, faults, bare=True)
        if not isinstance(data, dict):
            message = f"{self.name} needs 'key: value' lines here"
            faults.append(Fault("not-a-record", message, place, self._keys()))
            return None
        return self._read_fields(data, place, faults)

    def _read_fields(
        self, data: dict[str, object], place: Place, faults: list[Fault], *, bare: bool = False
    ) -> T | None:
        known = {field.key: field for field in self.fields}
        unknown = [str(key) for key in data if key not in known]
        for key in unknown:
            help_line = did_you_mean(key, known, kind="keys")
            if key[:1].isdigit():
                help_line = "a comma within {...} begins another key; decimals have a point"
            faults.append(Fault("unknown-key", f"{self.name} has no '{key}'", place.at(key).key(), help_line))
        values: dict[str, Any] = {"found_at": place}
        is_whole = True
        for field in self.fields:
            value = None
            if field.key in data:
                value = field.kind.read(data[field.key], place if bare else place.at(field.key), faults)
            elif field.required and not any(field.key in nearest(key, known) for key in unknown):
                faults.append(self._missing(field, place))
            values[field.attribute] = field.default if value is None else value
            is_whole = is_whole and not (field.required and values[field.attribute] is None)
        return self.make(**values) if is_whole else None

    def _missing(self, field: Field, place: Place) -> Fault:
        help_line = f"add '{field.key}: {field.example}'" if field.example else f"add '{field.key}:'"
        return Fault("missing-key", f"{self.name} needs '{field.key}'", place, help_line)

    def _keys(self) -> str:
        return "it may have: " + ", ".join(field.key for field in self.fields)


def describe(form: Form[Any]) -> list[tuple[str, str, str, str]]:
    """Return (key, kind of value, meaning, example) for each field, for the format reference."""
    return [
        (
            field.key + (" (needed)" if field.required else ""),
            field.kind.describe(),
            field.meaning,
            field.example,
        )
        for field in form.fields
    ]


def schema(form: Form[Any]) -> dict[str, Any]:
    """Return the JSON Schema of a record of this form."""
    made: dict[str, Any] = {
        "type": "object",
        "additionalProperties": False,
        "properties": {
            field.key: {**field.kind.schema(), "description": field.meaning} for field in form.fields
        },
    }
    required = [field.key for field in form.fields if field.required]
    if required:
        made["required"] = required
    if form.short:
        short = next(field for field in form.fields if field.key == form.short)
        return {"anyOf": [short.kind.schema(), made]}
    return made
