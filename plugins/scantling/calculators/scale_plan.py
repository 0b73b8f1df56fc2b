"""Another size of a plan, and what that does to its cost."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from scantling.calculators.kit import (
    Ask,
    Calculator,
    Example,
    Figure,
    Given,
    Offer,
    Result,
    Table,
    decimals,
    exactly,
)
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Axis, Curve, Mark, Plot, Rectangle, Scene, Shape
from scantling.measure import Length, Money, write_money
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Scaled:
    """A plan's own size and the one wanted, with the costs that are known."""

    usual: Length
    wanted: Length
    costs: tuple[Offer, ...]
    """By size, smallest first; every size once."""
    estimate: Fraction
    """Cents."""


def estimate(costs: tuple[Offer, ...], wanted: Length) -> Fraction:
    """Return the cost in cents on straight lines between the known sizes, and beyond them on the last."""
    if len(costs) == 1:
        return Fraction(costs[0].price.cents)
    low, high = next((pair for pair in pairwise(costs) if wanted <= pair[1].length), costs[-2:])
    part = (wanted - low.length) / (high.length - low.length)
    return max(Fraction(0), low.price.cents + part * (high.price.cents - low.price.cents))


def compute(given: Given) -> Result:
    """Return how much the plan grows and what it would cost."""
    usual, wanted = given.length("usual"), given.length("wanted")
    offers: tuple[Offer, ...] = given.values["costs"]
    costs = tuple(sorted({offer.length: offer for offer in offers}.values(), key=lambda offer: offer.length))
    scaled = Scaled(usual, wanted, costs, estimate(costs, wanted))
    before = estimate(costs, usual)
    change = Money(1).times(scaled.estimate) - Money(1).times(before)
    figures = (
        Figure("cost", say("It will cost about"), Money(1).times(scaled.estimate), main=True),
        Figure("change", say("More than at the usual size"), change, main=True),
        Figure("growth", say("The size changes by"), wanted - usual),
        Figure("ratio", say("That is, of the usual size"), wanted / usual * 100, "%", places=1),
        *_neighbours(scaled),
    )
    rows = tuple((offer.length, offer.price) for offer in costs)
    table = Table(say("Costs that are known"), (say("Size"), say("Cost")), rows)
    return Result(figures, _working(given, scaled), (table,), _remarks(scaled), scaled)


def _neighbours(scaled: Scaled) -> tuple[Figure, ...]:
    below = [offer for offer in scaled.costs if offer.length <= scaled.wanted]
    above = [offer for offer in scaled.costs if offer.length >= scaled.wanted]
    figures = []
    if below:
        figures.append(Figure("below", say("Known cost of the size at or below"), below[-1].price))
    if above:
        figures.append(Figure("above", say("Known cost of the size at or above"), above[0].price))
    return tuple(figures)


def _working(given: Given, scaled: Scaled) -> tuple[str, ...]:
    wanted = exactly(scaled.wanted, given.display)
    cost = write_money(Money(1).times(scaled.estimate), given.currency)
    ratio = decimals(Fraction(round(scaled.wanted / scaled.usual * 1000), 1000), 3)
    return (
        f"{wanted} ÷ {exactly(scaled.usual, given.display)} = {ratio}",
        say("cost at {wanted}, on the line: {cost}", wanted=wanted, cost=cost),
    )


def _remarks(scaled: Scaled) -> tuple[str, ...]:
    remarks = [
        say(
            "Boards come whole, so the true cost goes in steps: the plan's own page reckons it for your size."
        )
    ]
    if not scaled.costs[0].length <= scaled.wanted <= scaled.costs[-1].length:
        remarks.append(say("Your size lies beyond the known ones: the estimate is a guess there."))
    remarks.append(
        say("Not every part grows: a wider bench may need a middle leg, and a longer shelf sags more.")
    )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the usual size and the wanted one, from the same corner."""
    scaled: Scaled = result.shape
    usual, wanted = inches(scaled.usual), inches(scaled.wanted)
    wide = max(usual, wanted)
    frame = fit(wide, wide * 0.34, most=130, top=34)
    high = wide * 0.34
    shapes: list[Shape] = [frame.wood(0, 0, wanted, high)]
    shapes.append(Rectangle(frame.x(0), frame.y(0), usual * frame.scale, high * frame.scale, "hidden"))
    shapes.append(frame.across(0, usual, say("usual {usual}", usual=given.write(scaled.usual)), above=14))
    shapes.append(frame.across(0, wanted, say("yours {wanted}", wanted=given.write(scaled.wanted)), below=22))
    told = say(
        "The usual {usual} dashed, yours {wanted} drawn.",
        usual=given.write(scaled.usual),
        wanted=given.write(scaled.wanted),
    )
    return scene(frame.bottom + 42, shapes, say("Usual size and yours"), told)


def plot(given: Given, result: Result) -> Plot:
    """Return the known costs and the reader's size on the line."""
    scaled: Scaled = result.shape
    points = [(given.along(offer.length), offer.price.cents / 100) for offer in scaled.costs]
    at = (given.along(scaled.wanted), float(scaled.estimate) / 100)
    low, high = min(points[0][0], at[0]), max(points[-1][0], at[0])
    words = write_money(Money(1).times(scaled.estimate), given.currency)
    line = tuple(sorted({*points, at}))
    return Plot(
        Axis(say("size, {unit}", unit=given.display.system), low, high if high > low else low + 1),
        Axis(
            say("cost, {currency}", currency=given.currency),
            0.0,
            max(cost for _, cost in (*points, at)) * 1.25 + 0.01,
        ),
        (Curve(line),),
        (Mark(*at, words),),
        say("Cost by size"),
        say("The known costs joined by straight lines; at your size the line is at {words}.", words=words),
    )


CALCULATOR = Calculator(
    slug="scale-plan",
    title="Another size, another cost",
    question="What does it cost to build it wider, or smaller?",
    subject="buying",
    asks=(
        Ask("usual", "The plan's usual size", "length", "48 in", "1200 mm", "1 in", "40 ft"),
        Ask("wanted", "The size you want", "length", "54 in", "1400 mm", "1 in", "40 ft"),
        Ask(
            "costs",
            "Costs that are known, by size",
            "prices",
            "36 in = 61.20, 48 in = 74.90, 60 in = 96.40",
            "900 mm = 61.20, 1200 mm = 74.90, 1500 mm = 96.40",
            help="they stand on the plan's page",
        ),
    ),
    compute=compute,
    formula=("cost = on the straight line between the two known sizes that lie nearest on either side",),
    source=("Arithmetic (linear interpolation).",),
    exactness="An estimate: stock is bought whole. Open the plan at your size for the true figure.",
    example=Example(
        "The harbour bench is drawn 48 in wide; the wall at Tern Street has room for 54 in.",
        {"usual": "48 in", "wanted": "54 in", "costs": "36 in = 61.20, 48 in = 74.90, 60 in = 96.40"},
    ),
    draw=draw,
    plot=plot,
    words="resize, scale, bigger, smaller, custom size, budget, cost per inch",
)
