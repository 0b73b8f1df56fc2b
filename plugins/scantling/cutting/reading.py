"""Reading a cutting problem from plain data, with every fault named at once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from scantling.cutting.fitting import faults_of_fit
from scantling.cutting.problem import MOST_PIECES, PartItem, Problem, Rules, StockItem
from scantling.fault import Fault, Faulty, Place, did_you_mean

LARGEST = 10**9
"""No length, price or count is larger: beyond it something was mistyped."""
_GRAINS = ("length", "any")
_RULES = ("least_rip_length", "least_strip_width", "longest_piece", "first_cuts", "keep_length", "keep_width")


class _Reader:
    """Reads values one by one and remembers what was wrong with them."""

    def __init__(self) -> None:
        self.faults: list[Fault] = []

    def fault(self, code: str, message: str, place: Place, mend: str = "") -> None:
        self.faults.append(Fault(code, message, place, mend))

    def whole(
        self,
        data: Mapping[str, Any],
        key: str,
        place: Place,
        what: str,
        *,
        least: int = 1,
        default: int | None = None,
    ) -> int:
        """Return a whole number, or `least` (and remember the fault) where there is none."""
        value = data.get(key)
        if value is None:
            if default is None:
                self.fault("missing", f"{what} has no {key}", place, f"give a whole number for {key}")
                return least
            return default
        if isinstance(value, bool) or not isinstance(value, int):
            self.fault(
                "not-whole",
                f"the {key} of {what} is not a whole number",
                place.at(key),
                "count it in a unit so small that it is whole",
            )
            return least
        if not least <= value <= LARGEST:
            wanted = "must not be negative" if least == 0 and value < 0 else f"must be {least} to {LARGEST:,}"
            self.fault("out-of-range", f"the {key} of {what} is {value}; it {wanted}", place.at(key))
            return least
        return value

    def maybe(
        self, data: Mapping[str, Any], key: str, place: Place, what: str, *, least: int = 1
    ) -> int | None:
        """Return a whole number or None where the key is absent."""
        return None if data.get(key) is None else self.whole(data, key, place, what, least=least)

    def text(self, data: Mapping[str, Any], key: str, place: Place, what: str) -> str:
        value = data.get(key)
        if isinstance(value, str) and value:
            return value
        if value is None or value == "":
            self.fault("missing", f"{what} has no {key}", place, f"give a name for {key}")
        else:
            self.fault("not-text", f"the {key} of {what} is not a name", place.at(key), "write it in quotes")
        return ""

    def rows(self, data: Mapping[str, Any], key: str) -> list[tuple[Mapping[str, Any], Place]]:
        """Return the mappings of a list, each with its place."""
        value = data.get(key)
        if not isinstance(value, Sequence) or isinstance(value, str):
            self.fault(
                "missing", f"the problem has no list of {key}", Place((key,)) if key in data else Place()
            )
            return []
        found = []
        for index, row in enumerate(value):
            place = Place((key, index))
            if isinstance(row, Mapping):
                found.append((row, place))
            else:
                self.fault("not-a-mapping", f"entry {index + 1} of {key} is not a set of named values", place)
        return found


def _stock_item(read: _Reader, row: Mapping[str, Any], place: Place) -> StockItem:
    name = read.text(row, "id", place, "a stock item")
    what = f"stock '{name}'"
    return StockItem(
        id=name,
        family=read.text(row, "family", place, what),
        length=read.whole(row, "length", place, what),
        width=read.whole(row, "width", place, what),
        price=read.whole(row, "price", place, what, least=0),
        available=read.maybe(row, "available", place, what, least=0),
        trim_ends=read.whole(row, "trim_ends", place, what, least=0, default=0),
        trim_edges=read.whole(row, "trim_edges", place, what, least=0, default=0),
    )


def _part_item(read: _Reader, row: Mapping[str, Any], place: Place) -> PartItem:
    name = read.text(row, "id", place, "a part")
    what = f"part '{name}'"
    grain = row.get("grain", "length")
    if grain not in _GRAINS:
        read.fault(
            "unknown-grain",
            f"the grain of {what} is neither 'length' nor 'any'",
            place.at("grain"),
            "'length' keeps it along the stock, 'any' lets it be turned",
        )
    part = PartItem(
        id=name,
        family=read.text(row, "from", place, what),
        count=read.whole(row, "count", place, what),
        length=read.whole(row, "length", place, what),
        width=read.whole(row, "width", place, what),
        may_turn=grain == "any",
        least_length=read.maybe(row, "least_length", place, what),
        least_width=read.maybe(row, "least_width", place, what),
    )
    for key, least, full in (
        ("length", part.least_length, part.length),
        ("width", part.least_width, part.width),
    ):
        if least is not None and least > full:
            read.fault(
                "least-above-full",
                f"the least {key} of {what} is more than its {key}",
                place.at(f"least_{key}"),
            )
    return part


def _twice(read: _Reader, rows: Sequence[tuple[Mapping[str, Any], Place]], noun: str) -> None:
    seen: dict[str, int] = {}
    for row, place in rows:
        name = row.get("id")
        if not isinstance(name, str) or not name:
            continue
        if name in seen:
            read.fault(
                "named-twice", f"there are two {noun} called '{name}'", place.at("id"), "rename one of them"
            )
        seen[name] = 1


def _families(read: _Reader, problem: Problem, places: Sequence[Place]) -> None:
    known = sorted({item.family for item in problem.stock if item.family})
    for part, place in zip(problem.parts, places, strict=True):
        if part.family and part.family not in known:
            read.fault(
                "unknown-stock",
                f"part '{part.id}' is cut from '{part.family}', which is not in stock",
                place.at("from"),
                did_you_mean(part.family, known, kind="kinds of stock"),
            )


def _count_of_pieces(read: _Reader, problem: Problem) -> None:
    pieces = sum(part.count for part in problem.parts)
    if pieces > MOST_PIECES:
        most = max(problem.parts, key=lambda part: part.count)
        read.fault(
            "too-many-pieces",
            f"{pieces:,} pieces are too many to plan at once; {most.count:,} of them are '{most.id}'",
            Place(("parts",)),
            f"plan at most {MOST_PIECES:,} pieces at a time",
        )


def read_problem(data: Mapping[str, Any]) -> Problem:
    """Read a problem in the form of the cutting seam.

    Raises:
        Faulty: with everything that is wrong with it, each at its place.
    """
    if not isinstance(data, Mapping):
        raise Faulty([Fault("not-a-mapping", "a cutting problem is a set of named values")])
    read, top, what = _Reader(), Place(), "the problem"
    stock_rows, part_rows = read.rows(data, "stock"), read.rows(data, "parts")
    problem = Problem(
        unit=str(data.get("unit", "")),
        kerf=read.whole(data, "kerf", top, what, least=0),
        stages=read.whole(data, "stages", top, what, default=3),
        stock=tuple(_stock_item(read, row, place) for row, place in stock_rows),
        parts=tuple(_part_item(read, row, place) for row, place in part_rows),
        rules=Rules(
            **{
                key: value
                for key in _RULES
                if (value := read.maybe(data, key, top, what, least=0)) is not None
            }
        ),
        name=str(data.get("name", "")),
    )
    _twice(read, stock_rows, "stock items")
    _twice(read, part_rows, "parts")
    _families(read, problem, [place for _, place in part_rows])
    _count_of_pieces(read, problem)
    if not read.faults:
        read.faults.extend(faults_of_fit(problem))
    if read.faults:
        raise Faulty(read.faults)
    return problem
