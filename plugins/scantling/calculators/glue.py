"""How much glue for so many joints."""

from __future__ import annotations

from scantling.calculators.coverage import film
from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape
from scantling.measure import write_area
from scantling.words import say

ONE, BOTH = "one face", "both faces"


def compute(given: Given) -> Result:
    """Return the glued area and the glue."""
    length, width, joints = given.length("length"), given.length("width"), given.count("joints")
    area = length * width * joints
    spread = area * (2 if given.choice("spread") == BOTH else 1)
    glue = film(spread, given.length("film"))
    whole = type(glue)(glue.gallons * (1 + given.number("waste") / 100))
    number, unit = whole.in_units(given)
    figures = (
        Figure("glue", say("Glue"), number, unit, main=True),
        Figure("area", say("Area of the joints"), area),
        Figure("spread", say("Area to spread"), spread),
        Figure("millilitres", say("The same in millilitres"), whole.litres * 1000, "ml", places=0),
        Figure("ounces", say("The same in fluid ounces (US)"), whole.ounces, "fl oz", places=1),
    )
    shown = given.display
    working = (
        (
            say(
                "{spread} × {film} thick + {waste}% = {whole}",
                spread=write_area(spread, system=shown.system),
                film=exactly(given.length("film"), shown),
                waste=given.number("waste"),
                whole=whole.words(given),
            )
        ),
    )
    return Result(
        figures, working, (), (say("A bead that squeezes out all along the joint is enough."),), whole
    )


def draw(given: Given, result: Result) -> Scene:
    """Return one joint, the glue between its boards."""
    long = inches(given.length("length"))
    frame = fit(long, long * 0.22, most=100, top=24)
    high = frame.high
    shapes: list[Shape] = [frame.wood(0, 0, long, high * 0.46), frame.wood(0, high * 0.54, long, high * 0.46)]
    shapes.append(frame.wood(0, high * 0.46, long, high * 0.08, look="thin", fill="new"))
    shapes.append(frame.across(0, long, given.write(given.length("length")), below=20))
    words = say("{shape} for {joints} joints", shape=result.shape.words(given), joints=given.count("joints"))
    shapes.append(label(frame.x(long / 2), frame.bottom + 54, words, size=13, look="red strong"))
    return scene(frame.bottom + 66, shapes, say("Glue in a joint"), f"{words}.")


CALCULATOR = Calculator(
    slug="glue",
    title="Glue for joints",
    question="Is there enough glue in the bottle?",
    subject="finishing",
    asks=(
        Ask("length", "Joint, long", "length", "48 in", "1200 mm", "1/8 in", "60 ft"),
        Ask("width", "Joint, wide", "length", "3/4 in", "19 mm", "1/16 in", "10 ft"),
        Ask("joints", "Joints", "count", "6", least="1", most="10000"),
        Ask("spread", "Glue is spread on", "choice", ONE, choices=(ONE, BOTH)),
        Ask("film", "Thickness of the wet glue", "length", "0.008 in", "0.2 mm", "0.0005 in", "1/8 in"),
        Ask("waste", "Lost as squeeze-out and in the brush, percent", "percent", "25", least="0", most="300"),
    ),
    compute=compute,
    formula=("glue = length × width × joints × thickness of the wet film × (1 + lost ÷ 100)",),
    source=(
        (
            "Arithmetic; a wet film of some 0.2 mm, about 200 grams to the square metre, is common "
            "practice for white glue."
        ),
    ),
    exactness="Exact for the film that you give; nobody measures it at the bench.",
    caution="Mind the label of any glue that is not water-based: air, gloves, eyes.",
    example=Example(
        "A bench top of seven boards, 60 in long and 1 1/2 in thick, has six joints.",
        {"length": "60 in", "width": "1 1/2 in", "joints": "6"},
    ),
    draw=draw,
    words="glue-up, spread rate, bottle, PVA, white glue, squeeze-out",
    features=("wood glue", "glue"),
)
