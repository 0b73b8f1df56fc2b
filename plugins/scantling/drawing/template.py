"""Full-size templates: a part's end, taper or pattern of holes at true scale, to be laid on the wood.

One unit is 1/72 in, the unit of PDF, so that a template printed at 100 % measures what the part measures.
Across the page runs the part's width, down the page its length, from its left or lower end.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.drawing.body import Body, make_bodies
from scantling.drawing.detail_words import end_words, work_words
from scantling.drawing.detail_work import hole_columns
from scantling.drawing.shape import Circle, Line, Point, Polygon, Scene, Shape, Text
from scantling.geometry import Solid, cross, dot, minus, unit
from scantling.measure import Angle, Display, Length, tangent
from scantling.plan import FittedEnd, FittedPart, FittedPlan, FittedWork, easy_line
from scantling.words import mark, say

PER_INCH = 72.0
"""Units an inch."""
_TAIL = 1.5 * PER_INCH
"""How much of the part is drawn beyond its cut end."""
_STRIP = 1.5 * PER_INCH
"""Width of the strip on which a column of holes stands."""
_LONGEST = 7 * PER_INCH
"""Of that strip, so that it fits on a sheet below its words."""
_COMMON = (Angle(0), Angle(Fraction(45, 2)), Angle(45))
"""Angles at which every mitre saw has a stop; their ends need no template."""
_CURVE_STEPS = 48
"""Straight pieces of which a curve is drawn: shorter than a pencil line is wide."""
_LETTERS = 10.0


@dataclass(frozen=True, slots=True)
class Template:
    """A full-size drawing of part of a part, or of parts that are alike there."""

    title: str
    words: str
    """What it shows and how it is laid on."""
    scene: Scene
    """In units of 1/72 in."""


@dataclass(frozen=True, slots=True)
class _Draft:
    """A template of one part, before those that are alike are put together."""

    part: FittedPart
    what: str
    said: str
    how: str
    shapes: tuple[Shape, ...]
    label: Point
    """Where the part's letter stands."""


def templates(fitted: FittedPlan, display: Display) -> tuple[Template, ...]:
    """Return the templates that a plan's parts call for; one serves all parts that are alike there."""
    bodies = {body.part.id: body for body in reversed(make_bodies(fitted))}
    alike: dict[object, list[_Draft]] = {}
    for part in fitted.parts:
        for draft in _of_part(part, bodies.get(part.id), display):
            alike.setdefault((draft.what, draft.shapes), []).append(draft)
    return tuple(_put_together(drafts) for drafts in alike.values())


def _put_together(drafts: list[_Draft]) -> Template:
    first = drafts[0]
    parts = {draft.part.letter: draft.part for draft in drafts}
    names = [f"{letter} {part.id}" for letter, part in parts.items()]
    title = f"{', '.join(names)}: {first.what}"
    said: dict[str, list[str]] = {}
    for draft in drafts:
        said.setdefault(draft.said, []).append(draft.part.letter)
    several = len(said) > 1
    words = "; ".join(
        f"{', '.join(dict.fromkeys(letters))}: {told}" if several else told for told, letters in said.items()
    )
    x, y = first.label
    shapes = (*first.shapes, Text(x, y, " ".join(parts), 16, "middle", "ink strong"))
    reach = list(_reach(first.shapes))
    told = f"{words[:1].upper()}{words[1:]}. {first.how}"
    width, height = max(x for x, _ in reach), max(y for _, y in reach)
    return Template(title, told, Scene(width, height, shapes, say("{part}, full size", part=title), told))


def _of_part(part: FittedPart, body: Body | None, display: Display) -> Iterator[_Draft]:
    """Yield a part's templates."""
    for at, end in enumerate(part.ends or ()):
        if end.kind != "square" and abs(end.angle) not in _COMMON:
            folded = _compound(part, body) if body is not None else None
            yield folded or _end(part, end, at)
    for work in part.work:
        draft = _work(part, work, work_words(work, display))
        if draft is not None:
            yield draft


_LAID = {
    "taper": mark("Lay its end on the foot of the part; what is hatched falls off."),
    "curve": mark("Lay its end on the end of the part that is hollowed; what is hatched falls off."),
    "shelf pin holes": mark(
        "Set hole 1 at that distance from the end; go on with hole 1 on the last one drilled."
    ),
    "holes": mark("Lay it on the end of the part."),
    "pocket holes": mark("Lay its end on the end of the part; each line is the middle of a hole."),
}

_WHOLE_ROW = mark("Set hole 1 at that distance from the end.")


def _reach(shapes: Iterable[Shape]) -> Iterator[Point]:
    for shape in shapes:
        if isinstance(shape, Line):
            yield shape.x1, shape.y1
            yield shape.x2, shape.y2


def _end(part: FittedPart, end: FittedEnd, at: int) -> _Draft:
    """Return the cut end of a part: a mitre seen on its face, a bevel seen on its edge."""
    wide = _units(part.width if end.kind == "mitre" else part.thick)
    run = float(abs(tangent(end.angle))) * wide
    low = run + _TAIL
    shapes = (
        Line(0, 0, wide, run, "bold"),
        Line(0, 0, 0, low, "edge"),
        Line(wide, run, wide, low, "edge"),
        Line(0, low, wide, low, "hidden"),
        Line(0, run, wide, run, "hidden"),
    )
    both = part.ends is not None and part.ends[0] == part.ends[1]
    where = "" if both else say((mark(", left end"), mark(", right end"))[at])
    how = say(
        "Lay it on the face; its long point is the part's end, the dashed line is square to it."
        if end.kind == "mitre"
        else "Lay it on the edge; its long point is the part's end, the dashed line is square to it."
    )
    ends = say("ends: {how}", how=end_words(part))
    return _Draft(part, say(end.kind) + where, ends, how, shapes, (wide / 2, run + 40))


def _compound(part: FittedPart, body: Body) -> _Draft | None:
    """Return the cut end of a part that leans two ways, on two faces that meet; None for any other."""
    if len(body.solids) != 1 or any(abs(way) < 1e-6 for way in body.along):
        return None
    found = _meeting(body.solids[0], body)
    if found is None:
        return None
    solid = body.solids[0]
    one, other = (solid.sides[number] for number in found)
    base = solid.points[next(number for number in one if number in other)]
    flat: list[list[Point]] = []
    for number, way in zip(found, (-1.0, 1.0), strict=True):
        side = [minus(solid.points[corner], base) for corner in solid.sides[number]]
        right = unit(cross(solid.normals[number], body.along))
        flat.append([(way * abs(dot(right, spot)), dot(body.along, spot)) for spot in side])
    left = -min(x for x, _ in flat[0])
    top = min(y for points in flat for _, y in points)
    shapes: list[Shape] = []
    low = max(sorted(y for _, y in points)[1] for points in flat) - top
    low = low * PER_INCH + _TAIL
    for points in flat:
        placed = [((x + left) * PER_INCH, (y - top) * PER_INCH) for x, y in points]
        ends = sorted(placed, key=lambda spot: spot[1])[:2]
        (x1, y1), (x2, y2) = sorted(ends)
        shapes += [Line(x1, y1, x2, y2, "bold"), Line(x1, low, x2, low, "hidden")]
        shapes += [Line(x, y, x, low, "cut" if abs(x - left * PER_INCH) < 1e-6 else "edge") for x, y in ends]
    label = (left * PER_INCH / 2, low - 40)
    said = say("ends: {how}", how=end_words(part))
    return _Draft(part, say("compound cut"), said, say(_FOLDED), tuple(shapes), label)


_FOLDED = mark(
    "Fold it on the broken line and lay it around an edge, its long point at the corner that is longest; "
    "turn it over for the mirror image."
)


def _meeting(solid: Solid, body: Body) -> tuple[int, int] | None:
    """Return two long sides that share an edge."""
    long = [i for i, normal in enumerate(solid.normals) if abs(dot(normal, body.along)) < 1e-6]
    for one in long:
        for other in long:
            if one < other and len(set(solid.sides[one]) & set(solid.sides[other])) == 2:
                return one, other
    return None


def _work(part: FittedPart, work: FittedWork, said: str) -> _Draft | None:
    """Return the template of some work, or None where it needs none or the plan does not say enough."""
    kind = work.work.kind
    if kind == "taper" and work.depth is not None:
        shapes, label = _taper(part, work)
    elif kind == "curve" and work.depth is not None and work.length is not None:
        shapes, label = _curve(part, work)
    elif kind not in _LAID or work.from_end is None or work.apart is None or (work.count or 0) < 2:
        return None
    elif work.work.where.split()[-1:] == ["end"]:
        shapes, label = _end_holes(part, work)
    elif kind != "pocket holes" and work.width is not None:
        shapes, label = _row(work)
        if _rows(work) == (work.count or 0) // hole_columns(work):
            return _Draft(part, say(kind), said, say(_WHOLE_ROW), tuple(shapes), label)
        return _Draft(part, say(kind), said, say(_LAID["shelf pin holes"]), tuple(shapes), label)
    else:
        return None
    return _Draft(part, say(kind), said, say(_LAID[kind]), tuple(shapes), label)


def _taper(part: FittedPart, work: FittedWork) -> tuple[list[Shape], Point]:
    wide, deep = _units(part.width), _units(work.depth)
    long = _units(work.length or part.length)
    low = min(long + PER_INCH, _units(part.length))
    foot = wide - deep
    shapes: list[Shape] = [
        Polygon(((foot, 0), (wide, 0), (wide, long)), "", "cutaway"),
        Line(0, 0, foot, 0, "bold"),
        Line(foot, 0, wide, 0, "hidden"),
        Line(wide, 0, wide, long, "hidden"),
        Line(foot, 0, wide, long, "bold"),
        Line(wide, long, wide, low, "edge"),
        Line(0, 0, 0, low, "edge"),
        Line(0, low, wide, low, "hidden"),
        Text(foot / 2, 16, say("foot"), _LETTERS, "middle"),
    ]
    return shapes, (foot / 2, 40)


def _curve(part: FittedPart, work: FittedWork) -> tuple[list[Shape], Point]:
    """Return an easy line: as far in as `depth` at the end, out at the edge after `length`."""
    wide, deep, long = _units(part.width), _units(work.depth), _units(work.length)
    low = min(long + PER_INCH, _units(part.length))
    corners = easy_line(Fraction(long), Fraction(deep), _CURVE_STEPS)
    line = tuple((wide - float(gone), float(off)) for off, gone in corners)
    shapes: list[Shape] = [
        Polygon(((wide, 0), *line), "", "cutaway"),
        *(Line(*start, *end, "bold") for start, end in pairwise(line)),
        Line(0, 0, wide - deep, 0, "bold"),
        Line(wide - deep, 0, wide, 0, "hidden"),
        Line(wide, 0, wide, long, "hidden"),
        Line(wide, long, wide, low, "edge"),
        Line(0, 0, 0, low, "edge"),
        Line(0, low, wide, low, "hidden"),
    ]
    return shapes, ((wide - deep) / 2, 40)


def _row(work: FittedWork) -> tuple[list[Shape], Point]:
    """Return the first holes of a column on a strip, as many as a sheet of paper holds."""
    middle, radius, apart = _STRIP / 2, _units(work.width) / 2, _units(work.apart)
    spots = [0.75 * PER_INCH + apart * i for i in range(_rows(work))]
    low = spots[-1] + 0.75 * PER_INCH
    shapes: list[Shape] = [
        Line(0, 0, _STRIP, 0, "thin"),
        Line(0, 0, 0, low, "thin"),
        Line(_STRIP, 0, _STRIP, low, "thin"),
        Line(0, low, _STRIP, low, "thin"),
        Line(middle, 0, middle, low, "thin"),
    ]
    for number, y in enumerate(spots, 1):
        shapes += [
            Circle(middle, y, radius, "edge bare"),
            Line(middle - 16, y, middle + 16, y, "thin"),
            Text(middle + 20, y + 3.5, str(number), _LETTERS),
        ]
    return shapes, (_STRIP / 4, 20)


def _rows(work: FittedWork) -> int:
    """Return how many holes of a column a strip holds."""
    rows = max(1, (work.count or 1) // hole_columns(work))
    return min(rows, 1 + int((_LONGEST - 1.5 * PER_INCH) / _units(work.apart)))


def _end_holes(part: FittedPart, work: FittedWork) -> tuple[list[Shape], Point]:
    """Return the end of a part with its holes: dowels on the end itself, pocket holes on the face."""
    wide = _units(part.width)
    is_bored = work.work.kind == "holes"
    low = _units(part.thick) if is_bored else PER_INCH
    shapes: list[Shape] = [
        Line(0, 0, wide, 0, "bold"),
        Line(0, 0, 0, low, "edge"),
        Line(wide, 0, wide, low, "edge"),
        Line(0, low, wide, low, "edge" if is_bored else "hidden"),
    ]
    if is_bored:
        shapes.append(Line(0, low / 2, wide, low / 2, "thin"))
    for i in range(work.count or 0):
        x = _units(work.from_end) + _units(work.apart) * i
        shapes.append(Line(x, 0, x, low, "thin"))
        if is_bored and work.width is not None:
            shapes.append(Circle(x, low / 2, _units(work.width) / 2, "edge bare"))
    return shapes, (14, low - 6)


def _units(length: Length | None) -> float:
    return 0.0 if length is None else length.top / length.bottom * PER_INCH
