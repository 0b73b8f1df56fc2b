"""How much finish to buy."""

from __future__ import annotations

from scantling.calculators.coverage import Liquid, edges, faces, gallon_covers
from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Panel, Result, decimals
from scantling.calculators.kit.picture import ROOM, label, scene
from scantling.drawing import Rectangle, Scene, Shape
from scantling.measure import Length, write_area
from scantling.words import say

ONE, BOTH = "one face", "both faces"


def compute(given: Given) -> Result:
    """Return the area and the finish for all coats."""
    panels: tuple[Panel, ...] = given.values["parts"]
    sides = 2 if given.choice("faces") == BOTH else 1
    area = faces(panels) * sides
    if given.length("thickness") > Length(0):
        area = area + edges(panels, given.length("thickness"))
    coats, waste = given.count("coats"), 1 + given.number("waste") / 100
    covers = gallon_covers(given, given.number("coverage"))
    coat = Liquid(area / covers)
    whole = Liquid(coat.gallons * coats * waste)
    number, unit = whole.in_units(given)
    figures = (
        Figure("finish", say("Finish to buy"), number, unit, main=True),
        Figure("area", say("Surface"), area),
        Figure("coated", say("Surface, all coats"), area * coats),
        Figure("ounces", say("The same in fluid ounces (US)"), whole.ounces, "fl oz", places=1),
        Figure("litres", say("The same in litres"), whole.litres, "l"),
        Figure("coat", say("One coat, nothing lost"), coat.ounces, "fl oz", places=1),
    )
    shown = given.display.system
    covers_each = say("sq ft to the gallon") if shown == "in" else say("m² to the litre")
    working = (
        (
            say(
                "{area} × {coats} coats ÷ {coverage} {covers_each} × {waste} = {whole}",
                area=write_area(area, system=shown),
                coats=coats,
                coverage=decimals(given.number("coverage"), 2),
                covers_each=covers_each,
                waste=decimals(waste, 3),
                whole=whole.words(given),
            )
        ),
    )
    return Result(
        figures,
        working,
        (),
        (say("The can's label is for smooth wood; rough and end grain drink more."),),
        whole,
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the coats one above the other on the wood."""
    coats = given.count("coats")
    shapes: list[Shape] = [Rectangle(24, 24 + 9 * coats, ROOM - 160, 46, "edge wood")]
    for i in range(coats):
        look, fill = ("thin top", "") if i % 2 else ("thin", "offcut")
        shapes.append(Rectangle(24, 24 + 9 * i, ROOM - 160, 9, look, fill))
    words = result.shape.words(given)
    shapes.append(
        label(24 + (ROOM - 160) / 2, 24 + 9 * coats + 28, say("{coats} coats", coats=coats), look="ink board")
    )
    shapes.append(
        label(ROOM - 128, 24 + 9 * coats / 2 + 12, words, size=15, anchor="start", look="red strong")
    )
    return scene(
        88 + 9 * coats,
        shapes,
        say("Coats of finish"),
        say("{coats} coats take {words}.", coats=coats, words=words),
    )


CALCULATOR = Calculator(
    slug="finish",
    title="Finish for a surface",
    question="How much finish do I need?",
    subject="finishing",
    asks=(
        Ask(
            "parts",
            "Pieces, length by width",
            "rectangles",
            "1 of 60 x 30 in, 4 of 29 x 3 in",
            "1 of 1500 x 760 mm, 4 of 740 x 76 mm",
        ),
        Ask("faces", "Coated on", "choice", BOTH, choices=(ONE, BOTH)),
        Ask(
            "thickness", "Their thickness, if edges are coated", "length", "3/4 in", "19 mm", "0 in", "12 in"
        ),
        Ask("coats", "Coats", "count", "3", least="1", most="20"),
        Ask(
            "coverage",
            "What it covers: square feet to the gallon, or square metres to the litre",
            "number",
            "400",
            "10",
            "1",
            "2000",
            help="it is on the can",
        ),
        Ask("waste", "Lost in rag, brush and can, percent", "percent", "15", least="0", most="200"),
    ),
    compute=compute,
    formula=("finish = surface × coats ÷ coverage × (1 + lost ÷ 100)",),
    source=(
        "Arithmetic; US gallon of 231 cubic inches: NIST Handbook 44, Appendix C. Coverage: the can's label.",
    ),
    exactness="Exact for the coverage that you give; that is the weak number.",
    caution="Rags with drying oil can set themselves alight: spread them flat outdoors to dry, or "
    "drown them in water. "
    "Mind the label's words on air and gloves.",
    example=Example(
        "Three coats of oil on the harbour table: a top of 60 by 30 in and four legs.",
        {"parts": "1 of 60 x 30 in, 4 of 29 x 3 in", "coats": "3", "coverage": "400", "waste": "15"},
        {"coverage": "10"},
    ),
    draw=draw,
    words="varnish, oil, paint, coverage, gallons, litres, coats, stain, square feet",
    features=("finish", "oil", "varnish", "paint", "polyurethane"),
)
