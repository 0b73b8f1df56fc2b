"""A reader's settings as their device keeps them: each entry read alone, so that one slip loses one entry."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from typing import Any

from scantling.fault import Fault, Faulty, Place, Severity
from scantling.measure import Display, in_plain_marks, read_number
from scantling.pages.live.choice import LONGEST_TYPED
from scantling.shop import MyShop, Shop, read_my_shop, shop_of
from scantling.words import say

FRACTIONS = (2, 4, 8, 16, 32, 64)
UNITS = ("in", "mm")
MOST_ENTRIES = 400


@dataclass(frozen=True, slots=True)
class Settings:
    """How a reader sees a plan: units, and the shop that they go to."""

    display: Display
    mine: MyShop
    warnings: tuple[Fault, ...]

    def shop(self, authors: Shop) -> tuple[Shop, tuple[Fault, ...]]:
        """Return the author's shop as this reader finds it, with a warning for what does not fit it."""
        return shop_of(authors, self.mine)


def read_settings(data: object, usual: Display) -> Settings:
    """Return what can be understood of a reader's settings.

    Args:
        usual: how the site shows lengths where the reader did not choose.
    """
    if not isinstance(data, dict):
        message = say("the settings kept on this device cannot be read and are left out")
        return Settings(usual, MyShop(), () if data is None else (_warning(message, ()),))
    display = _display(data, usual)
    kept: dict[str, Any] = {}
    warnings = tuple(_keep(data, display, kept))
    mine, faults = read_my_shop(kept)
    return Settings(display, mine, (*warnings, *faults))


def _display(data: Mapping[str, Any], usual: Display) -> Display:
    units, fraction = data.get("units"), data.get("fraction")
    return Display(
        "mm" if units == "mm" else "in" if units == "in" else usual.system,
        fraction if isinstance(fraction, int) and fraction in FRACTIONS else usual.denominator,
    )


def _warning(message: str, path: tuple[str, ...]) -> Fault:
    return Fault(
        "setting-left-out", message, Place(path), say("this setting is left out"), severity=Severity.WARNING
    )


def _keep(data: Mapping[str, Any], display: Display, kept: dict[str, Any]) -> Iterator[Fault]:
    """Put each entry that can be read into `kept`, and yield a warning for each other one."""
    for name in ("kerf", "longest piece"):
        text = data.get(name)
        if isinstance(text, str) and text.strip():
            yield from _try(partial(_measured, name, text, display), kept, (name,))
    left_out = data.get("left out")
    if isinstance(left_out, list):
        kept["left out"] = [word for word in left_out[:MOST_ENTRIES] if isinstance(word, str)]
    for name, text in _entries(data.get("prices")):
        if isinstance(text, str) and text.strip():
            yield from _try(partial(_priced, name, text), kept, ("prices", name))
    for stock, sizes in _entries(data.get("owned")):
        for size, count in _entries(sizes):
            number = str(count)[:LONGEST_TYPED]
            make = partial(_owned, stock, size, number, display)
            yield from _try(make, kept, ("owned", stock, size))


def _measured(name: str, text: str, display: Display) -> dict[str, Any]:
    return {name: _with_unit(text, display)}


def _priced(name: str, text: str) -> dict[str, Any]:
    return {"prices": {name: _plain(text)}}


def _owned(stock: str, size: str, number: str, display: Display) -> dict[str, Any]:
    return {"owned": {stock: {_with_units(size, display): number}}}


def _entries(data: object) -> list[tuple[str, Any]]:
    return (
        [(key, value) for key, value in data.items() if isinstance(key, str)][:MOST_ENTRIES]
        if isinstance(data, dict)
        else []
    )


def _try(make: Callable[[], dict[str, Any]], kept: dict[str, Any], path: tuple[str, ...]) -> Iterator[Fault]:
    try:
        entry = make()
        _, faults = read_my_shop(entry)
    except Faulty as faulty:
        entry, faults = {}, faulty.faults
    if faults:
        yield _warning(faults[0].message, path)
        return
    for key, value in entry.items():
        if not isinstance(value, dict):
            kept[key] = value
            continue
        shelf = kept.setdefault(key, {})
        for name, inner in value.items():
            shelf[name] = {**shelf.get(name, {}), **inner} if isinstance(inner, dict) else inner


def _with_units(size: str, display: Display) -> str:
    """Return a size like `48 x 24` with the reader's unit where it names none."""
    sides = size.lower().replace("×", "x").split("x")
    return " x ".join(_with_unit(side, display) for side in sides)


def _plain(text: str) -> str:
    return in_plain_marks(text.strip()[:LONGEST_TYPED])


def _with_unit(text: str, display: Display) -> str:
    text = _plain(text)
    try:
        read_number(text)
    except Faulty:
        return text
    return f"{text} {display.system}"
