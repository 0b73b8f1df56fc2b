"""Hinged doors: their size, the pieces of a framed one, and how far they droop."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, Value, exactly
from scantling.calculators.kit.picture import ROOM, fit, inches, label, scene
from scantling.drawing import Circle, Rectangle, Scene, Shape
from scantling.measure import Length, diagonal
from scantling.words import say

INSET, OVERLAY = "inset", "overlay"


@dataclass(frozen=True, slots=True)
class Door:
    """One door of one or two in an opening."""

    opening: tuple[Length, Length]
    count: int
    width: Length
    height: Length
    edge: Length
    between: Length
    stile: Length
    mounted: str


def compute(given: Given) -> Result:
    """Return the door, the pieces of its frame, its droop and the room it needs to swing."""
    door = _door(given)
    rail = door.width - door.stile * 2 + given.length("tenon") * 2
    reach = given.length("groove") * 2 - given.length("slack")
    panel = (door.width - door.stile * 2 + reach, door.height - given.length("rail") * 2 + reach)
    thick = given.length("thickness")
    figures = [
        Figure(
            "width", say("Door, wide"), door.width, way="down", times=door.count, run=say("doors"), main=True
        ),
        Figure("height", say("Door, high"), door.height, way="down", main=True),
        Figure("rail", say("Rail, long, with its tenons"), rail, main=True),
        Figure("panel-width", say("Panel, wide"), panel[0], way="down"),
        Figure("panel-height", say("Panel, high"), panel[1], way="down"),
        Figure("droop", say("The free corner droops by"), _droop(given, door), fine=True),
    ]
    if door.mounted == INSET:
        swing = diagonal(door.width, thick) - door.width
        figures.append(
            Figure("swing", say("Gap needed at the free edge to swing past"), swing, way="up", fine=True)
        )
    pieces = _pieces(given, door, rail, panel)
    return Result(tuple(figures), _working(given, door, rail), (pieces,), _remarks(given, door), door)


def _door(given: Given) -> Door:
    wide, high, count = given.length("opening"), given.length("height"), given.count("doors")
    edge, between, stile = given.length("edge"), given.length("between"), given.length("stile")
    mounted = given.choice("mounted")
    sign = -1 if mounted == INSET else 1
    width = (wide + edge * (2 * sign) - between * (count - 1)) / count
    height = high + edge * (2 * sign)
    if width <= Length(0) or height <= Length(0):
        raise given.refuse(
            "edge", say("the gaps take the whole opening"), given.under(min(wide / 2, high / 2))
        )
    if stile * 2 >= width:
        raise given.refuse("stile", say("two stiles so wide leave no panel"), given.under(width / 2))
    if given.length("rail") * 2 >= height:
        raise given.refuse("rail", say("two rails so wide leave no panel"), given.under(height / 2))
    if given.length("hinges") >= height:
        raise given.refuse(
            "hinges", say("the hinges are further apart than the door is high"), given.under(height)
        )
    return Door((wide, high), count, width, height, edge, between, stile, mounted)


def _droop(given: Given, door: Door) -> Length:
    """Return how far play between the hinges lets the free corner down."""
    return given.length("hinge-play") * (door.width / given.length("hinges"))


def _pieces(given: Given, door: Door, rail: Length, panel: tuple[Length, Length]) -> Table:
    rows: tuple[tuple[Value, ...], ...] = (
        (say("Stiles"), 2 * door.count, given.write(door.height, "down"), door.stile),
        (say("Rails"), 2 * door.count, rail, given.length("rail")),
        (say("Panels"), door.count, given.write(panel[0], "down"), given.write(panel[1], "down")),
    )
    return Table(
        say("Pieces of framed doors"), (say("Piece"), say("Number"), say("Length"), say("Width")), rows
    )


def _working(given: Given, door: Door, rail: Length) -> tuple[str, ...]:
    shown, sign = given.display, "−" if door.mounted == INSET else "+"
    wide, edge, between = (exactly(one, shown) for one in (door.opening[0], door.edge, door.between))
    gaps = f" − {between}" if door.count == 2 else ""
    over = f" ÷ {door.count}" if door.count > 1 else ""
    return (
        say(
            "wide: ({wide} {sign} 2 × {edge}{gaps}){over} = {width}",
            wide=wide,
            sign=sign,
            edge=edge,
            gaps=gaps,
            over=over,
            width=exactly(door.width, shown),
        ),
        (
            say(
                "rail: {width} − 2 × {stile} + 2 × {tenon} = {rail}",
                width=exactly(door.width, shown),
                stile=exactly(door.stile, shown),
                tenon=exactly(given.length("tenon"), shown),
                rail=exactly(rail, shown),
            )
        ),
    )


def _remarks(given: Given, door: Door) -> tuple[str, ...]:
    remarks = []
    if door.mounted == INSET:
        swing = diagonal(door.width, given.length("thickness")) - door.width
        free = door.edge if door.count == 1 else door.between / 2
        if swing > free:
            remarks.append(
                say("The gap is too small for a square edge to swing past: bevel the free edge by about 2°.")
            )
    if door.width > door.height:
        remarks.append(say("A door wider than high pulls hard at its hinges: think of two doors."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the doors shut, stiles and rails, the opening dashed."""
    door: Door = result.shape
    wide, high = (inches(one) for one in door.opening)
    edge = inches(door.edge) * (-1 if door.mounted == INSET else 1)
    grow = max(edge, 0.0)
    frame = fit(wide + 2 * grow, high + 2 * grow, most=240, left=70, top=40)
    shapes: list[Shape] = []
    width, tall, stile, rail = (
        inches(door.width),
        inches(door.height),
        inches(door.stile),
        inches(given.length("rail")),
    )
    for i in range(door.count):
        x, y = grow - edge + i * (width + inches(door.between)), grow - edge
        shapes.append(
            frame.wood(x + stile, y + rail, width - 2 * stile, tall - 2 * rail, look="thin top", grain="y")
        )
        shapes += [frame.wood(x + at, y, stile, tall, grain="y") for at in (0.0, width - stile)]
        shapes += [frame.wood(x + stile, y + at, width - 2 * stile, rail) for at in (0.0, tall - rail)]
        hinged = x if i == 0 else x + width
        apart = inches(given.length("hinges"))
        shapes += [Circle(frame.x(hinged), frame.y(y + (tall + k * apart) / 2), 3.5, "mark") for k in (-1, 1)]
    shapes.append(Rectangle(frame.x(grow), frame.y(grow), wide * frame.scale, high * frame.scale, "hidden"))
    first = grow - edge
    shapes.append(frame.across(first, first + width, given.write(door.width), above=14))
    shapes.append(
        frame.across(
            grow, grow + wide, say("opening {opening}", opening=given.write(door.opening[0])), below=24
        )
    )
    shapes.append(frame.upright(first, first + tall, given.write(door.height)))
    words = say("dashed: the opening; dots: hinges")
    shapes.append(label(ROOM / 2, frame.bottom + 54, words, look="soft"))
    told = say(
        "{count} door of {width} by {height}; hinges are dots, the opening is dashed.",
        count=door.count,
        width=given.write(door.width),
        height=given.write(door.height),
    )
    return scene(frame.bottom + 64, shapes, say("Doors, shut"), told)


CALCULATOR = Calculator(
    slug="hinged-doors",
    title="Hinged doors",
    question="What size is the door, and how long are its rails?",
    subject="joining",
    asks=(
        Ask("opening", "Opening, wide", "length", "18 in", "450 mm", "2 in", "10 ft"),
        Ask("height", "Opening, high", "length", "28 in", "700 mm", "2 in", "12 ft"),
        Ask("doors", "Doors", "count", "1", least="1", most="2"),
        Ask(
            "mounted",
            "The door lies",
            "choice",
            INSET,
            choices=(INSET, OVERLAY),
            help="in the opening, or over its edges",
        ),
        Ask(
            "edge",
            "Gap around an inset door, or overlay on each side",
            "length",
            "3/32 in",
            "2 mm",
            "0 in",
            "6 in",
        ),
        Ask("between", "Gap between two doors", "length", "3/32 in", "2 mm", "0 in", "1 in"),
        Ask("thickness", "Thickness of the door", "length", "3/4 in", "19 mm", "1/4 in", "3 in"),
        Ask("stile", "Width of a stile", "length", "2 1/4 in", "57 mm", "1/2 in", "12 in"),
        Ask("rail", "Width of a rail", "length", "2 1/4 in", "57 mm", "1/2 in", "12 in"),
        Ask("tenon", "Tenon, long, at each end of a rail", "length", "3/8 in", "10 mm", "0 in", "4 in"),
        Ask("groove", "Groove for the panel, deep", "length", "3/8 in", "10 mm", "0 in", "2 in"),
        Ask("slack", "Play of the panel, both sides together", "length", "1/8 in", "3 mm", "0 in", "1 in"),
        Ask("hinges", "From hinge to hinge", "length", "20 in", "500 mm", "1 in", "12 ft"),
        Ask("hinge-play", "Play in a hinge", "length", "1/64 in", "0.4 mm", "0 in", "1/4 in"),
    ),
    compute=compute,
    formula=(
        (
            "door = opening − 2 × gap, or + 2 × overlay; two doors share what is left beside the gap "
            "between them"
        ),
        "rail = door − 2 × stile + 2 × tenon; panel = door − 2 × stile + 2 × groove − play",
        "droop = hinge play × door width ÷ hinge distance",
        "room to swing = √(width² + thickness²) − width",
    ),
    source=("Arithmetic and geometry of the right triangle; usual gaps are common practice.",),
    exactness="Exact for square work; the room to swing is for a hinge pin at the door's face.",
    caution="A heavy door needs hinges that are made to carry it: see their sheet.",
    example=Example(
        "An inset door for the paint cupboard: the opening is 16 1/2 in by 30 in.",
        {"opening": "16 1/2 in", "height": "30 in", "doors": "1", "mounted": INSET, "hinges": "22 in"},
    ),
    draw=draw,
    words="cabinet door, frame and panel, stile, rail, inset, overlay, hinge, sagging door, drop",
    features=("hinged door", "hinge"),
)
