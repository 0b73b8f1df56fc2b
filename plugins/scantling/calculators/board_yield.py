"""A small cutting plan on the spot: lengths from boards."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from scantling.calculators.kit import Ask, Batch, Calculator, Example, Figure, Given, Offer, Result, Table
from scantling.calculators.kit.picture import ROOM, label, scene
from scantling.calculators.kit.whole import Unit, common_unit
from scantling.cutting import Answer, Board, PartItem, Problem, StockItem, solve
from scantling.drawing import Rectangle, Scene, Shape, shorten, text_width
from scantling.measure import Length, Money, write_linear, write_money
from scantling.words import say

STEPS = 5_000
MOST_PIECES = 80
MOST_DRAWN = 12


@dataclass(frozen=True, slots=True)
class Cut:
    """The answer of the cutting room with what is needed to read it."""

    answer: Answer
    unit: Unit
    offers: tuple[Offer, ...]
    batches: tuple[Batch, ...]
    names: tuple[str, ...]

    def offer_of(self, board: Board) -> Offer:
        """Return which of the boards on offer it is."""
        return self.offers[int(board.stock)]


def compute(given: Given) -> Result:
    """Return the boards to buy, what is cut from each, and their price."""
    offers: tuple[Offer, ...] = given.values["boards"]
    batches: tuple[Batch, ...] = given.values["parts"]
    _must_fit(given, offers, batches)
    cut = _cut(given, offers, batches)
    boards = cut.answer.boards
    used = sum((batch.length * batch.count for batch in batches), Length(0))
    bought = sum((cut.offer_of(board).length for board in boards), Length(0))
    figures = (
        Figure("cost", say("Price of the boards"), Money(cut.answer.cost), main=True),
        Figure("boards", say("Boards to buy"), len(boards), main=True),
        Figure("shopping", say("They are"), _shopping(given, cut)),
        Figure("used", say("Of their length ends up in the pieces"), used / bought * 100, "%", places=0),
    )
    working = (
        (
            say(
                "pieces end to end: {used}; boards: {bought}",
                used=write_linear(used, system=given.display.system),
                bought=write_linear(bought, system=given.display.system),
            )
        ),
    )
    return Result(figures, working, (_table(given, cut),), _remarks(given, cut), cut)


def _must_fit(given: Given, offers: tuple[Offer, ...], batches: tuple[Batch, ...]) -> None:
    longest = max(offer.length for offer in offers) - given.length("trim") * 2
    if longest <= Length(0):
        raise given.refuse(
            "trim",
            say("trimming takes the whole board"),
            given.under((longest + given.length("trim") * 2) / 2),
        )
    if sum(batch.count for batch in batches) > MOST_PIECES:
        message = say("more than {most} pieces are for a plan with its own cutting plan", most=MOST_PIECES)
        raise given.refuse("parts", message, _listed(given, _fewer(batches)))
    for batch in batches:
        if batch.length > longest:
            shorter = tuple(Batch(one.count, min(one.length, longest)) for one in batches)
            message = say("a piece of {length} is longer than every board", length=given.write(batch.length))
            raise given.refuse("parts", message, _listed(given, shorter))


def _fewer(batches: tuple[Batch, ...]) -> tuple[Batch, ...]:
    left, kept = MOST_PIECES, []
    for batch in batches:
        if left > 0:
            kept.append(Batch(min(batch.count, left), batch.length))
            left -= batch.count
    return tuple(kept)


def _listed(given: Given, batches: tuple[Batch, ...]) -> str:
    return ", ".join(
        say("{count} of {size}", count=one.count, size=given.most(one.length)) for one in batches
    )


def _cut(given: Given, offers: tuple[Offer, ...], batches: tuple[Batch, ...]) -> Cut:
    kerf, trim = given.length("kerf"), given.length("trim")
    unit = common_unit([kerf, trim, *(one.length for one in offers), *(one.length for one in batches)])
    wide = max(1, unit.per_inch)
    names = tuple(chr(ord("A") + i) if i < 26 else f"A{i - 25}" for i in range(len(batches)))
    stock = tuple(
        StockItem(str(i), "board", unit.down(offer.length), wide, offer.price.cents, None, unit.up(trim))
        for i, offer in enumerate(offers)
    )
    parts = tuple(
        PartItem(name, "board", batch.count, unit.up(batch.length), wide)
        for name, batch in zip(names, batches, strict=True)
    )
    answer = solve(Problem("small", unit.up(kerf), 1, stock, parts), steps=STEPS)
    return Cut(answer, unit, offers, batches, names)


def _shopping(given: Given, cut: Cut) -> str:
    counts = Counter(board.stock for board in cut.answer.boards)
    bought = sorted(counts, key=lambda stock: (cut.offers[int(stock)].length, int(stock)))
    return ", ".join(
        say(
            "{count} of {size}",
            count=counts[stock],
            size=given.display.length(cut.offers[int(stock)].length, feet=True),
        )
        for stock in bought
    )


def _table(given: Given, cut: Cut) -> Table:
    rows = []
    for i, board in enumerate(cut.answer.boards):
        counts = Counter(piece.part for piece in board.pieces)
        words = ", ".join(
            say("{count} of {size}", count=counts[name], size=given.write(batch.length))
            for name, batch in zip(cut.names, cut.batches, strict=True)
            if counts[name]
        )
        rows.append(
            (
                i + 1,
                given.display.length(cut.offer_of(board).length, feet=True),
                words,
                _left(given, cut, board),
            )
        )
    return Table(say("Each board"), (say("Board"), say("Buy"), say("Cut"), say("Left over")), tuple(rows))


def _left(given: Given, cut: Cut, board: Board) -> Length:
    used = sum((cut.unit.back(piece.length) for piece in board.pieces), Length(0))
    kerfs = given.length("kerf") * len(board.pieces)
    left = cut.offer_of(board).length - given.length("trim") * 2 - used - kerfs
    return max(left, Length(0))


def _remarks(given: Given, cut: Cut) -> tuple[str, ...]:
    if cut.answer.proved:
        return (say("No cheaper choice of boards is enough: that is proved."),)
    bound = write_money(Money(cut.answer.bound), given.currency)
    return (
        say(
            "It cannot cost less than {bound} whatever the layout; a longer search might find a cheaper one.",
            bound=bound,
        ),
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the boards one below the other with their pieces."""
    cut: Cut = result.shape
    boards = cut.answer.boards[:MOST_DRAWN]
    longest = max(cut.offer_of(board).length for board in boards)
    scale = (ROOM - 80) / float(longest.inches)
    shapes: list[Shape] = []
    for i, board in enumerate(boards):
        y, offer = 14 + 32 * i, cut.offer_of(board)
        shapes.append(Rectangle(64, y, float(offer.length.inches) * scale, 22, "edge", "waste"))
        shapes.append(label(58, y + 15, given.display.length(offer.length, feet=True), anchor="end"))
        for piece in board.pieces:
            at, wide = (float(cut.unit.back(one).inches) * scale for one in (piece.x, piece.length))
            shapes.append(Rectangle(64 + at, y, wide, 22, "edge wood"))
            words = given.write(cut.unit.back(piece.length))
            if text_width(words, 11) > wide - 4:
                # the boards beside it show the unit
                words = shorten(words.removesuffix(f" {given.display.system}"), 11, wide - 4)
            shapes.append(label(64 + at + wide / 2, y + 15, words, look="ink"))
    end = 14 + 32 * len(boards)
    if len(cut.answer.boards) > len(boards):
        shapes.append(
            label(
                64,
                end + 8,
                say("and {count} more", count=len(cut.answer.boards) - len(boards)),
                anchor="start",
                look="soft",
            )
        )
        end += 16
    return scene(
        end + 6,
        shapes,
        say("Pieces on the boards"),
        say("{count} boards with their pieces.", count=len(cut.answer.boards)),
    )


CALCULATOR = Calculator(
    slug="board-yield",
    title="Pieces from boards",
    question="Which boards do I buy for these lengths?",
    subject="cutting",
    asks=(
        Ask(
            "parts",
            "Lengths to cut",
            "lengths",
            "4 of 28 1/4 in, 4 of 33 in, 2 of 14 1/2 in",
            "4 of 720 mm, 4 of 840 mm, 2 of 370 mm",
        ),
        Ask(
            "boards",
            "Boards that can be bought, with prices",
            "prices",
            "8 ft = 4.28, 10 ft = 5.85, 12 ft = 6.98",
            "2400 mm = 4.28, 3000 mm = 5.85, 3600 mm = 6.98",
            bare="ft",
        ),
        Ask("kerf", "Kerf of the saw", "length", "1/8 in", "3 mm", "0 in", "1/2 in"),
        Ask(
            "trim",
            "Trimmed off both ends first",
            "length",
            "0 in",
            "0 mm",
            "0 in",
            "1 ft",
            help="for each end",
        ),
    ),
    compute=compute,
    formula=(
        "Pieces end to end with a kerf between; the cheapest choice of boards that a short search finds.",
    ),
    source=("The cutting plan is found by the same search as for a whole plan, with less time.",),
    exactness="Every kerf is reckoned exactly. Whether a cheaper choice is possible is said beside "
    "the answer.",
    example=Example(
        "Legs, rails and stretchers of the oar rack, all from 2x3 that is sold in three lengths.",
        {
            "parts": "4 of 34 in, 4 of 22 1/2 in, 3 of 41 in",
            "boards": "8 ft = 4.10, 10 ft = 5.35, 12 ft = 6.60",
        },
    ),
    draw=draw,
    words="linear cutting, cut list, crosscut, studs, lengths, offcuts, shopping",
    features=("lumber", "2x", "1x", "pickets"),
)
