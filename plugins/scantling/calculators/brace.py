"""A diagonal brace of real width in a rectangular opening."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, exactly
from scantling.calculators.kit.picture import Frame, fit, inches, scene
from scantling.drawing import Rectangle, Scene, Shape, Text
from scantling.measure import Angle, Length, arc_sine, arc_tangent, cosine, diagonal, local_marks, root, sine
from scantling.words import say

RAILS, POSTS, CORNERS = "rails", "posts", "corners"
ONE, TWO = "one", "two"
_RIGHT = Angle(90)
STEEPEST = Angle(50)
"""Beyond this from square most mitre saws do not turn (common practice)."""

Corner = tuple[Length, Length]


@dataclass(frozen=True, slots=True)
class Brace:
    """A brace as it lies in its opening."""

    seat: str
    opening: tuple[Length, Length]
    """Width and height."""
    width: Length
    angle: Angle
    """Between the brace and the rail."""
    overall: Length
    """Long point to long point, along the brace."""
    edge: Length
    """Long point to short point, along one edge; nothing for one pointed into corners."""
    foot: Length
    """How much of the rail or post its end covers; for a pointed one, on the rail."""
    foot_up: Length
    """For a pointed one, how much of the post its end covers; otherwise nothing."""

    @property
    def mitre(self) -> Angle:
        """Return what the saw is turned from square; for a pointed one, for the cut along the rail."""
        return self.angle if self.seat == POSTS else _RIGHT - self.angle

    def outline(self) -> tuple[Corner, ...]:
        """Return its corners, from the lower left corner of the opening, x to the right and y up."""
        wide, high = self.opening
        none, foot, up = Length(0), self.foot, self.foot_up
        if self.seat == RAILS:
            return (none, none), (foot, none), (wide, high), (wide - foot, high)
        if self.seat == POSTS:
            return (none, none), (wide, high - foot), (wide, high), (none, foot)
        low = ((none, none), (foot, none), (wide, high - up))
        return (*low, (wide, high), (wide - foot, high), (none, up))


def fit_brace(wide: Length, high: Length, width: Length, seat: str) -> Brace:
    """Return the brace that closes the opening exactly.

    Seated on rails or posts, its edges run through opposite corners of the opening: the angle solves
    `wide × sin − high × cos = width` (rails) or `high × cos − wide × sin = width` (posts).
    """
    across = diagonal(wide, high)
    turn = arc_tangent(high.inches, wide.inches)
    if seat == CORNERS:
        half = width / 2
        return Brace(
            seat, (wide, high), width, turn, across, Length(0), half / sine(turn), half / cosine(turn)
        )
    lean = arc_sine(width / across)
    overall = Length(root(wide.inches**2 + high.inches**2 - width.inches**2))
    angle = turn + lean if seat == RAILS else turn - lean
    steep = sine(angle) if seat == RAILS else cosine(angle)
    rise = high if seat == RAILS else wide
    return Brace(seat, (wide, high), width, angle, overall, rise / steep, width / steep, Length(0))


def compute(given: Given) -> Result:
    """Return angle, lengths, and the half-lap where two braces cross."""
    wide, high, width = given.length("opening"), given.length("height"), given.length("width")
    seat = given.choice("seat")
    limit = {RAILS: wide, POSTS: high, CORNERS: min(wide, high)}[seat]
    if width >= limit:
        message = say("a brace of {width} is too wide to lean in this opening", width=given.write(width))
        raise given.refuse("width", message, given.under(limit))
    brace = fit_brace(wide, high, width, seat)
    figures = [
        Figure("mitre", say("Turn the saw from square to"), brace.mitre, times=2, run=say("ends"), main=True),
        Figure("overall", say("Long point to long point, along the brace"), brace.overall, main=True),
        Figure("angle", say("Angle between brace and rail"), brace.angle),
    ]
    if seat == CORNERS:
        figures.append(Figure("other-mitre", say("Second cut of each end, from square"), brace.angle))
        figures.append(Figure("foot", say("The end covers, of the rail"), brace.foot))
        figures.append(Figure("foot-up", say("The end covers, of the post"), brace.foot_up))
    else:
        figures.append(Figure("edge", say("Long point to short point, along the edge"), brace.edge))
        figures.append(
            Figure(
                "foot",
                say("The end covers, of the rail") if seat == RAILS else say("The end covers, of the post"),
                brace.foot,
            )
        )
    if given.choice("braces") == TWO:
        figures += _lap(given, brace)
    return Result(tuple(figures), _working(given, brace), (_corners(brace),), _remarks(brace), brace)


def _lap(given: Given, brace: Brace) -> list[Figure]:
    between = min(brace.angle * 2, Angle(180) - brace.angle * 2)
    notch = brace.width / sine(between)
    return [
        Figure("cross", say("Middle of the half-lap, from a long point"), brace.overall / 2, main=True),
        Figure("between", say("Angle at which they cross"), between),
        Figure("notch", say("Half-lap, long along the brace"), notch),
        Figure("depth", say("Half-lap, deep"), given.length("thickness") / 2),
    ]


def _corners(brace: Brace) -> Table:
    rows = tuple((i + 1, x, y) for i, (x, y) in enumerate(brace.outline()))
    return Table(
        say("Corners, from the lower left corner of the opening"),
        (say("Corner"), say("Across"), say("Up")),
        rows,
    )


def _working(given: Given, brace: Brace) -> tuple[str, ...]:
    wide, high = (exactly(side, given.display) for side in brace.opening)
    width = exactly(brace.width, given.display)
    turn = arc_tangent(brace.opening[1].inches, brace.opening[0].inches)
    slope = f"arctan({high} ÷ {wide}) = {local_marks(f'{float(turn.degrees):.2f}')}°"
    if brace.seat == CORNERS:
        return (slope, f"√(({wide})² + ({high})²) = {exactly(brace.overall, given.display)}")
    sign = "+" if brace.seat == RAILS else "−"
    lean = arc_sine(brace.width / diagonal(*brace.opening))
    return (
        say(
            "{slope}; arcsin({width} ÷ diagonal) = {lean}°",
            slope=slope,
            width=width,
            lean=local_marks(f"{float(lean.degrees):.2f}"),
        ),
        (
            say(
                "angle: {turn}° {sign} {lean}° = {angle}°",
                turn=local_marks(f"{float(turn.degrees):.2f}"),
                sign=sign,
                lean=local_marks(f"{float(lean.degrees):.2f}"),
                angle=local_marks(f"{float(brace.angle.degrees):.2f}"),
            )
        ),
        (
            say(
                "long point to long point: √(({wide})² + ({high})² − ({width})²) = {overall}",
                wide=wide,
                high=high,
                width=width,
                overall=exactly(brace.overall, given.display),
            )
        ),
    )


def _remarks(brace: Brace) -> tuple[str, ...]:
    remarks = [say("Cut one end, hold the brace in place, and mark the other end from the opening itself.")]
    if brace.seat != CORNERS:
        naive = arc_tangent(brace.opening[1].inches, brace.opening[0].inches)
        off = abs(naive - brace.angle).degrees
        remarks.append(
            say(
                "The slope from corner to corner would be {off}° out: it leaves the width of the brace out.",
                off=local_marks(f"{float(off):.1f}"),
            )
        )
    if brace.mitre > STEEPEST or (brace.seat == CORNERS and brace.angle > STEEPEST):
        remarks.append(
            say("Most mitre saws do not turn so far: clamp the piece square to the fence, or use a hand saw.")
        )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the opening with the brace, or both, its angle and lengths."""
    brace: Brace = result.shape
    wide, high = (inches(side) for side in brace.opening)
    frame = fit(wide, high, most=270, left=76, right=60, top=44)
    rail = 14.0
    shapes: list[Shape] = [
        Rectangle(frame.left - rail, frame.top - rail, wide * frame.scale + 2 * rail, rail, "thin side"),
        Rectangle(frame.left - rail, frame.bottom, wide * frame.scale + 2 * rail, rail, "thin side"),
        Rectangle(frame.left - rail, frame.top, rail, high * frame.scale, "thin side"),
        Rectangle(frame.right, frame.top, rail, high * frame.scale, "thin side"),
    ]
    corners = [(inches(x), high - inches(y)) for x, y in brace.outline()]
    if given.choice("braces") == TWO:
        shapes.append(frame.polygon([(wide - x, y) for x, y in corners], "hidden wood"))
    shapes.append(frame.polygon(corners))
    shapes.append(_words(given, brace, frame))
    shapes.append(frame.across(0, wide, given.write(brace.opening[0]), below=36))
    shapes.append(frame.upright(0, high, given.write(brace.opening[1]), beside=32))
    angle = local_marks(f"{float(brace.angle.degrees):.2f}°")
    shapes.append(_angle(brace, frame, angle))
    told = say(
        "A brace {width} wide, seated on the {seat}, {angle} from the rail.",
        width=given.write(brace.width),
        seat=say(brace.seat),
        angle=angle,
    )
    return scene(frame.bottom + 54, shapes, say("Brace in its opening"), told)


def _angle(brace: Brace, frame: Frame, words: str) -> Text:
    """Return the angle beside the foot, or at the other end of the rail where the brace lies too low."""
    if brace.angle < Angle(25):
        return Text(frame.right - 6, frame.bottom - 6, words, 12, "end", "red strong halo")
    x = frame.x(min(inches(brace.foot) + frame.wide * 0.05, frame.wide * 0.8))
    return Text(x + 14, frame.bottom - 8, words, 12, "start", "red strong halo")


def _words(given: Given, brace: Brace, frame: Frame) -> Text:
    """Return the length, along the brace; above it where the brace is drawn too thin."""
    turn = float(brace.angle.degrees)
    half = inches(brace.width) * frame.scale / 2
    off = 0.0 if half > 8 else half + 9
    slope = radians(turn)
    x = frame.x(frame.wide / 2) - off * sin(slope)
    y = frame.y(frame.high / 2) - off * cos(slope)
    look = "ink halo" if off else "ink board"
    overall = say("{overall} long point to long point", overall=given.write(brace.overall))
    return Text(x + 4 * sin(slope), y + 4 * cos(slope), overall, 11, "middle", look, -turn)


CALCULATOR = Calculator(
    slug="brace",
    title="Brace in an opening",
    question="At what angle, and how long, do I cut a diagonal brace?",
    subject="joining",
    asks=(
        Ask("opening", "Opening, wide", "length", "36 in", "900 mm", "1 in", "100 ft"),
        Ask("height", "Opening, high", "length", "30 in", "750 mm", "1 in", "100 ft"),
        Ask("width", "Width of the brace", "length", "3 1/2 in", "89 mm", "1/8 in", "4 ft"),
        Ask(
            "seat",
            "Its ends sit on",
            "choice",
            RAILS,
            choices=(RAILS, POSTS, CORNERS),
            help="the two rails, the two posts, or pointed into both corners",
        ),
        Ask(
            "braces",
            "Braces",
            "choice",
            ONE,
            choices=(ONE, TWO),
            help="two cross in the middle with a half-lap",
        ),
        Ask("thickness", "Thickness of the brace", "length", "1 1/2 in", "38 mm", "1/8 in", "1 ft"),
    ),
    compute=compute,
    formula=(
        "on the rails: angle = arctan(height ÷ width) + arcsin(brace ÷ diagonal); saw = 90° − angle",
        "on the posts: angle = arctan(height ÷ width) − arcsin(brace ÷ diagonal); saw = angle",
        "into the corners: angle = arctan(height ÷ width), two cuts at each end",
        "long point to long point = √(width² + height² − brace²); from tip to tip into corners: the diagonal",
    ),
    source=("Geometry of a rectangle that touches two opposite corners; no table is needed.",),
    exactness="Exact to twelve decimals before rounding. Measure the opening itself, and both diagonals: "
    "if they differ it is not square, and neither will the brace be.",
    caution="This is the fit alone: what a brace must carry, and how it is fixed, is for the plan or "
    "for someone qualified.",
    example=Example(
        "The back of the oar rack is open 36 in by 30 in and is braced with a 1x4, which measures 3 1/2 in.",
        {
            "opening": "36 in",
            "height": "30 in",
            "width": "3 1/2 in",
            "seat": RAILS,
            "braces": ONE,
            "thickness": "3/4 in",
        },
    ),
    draw=draw,
    words="diagonal, gate brace, cross brace, X brace, long point, short point, half-lap, angle",
    features=("brace",),
)
