"""Boxes with sloped sides: the two angles of a compound mitre."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape, Text
from scantling.measure import Angle, Length, arc_sine, arc_tangent, cosine, local_marks, sine, tangent
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Splay:
    """One side of a box whose sides slope."""

    sides: int
    slope: Angle
    """From upright."""
    long: Length
    """Outside, at the wide edge."""
    board: Length
    """Width of the board, measured up the slope."""
    turn: Angle
    """What the saw's table is turned, board flat on it."""
    tilt: Angle
    """What its blade is tilted."""

    @property
    def short(self) -> Length:
        """Return the outside length at the narrow edge."""
        return self.long - self.board * (2 * tangent(self.turn))

    @property
    def height(self) -> Length:
        """Return how high the box stands."""
        return self.board * cosine(self.slope)


def compound(sides: int, slope: Angle) -> tuple[Angle, Angle]:
    """Return how far the saw is turned and tilted: `tan turn = sin slope × tan(180°/n)`, `sin tilt = ...`."""
    half = Angle(180) / sides
    return arc_tangent(sine(slope) * tangent(half)), arc_sine(cosine(slope) * sine(half))


def compute(given: Given) -> Result:
    """Return both settings of the saw and the two lengths of a side."""
    sides, slope = given.count("sides"), given.angle("slope")
    turn, tilt = compound(sides, slope)
    splay = Splay(sides, slope, given.length("long"), given.length("board"), turn, tilt)
    if splay.short <= Length(0):
        message = say(
            "sides this wide meet in a point before the board's {board} are used",
            board=given.write(splay.board),
        )
        raise given.refuse("board", message, given.under(splay.long / (2 * tangent(turn))))
    cuts = 2 * sides
    figures = (
        Figure("turn", say("Turn the saw from square to"), turn, times=cuts, run=say("cuts"), main=True),
        Figure("tilt", say("Tilt the blade to"), tilt, times=cuts, run=say("cuts"), main=True),
        Figure("short", say("Each side, at its narrow edge"), splay.short, times=sides, run=say("sides")),
        Figure("height", say("The box stands high"), splay.height),
        Figure("edge", say("Bevel of top and bottom edges, to lie level"), slope),
    )
    return Result(figures, _working(splay), (), _remarks(splay), splay)


def _working(splay: Splay) -> tuple[str, ...]:
    slope, half = local_marks(f"{float(splay.slope.degrees):g}°"), f"180° ÷ {splay.sides}"
    return (
        say(
            "turn: arctan(sin {slope} × tan({half})) = {turn}°",
            slope=slope,
            half=half,
            turn=local_marks(f"{float(splay.turn.degrees):.2f}"),
        ),
        say(
            "tilt: arcsin(cos {slope} × sin({half})) = {tilt}°",
            slope=slope,
            half=half,
            tilt=local_marks(f"{float(splay.tilt.degrees):.2f}"),
        ),
    )


def _remarks(splay: Splay) -> tuple[str, ...]:
    remarks = [say("Cut two scraps at these settings and hold them together before cutting good wood.")]
    if splay.tilt > Angle(45):
        remarks.append(
            say("Most saws do not tilt beyond 45°: use butt joints, or cut the board standing on edge.")
        )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return one side laid flat, and how the sides stand."""
    splay: Splay = result.shape
    long, short, board = inches(splay.long), inches(splay.short), inches(splay.board)
    frame = fit(long, board, most=150, top=44)
    inset = (long - short) / 2
    shapes: list[Shape] = [frame.polygon(((0, 0), (long, 0), (long - inset, board), (inset, board)))]
    shapes.append(frame.across(0, long, given.write(splay.long), above=16))
    shapes.append(frame.across(inset, long - inset, given.write(splay.short), below=20))
    shapes.append(frame.upright(0, board, given.write(splay.board)))
    turn = say("saw turned {turn}°", turn=local_marks(f"{float(splay.turn.degrees):.2f}"))
    tilt = say("blade tilted {tilt}°", tilt=local_marks(f"{float(splay.tilt.degrees):.2f}"))
    middle = frame.y(board / 2)
    shapes.append(label(frame.x(long / 2), middle - 3, turn, look="red strong board", size=12))
    shapes.append(label(frame.x(long / 2), middle + 13, tilt, look="red strong board", size=12))
    shapes.append(
        Text(frame.left, frame.bottom + 54, say("One side, lying flat, outside up"), 11, look="soft")
    )
    told = say(
        "A side {long} long at one edge and {short} at the other.",
        long=given.write(splay.long),
        short=given.write(splay.short),
    )
    return scene(frame.bottom + 64, shapes, say("Side of a box with sloped sides"), told)


CALCULATOR = Calculator(
    slug="sloped-sides",
    title="Compound mitres for sloped sides",
    question="How do I set the saw for a box whose sides slope?",
    subject="joining",
    asks=(
        Ask("sides", "Sides", "count", "4", least="3", most="72"),
        Ask("slope", "Slope of the sides, from upright", "angle", "15 deg", least="0 deg", most="89 deg"),
        Ask(
            "long",
            "Outside length of a side at its wide edge",
            "length",
            "16 in",
            "400 mm",
            "1/2 in",
            "40 ft",
        ),
        Ask("board", "Width of the board", "length", "5 1/2 in", "140 mm", "1/4 in", "10 ft"),
    ),
    compute=compute,
    formula=(
        "turn = arctan(sin slope × tan(180° ÷ sides))",
        "tilt = arcsin(cos slope × sin(180° ÷ sides))",
        "narrow edge = wide edge − 2 × board × tan(turn)",
    ),
    source=("Geometry of two planes that meet; the usual tables of compound mitres agree.",),
    exactness="Exact to twelve decimals before rounding; the saw's scales are taken to be good to "
    "half a degree.",
    caution="A tilted blade reaches further to the side: check guard, fence and hand before the cut, "
    "and follow the manual.",
    example=Example(
        "A planter for Tern Street with four sides that lean out by 15 degrees, 16 in long at the rim.",
        {"sides": "4", "slope": "15 deg", "long": "16 in", "board": "5 1/2 in"},
    ),
    draw=draw,
    words="hopper, splayed box, planter, bevel, compound miter, tray, crown",
    features=("compound", "splay", "planter"),
)
