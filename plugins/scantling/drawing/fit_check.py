"""Whether the parts of a placed plan go together: no clashes, joins that meet, sizes that hold.

Each function answers with faults placed in the plan; an empty list means that all is well.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from scantling.drawing.body import MOST_BODIES, Body
from scantling.fault import Fault, Place
from scantling.geometry import Solid, Vector, box, parting
from scantling.measure import Display, Length, told_system
from scantling.plan import FittedJoin, FittedPlan, FittedWork
from scantling.words import mark, say

LET_IN = ("dado", "groove", "rabbet", "half-lap")
"""Joins in which one part stands in the other."""
_SLACK = 1 / 32
"""Less than this is no clash: lengths are rounded to the nearest sixteenth before they are sawn."""
_REACH = 1 / 16
"""Parts that are no farther apart than this meet; a brace or a panel is cut so much short on purpose."""
_OPEN = ("groove", "dado", "rabbet", "notch", "half-lap")
_BLIND = ("groove", "dado", "rabbet", "shelf pin holes")
_SWING = ((0.8, 0.6), (0.6, 0.8), (0.0, 1.0))
"""Cosine and sine of the places at which a door is looked at: 37, 53 and 90 degrees."""
LOW, HIGH = ("left", "front", "bottom"), ("right", "back", "top")
_AXES = ("width", "depth", "height")

Pair = tuple[str, str]


def find_clashes(fitted: FittedPlan, bodies: Sequence[Body]) -> list[Fault]:
    """Return a fault for each two kinds of part of which some stand in each other.

    Parts that a join lets into each other may do so by the join's depth; parts that are joined otherwise, by
    the depth of a rabbet, a groove or a notch that one of them has.
    """
    allowed = _let_in(fitted)
    worst: dict[Pair, float] = {}
    for one, other, depth in clashing(bodies):
        pair = _pair(one.part.id, other.part.id)
        worst[pair] = max(depth, worst.get(pair, 0.0))
    found = []
    for pair, depth in worst.items():
        join = allowed.get(pair)
        if join is None:
            if depth > _worked_depth(fitted, pair) + _SLACK:
                found.append(_clash(fitted, pair, depth))
        elif join.depth is not None and depth > join.depth.top / join.depth.bottom + _SLACK:
            found.append(_too_deep(join, depth))
    return found


def clashing(bodies: Sequence[Body]) -> Iterator[tuple[Body, Body, float]]:
    """Yield each two bodies that stand in each other, and how deep in inches."""
    order = sorted(bodies, key=lambda body: body.low[0])
    for place, one in enumerate(order):
        for other in order[place + 1 :]:
            if other.low[0] >= one.high[0] - _SLACK:
                break
            depth = _depth(one, other)
            if depth > _SLACK:
                yield one, other, depth


def _depth(one: Body, other: Body) -> float:
    """Return how deep two bodies stand in each other, at most 0 if they do not."""
    if any(min(one.high[i], other.high[i]) - max(one.low[i], other.low[i]) <= _SLACK for i in (1, 2)):
        return 0.0
    return max((-parting(a, b)[0] for a in one.solids for b in other.solids), default=0.0)


def _pair(one: str, other: str) -> Pair:
    return (one, other) if one <= other else (other, one)


def _let_in(fitted: FittedPlan) -> dict[Pair, FittedJoin]:
    joins = [join for join in fitted.joins if join.join.how in LET_IN]
    return {_pair(join.join.first, join.join.second): join for join in reversed(joins)}


def _worked_depth(fitted: FittedPlan, pair: Pair) -> float:
    """Return how deep the work on two parts that are joined lets one into the other."""
    if not any(_pair(join.join.first, join.join.second) == pair for join in fitted.joins):
        return 0.0
    parts = [part for part in fitted.parts if part.id in pair]
    deep = [
        work.depth.top / work.depth.bottom
        for part in parts
        for work in part.work
        if work.work.kind in _OPEN and work.depth is not None
    ]
    return max(deep, default=0.0)


def _clash(fitted: FittedPlan, pair: Pair, depth: float) -> Fault:
    one = fitted.part(pair[0])
    place = one.part.placement[0].place if one and one.part.placement else Place(("parts", pair[0]))
    told = (
        mark("two of '{first}' stand in each other, {depth} deep")
        if pair[0] == pair[1]
        else mark("'{first}' and '{second}' stand in each other, {depth} deep")
    )
    message = say(told, first=pair[0], second=pair[1], depth=_shown(depth))
    joined = f"{pair[0]} to {pair[1]}"
    help_line = f"move one of them, or let it in with 'join: {joined}, with: dado, depth: {_shown(depth)}'"
    return Fault("parts-clash", message, place, help_line)


def _too_deep(join: FittedJoin, depth: float) -> Fault:
    declared = _written(join.depth) if join.depth is not None else say("nothing")
    pair = say("'{first}' and '{second}'", first=join.join.first, second=join.join.second)
    message = say(
        "{pair} stand {depth} deep in each other, but their {how} is {declared} deep",
        pair=pair,
        depth=_shown(depth),
        how=say(join.join.how),
        declared=declared,
    )
    help_line = f"move one of them, or write 'depth: {_shown(depth)}'"
    return Fault("let-in-too-deep", message, join.join.place, help_line)


def _shown(inches: float) -> str:
    return _written(Length(Fraction(round(inches * 64), 64)))


def find_gaps(fitted: FittedPlan, bodies: Sequence[Body]) -> list[Fault]:
    """Return a fault for each declared join whose parts meet in fewer places than it has joints."""
    by_part: dict[str, list[Body]] = {}
    for body in bodies:
        by_part.setdefault(body.part.id, []).append(body)
    found = []
    for join in fitted.joins:
        one, other = by_part.get(join.join.first), by_part.get(join.join.second)
        if one is None or other is None or join.joints == 0:
            continue
        meetings = sum(meet(a, b) for a in one for b in other if a is not b)
        if join.join.first == join.join.second:
            meetings //= 2
        if meetings < min(join.joints, len(one) * len(other)):
            found.append(_gap(join, meetings))
    return found


def _gap(join: FittedJoin, meetings: int) -> Fault:
    names = say("'{first}' and '{second}'", first=join.join.first, second=join.join.second)
    message = say("{names} are joined, but do not meet anywhere", names=names)
    if meetings:
        places = say("1 place") if meetings == 1 else say("{meetings} places", meetings=meetings)
        message = say(
            "{names} have {joints} joints, but meet in {places}",
            names=names,
            joints=join.joints,
            places=places,
        )
    return Fault("join-apart", message, join.join.place, "see where they are placed, or mend the join")


def meet(one: Body, other: Body) -> bool:
    """Return whether two bodies touch over some area, or stand in each other."""
    overlaps = [min(one.high[i], other.high[i]) - max(one.low[i], other.low[i]) for i in range(3)]
    if min(overlaps) < -_REACH or sum(overlap <= _REACH for overlap in overlaps) > 1:
        return False
    return any(parting(a, b)[0] <= _REACH for a in one.solids for b in other.solids)


def find_wrong_size(fitted: FittedPlan, bodies: Sequence[Body]) -> list[Fault]:
    """Return a fault for each named overall size that is not what the placed parts come to."""
    if not bodies:
        return []
    found = []
    named = fitted.overall()
    for axis, name in enumerate(_AXES):
        low = min(body.placed.low[axis] for body in bodies)
        high = max(body.placed.high[axis] for body in bodies)
        want = named.get(name)
        if want is None or _near(high - low, want):
            continue
        known = fitted.plan.overall.get(name, name)
        section = "sizes" if known in fitted.plan.sizes else "lengths"
        come_to, named_size = _written(high - low), _written(want)
        message = say(
            "the placed parts are {come_to} in {name}, but '{known}' is {named_size}",
            come_to=come_to,
            name=say(name),
            known=known,
            named_size=named_size,
        )
        help_line = f"mend the places, or name what gives the {name} under 'overall:'"
        found.append(Fault("overall-size", message, Place((section, known)), help_line))
    return found


def _near(one: Length, other: Length) -> bool:
    off = abs(one - other)
    return off.top / off.bottom <= _REACH


def find_blocked(bodies: Sequence[Body]) -> list[Fault]:
    """Return a fault for each kind of part that slides or swings and meets something on its way.

    What slides the same way slides along, as a drawer's sides with its front; what swings at the same side
    is part of the same door.
    """
    found: dict[Pair, Fault] = {}
    for body in bodies:
        kind, _, side = body.placed.opens.partition(" ")
        if not kind:
            continue
        still = [other for other in bodies if other.placed.opens != body.placed.opens]
        path = slide_path(body, side) if kind == "slides" else swing_path(body, side)
        for other in still:
            pair = (body.part.id, other.part.id)
            if pair not in found and any(_hits(solid, other) for solid in path):
                told = (
                    mark("'{first}' meets '{second}' when it slides out")
                    if kind == "slides"
                    else mark("'{first}' meets '{second}' when it opens")
                )
                message = say(told, first=pair[0], second=pair[1])
                place = body.part.part.placement[0].place
                found[pair] = Fault(
                    "path-blocked", message, place, "make room in front of it, or move one of them"
                )
    return list(found.values())


def slide_path(body: Body, side: str) -> list[Solid]:
    """Return the room through which a part slides out by its own length, beginning at its face."""
    axis, sign = (LOW.index(side), -1) if side in LOW else (HIGH.index(side), 1)
    low, high = list(body.low), list(body.high)
    reach = high[axis] - low[axis]
    if sign > 0:
        low[axis], high[axis] = high[axis], high[axis] + reach
    else:
        low[axis], high[axis] = low[axis] - reach, low[axis]
    return [box((low[0], low[1], low[2]), (high[0], high[1], high[2]))]


def swing_path(body: Body, side: str) -> list[Solid]:
    """Return a door at three places of its swing to the front, about the front edge of its hinged side."""
    axis = 0 if side in {"left", "right"} else 2
    sign = 1.0 if side in LOW else -1.0
    hinge = body.low[axis] if side in LOW else body.high[axis]
    front = body.low[1]
    return [_swung(solid, axis, hinge, front, sign, cos, sin) for cos, sin in _SWING for solid in body.solids]


def _swung(solid: Solid, axis: int, hinge: float, front: float, sign: float, cos: float, sin: float) -> Solid:
    """Return a solid turned towards the front about an upright or level line at (`hinge`, `front`)."""

    def turn(vector: Vector, across: float, ahead: float) -> Vector:
        along, deep = (vector[axis] - across) * sign, vector[1] - ahead
        made = list(vector)
        made[axis] = across + (along * cos + deep * sin) * sign
        made[1] = ahead + deep * cos - along * sin
        return made[0], made[1], made[2]

    points = tuple(turn(point, hinge, front) for point in solid.points)
    normals = tuple(turn(normal, 0.0, 0.0) for normal in solid.normals)
    low = tuple(min(point[i] for point in points) for i in range(3))
    high = tuple(max(point[i] for point in points) for i in range(3))
    return Solid(points, solid.sides, normals, (low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _hits(solid: Solid, body: Body) -> bool:
    near = all(min(solid.high[i], body.high[i]) - max(solid.low[i], body.low[i]) > _SLACK for i in range(3))
    return near and any(parting(solid, piece)[0] < -_SLACK for piece in body.solids)


def find_broken_through(fitted: FittedPlan) -> list[Fault]:
    """Return a fault for each hole, groove or dado that is as deep as its part is thick."""
    found = []
    for part in fitted.parts:
        for work in part.work:
            if (
                work.work.kind not in _BLIND
                or work.depth is None
                or work.depth < part.thick
                or _is_in_edge(work)
            ):
                continue
            deep, thick = _written(work.depth), _written(part.thick)
            message = say(
                "'{part}' is {thick} thick; a {kind} {deep} deep goes through it",
                part=part.id,
                thick=thick,
                kind=say(work.work.kind),
                deep=deep,
            )
            found.append(Fault("breaks-through", message, work.work.place.at("depth"), "make it less deep"))
    return found


def _is_in_edge(work: FittedWork) -> bool:
    """Return whether work goes into an end or an edge, where the thickness does not bound it."""
    words = work.work.where.replace(",", " ").split()
    return "face" not in words and ("end" in words or "edge" in words)


def check_fit(fitted: FittedPlan, bodies: Sequence[Body]) -> list[Fault]:
    """Return every fault of a placed plan at one size; of a very large one, no clashes are looked for."""
    if len(bodies) > MOST_BODIES:
        return [*find_wrong_size(fitted, bodies), *find_broken_through(fitted)]
    return [
        *find_clashes(fitted, bodies),
        *find_gaps(fitted, bodies),
        *find_wrong_size(fitted, bodies),
        *find_blocked(bodies),
        *find_broken_through(fitted),
    ]


def _written(length: Length) -> str:
    return Display(told_system(), 64).length(length)
