"""Flat frames and rings of equal sides, mitred."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi, sin

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape, wrap
from scantling.measure import Angle, Length, cosine, local_marks, tangent
from scantling.words import say

FLATS, CORNERS, SIDE = "across the flats", "across the corners", "one side"


@dataclass(frozen=True, slots=True)
class Ring:
    """A frame of equal sides."""

    sides: int
    mitre: Angle
    """What the saw is turned from square, for both ends of every side."""
    side: Length
    """Outside, long point to long point."""
    stock: Length

    @property
    def inside(self) -> Length:
        """Return the short side of a piece."""
        return self.side - self.stock * (2 * tangent(self.mitre))

    @property
    def flats(self) -> Length:
        """Return twice the distance from the middle to the middle of a side."""
        return self.side / tangent(self.mitre)

    @property
    def corners(self) -> Length:
        """Return twice the distance from the middle to a corner."""
        return self.flats / cosine(self.mitre)


def ring_of(sides: int, measured: str, size: Length, stock: Length) -> Ring:
    """Return the ring of a size that is measured outside in one of three ways."""
    mitre = Angle(180) / sides
    if measured == SIDE:
        return Ring(sides, mitre, size, stock)
    flats = size * cosine(mitre) if measured == CORNERS else size
    return Ring(sides, mitre, flats * tangent(mitre), stock)


def compute(given: Given) -> Result:
    """Return the mitre, the sides and what the ring measures."""
    sides, measured, stock = given.count("sides"), given.choice("measured"), given.length("stock")
    ring = ring_of(sides, measured, given.length("size"), stock)
    if stock * 2 >= ring.flats:
        message = say("stock of {stock} closes the middle of the ring", stock=given.write(stock))
        raise given.refuse("stock", message, given.under(ring.flats / 2))
    figures = (
        Figure(
            "mitre",
            say("Turn the saw from square to"),
            ring.mitre,
            times=2 * sides,
            run=say("cuts"),
            main=True,
        ),
        Figure(
            "side",
            say("Each side, long point to long point"),
            ring.side,
            times=sides,
            run=say("sides"),
            main=True,
        ),
        Figure("inside", say("Each side, short point to short point"), ring.inside),
        Figure("flats", say("Across the flats, outside"), ring.flats),
        Figure("opening", say("Across the flats, inside"), ring.flats - stock * 2),
        Figure("corners", say("Across the corners, outside"), ring.corners),
        Figure("corner", say("Angle at each corner, inside"), Angle(180) - ring.mitre * 2),
        Figure(
            "stock",
            say("Stock, without turning it over"),
            (ring.side + given.length("kerf")) * sides,
            way="up",
        ),
    )
    return Result(figures, _working(given, ring), (), _remarks(ring), ring)


def _working(given: Given, ring: Ring) -> tuple[str, ...]:
    mitre, shown = local_marks(f"{float(ring.mitre.degrees):.4g}°"), given.display
    return (
        say("mitre: 180° ÷ {sides} = {mitre}", sides=ring.sides, mitre=mitre),
        (
            say(
                "short side: {side} − 2 × {stock} × tan({mitre}) = {inside}",
                side=exactly(ring.side, shown),
                stock=exactly(ring.stock, shown),
                mitre=mitre,
                inside=exactly(ring.inside, shown),
            )
        ),
    )


def _remarks(ring: Ring) -> tuple[str, ...]:
    remarks = [
        say("Cut a whole ring from scrap first: a small fault of the saw is there twice at every corner.")
    ]
    if (ring.mitre * 2).degrees.denominator > 1:
        remarks.append(
            say(
                "This mitre is not a half degree on a saw's scale: glue up two half rings and "
                "straighten the two last joints."
            )
        )
    if ring.inside < Length(3):
        remarks.append(
            say("The pieces are short: clamp them in a holder, never hold them by hand at the saw.")
        )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the ring, one side measured."""
    ring: Ring = result.shape
    far, stock = inches(ring.corners) / 2, inches(ring.stock)
    near = far - stock / float(cosine(ring.mitre))
    frame = fit(2 * far, 2 * far, most=230)
    turn = pi / 2 + pi / ring.sides
    outer, inner = (_corners(radius, far, ring.sides, turn) for radius in (far, near))
    shapes: list[Shape] = []
    for i in range(ring.sides):
        j = (i + 1) % ring.sides
        shapes.append(frame.polygon((outer[i], outer[j], inner[j], inner[i])))
    low = max(y for _, y in outer)
    half = inches(ring.side) / 2
    dims = type(frame)(2 * far, low, frame.scale, frame.left, frame.top)
    shapes.append(dims.across(far - half, far + half, given.write(ring.side), below=20))
    mitre = say("{mitre}° each end", mitre=local_marks(f"{float(ring.mitre.degrees):.4g}"))
    lines = wrap(mitre, 13, 1.6 * near * frame.scale)
    y = frame.y(far) + 4 - 8 * (len(lines) - 1)
    shapes += [
        label(frame.x(far), y + 16 * i, line, size=13, look="red strong halo") for i, line in enumerate(lines)
    ]
    told = say("A ring of {sides} sides, each {side} outside.", sides=ring.sides, side=given.write(ring.side))
    return scene(dims.bottom + 40, shapes, say("Ring of equal sides"), told)


def _corners(radius: float, middle: float, sides: int, turn: float) -> list[tuple[float, float]]:
    angles = [turn + 2 * pi * i / sides for i in range(sides)]
    return [(middle + radius * cos(angle), middle + radius * sin(angle)) for angle in angles]


CALCULATOR = Calculator(
    slug="segments",
    title="Mitred frames and rings",
    question="What mitre and length make a frame with so many sides?",
    subject="joining",
    asks=(
        Ask("sides", "Sides", "count", "8", least="3", most="72"),
        Ask(
            "measured",
            "The size is measured",
            "choice",
            FLATS,
            choices=(FLATS, CORNERS, SIDE),
            help="outside, all three",
        ),
        Ask("size", "Size", "length", "18 in", "450 mm", "1/2 in", "100 ft"),
        Ask("stock", "Width of the stock", "length", "2 1/2 in", "64 mm", "1/16 in", "4 ft"),
        Ask("kerf", "Kerf of the saw", "length", "1/8 in", "3 mm", "0 in", "1/2 in"),
    ),
    compute=compute,
    formula=(
        "mitre = 180° ÷ sides",
        "side = across the flats × tan(mitre) = across the corners × sin(mitre)",
        "short side = side − 2 × stock × tan(mitre)",
    ),
    source=("Geometry of the regular polygon.",),
    exactness="Exact to twelve decimals before rounding; the saw's scale is taken to be good to half "
    "a degree.",
    caution="Small mitred pieces can be caught and thrown: clamp them, use a stop, and follow the "
    "saw's manual.",
    example=Example(
        "A frame of eight sides for the workshop clock, 18 in across the flats, from stock 2 1/2 in wide.",
        {"sides": "8", "measured": FLATS, "size": "18 in", "stock": "2 1/2 in", "kerf": "1/8 in"},
    ),
    draw=draw,
    words="polygon, hexagon, octagon, picture frame, segmented ring, mitre angle, miter",
    features=("mitre", "rounded"),
)
