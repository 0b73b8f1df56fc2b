"""What a piece of wood weighs."""

from __future__ import annotations

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, decimals, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape
from scantling.measure import Volume, Weight, write_weight
from scantling.shop import WOODS, Wood
from scantling.words import say

CUBIC_FOOT = Volume(1728)


def compute(given: Given) -> Result:
    """Return the weight of one piece and of all."""
    wood, count = WOODS[given.choice("wood")], given.count("count")
    volume: Volume = given.length("thickness") * given.length("width") * given.length("length")
    each = Weight(wood.density * volume.cubic_feet)
    figures = [
        Figure(
            "weight",
            say("One piece") if count == 1 else say("All {count} together", count=count),
            each * count,
            main=True,
        ),
        _density(given, wood),
        Figure("volume", say("Wood, together"), volume * count),
    ]
    if count > 1:
        figures.insert(0, Figure("each", say("One piece"), each))
    sides = " × ".join(
        exactly(given.length(side), given.display) for side in ("thickness", "width", "length")
    )
    working = (
        f"{sides} = {decimals(volume.cubic_feet, 4)} cu ft",
        say("× {density} lb for a cubic foot × {count}", density=decimals(wood.density, 2), count=count),
    )
    basis = {
        "12%": say("The weight is that of wood at 12 percent moisture."),
        "ovendry": say("The weight is that of the species group at 12 percent moisture."),
        "panel": say("Panels of one name differ by their makers: weigh one if it matters."),
    }
    return Result(tuple(figures), working, (), (basis[wood.basis],), each)


def _density(given: Given, wood: Wood) -> Figure:
    if given.display.system == "mm":
        return Figure("density", say("A cubic metre of it"), Weight(wood.density / CUBIC_FOOT.cubic_metres))
    return Figure("density", say("A cubic foot of it"), Weight(wood.density))


def draw(given: Given, result: Result) -> Scene:
    """Return the piece with its weight on it."""
    long, wide = inches(given.length("length")), inches(given.length("width"))
    frame = fit(long, wide, most=150, left=64)
    high = max(wide, 26 / frame.scale)
    dims = type(frame)(long, high, frame.scale, frame.left, frame.top)
    words = write_weight(result.shape, system=given.display.system)
    shapes: list[Shape] = [dims.wood(0, 0, long, high)]
    shapes.append(label(dims.x(long / 2), dims.y(high / 2) + 5, words, size=15, look="red strong board"))
    shapes.append(dims.across(0, long, given.display.length(given.length("length"), feet=True), below=22))
    shapes.append(dims.upright(0, high, given.write(given.length("width"))))
    return scene(
        dims.bottom + 42, shapes, say("A piece and its weight"), say("One piece weighs {words}.", words=words)
    )


CALCULATOR = Calculator(
    slug="weight",
    title="Weight of wood",
    question="How heavy will it be?",
    subject="wood",
    asks=(
        Ask("wood", "Wood or panel", "choice", "softwood plywood", choices=tuple(WOODS)),
        Ask("thickness", "Thickness, as measured", "thickness", "3/4 in", "18 mm", "1/32 in", "24 in"),
        Ask("width", "Width", "length", "48 in", "1220 mm", "1/8 in", "10 ft"),
        Ask("length", "Length", "length", "8 ft", "2440 mm", "1/8 in", "60 ft"),
        Ask("count", "Pieces", "count", "1", least="1", most="10000"),
    ),
    compute=compute,
    formula=(
        "weight = thickness × width × length × density",
        "density = 62.4 lb/cu ft × specific gravity × 1.12 (gravity by the volume at 12 percent moisture)",
        "or 62.4 × gravity ÷ (1 + 0.009 × gravity × 12) × 1.12 (gravity by the ovendry volume)",
    ),
    source=(
        (
            "FPL-GTR-190, Wood Handbook (2010): Table 5-3. Species groups: NDS 2018, Table 12.3.3A and "
            "supplement 3.1.3."
        ),
        "Panels: from memory.",
    ),
    exactness="The sum is exact; wood of one species differs by a tenth and more from board to board.",
    caution="Get help with anything that you cannot lift with ease; a whole sheet is awkward before "
    "it is heavy.",
    example=Example(
        "Can one person carry a sheet of 23/32 in softwood plywood up the stairs at Tern Street?",
        {
            "wood": "softwood plywood",
            "thickness": "23/32 in",
            "width": "48 in",
            "length": "8 ft",
            "count": "1",
        },
    ),
    draw=draw,
    words="heavy, density, specific gravity, pounds, kilograms, species, sheet weight",
    features=("plywood", "hardwood"),
    checks=("tip-over",),
)
