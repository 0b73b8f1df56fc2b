"""Sliding doors: in grooves, or hung from a rail."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Line, Rectangle, Scene, Shape
from scantling.measure import Length
from scantling.words import say

GROOVES, HUNG = "in grooves", "hung from a rail"


@dataclass(frozen=True, slots=True)
class Doors:
    """Doors of one size before or in an opening."""

    opening: tuple[Length, Length]
    count: int
    width: Length
    height: Length
    overlap: Length
    rail: Length
    """How long the rail or groove is."""
    lies: str


def compute(given: Given) -> Result:
    """Return the doors, and their grooves or their rail."""
    return _grooved(given) if given.choice("runs") == GROOVES else _hung(given)


def _grooved(given: Given) -> Result:
    wide, high, count = given.length("opening"), given.length("height"), given.count("doors")
    overlap = given.length("overlap")
    if count < 2:
        raise given.refuse("doors", say("a single door in grooves has nowhere to slide"), "2")
    width = (wide + overlap * (count - 1)) / count
    if overlap >= width:
        raise given.refuse("overlap", say("doors that overlap so far cover each other"), given.under(wide))
    top, low, play = given.length("groove-top"), given.length("groove-bottom"), given.length("play")
    if top <= low + play:
        message = say("the upper groove is too shallow to lift the doors out of the lower one")
        raise given.refuse("groove-top", message, given.least(low + play + Length(1) / 8))
    doors = Doors((wide, high), count, width, high + top - play, overlap, wide, GROOVES)
    figures = (
        Figure("width", say("Each door, wide"), width, times=count, run=say("doors"), main=True),
        Figure("height", say("Each door, high"), doors.height, way="down", main=True),
        Figure("held", say("Held in the upper groove when down"), top - low - play),
        Figure("drop", say("A door drops when let down, by"), low + play),
        Figure("clear", say("Opened as far as it goes, free width"), wide - width),
    )
    return Result(figures, _working(given, doors), (), _grooved_remarks(given), doors)


def _grooved_remarks(given: Given) -> tuple[str, ...]:
    remarks = [say("Lift a door into the upper groove, swing it in, and let it down into the lower one.")]
    if given.length("groove-top") - given.length("groove-bottom") - given.length("play") < Length(1) / 8:
        remarks.append(
            say("Less than 1/8 in is held above: a door can fall out when it is lifted by accident.")
        )
    return tuple(remarks)


def _hung(given: Given) -> Result:
    wide, high, count = given.length("opening"), given.length("height"), given.count("doors")
    overlap, drop, gap = given.length("overlap"), given.length("drop"), given.length("floor-gap")
    if count > 2:
        raise given.refuse("doors", say("one rail carries one door, or two that part in the middle"), "2")
    if gap >= high:
        raise given.refuse("floor-gap", say("the gap is as high as the opening"), given.under(high))
    width = wide + overlap * 2 if count == 1 else wide / 2 + overlap
    rail = width + wide + overlap if count == 1 else wide + width * 2
    doors = Doors((wide, high), count, width, high + overlap - gap, overlap, rail, HUNG)
    figures = (
        Figure("width", say("Each door, wide"), width, times=count, run=say("doors"), main=True),
        Figure("height", say("Each door, high"), doors.height, main=True),
        Figure("rail", say("Rail, long, to free the whole opening"), rail, way="up", main=True),
        Figure("rail-up", say("Middle of the rail above the floor"), high + overlap + drop),
        Figure(
            "beside",
            say("Wall needed beside the opening, on each side used"),
            width if count == 1 else wide / 2 + overlap,
        ),
    )
    remarks = [
        say("The drop is on the sheet of the hangers: from the middle of the rail to the top of the door.")
    ]
    return Result(figures, _working(given, doors), (), tuple(remarks), doors)


def _working(given: Given, doors: Doors) -> tuple[str, ...]:
    shown = given.display
    wide, overlap, width = (exactly(one, shown) for one in (doors.opening[0], doors.overlap, doors.width))
    if doors.lies == GROOVES:
        return (
            say(
                "wide: ({wide} + {count} × {overlap}) ÷ {count2} = {width}",
                wide=wide,
                count=doors.count - 1,
                overlap=overlap,
                count2=doors.count,
                width=width,
            ),
        )
    if doors.count == 1:
        return (
            say("wide: {wide} + 2 × {overlap} = {width}", wide=wide, overlap=overlap, width=width),
            say(
                "rail: {width} + ({wide} + {overlap}) = {rail}",
                width=width,
                wide=wide,
                overlap=overlap,
                rail=exactly(doors.rail, shown),
            ),
        )
    return (
        say("wide: {wide} ÷ 2 + {overlap} = {width}", wide=wide, overlap=overlap, width=width),
        say("rail: {wide} + 2 × {width} = {rail}", wide=wide, width=width, rail=exactly(doors.rail, shown)),
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the doors shut, from the front."""
    doors: Doors = result.shape
    wide, high = (inches(one) for one in doors.opening)
    width, tall, over = inches(doors.width), inches(doors.height), inches(doors.overlap)
    hung = doors.lies == HUNG
    rail = inches(doors.rail)
    whole = rail if hung else wide
    left = over if hung and doors.count == 1 else (rail - wide) / 2 if hung else 0.0
    frame = fit(whole, high + over, most=200, left=64, top=46)
    shapes: list[Shape] = []
    lift = over if hung else inches(doors.height - doors.opening[1]) * 0.5
    for i in range(doors.count):
        x = i * (width - over) if not hung else (left - over if doors.count == 1 else left - over + i * width)
        look = "edge wood" if i % 2 == 0 else "edge top"
        shapes.append(
            frame.wood(x, over - lift if hung else over, width, tall if hung else high, look=look, grain="y")
        )
    opening = (frame.x(left), frame.y(over), wide * frame.scale, high * frame.scale)
    shapes.append(Rectangle(*opening, look="hidden"))
    if hung:
        y = frame.top - 8
        shapes.append(Line(frame.left, y, frame.x(rail), y, "bold"))
        shapes.append(frame.across(0, rail, say("rail {rail}", rail=given.write(doors.rail)), above=26))
    else:
        for i in range(1, doors.count):
            x = i * (width - over)
            shapes.append(frame.across(x, x + over, given.write(doors.overlap), above=6))
    first = 0.0 if not hung or doors.count == 1 else left - over
    shapes.append(
        frame.across(first, first + width, say("door {width}", width=given.write(doors.width)), below=18)
    )
    shapes.append(
        frame.across(
            left, left + wide, say("opening {opening}", opening=given.write(doors.opening[0])), below=40
        )
    )
    shapes.append(frame.upright(over, over + high, given.write(doors.opening[1])))
    told = say(
        "{count} doors of {width} by {height}, shut; the opening is dashed.",
        count=doors.count,
        width=given.write(doors.width),
        height=given.write(doors.height),
    )
    return scene(frame.bottom + 58, shapes, say("Sliding doors, shut"), told)


CALCULATOR = Calculator(
    slug="sliding-doors",
    title="Sliding doors",
    question="How wide and high are sliding doors, and how long is their rail?",
    subject="joining",
    asks=(
        Ask("opening", "Opening, wide", "length", "36 in", "900 mm", "4 in", "40 ft"),
        Ask("height", "Opening, high", "length", "24 in", "600 mm", "4 in", "20 ft"),
        Ask("runs", "The doors run", "choice", GROOVES, choices=(GROOVES, HUNG)),
        Ask("doors", "Doors", "count", "2", least="1", most="12"),
        Ask(
            "overlap",
            "Overlap",
            "length",
            "1 in",
            "25 mm",
            "0 in",
            "2 ft",
            help="in grooves: of one door over the next; hung: past the opening at the sides and the top",
        ),
        Ask(
            "groove-top",
            "Upper groove, deep",
            "length",
            "1/2 in",
            "12 mm",
            "1/16 in",
            "6 in",
            help="in grooves only",
        ),
        Ask(
            "groove-bottom",
            "Lower groove, deep",
            "length",
            "3/16 in",
            "5 mm",
            "1/32 in",
            "3 in",
            help="in grooves only",
        ),
        Ask(
            "play",
            "Play for lifting the door in",
            "length",
            "1/16 in",
            "1 mm",
            "0 in",
            "1 in",
            help="in grooves only",
        ),
        Ask("drop", "Drop of the hangers", "length", "2 in", "50 mm", "0 in", "2 ft", help="hung doors only"),
        Ask(
            "floor-gap",
            "Gap above the floor",
            "length",
            "1/2 in",
            "12 mm",
            "0 in",
            "1 ft",
            help="hung doors only",
        ),
    ),
    compute=compute,
    formula=(
        (
            "in grooves: width = (opening + (doors − 1) × overlap) ÷ doors; height = opening + upper "
            "groove − play"
        ),
        "hung, one: width = opening + 2 × overlap; rail = width + opening + overlap",
        "hung, two: width = opening ÷ 2 + overlap; rail = opening + 2 × width",
    ),
    source=("Arithmetic; that the upper groove is deeper than the lower is common practice.",),
    exactness="Exact.",
    caution="A hung door needs its stops and floor guide, and fixings that carry it: see the hangers' sheet.",
    example=Example(
        "Two sliding doors close the cabinet under the tool wall: 42 in wide and 20 in high.",
        {"opening": "42 in", "height": "20 in", "runs": GROOVES, "doors": "2", "overlap": "1 1/2 in"},
    ),
    draw=draw,
    words="bypass doors, barn door, track, groove, cabinet doors, lift-out",
    features=("sliding door",),
)
