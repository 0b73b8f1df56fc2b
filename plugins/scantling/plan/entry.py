"""A record of a plan as it was read, and the fields that several kinds of record have."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from scantling.fault import Place
from scantling.form import CONDITION, Field, Named, Text
from scantling.plan.kinds import ProseKind
from scantling.plan.prose import EMPTY


@dataclass(frozen=True, slots=True)
class Entry:
    """A record of a plan as it was read, before names are resolved."""

    fields: Mapping[str, Any]
    place: Place

    def __getitem__(self, key: str) -> Any:
        """Return what the author wrote for `key`, or the form's default."""
        return self.fields[key]


def entry(*, found_at: Place, **fields: Any) -> Entry:
    """Return an entry of the fields that a form has read."""
    return Entry(fields, found_at)


PROSE = ProseKind()
ACCEPTS = Field(
    "accept",
    Named(Text(), "checks by name, each with the reason"),
    "checks that are silenced here, each with the reason",
    default={},
)
ONLY_IF = Field("only if", CONDITION, "it is there only where this holds", example="width > 60 in")
NOTE = Field("note", PROSE, "a note for the builder", default=EMPTY)
