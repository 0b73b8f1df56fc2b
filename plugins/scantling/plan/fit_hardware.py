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
from scantling.shop import Shop

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
        found = as_count(scope.value(formula, place), f"'{key}' of this join", place, scope.faults)
        return 0 if found is None else found

    place = join.place.at("depth")
    depth = as_length(
        scope.value(join.depth, place), "the depth of this join", place, scope.faults, or_zero=True
    )
    each, joints = count(join.each, "each"), count(join.joints, "joints")
    fastener = _fastener(join, parts, shop, scope.faults) if each and joints else ""
    return FittedJoin(join, each, joints, depth, fastener)


def _fastener(join: Join, parts: Mapping[str, FittedPart], shop: Shop, faults: list[Fault]) -> str:
    if join.fastener:
        if join.fastener not in shop.wares:
            faults.append(_unknown_ware(join.fastener, shop, join.place.at("fastener")))
        return join.fastener
    if join.how not in FASTENER_KINDS:
        return ""
    first, second = parts[join.first], parts[join.second]
    ware = choose_fastener(join.how, first.thick, second.thick, shop.wares.values())
    if ware is None:
        kind = FASTENER_KINDS[join.how]
        message = f"the shop file has no {kind} of a length for this join"
        faults.append(
            Fault(
                "no-fastener",
                message,
                join.place.at("with"),
                "add one to the shop file, or name it with 'fastener:'",
            )
        )
        return ""
    return ware.key


def _unknown_ware(name: str, shop: Shop, place: Place) -> Fault:
    return Fault(
        "unknown-ware",
        f"the shop file has no article '{name}'",
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
    if ware.price is None:
        scope.faults.append(
            Fault("no-price", f"'{item.ware}' has no price", item.place.key(), "add one in the shop file")
        )
    count = as_count(
        scope.value(item.count, item.place.at("count")),
        f"the count of '{item.id}'",
        item.place.at("count"),
        scope.faults,
    )
    area = as_area(
        scope.value(item.area, item.place.at("area")),
        f"the area of '{item.id}'",
        item.place.at("area"),
        scope.faults,
    )
    length = as_length(
        scope.value(item.length, item.place.at("long")),
        f"the length of '{item.id}'",
        item.place.at("long"),
        scope.faults,
        or_zero=True,
    )
    if area is not None and ware.covers is None:
        scope.faults.append(
            Fault(
                "covers-nothing",
                f"the shop file does not say what '{item.ware}' covers",
                item.place.at("area"),
                "add 'covers: 75 sq ft' there",
            )
        )
    if length is not None and ware.long is None:
        scope.faults.append(
            Fault(
                "no-length",
                f"the shop file does not say how long '{item.ware}' is",
                item.place.at("long"),
                "add 'long:' there",
            )
        )
    if item.count is None and item.area is None and item.length is None:
        count = 1
    return FittedHardware(item.ware, Fraction(count or 0), area, length, scope.prose(item.note), item)


def _from_joins(joins: Iterable[FittedJoin]) -> Iterator[FittedHardware]:
    counts: dict[str, int] = {}
    uses: dict[str, list[str]] = {}
    for join in joins:
        if join.fasteners:
            counts[join.fastener] = counts.get(join.fastener, 0) + join.fasteners
            uses.setdefault(join.fastener, []).append(f"{join.join.first} to {join.join.second}")
    for ware, count in counts.items():
        yield FittedHardware(ware, Fraction(count), None, None, FittedProse(()), None, ", ".join(uses[ware]))


def _banding(parts: Iterable[FittedPart], shop: Shop, faults: list[Fault]) -> Iterator[FittedHardware]:
    lengths: dict[str, Length] = {}
    for part in parts:
        if not part.part.bands:
            continue
        ware = part.part.band_with or next(
            (ware.key for ware in shop.wares.values() if ware.kind == BANDING), ""
        )
        if not ware:
            help_line = "add one there, with 'kind: edge banding' and 'long:', the length of a roll"
            message = "the shop file has no edge banding"
            faults.append(Fault("unknown-ware", message, part.part.place.at("band"), help_line))
        elif ware not in shop.wares:
            place = part.part.place.at("band with")
            faults.append(_unknown_ware(ware, shop, place))
        elif shop.wares[ware].long is None:
            help_line = f"add 'long:', the length of a roll, to '{ware}' in the shop file"
            faults.append(
                Fault(
                    "no-length",
                    f"the shop file does not say how long '{ware}' is",
                    part.part.place.at("band"),
                    help_line,
                )
            )
        else:
            lengths[ware] = lengths.get(ware, NOTHING) + part.count * banded_length(part)
    for ware, length in lengths.items():
        yield FittedHardware(ware, Fraction(0), None, length, FittedProse(()), None, "banded edges")


def banded_length(part: FittedPart) -> Length:
    """Return the length of all banded edges of one piece."""
    sides = [part.length if edge.startswith("long") else part.width for edge in part.part.bands]
    return sum(sides, NOTHING)
