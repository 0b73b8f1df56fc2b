"""Rows of holes for shelf pins."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Circle, Scene, Shape
from scantling.measure import Length, local_marks
from scantling.words import say

FROM_BOTTOM, CENTRED = "from the bottom", "in the middle"
MOST_HOLES = 120
NEAREST = Length(1) / 4
"""The least between a hole and the top."""


@dataclass(frozen=True, slots=True)
class Row:
    """One row of holes up a side."""

    height: Length
    """Of the side."""
    depth: Length
    holes: tuple[Length, ...]
    """Middles, from the bottom of the side."""
    setback: Length


def compute(given: Given) -> Result:
    """Return how many holes, and where each is."""
    height, spacing = given.length("height"), given.length("spacing")
    bottom, top = given.length("bottom"), given.length("top")
    _must_fit(given)
    count = (height - bottom - top) // spacing + 1
    if count > MOST_HOLES:
        nearest = given.least((height - bottom - top) / (MOST_HOLES - 1))
        raise given.refuse(
            "spacing", say("{count} holes in a row are too many", count=local_marks(f"{count:,}")), nearest
        )
    rest = height - bottom - top - spacing * (count - 1)
    first = bottom + (rest / 2 if given.choice("start") == CENTRED else Length(0))
    row = Row(
        height,
        given.length("depth"),
        tuple(first + spacing * i for i in range(count)),
        given.length("setback"),
    )
    figures = (
        Figure("holes", say("Holes in a row"), count, main=True),
        Figure("first", say("First hole above the bottom"), first, main=True),
        Figure("last", say("Last hole above the bottom"), row.holes[-1], main=True),
        Figure("above", say("From the last hole to the top"), height - row.holes[-1]),
        Figure("spacing", say("From hole to hole"), spacing, times=count - 1, run=say("steps")),
        Figure("all", say("Holes in both sides, two rows each"), count * 4),
        Figure(
            "apart", say("From row to row on a side"), given.length("depth") - given.length("setback") * 2
        ),
    )
    rows = tuple((i + 1, hole) for i, hole in enumerate(row.holes))
    table = Table(say("Middles of the holes, all from the bottom"), (say("Hole"), say("Up")), rows)
    return Result(figures, _working(given, count), (table,), _remarks(), row)


def _must_fit(given: Given) -> None:
    height, bottom, top = given.length("height"), given.length("bottom"), given.length("top")
    if bottom > height - NEAREST:
        raise given.refuse(
            "bottom", say("the first hole is above the top of the side"), given.most(height - NEAREST)
        )
    if bottom + top > height:
        raise given.refuse("top", say("no hole is left between bottom and top"), given.most(height - bottom))
    if given.length("setback") * 2 >= given.length("depth"):
        raise given.refuse("setback", say("the two rows cross"), given.under(given.length("depth") / 2))
    if given.length("drilled") >= given.length("thickness"):
        message = say("the drill comes out on the other side")
        raise given.refuse("drilled", message, given.under(given.length("thickness")))
    if given.length("hole") >= given.length("spacing"):
        raise given.refuse("hole", say("the holes run into each other"), given.under(given.length("spacing")))


def _working(given: Given, count: int) -> tuple[str, ...]:
    names = ("height", "bottom", "top", "spacing")
    height, bottom, top, spacing = (exactly(given.length(name), given.display) for name in names)
    return (
        say(
            "({height} − {bottom} − {top}) ÷ {spacing}, rounded down, + 1 = {count}",
            height=height,
            bottom=bottom,
            top=top,
            spacing=spacing,
            count=count,
        ),
    )


def _remarks() -> tuple[str, ...]:
    return (
        (
            say(
                "Drill every row from the same end, with one template held to the bottom: shelves "
                "rock when rows differ."
            )
        ),
        say("Put a stop on the drill."),
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the side, lying down, with both rows."""
    row: Row = result.shape
    long, deep = inches(row.height), inches(row.depth)
    frame = fit(long, deep, most=170, top=40, left=92)
    shapes: list[Shape] = [frame.wood(0, 0, long, deep)]
    radius = min(4.0, max(1.2, inches(given.length("hole")) / 2 * frame.scale))
    back = inches(row.setback)
    for hole in row.holes:
        shapes += [
            Circle(frame.x(inches(hole)), frame.y(y), radius, "edge paper") for y in (back, deep - back)
        ]
    first, last = inches(row.holes[0]), inches(row.holes[-1])
    shapes.append(frame.across(0, first, given.write(row.holes[0]), above=14))
    shapes.append(frame.across(0, last, given.write(row.holes[-1]), below=20))
    shapes.append(frame.across(0, long, given.write(row.height), below=42))
    shapes.append(frame.upright(0, back, given.write(row.setback)))
    shapes.append(frame.upright(0, deep, given.write(row.depth), beside=74))
    told = say(
        "A side lying down, its bottom to the left, with two rows of {count} holes.", count=len(row.holes)
    )
    return scene(frame.bottom + 60, shapes, say("Rows of holes in a side, bottom to the left"), told)


CALCULATOR = Calculator(
    slug="shelf-pins",
    title="Shelf-pin holes",
    question="Where do I drill the holes for shelf pins?",
    subject="laying out",
    asks=(
        Ask("height", "Height of the side", "length", "36 in", "900 mm", "2 in", "12 ft"),
        Ask("depth", "Depth of the side", "length", "11 1/4 in", "285 mm", "1 in", "4 ft"),
        Ask("bottom", "First hole no lower than", "length", "6 in", "150 mm", "1/4 in", "10 ft"),
        Ask("top", "Last hole no nearer to the top than", "length", "6 in", "150 mm", "1/4 in", "10 ft"),
        Ask("spacing", "From hole to hole", "length", "1 1/4 in", "32 mm", "1/4 in", "2 ft"),
        Ask("start", "The row starts", "choice", FROM_BOTTOM, choices=(FROM_BOTTOM, CENTRED)),
        Ask("setback", "Row, in from each edge", "length", "1 1/2 in", "37 mm", "1/4 in", "2 ft"),
        Ask("hole", "Hole, across", "length", "1/4 in", "5 mm", "1/16 in", "1 in"),
        Ask("drilled", "Hole, deep", "length", "3/8 in", "10 mm", "1/16 in", "2 in"),
        Ask("thickness", "Thickness of the side", "length", "3/4 in", "18 mm", "1/4 in", "3 in"),
    ),
    compute=compute,
    formula=(
        "holes = (height − bottom − top) ÷ spacing, rounded down, + 1",
        "in the middle: what is left over is shared between bottom and top",
    ),
    source=("Arithmetic; spacings of 1 1/4 in and 32 mm, holes of 1/4 in and 5 mm are common practice.",),
    exactness="Exact; each middle is rounded once, by itself.",
    example=Example(
        "Sides of the paint cupboard, 30 in high and 10 in deep, holes from 5 in to within 5 in of the top.",
        {"height": "30 in", "depth": "10 in", "bottom": "5 in", "top": "5 in", "spacing": "1 1/4 in"},
    ),
    draw=draw,
    words="adjustable shelves, peg holes, line boring, hole template, 32 mm",
    features=("adjustable shel", "shelf pin"),
)
