"""How many strips a board gives, and what is left of it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Axis, Curve, Mark, Plot, Rectangle, Scene, Shape, text_width
from scantling.measure import Length, round_number
from scantling.words import say

NOTHING = Length(0)


@dataclass(frozen=True, slots=True)
class Ripped:
    """A board ripped into strips."""

    board: Length
    straightening: Length
    strip: Length
    kerf: Length
    count: int
    left: Length
    """What is left at the far edge; nothing where the last cut turns it to dust."""

    @property
    def useful(self) -> Length:
        """Return the width that is there to be ripped."""
        return self.board - self.straightening


def rip(board: Length, straightening: Length, strip: Length, kerf: Length) -> Ripped:
    """Return how many strips a board gives when each cut takes a kerf."""
    useful = board - straightening
    count = (useful + kerf) // (strip + kerf)
    left = max(NOTHING, useful - (strip + kerf) * count)
    return Ripped(board, straightening, strip, kerf, count, left)


def compute(given: Given) -> Result:
    """Return the number of strips, what is left, and what one more would need."""
    board, strip, kerf = given.length("board"), given.length("strip"), given.length("kerf")
    straightening = given.length("straightening")
    _must_fit(given, board, strip, kerf, straightening)
    ripped = rip(board, straightening, strip, kerf)
    count, more = ripped.count, ripped.count + 1
    short = strip * more + kerf * (more - 1) - ripped.useful
    figures = [
        Figure("strips", say("Strips from one board"), count, main=True),
        Figure("left", say("Left over"), ripped.left, way="down", main=True),
        Figure("short", say("Too narrow for {more} by", more=more), short, way="up"),
        Figure(
            "width-for-more",
            say("{more} strips if each is at most", more=more),
            (ripped.useful - kerf * count) / more,
            way="down",
        ),
        Figure("widest", say("Still {count} if each is at most", count=count), _widest(ripped), way="down"),
        Figure("dust", say("Lost to the saw"), _dust(ripped)),
    ]
    if given.has("wanted"):
        boards = round_number(Fraction(given.count("wanted"), count), "up")
        figures.insert(
            1,
            Figure(
                "boards", say("Boards for {wanted} strips", wanted=given.count("wanted")), boards, main=True
            ),
        )
    return Result(tuple(figures), _working(given, ripped), (), _remarks(given, ripped), ripped)


def _must_fit(given: Given, board: Length, strip: Length, kerf: Length, straightening: Length) -> None:
    if kerf >= board:
        raise given.refuse("kerf", say("the kerf is as wide as the board"), given.under(board))
    if strip > board:
        message = say("a strip of {strip} is wider than the board", strip=given.write(strip))
        raise given.refuse("strip", message, given.most(board))
    if straightening >= board:
        raise given.refuse(
            "straightening", say("straightening takes the whole board"), given.most(board - strip)
        )
    if strip > board - straightening:
        message = say("a strip of {strip} is wider than what there is to rip", strip=given.write(strip))
        raise given.refuse("strip", message, given.most(board - straightening))


def _widest(ripped: Ripped) -> Length:
    return (ripped.useful - ripped.kerf * (ripped.count - 1)) / ripped.count


def _dust(ripped: Ripped) -> Length:
    return ripped.useful - ripped.strip * ripped.count - ripped.left


def _working(given: Given, ripped: Ripped) -> tuple[str, ...]:
    useful, strip, kerf = (
        exactly(length, given.display) for length in (ripped.useful, ripped.strip, ripped.kerf)
    )
    return (
        say(
            "strips: ({useful} + {kerf}) ÷ ({strip} + {kerf}), rounded down, = {count}",
            useful=useful,
            kerf=kerf,
            strip=strip,
            count=ripped.count,
        ),
        say(
            "left: {useful} − {count} × ({strip} + {kerf}) = {left}",
            useful=useful,
            count=ripped.count,
            strip=strip,
            kerf=kerf,
            left=exactly(ripped.left, given.display),
        )
        if ripped.left > NOTHING
        else say("left: less than a kerf, so nothing"),
    )


def _remarks(given: Given, ripped: Ripped) -> tuple[str, ...]:
    remarks = []
    if NOTHING < ripped.left < Length(Fraction(3, 4)):
        remarks.append(
            say(
                "Only {left} is left beyond the last cut, and a blade can throw so thin a piece: stop"
                " one strip earlier if it can be done.",
                left=given.write(ripped.left),
            )
        )
    if ripped.left == NOTHING and _dust(ripped) < ripped.kerf * ripped.count:
        remarks.append(say("The last cut is no more than a trim: its kerf runs off the board."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the board's end with its strips, kerfs and rest."""
    ripped: Ripped = result.shape
    wide = inches(ripped.board)
    frame = fit(wide, wide * 0.2, most=90, top=40)
    strip, kerf, at = inches(ripped.strip), inches(ripped.kerf), inches(ripped.straightening)
    shapes: list[Shape] = [frame.wood(0, 0, wide, frame.high, fill="cutaway")]
    look = "thin wood" if ripped.count > 20 else "edge wood"
    for i in range(ripped.count):
        shapes.append(frame.wood(at, 0, strip, frame.high, look=look, grain="" if ripped.count > 20 else "y"))
        if ripped.count <= 14:
            shapes.append(label(frame.x(at + strip / 2), frame.y(frame.high / 2) + 4, str(i + 1)))
        at += strip + kerf
    left = inches(ripped.left)
    if left:
        shapes.append(frame.wood(wide - left, 0, left, frame.high, fill="offcut"))
        shapes.append(frame.across(wide - left, wide, given.write(ripped.left), above=14))
    first = inches(ripped.straightening)
    shapes.append(frame.across(first, first + strip, given.write(ripped.strip), above=14))
    shapes.append(frame.across(0, wide, given.write(ripped.board), below=24))
    sawn = say("taken by the saw")
    second = frame.left + 17 + text_width(sawn, 11) + 20
    shapes += [
        Rectangle(frame.left, frame.bottom + 40, 12, 10, "thin", "cutaway"),
        label(frame.left + 17, frame.bottom + 49, sawn, anchor="start"),
        Rectangle(second, frame.bottom + 40, 12, 10, "thin", "offcut"),
        label(second + 17, frame.bottom + 49, say("left over"), anchor="start"),
    ]
    told = say(
        "{count} strips of {strip}, {left} left over.",
        count=ripped.count,
        strip=given.write(ripped.strip),
        left=given.write(ripped.left),
    )
    return scene(frame.bottom + 60, shapes, say("Strips from a board"), told)


def plot(given: Given, result: Result) -> Plot:
    """Return how many strips the board gives, by their width."""
    ripped: Ripped = result.shape
    low = max(ripped.strip / 2, ripped.useful / 40)
    most = rip(ripped.board, ripped.straightening, low, ripped.kerf).count
    points = [(given.along(low), float(most))]
    for fewer in range(most - 1, 0, -1):
        width = (ripped.useful + ripped.kerf) / (fewer + 1) - ripped.kerf
        points.append((given.along(width), float(fewer)))
    points.append((given.along(ripped.useful), 1.0))
    words = say("{count} of {size}", count=ripped.count, size=given.write(ripped.strip))
    mark = Mark(given.along(ripped.strip), float(ripped.count), words)
    return Plot(
        Axis(say("width of a strip, {unit}", unit=given.display.system), points[0][0], points[-1][0]),
        Axis(say("strips"), 0.0, float(most + 1)),
        (Curve(tuple(points), steps=True),),
        (mark,),
        say("Strips by their width"),
        say("The number of strips falls in steps as they get wider; {words} is picked out.", words=words),
    )


CALCULATOR = Calculator(
    slug="strips",
    title="Strips from a board",
    question="How many strips can I rip from a board, and what is left?",
    subject="cutting",
    asks=(
        Ask("board", "Width of the board", "length", "5 1/2 in", "140 mm", "1/8 in", "10 ft"),
        Ask("strip", "Width of a strip", "length", "1 1/2 in", "38 mm", "1/16 in", "10 ft"),
        Ask("kerf", "Kerf of the saw", "length", "1/8 in", "3 mm", "0 in", "1/2 in"),
        Ask(
            "straightening",
            "Taken off first to straighten an edge",
            "length",
            "0 in",
            "0 mm",
            "0 in",
            "2 ft",
            help="that cut's kerf included",
        ),
        Ask("wanted", "Strips wanted", "count", least="1", most="1000", optional=True),
    ),
    compute=compute,
    formula=(
        "strips = (width + kerf) ÷ (strip + kerf), rounded down",
        "left over = width − strips × (strip + kerf), and nothing where that is below nothing",
    ),
    source=("Arithmetic: every strip but the last needs a kerf beside it.",),
    exactness="Exact for a kerf that is what you measured: make a cut in scrap and measure it.",
    caution=(
        "Ripping narrow strips can pull a hand to the blade: use a push block and a splitter, keep the strip "
        "on the side away from the fence, and follow the saw's manual."
    ),
    example=Example(
        "How many edge strips of 3/4 in does the Tern Street Workshop get from a board that measures "
        "7 1/4 in, "
        "once an eighth is taken off to straighten it?",
        {"board": "7 1/4 in", "strip": "3/4 in", "kerf": "1/8 in", "straightening": "1/8 in", "wanted": "20"},
    ),
    draw=draw,
    plot=plot,
    words="rip, ripping, rips per board, kerf, edging, slats, laths, leftover",
    features=("offcuts", "slat", "strip", "edging"),
)
