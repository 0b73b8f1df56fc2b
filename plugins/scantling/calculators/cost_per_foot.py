"""Which of several board lengths is the cheapest, by the foot and by the piece."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Offer, Result, Table, Value
from scantling.calculators.kit.picture import ROOM, label, scene
from scantling.drawing import Rectangle, Scene, Shape
from scantling.measure import Length, Money, write_money
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Rated:
    """One board length with what it costs by the foot and by the piece."""

    offer: Offer
    per_foot: Fraction
    """Cents for a foot, or for a metre where millimetres are shown."""
    pieces: int
    per_piece: Fraction | None
    """Cents; None where no piece fits."""


def rate(offers: tuple[Offer, ...], piece: Length | None, kerf: Length, per: Length) -> list[Rated]:
    """Return each offer rated by a length of `per` and by the piece, in the given order."""
    rated = []
    for offer in offers:
        pieces = 0 if piece is None else (offer.length + kerf) // (piece + kerf)
        per_piece = Fraction(offer.price.cents, pieces) if pieces else None
        rated.append(Rated(offer, Fraction(offer.price.cents) / (offer.length / per), pieces, per_piece))
    return rated


def _unit(given: Given) -> str:
    return say("metre") if given.display.system == "mm" else say("foot")


def _per(given: Given) -> Length:
    return Length.of_mm(1000) if given.display.system == "mm" else Length.of_feet(1)


def _cents(amount: Fraction) -> Money:
    return Money(1).times(amount)


def compute(given: Given) -> Result:
    """Return the price of a foot of each board, and of a piece where one is asked for."""
    offers: tuple[Offer, ...] = given.values["prices"]
    piece: Length | None = given.values["piece"]
    longest = max(offer.length for offer in offers)
    if piece is not None and piece > longest:
        message = say("a piece of {piece} is longer than every board", piece=given.write(piece))
        raise given.refuse("piece", message, given.most(longest))
    rated = rate(offers, piece, given.length("kerf"), _per(given))
    best = min(rated, key=lambda one: one.per_foot)
    feet = given.display.length(best.offer.length, feet=True)
    figures = [
        Figure("cheapest-foot", say("Cheapest by the {unit}", unit=_unit(given)), feet, main=True),
        Figure("per-foot", say("It costs, by the {unit}", unit=_unit(given)), _cents(best.per_foot)),
    ]
    if piece is not None:
        figures = [*_by_piece(given, rated), *figures]
    return Result(tuple(figures), _working(given, best), (_table(given, rated, piece),), (), rated)


def _by_piece(given: Given, rated: list[Rated]) -> list[Figure]:
    fits = [(one.per_piece, one) for one in rated if one.per_piece is not None]
    cost, best = min(fits, key=lambda pair: pair[0])
    feet = given.display.length(best.offer.length, feet=True)
    return [
        Figure("cheapest-piece", say("Cheapest for the pieces"), feet, main=True),
        Figure("per-piece", say("A piece then costs"), _cents(cost)),
        Figure("pieces", say("Pieces from one board"), best.pieces),
    ]


def _table(given: Given, rated: list[Rated], piece: Length | None) -> Table:
    rows: list[tuple[Value, ...]] = []
    for one in rated:
        row: tuple[Value, ...] = (
            given.display.length(one.offer.length, feet=True),
            one.offer.price,
            _cents(one.per_foot),
        )
        if piece is not None:
            row += (one.pieces, say("none fits") if one.per_piece is None else _cents(one.per_piece))
        rows.append(row)
    headings = (
        say("Board"),
        say("Price"),
        say("By the {unit}", unit=_unit(given)),
        say("Pieces"),
        say("By the piece"),
    )
    return Table(say("Each board"), headings if piece is not None else headings[:3], tuple(rows))


def _working(given: Given, best: Rated) -> tuple[str, ...]:
    price = write_money(best.offer.price, given.currency)
    feet = given.display.length(best.offer.length, feet=True)
    cost = write_money(_cents(best.per_foot), given.currency)
    return (f"{price} ÷ {feet} = " + say("{cost} a {unit}", cost=cost, unit=_unit(given)),)


def draw(given: Given, result: Result) -> Scene:
    """Return a bar for each board: its length, the price of a foot beside it."""
    rated: list[Rated] = result.shape
    longest = max(one.offer.length for one in rated)
    best = min(rated, key=lambda one: one.per_foot)
    shapes: list[Shape] = []
    for i, one in enumerate(rated):
        y, wide = 16 + 26 * i, (ROOM - 200) * float(one.offer.length / longest)
        shapes.append(Rectangle(80, y, wide, 16, "edge picked" if one is best else "edge wood"))
        shapes.append(label(74, y + 12, given.display.length(one.offer.length, feet=True), anchor="end"))
        words = say(
            "{cost} a {unit}", cost=write_money(_cents(one.per_foot), given.currency), unit=_unit(given)
        )
        shapes.append(
            label(86 + wide, y + 12, words, anchor="start", look="ink strong" if one is best else "ink")
        )
    feet = given.display.length(best.offer.length, feet=True)
    return scene(
        26 + 26 * len(rated),
        shapes,
        say("Price by length"),
        say("Boards of {feet} are the cheapest by the {unit}.", feet=feet, unit=_unit(given)),
    )


CALCULATOR = Calculator(
    slug="cost-per-foot",
    title="Price by the foot across lengths",
    question="Which length of board is the best buy?",
    subject="buying",
    asks=(
        Ask(
            "prices",
            "Lengths and prices of one board",
            "prices",
            "8 ft = 4.28, 10 ft = 5.85, 12 ft = 6.98, 16 ft = 9.96",
            "2400 mm = 4.28, 3000 mm = 5.85, 3600 mm = 6.98",
            bare="ft",
        ),
        Ask("piece", "Length of a piece you need", "length", least="1/4 in", most="60 ft", optional=True),
        Ask("kerf", "Kerf of the saw", "length", "1/8 in", "3 mm", "0 in", "1/2 in"),
    ),
    compute=compute,
    formula=(
        "price by the foot or metre = price ÷ length in feet or metres",
        (
            "pieces from a board = (board + kerf) ÷ (piece + kerf), rounded down; price of a piece = "
            "price ÷ pieces"
        ),
    ),
    source=("Arithmetic.",),
    exactness="Exact, shown to the nearest cent. The cheapest foot is not always the cheapest piece: "
    "what is left over is paid for too.",
    example=Example(
        "The Tern Street Workshop needs shelf rails of 34 1/2 in and can buy 1x4 in four lengths.",
        {
            "prices": "6 ft = 5.20, 8 ft = 6.42, 10 ft = 8.90, 12 ft = 9.97",
            "piece": "34 1/2 in",
            "kerf": "1/8 in",
        },
    ),
    draw=draw,
    words="lineal foot, linear foot, lumber price, compare lengths, best value",
    features=("lumber", "2x", "1x", "pickets"),
)
