"""From the price of a board foot to the price of a piece, and back."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators.board_feet import ACTUAL, NOMINAL, ROUGH
from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, decimals
from scantling.calculators.kit.picture import ROOM, label, scene
from scantling.drawing import Rectangle, Scene, Shape, arrow
from scantling.measure import (
    Length,
    Money,
    board_feet,
    board_feet_hardwood,
    board_feet_nominal,
    write_board_feet,
    write_money,
)
from scantling.words import say

BOARD_FOOT, PIECE = "a board foot", "a piece"
_RULE = {NOMINAL: board_feet_nominal, ROUGH: board_feet_hardwood, ACTUAL: board_feet}


def compute(given: Given) -> Result:
    """Return the price that is not known, and others that follow."""
    thickness, width, length = given.length("thickness"), given.length("width"), given.length("length")
    feet = Fraction(_RULE[given.choice("counted")](thickness, width, length))
    if feet == 0:
        message = say(
            "a board with less than half a square foot of face counts as nothing when tallied rough"
        )
        raise given.refuse("length", message, given.least(Length(72) * Length(1) / width))
    price = given.money("price")
    known_foot = given.choice("known") == BOARD_FOOT
    piece = Fraction(price.cents) * feet if known_foot else Fraction(price.cents)
    foot = Fraction(price.cents) if known_foot else Fraction(price.cents) / feet
    main = Figure("piece", say("A piece costs"), _money(piece), main=known_foot)
    other = Figure("board-foot", say("A board foot costs"), _money(foot), main=not known_foot)
    figures = (
        *((main, other) if known_foot else (other, main)),
        Figure("feet", say("Board feet in a piece"), feet, "bd ft"),
        *_by_size(given, piece, width, length),
    )
    sign, currency = ("×", given.currency) if known_foot else ("÷", given.currency)
    found = _money(piece if known_foot else foot)
    working = (
        f"{write_money(price, currency)} {sign} {write_board_feet(feet)} = {write_money(found, currency)}",
    )
    return Result(figures, working, (), (), (feet, _money(piece), _money(foot)))


def _by_size(given: Given, piece: Fraction, width: Length, length: Length) -> tuple[Figure, ...]:
    face = width * length
    if given.display.system == "mm":
        return (
            Figure("linear", say("A metre of its length costs"), _money(piece / length.mm * 1000)),
            Figure("face", say("A square metre of its face costs"), _money(piece / face.square_metres)),
        )
    return (
        Figure("linear", say("A foot of its length costs"), _money(piece / length.feet)),
        Figure("face", say("A square foot of its face costs"), _money(piece / face.square_feet)),
    )


def _money(cents: Fraction) -> Money:
    return Money(1).times(cents)


def draw(given: Given, result: Result) -> Scene:
    """Return a board foot and the piece with their prices."""
    feet, piece, foot = result.shape
    shapes: list[Shape] = [
        Rectangle(24, 34, 70, 70, "edge wood"),
        label(59, 24, say("a board foot"), look="soft"),
        label(59, 74, write_money(foot, given.currency), size=14, look="ink strong board"),
        Rectangle(174, 50, ROOM - 198, 38, "edge wood"),
        label(
            174 + (ROOM - 198) / 2,
            40,
            say("a piece of {feet} bd ft", feet=decimals(Fraction(round(feet * 100), 100), 2)),
            look="soft",
        ),
        label(
            174 + (ROOM - 198) / 2, 74, write_money(piece, given.currency), size=14, look="ink strong board"
        ),
        arrow(104, 69, 164, 69) if given.choice("known") == BOARD_FOOT else arrow(164, 69, 104, 69),
    ]
    return scene(
        118, shapes, say("Prices"), say("A piece costs {piece}.", piece=write_money(piece, given.currency))
    )


CALCULATOR = Calculator(
    slug="piece-price",
    title="Board-foot price and piece price",
    question="The yard quotes board feet: what does one piece cost?",
    subject="buying",
    asks=(
        Ask("known", "The price is for", "choice", BOARD_FOOT, choices=(BOARD_FOOT, PIECE)),
        Ask("price", "Price", "money", "5.40", least="0.01", most="100000"),
        Ask("counted", "How the yard counts", "choice", NOMINAL, choices=(NOMINAL, ROUGH, ACTUAL)),
        Ask("thickness", "Thickness", "thickness", "1 in", "25 mm", "1/16 in", "24 in", help="4/4 is 1 in"),
        Ask("width", "Width", "length", "6 in", "150 mm", "1/4 in", "10 ft"),
        Ask("length", "Length", "length", "8 ft", "2400 mm", "1/4 in", "60 ft"),
    ),
    compute=compute,
    formula=("price of a piece = price of a board foot × board feet in it",),
    source=("As for board feet: NIST SP 811; NHLA rules for rough hardwood.",),
    exactness="Exact, shown to the nearest cent.",
    example=Example(
        "A 1x6 of 8 ft costs {price} at the yard: is rough stock by the board foot any cheaper?",
        {
            "known": PIECE,
            "price": "14.80",
            "counted": NOMINAL,
            "thickness": "1 in",
            "width": "6 in",
            "length": "8 ft",
        },
    ),
    draw=draw,
    words="bf price, per board foot, per linear foot, compare prices, hardwood price",
    features=("lumber", "hardwood"),
)
