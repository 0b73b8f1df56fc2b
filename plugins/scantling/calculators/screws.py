"""Which screw, and which holes to drill for it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Polygon, Rectangle, Scene, Shape
from scantling.measure import Length, System, Way, local_marks, round_number
from scantling.words import say

ROOTS = {2: "0.054", 4: "0.075", 6: "0.094", 8: "0.112", 10: "0.130", 12: "0.148", 14: "0.165"}
"""Diameter at the bottom of the thread, in; charts differ by a tenth and more (a screw chart, advisory)."""
SOFT, HARD = "softwood", "hardwood"
PILOT = {SOFT: Fraction(7, 10), HARD: Fraction(9, 10)}
"""Pilot hole over root diameter (American Wood Council's rule for wood screws)."""
LENGTHS = {
    "in": tuple(Length(Fraction(n, 8)) for n in (4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 28, 32)),
    "mm": tuple(Length.of_mm(n) for n in (12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100)),
}
"""Lengths that are usually sold."""
DRILLS = {"in": Length(Fraction(1, 64)), "mm": Length.of_mm(Fraction(1, 2))}
"""Steps in which drills are usually sold."""
GRIP = 6
"""Least penetration in diameters (NDS 2018, 12.1.5.6)."""


@dataclass(frozen=True, slots=True)
class Screw:
    """A screw through one piece into another."""

    gauge: int
    first: Length
    """Thickness of the piece under the head."""
    second: Length
    wood: str
    system: System = "in"

    @property
    def shank(self) -> Length:
        """Return the diameter of the shank, 0.060 in and 0.013 in for each gauge (ASME B18.6.1)."""
        return Length(Fraction(60 + 13 * self.gauge, 1000))

    @property
    def pilot(self) -> Length:
        """Return the diameter of the pilot hole."""
        return Length(Fraction(ROOTS[self.gauge]) * PILOT[self.wood])

    @property
    def least(self) -> Length:
        """Return the shortest screw that grips."""
        return self.first + self.shank * GRIP

    @property
    def most(self) -> Length:
        """Return the longest screw that stays 1/8 in inside the second piece."""
        return self.first + self.second - Length(Fraction(1, 8))

    @property
    def advised(self) -> Length | None:
        """Return the shortest usual length that grips and stays inside, or None."""
        fits = [length for length in LENGTHS[self.system] if self.least <= length <= self.most]
        return fits[0] if fits else None


def drill(diameter: Length, system: System, way: Way = "nearest") -> Length:
    """Return the drill, in steps of 1/64 in or 0.5 mm: the nearest, or the next one up."""
    step = DRILLS[system]
    return step * max(1, round_number(diameter / step, way))


def compute(given: Given) -> Result:
    """Return length, shank hole and pilot hole."""
    screw = Screw(
        int(given.choice("gauge")),
        given.length("first"),
        given.length("second"),
        given.choice("wood"),
        given.display.system,
    )
    if screw.least > screw.most:
        thick = screw.shank * GRIP + Length(Fraction(1, 8))
        message = say(
            "no screw of this gauge grips in {second} without coming out", second=given.write(screw.second)
        )
        raise given.refuse("second", message, given.least(thick))
    figures = [
        Figure("pilot", say("Pilot hole, drill"), drill(screw.pilot, screw.system), fine=True, main=True),
        Figure(
            "shank-hole",
            say("Hole through the first piece, drill"),
            drill(screw.shank, screw.system, "up"),
            fine=True,
            main=True,
        ),
        Figure("shank", say("The screw's shank"), screw.shank, fine=True),
        Figure("pilot-exact", say("Pilot hole by the rule"), screw.pilot, fine=True),
        Figure("shortest", say("Shortest screw that grips"), screw.least, way="up"),
        Figure("longest", say("Longest that stays inside"), screw.most, way="down"),
    ]
    if screw.advised is not None:
        figures.insert(0, Figure("length", say("Screw, long"), screw.advised, main=True))
    return Result(tuple(figures), _working(screw), (), _remarks(screw), screw)


def _working(screw: Screw) -> tuple[str, ...]:
    share = int(PILOT[screw.wood] * 100)
    return (
        say(
            "shank: 0.060 + {gauge} × 0.013 = {shank} in",
            gauge=screw.gauge,
            shank=local_marks(f"{float(screw.shank.inches):.3f}"),
        ),
        say(
            "pilot: {share}% of {roots} in = {pilot} in",
            share=share,
            roots=local_marks(ROOTS[screw.gauge]),
            pilot=local_marks(f"{float(screw.pilot.inches):.4f}"),
        ),
    )


def _remarks(screw: Screw) -> tuple[str, ...]:
    remarks = [say("Try it in scrap of the same wood: charts differ, and so do screws of one gauge.")]
    if screw.advised is None:
        remarks.append(say("None of the usual lengths lies between shortest and longest: try another gauge."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return a section through both pieces with the holes and the screw."""
    screw: Screw = result.shape
    first, second = inches(screw.first), inches(screw.second)
    high = first + second
    frame = fit(high * 1.7, high, most=230, top=30, left=56, right=52)
    wide, middle = frame.wide, frame.wide / 2
    drawn = screw.least if screw.advised is None else screw.advised
    length = inches(drawn)
    shank, pilot = inches(drill(screw.shank, screw.system, "up")), inches(drill(screw.pilot, screw.system))
    shapes: list[Shape] = [
        frame.wood(0, 0, wide, first),
        frame.wood(0, first, wide, second, look="edge side"),
    ]
    for width, y, deep in ((shank, 0.0, first), (pilot, first, min(length, high) - first)):
        box = (frame.x(middle - width / 2), frame.y(y), width * frame.scale, deep * frame.scale)
        shapes.append(Rectangle(*box, look="edge paper"))
    head = shank * 1.0
    cone = ((middle - head, 0.0), (middle + head, 0.0), (middle, head))
    shapes.append(Polygon(frame.points(cone), "edge paper"))
    tip = ((middle - pilot / 2, first), (middle + pilot / 2, first), (middle, min(length, high)))
    shapes.append(Polygon(frame.points(tip), "thin solid"))
    x = frame.x(middle) + max(shank * frame.scale, 8) + 8
    pilot_words = say("pilot {pilot}", pilot=given.fine(drill(screw.pilot, screw.system)))
    shapes.append(
        label(
            x,
            frame.y(first / 2) + 4,
            say("through {size}", size=given.fine(drill(screw.shank, screw.system, "up"))),
            anchor="start",
            look="ink board",
        )
    )
    shapes.append(label(x, frame.y(first + second * 0.4) + 4, pilot_words, anchor="start", look="ink board"))
    shapes.append(frame.upright(0, first, given.write(screw.first)))
    shapes.append(frame.upright(first, high, given.write(screw.second)))
    right = type(frame)(wide, high, frame.scale, frame.right + 30, frame.top)
    shapes.append(right.upright(0, length, given.write(drawn), beside=8))
    return scene(
        frame.bottom + 16,
        shapes,
        say("Screw, section"),
        say("A hole through the first piece, {pilot_words} in the second.", pilot_words=pilot_words),
    )


CALCULATOR = Calculator(
    slug="screws",
    title="Screws and pilot holes",
    question="Which screw, and what do I drill for it?",
    subject="finishing",
    asks=(
        Ask("gauge", "Gauge of the screw", "choice", "8", choices=tuple(str(gauge) for gauge in ROOTS)),
        Ask("first", "Piece under the head, thick", "length", "3/4 in", "19 mm", "1/8 in", "4 in"),
        Ask("second", "Piece that it grips in, thick", "length", "1 1/2 in", "38 mm", "1/4 in", "12 in"),
        Ask("wood", "That piece is", "choice", SOFT, choices=(SOFT, HARD)),
    ),
    compute=compute,
    formula=(
        "shank = 0.060 in + 0.013 in × gauge",
        "pilot = 70% of the root in softwood, 90% in hardwood",
        "length: at least 6 shanks into the second piece, and 1/8 in short of coming out",
    ),
    source=(
        (
            "ASME B18.6.1 (shank; from memory, end values compared). Pilot: American Wood Council's rule "
            "for wood screws."
        ),
        "NDS 2018, 12.1.5.6 (grip). Root diameters: a public screw chart; others print up to a sixth more.",
    ),
    exactness="A rule of thumb to start from: charts for the same screw differ by more than a drill size.",
    caution="Wear eye protection when drilling, and clamp small pieces.",
    example=Example(
        "Battens of 3/4 in are screwed to 2x4 legs of the potting table with number 8 screws.",
        {"gauge": "8", "first": "3/4 in", "second": "1 1/2 in", "wood": SOFT},
    ),
    draw=draw,
    words="pilot hole, clearance hole, shank, drill bit, screw length, gauge, number 8",
    features=("screw", "wood screw"),
    checks=("fastener-length", "fastener-edge"),
)
