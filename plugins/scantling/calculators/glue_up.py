"""The blank to glue up for a piece thicker or wider than any board."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Rectangle, Scene, Shape
from scantling.measure import Area, Length, board_feet, local_marks, round_number
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Blank:
    """Layers, each of so many strips, glued into one blank."""

    layers: int
    strips: int
    """Side by side in a layer."""
    layer: Length
    """Thickness of the stock."""
    strip: Length
    """Width of a strip after its edges are jointed; the outer edges are trimmed later."""
    thickness: Length
    width: Length
    length: Length


def plan_blank(given: Given) -> Blank:
    """Return the least blank from which the piece can be trimmed."""
    layer, stock, joint = given.length("layer"), given.length("strip"), given.length("jointing") * 2
    wanted = given.length("width") + given.length("trim")
    layers = round_number((given.length("thickness") + given.length("planing")) / layer, "up")
    strips = 1 if stock >= wanted else round_number((wanted - joint) / (stock - joint), "up")
    width = stock * strips - joint * (strips - 1)
    length = given.length("length") + given.length("ends")
    return Blank(layers, strips, layer, stock - joint, layer * layers, width, length)


def compute(given: Given) -> Result:
    """Return layers and strips, the blank's size, what comes off, and what to buy."""
    if given.length("jointing") * 2 >= given.length("strip"):
        message = say("jointing both edges takes the whole strip")
        raise given.refuse("jointing", message, given.under(given.length("strip") / 2))
    blank = plan_blank(given)
    pieces = blank.layers * blank.strips
    if pieces > 1000:
        raise given.refuse(
            "layer",
            say("{pieces} strips are too many", pieces=local_marks(f"{pieces:,}")),
            given.write(given.length("thickness")),
        )
    figures = (
        Figure("layers", say("Layers"), blank.layers, main=True),
        Figure("strips", say("Strips side by side in a layer"), blank.strips, main=True),
        Figure("pieces", say("Strips to cut"), pieces),
        Figure("blank-thickness", say("Blank, thick"), blank.thickness),
        Figure("blank-width", say("Blank, wide"), blank.width, way="down"),
        Figure("blank-length", say("Blank, long"), blank.length, way="up", times=pieces, run=say("strips")),
        Figure(
            "off-thickness", say("To come off the thickness"), blank.thickness - given.length("thickness")
        ),
        Figure("off-width", say("To come off the width"), blank.width - given.length("width")),
        Figure("running", say("Length of stock"), blank.length * pieces),
        Figure(
            "board-feet",
            say("Wood in the strips"),
            board_feet(blank.layer, given.length("strip"), blank.length) * pieces,
            "bd ft",
        ),
        Figure("glue", say("Area to spread with glue"), _glued(blank)),
    )
    return Result(figures, _working(given, blank), (), _remarks(blank), blank)


def _glued(blank: Blank) -> Area:
    faces = blank.width * blank.length * (blank.layers - 1)
    edges = blank.layer * blank.length * ((blank.strips - 1) * blank.layers)
    return faces + edges


def _working(given: Given, blank: Blank) -> tuple[str, ...]:
    shown = given.display
    thick, planing = exactly(given.length("thickness"), shown), exactly(given.length("planing"), shown)
    wide, trim = exactly(given.length("width"), shown), exactly(given.length("trim"), shown)
    return (
        say(
            "layers: ({thick} + {planing}) ÷ {layer}, rounded up, = {layers}",
            thick=thick,
            planing=planing,
            layer=exactly(blank.layer, shown),
            layers=blank.layers,
        ),
        (
            say(
                "strips: enough for {wide} + {trim}, each joint losing 2 × {jointing}, = {strips}",
                wide=wide,
                trim=trim,
                jointing=exactly(given.length("jointing"), shown),
                strips=blank.strips,
            )
        ),
    )


def _remarks(blank: Blank) -> tuple[str, ...]:
    if blank.layers > 1 and blank.strips > 1:
        return (say("Stagger the edge joints from layer to layer, as bricks are laid."),)
    if blank.layers == 1 and blank.strips == 1:
        return (say("One board is enough: nothing has to be glued up."),)
    return ()


def draw(given: Given, result: Result) -> Scene:
    """Return the end of the blank with the finished piece dashed inside."""
    blank: Blank = result.shape
    wide, high = inches(blank.width), inches(blank.thickness)
    frame = fit(wide, high, most=190, left=70)
    shapes: list[Shape] = []
    strip, layer = wide / blank.strips, inches(blank.layer)
    for row in range(blank.layers):
        shapes += [frame.wood(strip * i, layer * row, strip, layer, grain="") for i in range(blank.strips)]
    off_x = inches(blank.width - given.length("width")) / 2
    off_y = inches(blank.thickness - given.length("thickness")) / 2
    box = (frame.x(off_x), frame.y(off_y), (wide - 2 * off_x) * frame.scale, (high - 2 * off_y) * frame.scale)
    shapes.append(Rectangle(*box, look="cut"))
    shapes.append(frame.across(0, wide, given.write(blank.width), below=22))
    shapes.append(frame.upright(0, high, given.write(blank.thickness)))
    shapes.append(
        frame.across(
            off_x, wide - off_x, say("finished {width}", width=given.write(given.length("width"))), above=14
        )
    )
    told = say(
        "{layers} layers of {strips} strips; the finished piece is dashed.",
        layers=blank.layers,
        strips=blank.strips,
    )
    return scene(frame.bottom + 40, shapes, say("End of the blank"), told)


CALCULATOR = Calculator(
    slug="glue-up",
    title="Glue-up blanks",
    question="How many layers and strips make a blank big enough?",
    subject="cutting",
    asks=(
        Ask("thickness", "Finished thickness", "length", "2 3/4 in", "70 mm", "1/16 in", "24 in"),
        Ask("width", "Finished width", "length", "2 3/4 in", "70 mm", "1/8 in", "10 ft"),
        Ask("length", "Finished length", "length", "17 in", "430 mm", "1/4 in", "40 ft"),
        Ask("layer", "Thickness of the stock", "length", "1 1/2 in", "38 mm", "1/16 in", "12 in"),
        Ask("strip", "Width of the stock", "length", "3 1/2 in", "89 mm", "1/4 in", "6 ft"),
        Ask("planing", "To plane off the thickness", "length", "1/8 in", "3 mm", "0 in", "2 in"),
        Ask("trim", "To trim off the width", "length", "1/4 in", "6 mm", "0 in", "6 in"),
        Ask("ends", "To trim off the length", "length", "1 in", "25 mm", "0 in", "2 ft"),
        Ask("jointing", "Lost in jointing one edge", "length", "1/16 in", "2 mm", "0 in", "1 in"),
    ),
    compute=compute,
    formula=(
        "layers = (thickness + planing) ÷ stock thickness, rounded up",
        "strips = (width + trim − 2 × jointing) ÷ (stock width − 2 × jointing), rounded up",
        "blank width = strips × stock width − (strips − 1) × 2 × jointing",
    ),
    source=("Arithmetic; the usual allowances are common practice.",),
    exactness="Exact for the allowances that you give; glue takes no room worth reckoning.",
    caution="Short or thin blanks are dangerous in a planer: keep to the least size its manual "
    "gives, or use a hand plane.",
    example=Example(
        "Legs for the harbour bench: 2 3/4 in square and 17 in long, two layers of what a 2x4 measures.",
        {
            "thickness": "2 3/4 in",
            "width": "2 3/4 in",
            "length": "17 in",
            "layer": "1 1/2 in",
            "strip": "3 1/2 in",
        },
    ),
    draw=draw,
    words="laminate, lamination, blank, panel glue-up, butcher block, table top, oversize, allowance",
    features=("glue-up", "glued up", "hardwood"),
)
