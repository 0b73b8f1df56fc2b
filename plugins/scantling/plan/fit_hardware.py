"""Fasteners from joins, banding from edges, and the hardware that the author lists."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from fractions import Fraction
from typing import Protocol

from scantling.fault import Fault, Place, did_you_mean
from scantling.formula import Formula, Value
from scantling.measure import Length
from scantling.plan.fitted import FittedHardware, FittedJoin, FittedPart, FittedProse
from scantling.plan.model import Hardware, Join, Plan
from scantling.plan.prose import Prose
from scantling.plan.screws import FASTENER_KINDS, choose_fastener
from scantling.plan.values import NOTHING, as_area, as_count, as_length
from scantling.shop import Shop, Ware
from scantling.words import say

BANDING = "edge banding"


class FormulaScope(Protocol):
    """What fitting needs of the names in reach."""

    @property
    def faults(self) -> list[Fault]:
        """Return where faults go."""
        ...

    def value(self, formula: Formula | None, place: Place) -> Value | None:
        """Return what a formula comes to."""
        ...

    def holds(self, formula: Formula | None, place: Place) -> bool:
        """Return whether a condition holds."""
        ...

    def prose(self, prose: Prose) -> FittedProse:
        """Return prose with its quotes evaluated."""
        ...


def fit_joins(
    plan: Plan, shop: Shop, parts: Iterable[FittedPart], scope: FormulaScope
) -> tuple[FittedJoin, ...]:
    """Return the joins whose two parts are there at this size."""
    present = {part.id: part for part in parts}
    joins = []
    for join in plan.joins:
        there = join.first in present and join.second in present
        if there and scope.holds(join.only_if, join.place.at("only if")):
            joins.append(_join(join, present, shop, scope))
    return tuple(joins)


def _join(join: Join, parts: Mapping[str, FittedPart], shop: Shop, scope: FormulaScope) -> FittedJoin:
    def count(formula: Formula | None, key: str) -> int:
        place = join.place.at(key)
        found = as_count(
            scope.value(formula, place), say("'{key}' of this join", key=key), place, scope.faults
        )
        return 0 if found is None else found

    place = join.place.at("depth")
    depth = as_length(
        scope.value(join.depth, place), say("the depth of this join"), place, scope.faults, or_zero=True
    )
    each, joints = count(join.each, "each"), count(join.joints, "joints")
    fastener = _fastener(join, parts, shop, scope.faults) if each and joints else ""
    return FittedJoin(join, each, joints, depth, fastener)


def _fastener(join: Join, parts: Mapping[str, FittedPart], shop: Shop, faults: list[Fault]) -> str:
    if join.fastener:
        place = join.place.at("fastener")
        ware = shop.wares.get(join.fastener)
        if ware is None:
            faults.append(_unknown_ware(join.fastener, shop, place))
        else:
            _check_price(ware, place, faults)
        return join.fastener
    if join.how not in FASTENER_KINDS:
        return ""
    first, second = parts[join.first], parts[join.second]
    ware = choose_fastener(join.how, first.thick, second.thick, shop.wares.values())
    place = join.place.at("with")
    if ware is None:
        message = say(
            "the shop file has no {kind} of a length for this join",
            kind=say(FASTENER_KINDS[join.how]),
        )
        help_line = "add one to the shop file, or name it with 'fastener:'"
        faults.append(Fault("no-fastener", message, place, help_line))
        return ""
    _check_price(ware, place, faults)
    return ware.key


def _check_price(ware: Ware, place: Place, faults: list[Fault]) -> None:
    if ware.price is None:
        faults.append(
            Fault("no-price", say("'{ware}' has no price", ware=ware.key), place, "add one in the shop file")
        )


def _unknown_ware(name: str, shop: Shop, place: Place) -> Fault:
    return Fault(
        "unknown-ware",
        say("the shop file has no article '{name}'", name=name),
        place,
        did_you_mean(name, shop.wares, kind="articles"),
    )


def fit_hardware(
    plan: Plan, shop: Shop, parts: tuple[FittedPart, ...], joins: Iterable[FittedJoin], scope: FormulaScope
) -> tuple[FittedHardware, ...]:
    """Return everything that is bought beside wood: as listed, then what joins and banding add."""
    listed = [
        _listed(item, shop, scope)
        for item in plan.hardware.values()
        if scope.holds(item.only_if, item.place.at("only if"))
    ]
    found = [item for item in listed if item is not None]
    return (*found, *_from_joins(joins), *_banding(parts, shop, scope.faults))


def _listed(item: Hardware, shop: Shop, scope: FormulaScope) -> FittedHardware | None:
    ware = shop.wares.get(item.ware)
    if ware is None:
        scope.faults.append(_unknown_ware(item.ware, shop, item.place.key()))
        return None
    _check_price(ware, item.place.key(), scope.faults)
    of_count, of_area, of_length = (item.place.at(key) for key in ("count", "area", "long"))
    count = as_count(
        scope.value(item.count, of_count), say("the count of '{name}'", name=item.id), of_count, scope.faults
    )
    area = as_area(
        scope.value(item.area, of_area), say("the area of '{name}'", name=item.id), of_area, scope.faults
    )
    value, what = scope.value(item.length, of_length), say("the length of '{name}'", name=item.id)
    length = as_length(value, what, of_length, scope.faults, or_zero=True)
    if area is not None and ware.covers is None:
        message = say("the shop file does not say what '{ware}' covers", ware=item.ware)
        scope.faults.append(Fault("covers-nothing", message, of_area, "add 'covers: 75 sq ft' there"))
    if length is not None and ware.long is None:
        message = say("the shop file does not say how long '{ware}' is", ware=item.ware)
        scope.faults.append(Fault("no-length", message, of_length, "add 'long:' there"))
    if item.count is None and item.area is None and item.length is None:
        count = 1
    return FittedHardware(item.ware, Fraction(count or 0), area, length, scope.prose(item.note), item)


def _from_joins(joins: Iterable[FittedJoin]) -> Iterator[FittedHardware]:
    counts: dict[str, int] = {}
    uses: dict[str, list[tuple[str, str]]] = {}
    for join in joins:
        if join.fasteners:
            counts[join.fastener] = counts.get(join.fastener, 0) + join.fasteners
            uses.setdefault(join.fastener, []).append((join.join.first, join.join.second))
    for ware, count in counts.items():
        yield FittedHardware(
            ware, Fraction(count), None, None, FittedProse(()), None, joined=tuple(uses[ware])
        )


def _banding(parts: Iterable[FittedPart], shop: Shop, faults: list[Fault]) -> Iterator[FittedHardware]:
    lengths: dict[str, Length] = {}
    for part in parts:
        if part.part.bands:
            ware = _band(part, shop, faults)
            if ware is not None:
                lengths[ware.key] = lengths.get(ware.key, NOTHING) + part.count * banded_length(part)
    for key, length in lengths.items():
        yield FittedHardware(key, Fraction(0), None, length, FittedProse(()), None, is_banding=True)


def _band(part: FittedPart, shop: Shop, faults: list[Fault]) -> Ware | None:
    """Return the banding that a part takes, or None after adding a fault."""
    named, place = part.part.band_with, part.part.place.at("band")
    if named and named not in shop.wares:
        faults.append(_unknown_ware(named, shop, part.part.place.at("band with")))
        return None
    found = shop.wares.get(named) or next((one for one in shop.wares.values() if one.kind == BANDING), None)
    if found is None:
        help_line = "add one there, with 'kind: edge banding' and 'long:', the length of a roll"
        faults.append(Fault("unknown-ware", say("the shop file has no edge banding"), place, help_line))
        return None
    _check_price(found, place, faults)
    if found.long is None:
        message = say("the shop file does not say how long '{ware}' is", ware=found.key)
        help_line = f"add 'long:', the length of a roll, to '{found.key}' in the shop file"
        faults.append(Fault("no-length", message, place, help_line))
        return None
    return found


def banded_length(part: FittedPart) -> Length:
    """Return the length of all banded edges of one piece."""
    sides = [part.length if edge.startswith("long") else part.width for edge in part.part.bands]
    return sum(sides, NOTHING)
