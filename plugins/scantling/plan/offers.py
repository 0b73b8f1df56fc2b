"""The sizes that a plan offers as ready pages, each with a name that is safe in an address."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.formula import Value
from scantling.measure import Angle, Display, Length, local_marks, write_fraction, write_length, write_number
from scantling.plan.fitted import Choice
from scantling.plan.model import Plan

_UNSAFE = re.compile(r"[^a-z0-9]+")
_FINEST = 64


@dataclass(frozen=True, slots=True)
class Offered:
    """One choice that gets a page of its own."""

    slug: str
    """The page's name in addresses: "width-36in"; unique in its plan."""
    label: str
    """For people: "width 36 in"."""
    choice: Choice
    unusual: tuple[tuple[str, Value], ...] = ()
    """What differs from the usual size, by name, in the author's order."""

    def told(self, display: Display) -> str:
        """Return the label for readers: in millimetres where those are shown, else as the author wrote it."""
        if display.system == "in" or not self.unusual:
            return self.label
        return ", ".join(
            f"{name} {display.length(value) if isinstance(value, Length) else write_choice(value)}"
            for name, value in self.unusual
        )


def offered_choices(plan: Plan) -> tuple[Offered, ...]:
    """Return what `plan` offers beside its usual sizes, each choice once, in the author's order.

    First each offered value of each size, everything else as usual; then the whole choices.
    """
    made: dict[tuple[tuple[str, Value], ...], Offered] = {}
    slugs: set[str] = set()
    for chosen in _chosen(plan):
        unusual = {name: value for name, value in chosen.items() if value != _usual(plan, name)}
        key = tuple(sorted(unusual.items(), key=lambda item: item[0]))
        if not unusual or key in made:
            continue
        slug = _unique("-".join(slug_of(f"{name} {_short(value)}") for name, value in unusual.items()), slugs)
        label = ", ".join(f"{name} {write_choice(value)}" for name, value in unusual.items())
        made[key] = Offered(slug, label, _choice(plan, unusual), tuple(unusual.items()))
    return tuple(made.values())


def _chosen(plan: Plan) -> Iterator[Mapping[str, Value]]:
    for size in plan.sizes.values():
        yield from ({size.name: value} for value in size.offered)
    yield from plan.offered


def _usual(plan: Plan, name: str) -> Value:
    return plan.sizes[name].usual if name in plan.sizes else plan.options[name].usual


def _choice(plan: Plan, chosen: Mapping[str, Value]) -> Choice:
    sizes = {name: value for name, value in chosen.items() if name in plan.sizes}
    return Choice(sizes, {name: str(value) for name, value in chosen.items() if name in plan.options})


def write_choice(value: Value) -> str:
    """Write a chosen value exactly: inches where they are a fraction that a tape shows, else millimetres."""
    if isinstance(value, Length):
        if _FINEST % value.inches.denominator == 0:
            return write_length(value, denominator=_FINEST)
        return f"{write_number(value.mm)} mm"
    if isinstance(value, Angle):
        return f"{write_number(value.degrees)} deg"
    return write_number(value) if isinstance(value, Fraction) else str(value)


def _short(value: Value) -> str:
    """Write a chosen value for an address: `36in`, `17-1-2in`, `900mm`."""
    if isinstance(value, Length) and _FINEST % value.inches.denominator == 0:
        return f"{write_fraction(value.inches)}in"
    return write_choice(value).replace(" mm", "mm").replace(" deg", "deg")


def slug_of(words: str) -> str:
    """Return words as they may stand in an address: small letters, digits and hyphens."""
    return _UNSAFE.sub("-", words.casefold()).strip("-") or "size"


def _unique(slug: str, taken: set[str]) -> str:
    found, number = slug, 2
    while found in taken:
        found, number = f"{slug}-{number}", number + 1
    taken.add(found)
    return found


def describe_choice(plan: Plan, choice: Choice, display: Display) -> str:
    """Return a choice in words, for messages: "width 36 in"; nothing for the usual sizes."""
    chosen: Iterable[tuple[str, Value]] = (*choice.sizes.items(), *choice.options.items())
    return ", ".join(
        f"{name} {_told(value, display)}" for name, value in chosen if value != _usual(plan, name)
    )


def _told(value: Value, display: Display) -> str:
    """Write a chosen value: in inches exactly, in millimetres where a tenth does, else to the nearest."""
    if isinstance(value, Length) and display.system == "mm":
        whole, tenth = divmod(value.mm * 10, 10)
        exact = tenth and tenth.denominator == 1
        return f"{local_marks(f'{whole}.{tenth}')} mm" if exact else display.length(value)
    return value if isinstance(value, str) else local_marks(write_choice(value))
