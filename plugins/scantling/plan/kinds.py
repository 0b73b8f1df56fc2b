"""Kinds of value that only plans have."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula import Formula, read_formula
from scantling.plan.model import EndCut, EndCuts, GlueUp, Source, Use
from scantling.plan.prose import EMPTY, Prose, read_prose

_SCALAR: dict[str, Any] = {"type": ["string", "number"]}
_TEXT_LIST: dict[str, Any] = {"anyOf": [_SCALAR, {"type": "array", "items": _SCALAR}]}
EDGES = {
    "all": ("long 1", "long 2", "short 1", "short 2"),
    "long edges": ("long 1", "long 2"),
    "one long edge": ("long 1",),
    "short edges": ("short 1", "short 2"),
    "one short edge": ("short 1",),
}
"""What an author may write for banded edges."""
_GLUED = re.compile(r"(?P<count>.*?)\s*\b(?P<how>layers?|wide)", re.DOTALL)
_USE = re.compile(r"\s*(?:(?P<count>\d+)\s+|\{(?P<formula>[^{}]*)\}\s+)?(?P<name>\S.*?)\s*", re.DOTALL)
_CUT = re.compile(r"(?P<kind>mitre|bevel)\s+(?P<angle>.+?)(?P<parallel>\s+parallel)?", re.DOTALL)


def _text(data: object, place: Place, faults: list[Fault], expected: str) -> str | None:
    if isinstance(data, str) and data.strip():
        return data
    if isinstance(data, str):
        faults.append(Fault("empty", f"nothing is written here; expected {expected}", place))
    else:
        what = "a list" if isinstance(data, list) else "'key: value' lines"
        faults.append(Fault("wrong-kind", f"expected {expected} here, not {what}", place))
    return None


def _formula(text: str, place: Place, offset: int, faults: list[Fault]) -> Formula | None:
    try:
        return read_formula(text)
    except Faulty as faulty:
        faults.extend(fault.under(place.part(offset, offset + len(text))) for fault in faulty.faults)
        return None


@dataclass(frozen=True, slots=True)
class ProseKind:
    """Markdown that may quote the plan's numbers."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> Prose:
        """Return the prose."""
        text = _text(data, place, faults, "words")
        return EMPTY if text is None else read_prose(text, place, faults)

    def describe(self) -> str:
        """Return what is expected."""
        return "words; `{leg.width}` quotes a number"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _SCALAR


@dataclass(frozen=True, slots=True)
class FromKind:
    """The stock that a part is cut from: one, or several joined by `or`."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> Source:
        """Return the stocks in the author's order."""
        text = _text(data, place, faults, "the name of a stock, such as 2x4")
        return Source(tuple(word.strip() for word in re.split(r"\s+or\s+", text or "") if word.strip()))

    def describe(self) -> str:
        """Return what is expected."""
        return "a stock of the shop file; several with `or` between, when any will do"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _SCALAR


@dataclass(frozen=True, slots=True)
class GlueUpKind:
    """`2 layers` or `4 wide`, with a formula for the count."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> GlueUp | None:
        """Return the glue-up."""
        text = _text(data, place, faults, "'2 layers' or '4 wide'")
        if text is None:
            return None
        found = _GLUED.fullmatch(text.strip())
        if not found or not found["count"]:
            faults.append(
                Fault(
                    "not-a-glue-up",
                    f"'{text.strip()}' does not say how it is glued up",
                    place,
                    "write '2 layers' or '4 wide'",
                )
            )
            return None
        count = _formula(found["count"], place, len(text) - len(text.lstrip()), faults)
        return None if count is None else GlueUp(count, "wide" if found["how"] == "wide" else "layers")

    def describe(self) -> str:
        """Return what is expected."""
        return "`2 layers` (faces together) or `4 wide` (edges together)"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": "string"}


@dataclass(frozen=True, slots=True)
class EdgesKind:
    """Which edges are banded."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> tuple[str, ...]:
        """Return the edges by name."""
        text = _text(data, place, faults, "which edges are banded")
        if text is None:
            return ()
        edges: list[str] = []
        for word in (part.strip() for part in text.split(",")):
            if word not in EDGES:
                faults.append(
                    Fault(
                        "unknown-edge", f"'{word}' is no edge", place, did_you_mean(word, EDGES, kind="edges")
                    )
                )
            edges += [edge for edge in EDGES.get(word, ()) if edge not in edges]
        return tuple(edges)

    def describe(self) -> str:
        """Return what is expected."""
        return "one or more of: " + ", ".join(EDGES)

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": "string"}


@dataclass(frozen=True, slots=True)
class EndsKind:
    """`mitre 45 deg`, `bevel 10 deg`, `mitre 30 deg parallel`, or a list of the left and the right end."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> EndCuts | None:
        """Return the cuts at both ends."""
        if isinstance(data, list):
            if len(data) != 2:
                faults.append(
                    Fault(
                        "two-ends",
                        f"a piece has two ends; {len(data)} are written",
                        place,
                        "write [left, right]",
                    )
                )
                return None
            left, right = (self._one(item, place.at(index), faults) for index, item in enumerate(data))
            return None if left is None or right is None else EndCuts(left[0], right[0], left[1] or right[1])
        both = self._one(data, place, faults)
        return None if both is None else EndCuts(both[0], both[0], both[1])

    def _one(self, data: object, place: Place, faults: list[Fault]) -> tuple[EndCut, bool] | None:
        text = _text(data, place, faults, "square, 'mitre 45 deg' or 'bevel 10 deg'")
        if text is None:
            return None
        if text.strip() == "square":
            return EndCut("square", None), False
        found = _CUT.fullmatch(text.strip())
        if not found:
            help_line = "write square, 'mitre 45 deg' or 'bevel 10 deg'"
            faults.append(
                Fault("not-an-end-cut", f"'{text.strip()}' is no way to cut an end", place, help_line)
            )
            return None
        offset = len(text) - len(text.lstrip()) + found.start("angle")
        angle = _formula(found["angle"], place, offset, faults)
        return None if angle is None else (EndCut(found["kind"], angle), bool(found["parallel"]))

    def describe(self) -> str:
        """Return what is expected."""
        cuts = "`mitre 45 deg` (seen on the face) or `bevel 10 deg` (seen on the edge)"
        return f"{cuts}, with `parallel` where both lean the same way; or [left, right]"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _TEXT_LIST


@dataclass(frozen=True, slots=True)
class UsesKind:
    """What a step uses up: `4 leg, side strip, {count}`; a name alone means all of them."""

    what: str

    def read(self, data: object, place: Place, faults: list[Fault]) -> tuple[Use, ...]:
        """Return the uses in the author's order."""
        if isinstance(data, list):
            listed = [(str(item), place.at(index), 0) for index, item in enumerate(data)]
        else:
            text = _text(data, place, faults, self.what) or ""
            listed = [(part, place, at) for part, at in _split(text)]
        uses = [self._one(text, here, at, faults) for text, here, at in listed]
        return tuple(use for use in uses if use is not None)

    def _one(self, text: str, place: Place, at: int, faults: list[Fault]) -> Use | None:
        found = _USE.fullmatch(text)
        if found is None:
            return None
        here = place.part(at + found.start("name"), at + found.end("name"))
        name = " ".join(found["name"].split())
        counted = "formula" if found["formula"] is not None else "count"
        if found[counted] is None:
            return Use(name, None, here, here)
        of_count = place.part(at + found.start(counted), at + found.end(counted))
        count = _formula(found[counted], place, at + found.start(counted), faults)
        return None if count is None else Use(name, count, here, of_count)

    def describe(self) -> str:
        """Return what is expected."""
        return self.what

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return _TEXT_LIST


def _split(text: str) -> list[tuple[str, int]]:
    """Return what stands between the commas, and where; commas inside braces do not count."""
    parts, depth, start = [], 0, 0
    for at, letter in enumerate(text):
        depth += (letter == "{") - (letter == "}")
        if letter == "," and depth <= 0:
            parts.append((text[start:at], start))
            start = at + 1
    return [*parts, (text[start:], start)]
