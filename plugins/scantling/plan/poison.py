"""Names that are missing only because their own record is faulty: no second fault is made of that."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from scantling.fault import Fault, nearest

_NAMED = ("sizes", "lengths", "options", "parts", "hardware")
_ECHOES = {"unknown-name", "unknown-part"}
_QUOTED = re.compile("'([^']*)'")


@dataclass(frozen=True, slots=True)
class Poison:
    """The records in which something is wrong already."""

    records: frozenset[tuple[str, str]] = frozenset()
    """Section and name of each."""
    is_everywhere: bool = False
    """True if a whole section is faulty, so that nothing can be said of any name."""

    @classmethod
    def of(cls, faults: Iterable[Fault]) -> Poison:
        """Return what these faults cast doubt on."""
        return cls().and_of(faults)

    def and_of(self, faults: Iterable[Fault]) -> Poison:
        """Return this with what further faults cast doubt on."""
        records = set(self.records)
        everywhere = self.is_everywhere
        for fault in faults:
            path = fault.place.path
            if len(path) > 1 and path[0] in _NAMED:
                records.add((str(path[0]), str(path[1])))
            elif _is_of_a_section(fault):
                everywhere = True
        return Poison(frozenset(records), everywhere)

    def has(self, name: str) -> bool:
        """Return whether a name in a formula belongs to a faulty record."""
        head = name.split(".", 1)[0]
        return self.is_everywhere or any((section, head) in self.records for section in _NAMED)

    def without_echoes(self, faults: Iterable[Fault]) -> list[Fault]:
        """Return the faults without those that only say that a faulty record is missing or incomplete."""
        return [fault for fault in faults if not self.is_echo(fault)]

    def is_echo(self, fault: Fault) -> bool:
        """Return whether a fault only says that a faulty record is missing or incomplete."""
        path = fault.place.path
        if fault.code == "missing-key":
            return len(path) > 1 and (str(path[0]), str(path[1])) in self.records
        return fault.code in _ECHOES and self.has(_name_in(fault))


def _name_in(fault: Fault) -> str:
    """Return the name that a fault says is unknown: what its message quotes."""
    found = _QUOTED.search(fault.message)
    return found[1] if found else ""


def _is_of_a_section(fault: Fault) -> bool:
    path = fault.place.path
    if not path:
        return fault.code == "missing-key" and _name_in(fault) == "parts"
    if len(path) > 1:
        return False
    return path[0] in _NAMED or (fault.code == "unknown-key" and bool(nearest(str(path[0]), _NAMED)))
