"""The names that a placement gives to formulas (`leg.top`), and what is wrong with it at any size."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from scantling.fault import Fault, Place, did_you_mean
from scantling.formula import Formula, NameUse, Scope, Value, read_formula
from scantling.measure import Length
from scantling.plan.model import Part, Plan
from scantling.plan.placement import ANCHORS, HIGH, LOW, MIDDLE, WAYS, Placement, Repeat, placements_of
from scantling.plan.placement_shape import shape_of

OVERALL = ("width", "depth", "height")
"""The overall size along x, y and z."""
_ZERO = read_formula("0 in")
LEVEL_SIDES = {"left": 0, "right": 0, "front": 1, "back": 1}
"""The sides to which a part can lean, each with its axis."""
_LEANS = tuple(LEVEL_SIDES)
_DIMENSIONS = ("length", "width", "thick")
Defined = tuple[str, Formula, Place]


def anchor_name(part: str, index: int, anchor: str) -> str:
    """Return what the formula of an anchor is called: `leg.top`; that of a later place cannot be spelled."""
    return f"{part}.{anchor}" if index == 0 else f"{part}.#{index + 1} {anchor}"


def repeat_name(part: str, index: int, number: int, key: str) -> str:
    """Return what a formula of a repeat is called; no other formula can spell it."""
    return f"{part}.#{index + 1} repeat {number} {key}"


def lean_name(part: str, index: int) -> str:
    """Return what the formula of a lean is called."""
    return f"{part}.#{index + 1} lean"


def names_of(part: Part, plan: Plan, faults: list[Fault]) -> tuple[list[Defined], list[str]]:
    """Return the formulas of a part's placement, and the names that its faults keep from being defined."""
    places = placements_of(part.placement)
    before = len(faults)
    for place in places:
        _check(part, plan, place, faults, alone=len(places) == 1)
    if len(faults) > before:
        return [], [f"{part.id}.{name}" for name in (*ANCHORS, "fit length", "fit angle")]
    found: list[Defined] = []
    for index, place in enumerate(places):
        found += _written(part, index, place)
    if places:
        found += _derived(part, places[0], {name for name, _, _ in found})
    return found, []


def _check(part: Part, plan: Plan, place: Placement, faults: list[Fault], *, alone: bool) -> None:
    for word in place.mirror or ():
        if word not in WAYS:
            help_line = did_you_mean(word, (*WAYS, "both", "none"), kind="ways")
            faults.append(
                Fault("unknown-choice", f"'{word}' is no way to mirror", place.place.at("mirror"), help_line)
            )
        else:
            _check_overall(plan, word, place.place.at("mirror"), faults)
    if place.brace:
        _check_brace(part, place, faults)
    else:
        _check_turn(part, place, faults)
    repeated = {repeat.way for repeat in place.repeats or ()}
    for axis in range(3):
        names = [name for name in (LOW[axis], HIGH[axis], MIDDLE[axis]) if name in place.anchors]
        allowed = 2 if place.brace and axis != place.across_plane else 1
        if len(names) > allowed:
            message = f"'{part.id}' is placed by both its {names[0]} and its {names[1]}"
            help_line = "keep one; its size follows from the part"
            faults.append(Fault("placed-twice", message, place.place.at(names[1]).key(), help_line))
        if (
            names
            and WAYS[axis] in repeated
            and any(r.start for r in place.repeats or () if r.way == WAYS[axis])
        ):
            message = f"'{part.id}' is placed by its {names[0]} and by a repeat from one place to another"
            faults.append(Fault("placed-twice", message, place.place.at(names[0]).key(), "keep one of them"))
    for number, repeat in enumerate(place.repeats or ()):
        _check_repeat(repeat, faults, alone=alone or repeat.count is not None)
        if repeat.way in {other.way for other in (place.repeats or ())[:number]}:
            faults.append(
                Fault("placed-twice", f"two repeats run {repeat.way}", repeat.place, "join them into one")
            )


def _check_overall(plan: Plan, way: str, place: Place, faults: list[Fault]) -> None:
    name = OVERALL[WAYS.index(way)]
    known = plan.overall.get(name, name)
    if known not in plan.sizes and known not in plan.lengths:
        message = f"nothing says how large the {name} of the whole piece is, to mirror {way}"
        help_line = f"add 'overall: {{{name}: ...}}' with the size or length that gives it"
        faults.append(Fault("no-overall", message, place, help_line))


def _check_turn(part: Part, place: Placement, faults: list[Fault]) -> None:
    if place.faces and ("side", "front", "up").index(place.faces) == WAYS.index(place.runs or "across"):
        message = f"the face of '{part.id}' cannot look the way it runs"
        help_line = "a face looks up, to the front or to the side, square to the way the part runs"
        faults.append(Fault("faces-along", message, place.place.at("faces"), help_line))
    if place.is_crossed or place.rises:
        key = "crossed" if place.is_crossed else "rises"
        help_line = "add 'brace: rails', or leave this out"
        faults.append(Fault("no-brace", f"only a brace has '{key}'", place.place.at(key).key(), help_line))
    if (place.lean is None) != (place.leans is None):
        key, other = ("lean", "leans: back") if place.lean else ("leans", "lean: 5 deg")
        message = f"'{key}' needs its fellow"
        faults.append(Fault("missing-key", message, place.place.at(key), f"add '{other}'"))
    for side in place.leans or ():
        if side not in _LEANS:
            help_line = did_you_mean(side, _LEANS, kind="sides")
            faults.append(
                Fault("unknown-choice", f"'{side}' is no side to lean to", place.place.at("leans"), help_line)
            )
    if len(place.leans or ()) > 1 and not _is_splayed(place):
        message = (
            "only a part that runs up leans both ways, to one of left and right and one of front and back"
        )
        faults.append(Fault("leans-nowhere", message, place.place.at("leans"), "name one side"))


def _is_splayed(place: Placement) -> bool:
    axes = sorted(LEVEL_SIDES.get(side, 2) for side in place.leans or ())
    return place.axes[0] == 2 and axes == [0, 1]


def _check_brace(part: Part, place: Placement, faults: list[Fault]) -> None:
    open_ways = [axis for axis in range(3) if LOW[axis] in place.anchors and HIGH[axis] in place.anchors]
    if len(open_ways) != 2:
        message = (
            f"the opening that '{part.id}' braces is given by both ends of {len(open_ways)} ways, not of 2"
        )
        help_line = "give left, right, bottom and top (or front and back instead of two of them)"
        faults.append(Fault("no-opening", message, place.place.at("brace"), help_line))
    for key, value in (
        ("runs", place.runs),
        ("faces", place.faces),
        ("lean", place.lean),
        ("long side", place.long_side),
    ):
        if value is not None:
            help_line = "leave it out; a brace lies as its opening does"
            faults.append(
                Fault("not-for-brace", f"a brace has no '{key}'", place.place.at(key).key(), help_line)
            )


def _check_repeat(repeat: Repeat, faults: list[Fault], *, alone: bool) -> None:
    given = [key for key, value in (("from", repeat.start), ("to", repeat.to)) if value is not None]
    if repeat.every is not None and given:
        message = "a repeat goes by a fixed distance or from one place to another, not both"
        faults.append(Fault("placed-twice", message, repeat.place, "keep 'every', or 'from' and 'to'"))
    elif repeat.every is None and len(given) != 2:
        message = "a repeat needs 'from' and 'to', or 'every'"
        faults.append(Fault("missing-key", message, repeat.place, "add 'from: ...' and 'to: ...'"))
    if not alone:
        message = "a repeat among several places needs its count"
        faults.append(Fault("missing-key", message, repeat.place, "add 'count: 2'"))


def _written(part: Part, index: int, place: Placement) -> Iterator[Defined]:
    """Yield the formulas that the author wrote."""
    for name, formula in place.anchors.items():
        yield anchor_name(part.id, index, name), formula, place.place.at(name)
    if place.lean is not None:
        yield lean_name(part.id, index), place.lean, place.place.at("lean")
    for number, repeat in enumerate(place.repeats or ()):
        for key, written in (("from", repeat.start), ("to", repeat.to), ("every", repeat.every)):
            if written is not None:
                yield repeat_name(part.id, index, number, key), written, repeat.place.at(key)
        name = repeat_name(part.id, index, number, "count")
        if repeat.count is not None:
            yield name, repeat.count, repeat.place.at("count")
        else:
            yield name, _share_of_count(part, index, place, number), repeat.place


def _share_of_count(part: Part, index: int, place: Placement, number: int) -> Formula:
    """Return the formula of how many of a part one repeat must make."""
    times = 2 ** len(place.mirrored) * (2 if place.is_crossed else 1)
    others = [
        repeat_name(part.id, index, i, "count")
        for i, repeat in enumerate(place.repeats or ())
        if i != number and (repeat.count is not None or i < number)
    ]

    def run(scope: Scope) -> Value:
        count: Fraction = _number(scope[f"{part.id}.count"]) / times
        for other in others:
            count /= _number(scope[other]) or Fraction(1)
        return count

    return made_formula(f"{part.id}.count", (f"{part.id}.count", *others), run)


def made_formula(text: str, names: tuple[str, ...], run: Callable[[Scope], Value]) -> Formula:
    """Return a formula that nobody wrote; for a value of the wrong kind it has none."""
    uses = tuple(NameUse(name, 0, len(text)) for name in names)
    return Formula(text, uses, (), names, run)


def length_of(value: Value) -> Length:
    """Return a length; a bare 0 will do.

    Raises:
        KeyError: for anything else, so that no second fault is made of it.
    """
    if isinstance(value, Length):
        return value
    if isinstance(value, Fraction) and value == 0:
        return Length(0)
    raise KeyError


def _number(value: Value) -> Fraction:
    if isinstance(value, Fraction):
        return value
    raise KeyError


def _derived(part: Part, place: Placement, given: set[str]) -> Iterator[Defined]:
    """Yield the formulas of the first instance's other sides."""
    for axis in range(3):
        low, high, middle = (f"{part.id}.{names[axis]}" for names in (LOW, HIGH, MIDDLE))
        if low in given and high in given:
            yield middle, _mean(low, high), place.place.at(HIGH[axis])
            continue
        extent, more = _extent(part, place, axis)
        yield from more
        fan = next(
            ((i, r) for i, r in enumerate(place.repeats or ()) if r.way == WAYS[axis] and r.start), None
        )
        base = next((name for name in (low, high, middle) if name in given), low)
        here = place.place.at(base.rpartition(".")[2]) if base in given else place.place
        if base not in given:
            yield low, (_ZERO if fan is None else _first_of(part, fan[0], fan[1], extent)), place.place
        shares = {low: Fraction(0), middle: Fraction(1, 2), high: Fraction(1)}
        for name, share in shares.items():
            if name != base:
                yield name, _shifted(base, extent, share - shares[base]), here
    if place.brace:
        yield from _brace_names(part, place)


def _extent(part: Part, place: Placement, axis: int) -> tuple[str, list[Defined]]:
    """Return the name of a part's measure along an axis, and its formula if it has to be made."""
    if place.lean is None:
        return f"{part.id}.{_DIMENSIONS[place.axes.index(axis)]}", []
    name = f"{part.id}.#1 measure {axis}"
    needs = [*(f"{part.id}.{side}" for side in _DIMENSIONS), lean_name(part.id, 0)]
    if part.ends is not None:
        cuts = (("left", part.ends.left), ("right", part.ends.right))
        needs += [f"{part.id}.{side} angle" for side, cut in cuts if cut.angle is not None]

    def run(scope: Scope) -> Value:
        shape = shape_of(part, place, scope, lean_name(part.id, 0))
        if shape is None:
            raise KeyError
        return shape.extents[axis]

    return name, [(name, made_formula(f"{part.id}.length", tuple(needs), run), place.place.at("lean"))]


def _mean(low: str, high: str) -> Formula:
    def run(scope: Scope) -> Value:
        return (length_of(scope[low]) + length_of(scope[high])) / 2

    return made_formula(f"({low} + {high}) / 2", (low, high), run)


def _shifted(base: str, extent: str, share: Fraction) -> Formula:
    def run(scope: Scope) -> Value:
        return length_of(scope[base]) + share * length_of(scope[extent])

    return made_formula(f"{base} + {share} * {extent}", (base, extent), run)


def _first_of(part: Part, number: int, repeat: Repeat, extent: str) -> Formula:
    """Return the formula of where the first of several begins that are evenly spread."""
    start, end, count = (repeat_name(part.id, 0, number, key) for key in ("from", "to", "count"))

    def run(scope: Scope) -> Value:
        first, last = length_of(scope[start]), length_of(scope[end])
        gap = gap_between(first, last, _number(scope[count]), length_of(scope[extent]), repeat.ends)
        return first if repeat.ends == "flush" else first + gap

    return made_formula(start, (start, end, count, extent), run)


def gap_between(first: Length, last: Length, count: Fraction, extent: Length, ends: str) -> Length:
    """Return the room between two neighbours of several that are spread evenly."""
    gaps = count - 1 if ends == "flush" else count + 1
    return (last - first - count * extent) / gaps if gaps > 0 else Length(0)


def _brace_names(part: Part, place: Placement) -> Iterator[Defined]:
    """Yield the formulas of a brace's length and saw angle."""
    across, up = (axis for axis in range(3) if axis != place.across_plane)
    run = f"({part.id}.{HIGH[across]} - {part.id}.{LOW[across]})"
    rise = f"({part.id}.{HIGH[up]} - {part.id}.{LOW[up]})"
    wide = f"{part.id}.width"
    slope, diagonal = f"arctan({rise}, {run})", f"diagonal({run}, {rise})"
    seated = f"root({run} * {run} + {rise} * {rise} - {wide} * {wide})"
    length, angle = {
        "rails": (seated, f"90 deg - {slope} - arcsin({wide} / {diagonal})"),
        "posts": (seated, f"{slope} - arcsin({wide} / {diagonal})"),
        "corners": (diagonal, f"max({slope}, 90 deg - {slope})"),
    }[str(place.brace)]
    yield f"{part.id}.fit length", read_formula(length), place.place.at("brace")
    yield f"{part.id}.fit angle", read_formula(angle), place.place.at("brace")
