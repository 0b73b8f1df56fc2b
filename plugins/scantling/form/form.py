"""A form: the fields that one kind of record may have."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from scantling.fault import Fault, Place, did_you_mean
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
    """The value when the author leaves it out."""
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
    """Called with one keyword a field, plus `found_at`, its place, when nothing required is missing or faulty."""
    fields: tuple[Field, ...]
    meaning: str = ""
    short: str = ""
    """The field that a bare value fills, for records that mostly need one."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> T | None:
        """Return the record that `data` describes, or None after adding to `faults`."""
        if self.short and not isinstance(data, dict):
            data = {self.short: data}
            return self._read_fields(data, place, faults, bare=True)
        if not isinstance(data, dict):
            faults.append(
                Fault("not-a-record", f"{self.name} needs 'key: value' lines here", place, help=self._keys())
            )
            return None
        return self._read_fields(data, place, faults)

    def _read_fields(
        self, data: dict[str, object], place: Place, faults: list[Fault], *, bare: bool = False
    ) -> T | None:
        known = {field.key: field for field in self.fields}
        before = len(faults)
        for key in data:
            if key not in known:
                help_line = did_you_mean(str(key), known, kind="keys")
                faults.append(
                    Fault("unknown-key", f"{self.name} has no '{key}'", place.at(key).key(), help=help_line)
                )
        values: dict[str, Any] = {"found_at": place}
        for field in self.fields:
            if field.key in data:
                here = place if bare else place.at(field.key)
                values[field.attribute] = field.kind.read(data[field.key], here, faults)
            else:
                values[field.attribute] = field.default
                if field.required:
                    help_line = (
                        f"add '{field.key}: {field.example}'" if field.example else f"add '{field.key}:'"
                    )
                    faults.append(
                        Fault("missing-key", f"{self.name} needs '{field.key}'", place, help=help_line)
                    )
        return self.make(**values) if len(faults) == before else None

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
