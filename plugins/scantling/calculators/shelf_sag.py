"""How far a shelf sags, and how long it may be."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.cube_root import cube_root
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Axis, Curve, Line, Mark, Move, Path, Plot, Scene, Shape, arrow
from scantling.measure import Length, local_marks, root, write_weight
from scantling.shop import WOODS
from scantling.words import say

EVEN, MIDDLE = "evenly", "in the middle"
RESTING, FIXED = "resting", "fixed"
TOGETHER, PER_FOOT, PER_SQUARE_FOOT = "together", "on each foot", "on each square foot"
FACTORS = {
    (EVEN, RESTING): Fraction(5, 384),
    (EVEN, FIXED): Fraction(1, 384),
    (MIDDLE, RESTING): Fraction(1, 48),
    (MIDDLE, FIXED): Fraction(1, 192),
}
"""Deflection at midspan, FPL-GTR-190 Table 9-1."""
CREEP = Fraction(3, 2)
"""How much more a shelf that stays loaded sags in the end (NDS 3.5.2, seasoned lumber; from memory)."""
NEWTONS = Fraction("0.45359237") * Fraction("9.80665")
"""A pound of force in newtons, exactly (NIST SP 811, Appendix B)."""
STIFF = tuple(name for name, wood in WOODS.items() if wood.stiffness)


@dataclass(frozen=True, slots=True)
class Shelf:
    """A loaded shelf; forces in pounds, stiffness in psi."""

    span: Length
    depth: Length
    thickness: Length
    stiffness: Fraction
    load: Fraction
    """Together."""
    load_as: str
    factor: Fraction
    limit: Fraction
    """The span over this is the sag allowed."""

    @property
    def bending(self) -> Fraction:
        """Return stiffness times the second moment of area, lb in²."""
        return self.stiffness * self.depth.inches * self.thickness.inches**3 / 12

    def load_at(self, span: Length) -> Fraction:
        """Return the load on a shelf of another span."""
        return self.load if self.load_as == TOGETHER else self.load * (span / self.span)

    def sag_at(self, span: Length) -> Length:
        """Return the sag of a shelf of another span (Eq. 9-2 without its small second term, for shear)."""
        return Length(self.factor * self.load_at(span) * span.inches**3 / self.bending)

    @property
    def sag(self) -> Length:
        """Return how far its middle goes down."""
        return self.sag_at(self.span)

    @property
    def longest(self) -> Length:
        """Return the span at which it sags just as far as is allowed."""
        if self.load_as == TOGETHER:
            return Length(root(self.bending / (self.factor * self.load * self.limit)))
        each = self.load / self.span.inches
        return Length(cube_root(self.bending / (self.factor * each * self.limit)))

    @property
    def least_thickness(self) -> Length:
        """Return the thickness at which it sags just as far as is allowed."""
        wanted = self.factor * self.load * self.span.inches**2 * self.limit
        return Length(cube_root(12 * wanted / (self.stiffness * self.depth.inches)))


def _shelf(given: Given) -> Shelf:
    wood = WOODS[given.choice("wood")]
    stiffness = given.number("stiffness") * 1_000_000 if given.has("stiffness") else Fraction(wood.stiffness)
    span, depth = given.length("span"), given.length("depth")
    load, load_as = given.weight("load").pounds, given.choice("load-as")
    if load_as == PER_FOOT:
        load *= span.feet
    elif load_as == PER_SQUARE_FOOT:
        load *= (span * depth).square_feet
    factor = FACTORS[given.choice("spread"), given.choice("ends")]
    return Shelf(
        span, depth, given.length("thickness"), stiffness, load, load_as, factor, given.number("limit")
    )


def compute(given: Given) -> Result:
    """Return the sag, how it compares with the limit, and what would keep the limit."""
    shelf = _shelf(given)
    sag, allowed = shelf.sag, shelf.span / shelf.limit
    figures = (
        Figure("sag", say("Sag in the middle"), sag, fine=True, main=True),
        Figure("allowed", say("Sag allowed"), allowed, fine=True),
        Figure("ratio", say("Span over sag"), shelf.span / sag, places=0),
        Figure("longest", say("Longest span for that limit"), shelf.longest, way="down", main=True),
        Figure("thickness", say("Or this thickness at your span"), shelf.least_thickness, way="up"),
        Figure("later", say("Sag after years under the load, about"), sag * CREEP, fine=True),
        Figure("own", say("The shelf's own weight adds"), _own(given, shelf), fine=True),
    )
    return Result(figures, _working(given, shelf), (), _remarks(given, shelf), shelf)


def _own(given: Given, shelf: Shelf) -> Length:
    """Return the sag under the shelf's own weight, which lies evenly whatever the load does."""
    wood = WOODS[given.choice("wood")]
    weight = wood.density * (shelf.span * shelf.depth * shelf.thickness).cubic_feet
    return Length(FACTORS[EVEN, given.choice("ends")] * weight * shelf.span.inches**3 / shelf.bending)


def _working(given: Given, shelf: Shelf) -> tuple[str, ...]:
    span, depth, thick = (exactly(one, given.display) for one in (shelf.span, shelf.depth, shelf.thickness))
    load, stiffness, second = _in_units(shelf, metric=given.display.system == "mm")
    return (
        f"I = {depth} × ({thick})³ ÷ 12 = {second}",
        (
            say(
                "sag = {factor} × {load} × ({span})³ ÷ ({stiffness} × {bending}) = {sag}",
                factor=shelf.factor,
                load=load,
                span=span,
                stiffness=stiffness,
                bending=second,
                sag=exactly(shelf.sag, given.display),
            )
        ),
    )


def _in_units(shelf: Shelf, *, metric: bool) -> tuple[str, str, str]:
    """Return load, stiffness and second moment of area in units that go together, to four figures."""
    second = shelf.bending / shelf.stiffness
    if not metric:
        return f"{_four(shelf.load)} lb", f"{_four(shelf.stiffness)} psi", f"{_four(second)} in⁴"
    inch = Length(1).mm
    stiffness = shelf.stiffness * NEWTONS / inch**2
    return (
        f"{_four(shelf.load * NEWTONS)} N",
        f"{_four(stiffness)} N/mm²",
        f"{_four(second * inch**4)} mm⁴",
    )


def _four(number: Fraction) -> str:
    return local_marks(f"{float(f'{float(number):.4g}'):,.12g}")


def _remarks(given: Given, shelf: Shelf) -> tuple[str, ...]:
    remarks = []
    if shelf.sag > shelf.span / shelf.limit:
        remarks.append(
            say(
                "This is more than you allow: shorten the span, add a stiff strip to the front edge, "
                "or use thicker stock."
            )
        )
    if shelf.sag * 20 > shelf.span:
        remarks.append(say("So much bending is beyond what the formula is good for: the shelf may break."))
    if given.choice("ends") == FIXED:
        remarks.append(
            say("Shelves in dados or on pins count as resting; fixed ends are rarer than they look.")
        )
    if given.choice("wood").endswith("plywood") and not given.has("stiffness"):
        remarks.append(say("Plywood is stiff along the grain of its faces: lay that grain along the shelf."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the loaded shelf, its sag drawn larger than it is."""
    shelf: Shelf = result.shape
    span = inches(shelf.span)
    frame = fit(span, span * 0.3, most=120, top=66, left=56, right=56)
    bend = min(30.0, 6 + 1500 * inches(shelf.sag) / span)
    thick = 9.0
    left, right, y = frame.left, frame.right, frame.top
    lines = [
        (left, y, right, y + 0.0, bend),
        (left, y + thick, right, y + thick, bend),
    ]
    shapes: list[Shape] = [_bow(lines[0], lines[1])]
    shapes += [Line(x, y + thick, x, y + 60, "bold") for x in (left, right)]
    count = 9 if given.choice("spread") == EVEN else 1
    for i in range(count):
        part = (i + 0.5) / count
        low = y + bend * 4 * part * (1 - part)
        shapes.append(arrow(left + (right - left) * part, low - 26, left + (right - left) * part, low - 2))
    shapes.append(Line(left, y + thick, right, y + thick, "hidden"))
    middle = (left + right) / 2
    words = say("sag {sag}", sag=given.fine(shelf.sag))
    shapes.append(label(middle, y + thick + bend + 18, words, look="red strong halo", size=12))
    load = given.weight("load")
    shapes.append(
        label(
            middle,
            y - 34,
            write_weight(load, system=given.display.system) + " " + say(given.choice("load-as")),
        )
    )
    base = type(frame)(span, 60 / frame.scale, frame.scale, left, y)
    shapes.append(base.across(0, span, given.write(shelf.span), below=20))
    told = say(
        "A shelf over {span} sags {sag}; the bend is drawn larger than it is.",
        span=given.write(shelf.span),
        sag=given.fine(shelf.sag),
    )
    return scene(base.bottom + 40, shapes, say("Loaded shelf"), told)


def _bow(
    upper: tuple[float, float, float, float, float], lower: tuple[float, float, float, float, float]
) -> Path:
    """Return the outline of a bent board; a quadratic curve dips half as far as its control point."""
    left, top, right, _, bend = upper
    low = lower[1]
    middle = (left + right) / 2
    moves = (
        Move((right, top), ((middle, top + 2 * bend),)),
        Move((right, low)),
        Move((left, low), ((middle, low + 2 * bend),)),
    )
    return Path((left, top), moves, "edge wood", closed=True)


def plot(given: Given, result: Result) -> Plot:
    """Return the sag by the span, with the limit."""
    shelf: Shelf = result.shape
    far = max(shelf.span, shelf.longest) * Fraction(3, 2)
    far = min(far, shelf.span * 3)
    spans = [far * Fraction(i, 30) for i in range(31)]
    curve = tuple((given.along(span), given.along(shelf.sag_at(span))) for span in spans)
    limit = tuple((given.along(span), given.along(span / shelf.limit)) for span in (spans[0], spans[-1]))
    most = max(given.along(shelf.sag), given.along(far / shelf.limit)) * 1.4
    seen = tuple(point for point in curve if point[1] <= most)
    words = f"{given.write(shelf.span)}: {given.fine(shelf.sag)}"
    return Plot(
        Axis(say("span, {unit}", unit=given.display.system), 0.0, given.along(far)),
        Axis(say("sag, {unit}", unit=given.display.system), 0.0, most),
        (Curve(seen), Curve(limit, say("limit"), "cut")),
        (Mark(given.along(shelf.span), given.along(shelf.sag), words),),
        say("Sag by the span"),
        say(
            "The sag grows fast with the span; your shelf, {words}, is picked out, and the limit "
            "is a dashed line.",
            words=words,
        ),
    )


CALCULATOR = Calculator(
    slug="shelf-sag",
    title="Shelf sag and span",
    question="Will this shelf sag, and how long may it be?",
    subject="wood",
    asks=(
        Ask("wood", "Wood or panel", "choice", "eastern white pine", choices=STIFF),
        Ask("span", "Span between supports", "length", "36 in", "900 mm", "4 in", "20 ft"),
        Ask("depth", "Depth of the shelf", "length", "11 1/4 in", "285 mm", "1 in", "6 ft"),
        Ask("thickness", "Thickness", "length", "3/4 in", "19 mm", "1/8 in", "6 in"),
        Ask("load", "Load", "weight", "25 lb", "12 kg", "0.1 lb", "5000 lb"),
        Ask("load-as", "That load lies", "choice", PER_FOOT, choices=(PER_FOOT, TOGETHER, PER_SQUARE_FOOT)),
        Ask("spread", "It is spread", "choice", EVEN, choices=(EVEN, MIDDLE)),
        Ask(
            "ends",
            "The ends are",
            "choice",
            RESTING,
            choices=(RESTING, FIXED),
            help="on pins or in dados: resting",
        ),
        Ask(
            "limit",
            "Sag allowed: the span divided by",
            "number",
            "384",
            least="20",
            most="5000",
            help="384 is 1/32 in to the foot, about what an eye sees; 144 is a limit for cabinet shelves",
        ),
        Ask(
            "stiffness",
            "Stiffness, million psi, if you know it",
            "number",
            least="0.01",
            most="10",
            optional=True,
            help="modulus of elasticity; left open, that of the wood chosen",
        ),
    ),
    compute=compute,
    formula=(
        "sag = k × load × span³ ÷ (E × I), I = depth × thickness³ ÷ 12",
        "k: spread evenly 5/384 resting, 1/384 fixed; in the middle 1/48 resting, 1/192 fixed",
    ),
    source=(
        "FPL-GTR-190, Wood Handbook (2010): Eq. 9-2 and Table 9-1; stiffness of clear wood from Table 5-3.",
        (
            "Span ÷ 144 for casework shelves: Architectural Woodwork Standards, edition 1 (2009). "
            "1/32 in to the foot: common practice."
        ),
    ),
    exactness="The formula is exact for a straight, even board; wood is not: boards of one species "
    "differ by a fifth "
    "and more, knots make it worse, and shear (left out) adds some 1 or 2 percent.",
    caution="This is about looks, not about strength: fixings and supports must carry the load as well.",
    example=Example(
        "Book shelves of white pine, 3/4 in by 11 1/4 in, 36 in between the sides, with 20 lb of "
        "books on each foot.",
        {
            "wood": "eastern white pine",
            "span": "36 in",
            "depth": "11 1/4 in",
            "thickness": "3/4 in",
            "load": "20 lb",
        },
    ),
    draw=draw,
    plot=plot,
    words="deflection, bend, bookshelf, bookcase, span table, modulus of elasticity, load",
    features=("shel", "bookcase"),
    checks=("shelf-sag",),
)
