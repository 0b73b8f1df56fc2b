"""Board feet, in each of the ways in which yards count them, with waste and price."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators.kit import (
    Ask,
    Calculator,
    Example,
    Figure,
    Given,
    Result,
    decimals,
    exactly,
    fraction,
)
from scantling.calculators.kit.picture import ROOM, fit, inches, scene
from scantling.drawing import Scene, Shape
from scantling.measure import (
    Length,
    board_feet,
    board_feet_hardwood,
    board_feet_nominal,
    surface_measure,
    write_decimal,
)
from scantling.words import say

NOMINAL, ROUGH, ACTUAL = "nominal", "rough", "actual"
_RULE = {NOMINAL: board_feet_nominal, ROUGH: board_feet_hardwood, ACTUAL: board_feet}


def compute(given: Given) -> Result:
    """Return board feet a piece, together, with waste, and their price."""
    rule, count = given.choice("counted"), given.count("count")
    thickness, width, length = given.length("thickness"), given.length("width"), given.length("length")
    each = Fraction(_RULE[rule](thickness, width, length))
    if each == 0:
        message = say(
            "a board with less than half a square foot of face counts as nothing when tallied rough"
        )
        raise given.refuse("length", message, given.least(Length(72) * Length(1) / width))
    total = each * count
    buy = total * (1 + given.number("waste") / 100)
    figures = [
        Figure(
            "total",
            say("One piece") if count == 1 else say("All {count} together", count=count),
            total,
            "bd ft",
            main=True,
        ),
        Figure("buy", say("To buy, waste included"), buy, "bd ft", main=True),
    ]
    if count > 1:
        figures.insert(0, Figure("each", say("Each piece"), each, "bd ft"))
    if given.has("price"):
        price = given.money("price")
        figures.append(Figure("cost", say("Price"), price.times(buy), main=True))
        figures.append(Figure("cost-each", say("Price of one, without waste"), price.times(each)))
    return Result(tuple(figures), _working(given, each, total, buy), (), _remarks(given))


def _working(given: Given, each: Fraction, total: Fraction, buy: Fraction) -> tuple[str, ...]:
    shown, count = given.display, given.count("count")
    thickness, width, length = given.length("thickness"), given.length("width"), given.length("length")
    counted = max(thickness, Length(1)) if given.choice("counted") != ACTUAL else thickness
    if given.choice("counted") == ROUGH:
        face = surface_measure(width, length)
        first = say(
            "face: {width} × {length} = {face} sq ft, to the nearest whole one",
            width=exactly(width, shown),
            length=exactly(length, shown),
            face=face,
        )
        lines = [
            first,
            say(
                "each: {face} × {counted} in thick = {each} bd ft",
                face=face,
                counted=fraction(counted.inches),
                each=fraction(each),
            ),
        ]
    else:
        sides = " × ".join(exactly(side, shown) for side in (counted, width, length))
        lines = [say("each: {sides} ÷ 144 cu in = {each}", sides=sides, each=_feet(each))]
    waste = fraction(given.number("waste"))
    return (
        *lines,
        say("together: {count} × {each} = {total}", count=count, each=_feet(each), total=_feet(total)),
        say("with {waste}% waste: {buy}", waste=waste, buy=_feet(buy)),
    )


def _feet(number: Fraction) -> str:
    return f"{fraction(number) if number.denominator <= 64 else write_decimal(number, 2)} bd ft"


def _remarks(given: Given) -> tuple[str, ...]:
    if given.choice("counted") == ACTUAL or given.length("thickness") >= Length(1):
        return ()
    return (say("Thinner than 1 in is counted as 1 in."),)


def draw(given: Given, result: Result) -> Scene:
    """Return the board's face and its end."""
    length, width = inches(given.length("length")), inches(given.length("width"))
    thick = inches(given.length("thickness"))
    frame = fit(length, width, left=64, most=150, right=120)
    high = max(frame.high, 14 / frame.scale)
    shapes: list[Shape] = [frame.wood(0, 0, length, high)]
    end = fit(
        thick, width, left=ROOM - 84, right=56, top=frame.top, most=max(60, min(110, high * frame.scale))
    )
    shapes += [end.wood(0, 0, thick, width, look="edge side", grain="y")]
    shapes.append(end.across(0, thick, given.write(given.length("thickness")), above=12))
    bottom = max(frame.y(high), end.bottom)
    dims = type(frame)(length, high, frame.scale, frame.left, frame.top)
    shapes.append(dims.across(0, length, given.display.length(given.length("length"), feet=True), below=22))
    shapes.append(dims.upright(0, high, given.write(given.length("width"))))
    buy = result.figure("buy").value
    assert isinstance(buy, Fraction | int)
    told = say(
        "A board and its end; {count} of them with waste are {buy} board feet.",
        count=given.count("count"),
        buy=decimals(buy, 2).removeprefix("≈ "),
    )
    return scene(bottom + 42, shapes, say("The board that is counted"), told)


CALCULATOR = Calculator(
    slug="board-feet",
    title="Board feet",
    question="How many board feet is that, and what will it cost?",
    subject="buying",
    asks=(
        Ask(
            "counted",
            "How the yard counts",
            "choice",
            NOMINAL,
            choices=(NOMINAL, ROUGH, ACTUAL),
            help="nominal: softwood by its name, a 2x4 as 2 by 4; rough: hardwood in quarters, the "
            "face rounded to "
            "whole square feet; actual: the wood that is really there",
        ),
        Ask("thickness", "Thickness", "thickness", "2 in", "50 mm", "1/16 in", "24 in", help="8/4 is 2 in"),
        Ask("width", "Width", "length", "6 in", "140 mm", "1/4 in", "10 ft"),
        Ask("length", "Length", "length", "8 ft", "2400 mm", "1/4 in", "60 ft"),
        Ask("count", "Pieces", "count", "4", least="1", most="10000"),
        Ask("waste", "Allowance for waste, percent", "percent", "15", least="0", most="300"),
        Ask("price", "Price of a board foot", "money", optional=True),
    ),
    compute=compute,
    formula=(
        "board feet = thickness × width × length ÷ 144 cubic inches",
        "nominal: by the nominal thickness and width; under 1 in thick counts as 1 in",
        "rough: face in square feet, to the nearest whole one, × thickness in inches",
        "to buy = board feet × (1 + waste ÷ 100)",
    ),
    source=(
        "Board foot: NIST SP 811, Appendix B. Nominal: US Navy, Engineering Aid Basic, section 6.",
        "Rough hardwood: NHLA rules, as shown by the American Hardwood Export Council.",
    ),
    exactness="Exact by each rule; the allowance for waste is common practice: 10 to 15 percent for "
    "clear boards, "
    "20 to 30 for boards with knots or wany edges.",
    example=Example(
        "Six rough boards of 5/4 hardwood, 7 in wide and 8 ft long, at {price} a board foot, with a "
        "quarter more for waste.",
        {
            "counted": ROUGH,
            "thickness": "5/4",
            "width": "7 in",
            "length": "8 ft",
            "count": "6",
            "waste": "25",
            "price": "6.75",
        },
    ),
    draw=draw,
    words="bf, bdft, lumber volume, hardwood tally, quarters, 4/4, 8/4, surface measure, waste factor",
    features=("lumber", "hardwood", "cedar"),
)
