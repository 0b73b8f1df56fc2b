"""Tapered legs: the angle, and how to set a jig."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Scene, Shape, upright
from scantling.measure import Angle, Length, arc_tangent, diagonal, local_marks
from scantling.words import say

ONE_FACE, BOTH_FACES = "one face", "two opposite faces"


@dataclass(frozen=True, slots=True)
class Taper:
    """A leg that gets thinner toward its foot."""

    length: Length
    straight: Length
    """Left square at the top."""
    top: Length
    foot: Length
    faces: str

    @property
    def run(self) -> Length:
        """Return how long the taper is, along the leg."""
        return self.length - self.straight

    @property
    def taken(self) -> Length:
        """Return what is taken off one face at the foot."""
        return (self.top - self.foot) / (2 if self.faces == BOTH_FACES else 1)

    @property
    def angle(self) -> Angle:
        """Return the angle of a cut to the leg's side."""
        return arc_tangent(self.taken.inches, self.run.inches)


def compute(given: Given) -> Result:
    """Return the angle, what comes off, and the offset of the jig."""
    length, straight = given.length("length"), given.length("straight")
    top, foot = given.length("top"), given.length("foot")
    if straight >= length:
        raise given.refuse("straight", say("the leg ends before the taper begins"), given.under(length))
    if foot >= top:
        raise given.refuse("foot", say("the foot is no thinner than the top"), given.under(top))
    taper = Taper(length, straight, top, foot, given.choice("faces"))
    jig = given.length("jig")
    offset = jig * (taper.taken / taper.run)
    figures = (
        Figure("angle", say("Angle of the cut"), taper.angle, main=True),
        Figure("offset", say("Offset of the jig over {jig}", jig=given.write(jig)), offset, main=True),
        Figure("taken", say("Taken off each tapered face, at the foot"), taper.taken),
        Figure("run", say("Taper, long along the leg"), taper.run),
        Figure("cut", say("Cut, long along the slope"), diagonal(taper.run, taper.taken)),
    )
    return Result(figures, _working(given, taper, jig, offset), (), _remarks(taper), taper)


def _working(given: Given, taper: Taper, jig: Length, offset: Length) -> tuple[str, ...]:
    shown = given.display
    taken, run = exactly(taper.taken, shown), exactly(taper.run, shown)
    return (
        say(
            "angle: arctan({taken} ÷ {run}) = {angle}°",
            taken=taken,
            run=run,
            angle=local_marks(f"{float(taper.angle.degrees):.3f}"),
        ),
        say(
            "offset: {jig} × {taken} ÷ {run} = {offset}",
            jig=exactly(jig, shown),
            taken=taken,
            run=run,
            offset=exactly(offset, shown),
        ),
    )


def _remarks(taper: Taper) -> tuple[str, ...]:
    remarks = [say("Set the jig by the offset: no saw's scale shows an angle so small.")]
    if taper.faces == BOTH_FACES:
        remarks.append(
            say("For the opposite face the first cut is on the jig's side: keep the offcut there as a shim.")
        )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the leg lying down, what is cut away hatched."""
    taper: Taper = result.shape
    long, top = inches(taper.length), inches(taper.top)
    frame = fit(long, top, most=90, top=44, left=60, right=70)
    high = max(1.0, 44 / (top * frame.scale))
    start, taken = inches(taper.straight), inches(taper.taken) * high
    low = top * high
    shapes: list[Shape] = [frame.wood(0, 0, long, low, fill="cutaway")]
    under = low - taken if taper.faces == BOTH_FACES else low
    shapes.append(frame.polygon(((0, 0), (start, 0), (long, taken), (long, under), (start, low), (0, low))))
    dims = type(frame)(long, low, frame.scale, frame.left, frame.top)
    shapes.append(dims.across(0, long, given.write(taper.length), below=40))
    if start:
        shapes.append(dims.across(0, start, given.write(taper.straight), above=16))
    shapes.append(dims.across(start, long, given.write(taper.run), above=16))
    shapes.append(dims.upright(0, low, given.write(taper.top)))
    foot = given.write(taper.foot)
    shapes.append(upright(frame.y(taken), frame.y(under), dims.right + 18, foot, to=dims.right))
    told = say(
        "A leg from {top} to {foot}; what is cut away is hatched.",
        top=given.write(taper.top),
        foot=given.write(taper.foot),
    )
    if high > 1:
        told += say(" Thickness is drawn larger than it is.")
    return scene(dims.bottom + 58, shapes, say("Tapered leg"), told)


CALCULATOR = Calculator(
    slug="taper",
    title="Tapered legs",
    question="How do I set the jig for a tapered leg?",
    subject="joining",
    asks=(
        Ask("length", "Length of the leg", "length", "28 1/4 in", "720 mm", "2 in", "20 ft"),
        Ask("straight", "Left straight at the top", "length", "5 in", "130 mm", "0 in", "20 ft"),
        Ask("top", "Thickness at the top", "length", "1 3/4 in", "45 mm", "1/4 in", "2 ft"),
        Ask("foot", "Thickness at the foot", "length", "1 in", "25 mm", "1/8 in", "2 ft"),
        Ask("faces", "Tapered on", "choice", ONE_FACE, choices=(ONE_FACE, BOTH_FACES)),
        Ask("jig", "Length over which the jig is set", "length", "24 in", "600 mm", "4 in", "20 ft"),
    ),
    compute=compute,
    formula=(
        "taken off a face = (top − foot) ÷ tapered opposite faces",
        "angle = arctan(taken ÷ tapered length)",
        "offset = jig × taken ÷ tapered length",
    ),
    source=("Geometry of the right triangle.",),
    exactness="Lengths exact, the angle to twelve decimals before rounding.",
    caution="A taper is a rip with the piece at an angle: use a sled or jig that clamps the leg, "
    "with both hands on the jig, "
    "and follow the saw's manual.",
    example=Example(
        "Legs of a side table, 28 1/4 in long, from 1 3/4 in to 1 in, starting 5 in below the top.",
        {
            "length": "28 1/4 in",
            "straight": "5 in",
            "top": "1 3/4 in",
            "foot": "1 in",
            "faces": ONE_FACE,
            "jig": "24 in",
        },
    ),
    draw=draw,
    words="tapering jig, table leg, feet, slope per foot, taper angle",
    features=("taper",),
)
