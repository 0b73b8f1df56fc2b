"""Putting each instance of a part in its place, at one size."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from scantling.fault import Fault, Faulty, Place
from scantling.formula import Value, name_of
from scantling.geometry import Brace, fit_brace
from scantling.measure import Length, write_length
from scantling.plan.fitted import FittedPart, FittedPlan
from scantling.plan.placement import HIGH, LOW, MIDDLE, WAYS, Placement, placements_of
from scantling.plan.placement_names import OVERALL, anchor_name, gap_between, lean_name, repeat_name
from scantling.plan.placement_placed import Corner, Cut, Direction, Placed
from scantling.plan.placement_shape import Shape, shape_of
from scantling.plan.placement_work import Worked
from scantling.words import counted, say

_HALF = Fraction(1, 2)


def place_parts(fitted: FittedPlan, faults: list[Fault]) -> FittedPlan:
    """Return the fitted plan with every instance of its parts in its place, adding to `faults`."""
    if not any(part.part.placement for part in fitted.parts):
        return fitted
    overall = _overall(fitted)
    placed = tuple(
        replace(part, placed=_Placing(part, fitted.values, overall, faults).all())
        if part.part.placement
        else part
        for part in fitted.parts
    )
    return replace(fitted, parts=placed)


def _overall(fitted: FittedPlan) -> tuple[Length | None, ...]:
    found = fitted.overall()
    return tuple(found.get(name) for name in OVERALL)


@dataclass(frozen=True, slots=True)
class _Placing:
    """One part at one size, and where faults go."""

    part: FittedPart
    values: Mapping[str, Value]
    overall: tuple[Length | None, ...]
    faults: list[Fault]

    def all(self) -> tuple[Placed, ...]:
        """Return every instance, or none after adding a fault."""
        before = len(self.faults)
        placed: list[Placed] = []
        places = placements_of(self.part.part.placement)
        for index, place in enumerate(places):
            base = self._base(index, place)
            copies = None if base is None else self._copies(index, place, base)
            if copies is None:
                return ()
            placed += [one.numbered(len(placed) + i) for i, one in enumerate(copies, 1)]
        if len(self.faults) > before:
            return ()
        if len(placed) != self.part.count:
            self._fault_count(len(placed), places[0].place)
            return ()
        return tuple(placed)

    def _fault_count(self, found: int, place: Place) -> None:
        count, name = self.part.count, self.part.id
        times = say("once") if found == 1 else say("{found} times", found=found)
        message = counted(
            "'{name}' is placed {times}, but there is 1 of it",
            "'{name}' is placed {times}, but there are {count} of it",
            count,
            name=name,
            times=times,
        )
        help_line = (
            "add 'mirror' or 'repeat', or further places in a list"
            if found < count
            else "leave out a mirror, a repeat or a place, or mend the count"
        )
        self._add(Fault("place-count", message, place, help_line))

    def _add(self, fault: Fault) -> None:
        if fault not in self.faults:
            self.faults.append(fault)

    def _length(self, name: str, what: str, place: Place) -> Length | None:
        """Return the value of a formula as a length of any sign, or None after adding a fault."""
        value = self.values.get(name)
        if value is None or isinstance(value, Length):
            return value
        if isinstance(value, Fraction) and value == 0:
            return Length(0)
        message = say(
            "the {what} of '{part}' is {value}, not a length",
            what=what,
            part=self.part.id,
            value=name_of(value),
        )
        self._add(Fault("wrong-unit", message, place, "give every number its unit, like 12 in"))
        return None

    def _anchor(self, index: int, place: Placement, anchor: str) -> Length | None:
        return self._length(anchor_name(self.part.id, index, anchor), f"'{anchor}'", place.place.at(anchor))

    def _base(self, index: int, place: Placement) -> list[Placed] | None:
        """Return the first instance of a place; a crossing pair of braces comes as two."""
        if place.brace:
            return self._braces(index, place)
        shape = self._shape(index, place)
        low = None if shape is None else self._low(index, place, shape.extents)
        if low is None or shape is None:
            return None
        worked = Worked(self.part, place.axes)
        cuts = (*shape.cuts(), *worked.tapers()) if place.lean is None else shape.cuts()
        chunks = worked.chunks() if not cuts else ()
        (left, front, bottom), (long, deep, high) = low, shape.extents
        far = (left + long, front + deep, bottom + high)
        if not cuts and not chunks:
            corner = (left, front, bottom)
            return [Placed(1, corner, far, place.axes, shape.along, opens=_opens(place))]
        zero = (Length(0), Length(0), Length(0))
        one = Placed(1, zero, shape.extents, place.axes, shape.along, cuts, chunks, _opens(place))
        for axis in range(3):
            one = one.moved(axis, low[axis])
        return [one]

    def _shape(self, index: int, place: Placement) -> Shape | None:
        return shape_of(self.part.part, place, self.values, lean_name(self.part.id, index))

    def _low(self, index: int, place: Placement, extents: Corner) -> list[Length] | None:
        """Return the left, front, bottom corner of the first instance, or None after adding a fault."""
        if index == 0:
            known = [self.values.get(f"{self.part.id}.{name}") for name in LOW]
            sure = [end for end in known if isinstance(end, Length)]
            if len(sure) == 3:
                return sure
        low = []
        for axis in range(3):
            spread = self._spread_start(index, place, axis, extents[axis])
            names = [name for name in (LOW[axis], HIGH[axis], MIDDLE[axis]) if name in place.anchors]
            if spread is not None:
                low.append(spread)
            elif not names:
                low.append(Length(0))
            else:
                at = self._anchor(index, place, names[0])
                if at is None:
                    return None
                share = (0, 1, _HALF)[(LOW[axis], HIGH[axis], MIDDLE[axis]).index(names[0])]
                low.append(at - share * extents[axis])
        return low

    def _repeats(self, index: int, place: Placement) -> list[tuple[int, int, Length]] | None:
        """Return axis, count and step of each repeat; None after adding a fault."""
        found = []
        for number, repeat in enumerate(place.repeats or ()):
            count = self._count(index, number, repeat.place)
            step = self._step(index, place, number, count or 0)
            if count is None or step is None:
                return None
            found.append((WAYS.index(repeat.way), count, step))
        return found

    def _count(self, index: int, number: int, place: Place) -> int | None:
        value = self.values.get(repeat_name(self.part.id, index, number, "count"))
        if value is None:
            return None
        if isinstance(value, Fraction) and value.denominator == 1 and value >= 0:
            return int(value)
        message = say(
            "the {count} of '{part}' cannot be shared out evenly over its places",
            count=self.part.count,
            part=self.part.id,
        )
        self._add(Fault("place-count", message, place, "see its count, its mirrors and its repeats"))
        return None

    def _step(self, index: int, place: Placement, number: int, count: int) -> Length | None:
        repeat = (place.repeats or ())[number]

        def length(key: str) -> Length | None:
            name = repeat_name(self.part.id, index, number, key)
            return self._length(name, f"'{key}'", repeat.place.at(key))

        if repeat.every is not None:
            return length("every")
        first, last, extent = length("from"), length("to"), self._extent(index, place, WAYS.index(repeat.way))
        if first is None or last is None or extent is None:
            return None
        gap = gap_between(first, last, Fraction(count), extent, repeat.ends)
        if gap < Length(0) or last - first < extent * count:
            room, need = (write_length(size, denominator=64) for size in (last - first, extent * count))
            message = say(
                "{count} of '{part}' need {need}, but there is room for {room}",
                count=count,
                part=self.part.id,
                need=need,
                room=room,
            )
            self._add(Fault("no-room", message, repeat.place, "see 'from' and 'to', or make fewer of them"))
            return None
        return gap + extent

    def _extent(self, index: int, place: Placement, axis: int) -> Length | None:
        if place.brace:
            return self.part.thick if axis == place.across_plane else None
        shape = self._shape(index, place)
        return None if shape is None else shape.extents[axis]

    def _spread_start(self, index: int, place: Placement, axis: int, extent: Length) -> Length | None:
        """Return where the first of a repeat from one place to another begins, along that axis."""
        for number, repeat in enumerate(place.repeats or ()):
            if repeat.way != WAYS[axis] or repeat.start is None:
                continue
            count = self._count(index, number, repeat.place)
            step = self._step(index, place, number, count or 0)
            first = self._length(
                repeat_name(self.part.id, index, number, "from"), "'from'", repeat.place.at("from")
            )
            if first is None or step is None:
                return None
            return first if repeat.ends == "flush" else first + step - extent
        return None

    def _copies(self, index: int, place: Placement, base: list[Placed]) -> list[Placed] | None:
        repeats = self._repeats(index, place)
        if repeats is None:
            return None
        placed = list(base)
        for axis, count, step in repeats:
            placed = [one.moved(axis, step * i) for one in placed for i in range(count)]
        for axis in place.mirrored:
            total = self.overall[axis]
            if total is None:
                return None
            placed += [one.mirrored(axis, total) for one in placed]
        return placed

    def _braces(self, index: int, place: Placement) -> list[Placed] | None:
        """Return the brace in its opening, or the two that cross in it."""
        thick = place.across_plane
        axes = *(axis for axis in range(3) if axis != thick), thick
        low, high = [Length(0)] * 3, [Length(0)] * 3
        for axis in axes[:2]:
            start, end = self._anchor(index, place, LOW[axis]), self._anchor(index, place, HIGH[axis])
            if start is None or end is None:
                return None
            low[axis], high[axis] = start, end
        start = self._third(index, place, thick)
        if start is None:
            return None
        low[thick], high[thick] = start, start + self.part.thick
        run, rise = (high[axis] - low[axis] for axis in axes[:2])
        try:
            brace = fit_brace(run, rise, self.part.width, str(place.brace))
        except Faulty as faulty:
            for fault in faulty.faults:
                self._add(replace(fault, place=place.place.at("brace")))
            return None
        one = _braced(brace, axes, low, high)
        other = one.mirrored(axes[0], low[axes[0]] + high[axes[0]])
        if place.rises in {"left", "front"}:
            one, other = other, one
        if not place.is_crossed:
            return [one]
        return (
            _lapped(one, other) if place.crossed == "half-lap" else [one, other.moved(thick, self.part.thick)]
        )

    def _third(self, index: int, place: Placement, thick: int) -> Length | None:
        """Return where a brace begins along the way square to its opening."""
        names = [name for name in (LOW[thick], HIGH[thick], MIDDLE[thick]) if name in place.anchors]
        if not names:
            return Length(0)
        at = self._anchor(index, place, names[0])
        share = (0, 1, _HALF)[(LOW[thick], HIGH[thick], MIDDLE[thick]).index(names[0])]
        return None if at is None else at - share * self.part.thick


def _opens(place: Placement) -> str:
    if place.slides:
        return f"slides {place.slides}"
    return f"swings {place.swings}" if place.swings else ""


def _braced(brace: Brace, axes: tuple[int, ...], low: list[Length], high: list[Length]) -> Placed:
    """Return a brace in its opening, rising to the upper end of the first axis."""
    across, up = low[axes[0]].inches, low[axes[1]].inches
    cuts = tuple(Cut(_in_plane(axes, a, b), most + a * across + b * up) for (a, b), most in brace.edges)
    corners = (low[0], low[1], low[2]), (high[0], high[1], high[2])
    return Placed(1, *corners, (axes[0], axes[1], axes[2]), _in_plane(axes, brace.cosine, brace.sine), cuts)


def _lapped(one: Placed, other: Placed) -> list[Placed]:
    """Return two braces in one plane, half of each taken away where they cross: the first keeps its front."""
    thick = one.axes[2]
    middle = (one.low[thick].inches + one.high[thick].inches) / 2
    ahead = tuple(Fraction(axis == thick) for axis in range(3))
    front = Cut((ahead[0], ahead[1], ahead[2]), middle)
    made = []
    for here, there, half in ((one, other, front), (other, one, _beyond(front))):
        beside = tuple((_beyond(edge),) for edge in there.cuts)
        made.append(replace(here, chunks=(*beside, (*there.cuts, half))))
    return made


def _beyond(cut: Cut) -> Cut:
    """Return the cut that keeps the other side."""
    return Cut((-cut.normal[0], -cut.normal[1], -cut.normal[2]), -cut.most)


def _in_plane(axes: tuple[int, ...], a: Fraction, b: Fraction) -> Direction:
    made = [Fraction(0)] * 3
    made[axes[0]], made[axes[1]] = a, b
    return made[0], made[1], made[2]
