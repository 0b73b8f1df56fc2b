"""The moisture at which wood settles in air of a temperature and humidity."""

from __future__ import annotations

from fractions import Fraction

from scantling.calculators.kit import (
    Ask,
    Calculator,
    Example,
    Figure,
    Given,
    Result,
    Table,
    decimals,
    percent,
)
from scantling.calculators.kit.picture import ROOM, label, scene
from scantling.drawing import Axis, Curve, Line, Mark, Plot, Rectangle, Scene, Shape
from scantling.measure import local_decimal
from scantling.words import say

_FINE = 10**12


def settled(celsius: Fraction, humidity: Fraction) -> Fraction:
    """Return the equilibrium moisture content in percent (FPL-GTR-190 Eq. 4-5), to 12 decimals.

    Args:
        humidity: relative, percent, from 0 to below 100.
    """
    t, h = celsius, humidity / 100
    weight = 349 + Fraction("1.29") * t + Fraction("0.0135") * t**2
    k = Fraction("0.805") + Fraction("0.000736") * t - Fraction("0.00000273") * t**2
    k1 = Fraction("6.27") - Fraction("0.00938") * t - Fraction("0.000303") * t**2
    k2 = Fraction("1.91") + Fraction("0.0407") * t - Fraction("0.000293") * t**2
    kh = k * h
    first, second = k1 * kh, k1 * k2 * kh**2
    exact = 1800 / weight * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second))
    return Fraction(int(exact * _FINE), _FINE)


def compute(given: Given) -> Result:
    """Return the moisture wood comes to, and what it would be in drier and damper air."""
    celsius = _celsius(given)
    moisture = settled(celsius, given.number("humidity"))
    rows = tuple(
        (percent(str(humidity)), percent(local_decimal(settled(celsius, Fraction(humidity)), 1)))
        for humidity in (20, 30, 40, 50, 60, 70, 80)
    )
    figures = (Figure("moisture", say("Wood settles at"), moisture, "%", places=1, main=True),)
    working = (
        (
            say(
                "at {celsius} °C and {humidity}%: {moisture}%",
                celsius=decimals(_tenth(celsius), 1),
                humidity=decimals(given.number("humidity"), 1),
                moisture=decimals(_tenth(moisture), 1),
            )
        ),
    )
    table = Table(say("At the same temperature"), (say("Humidity"), say("Moisture of the wood")), rows)
    return Result(figures, working, (table,), _remarks(moisture), moisture)


def _celsius(given: Given) -> Fraction:
    return (given.number("temperature") - 32) * Fraction(5, 9)


def _tenth(number: Fraction) -> Fraction:
    return Fraction(int(number * 10 + Fraction(1, 2)), 10)


def _remarks(moisture: Fraction) -> tuple[str, ...]:
    remarks = [
        say(
            "Thin boards settle within days, thick ones take weeks: stack them with sticks between, and wait."
        )
    ]
    if moisture > 14:
        remarks.append(say("Wood this damp will shrink indoors: do not glue up furniture from it yet."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return a scale of moisture with usual conditions and the reader's own."""
    del given
    moisture = float(result.shape)
    left, wide, y = 30.0, ROOM - 60, 54.0
    most = 30.0
    shapes: list[Shape] = [Rectangle(left, y, wide, 18, "edge wood")]
    for low, high, words in (
        (6, 9, say("indoors, heated")),
        (9, 13, say("indoors, damp")),
        (15, 20, say("dry outdoors")),
    ):
        x1, x2 = (left + wide * one / most for one in (low, high))
        shapes.append(Rectangle(x1, y, x2 - x1, 18, "thin side"))
        shapes.append(label((x1 + x2) / 2, y + 52 + (13 if low == 9 else 0), words))
    for tick in range(0, 31, 5):
        x = left + wide * tick / most
        shapes += [Line(x, y + 18, x, y + 24, "edge"), label(x, y + 36, percent(str(tick)))]
    at = left + wide * min(moisture, most) / most
    shapes.append(Line(at, y - 8, at, y + 18, "accent"))
    words = percent(decimals(_tenth(result.shape), 1))
    shapes.append(label(at, y - 14, words, size=14, look="red strong halo"))
    return scene(132, shapes, say("Moisture of wood"), say("Wood settles at {words}.", words=words))


def plot(given: Given, result: Result) -> Plot:
    """Return the moisture by the humidity at the reader's temperature."""
    celsius = _celsius(given)
    points = tuple((float(at), float(settled(celsius, Fraction(at)))) for at in range(0, 96, 5))
    moisture = float(result.shape)
    mark = Mark(float(given.number("humidity")), moisture, percent(decimals(_tenth(result.shape), 1)))
    return Plot(
        Axis(say("relative humidity, percent"), 0.0, 100.0),
        Axis(say("moisture of the wood, percent"), 0.0, max(30.0, moisture)),
        (Curve(points),),
        (mark,),
        say("Moisture of wood by humidity"),
        say("The moisture rises with the humidity, steeply above 80 percent; yours is picked out."),
    )


CALCULATOR = Calculator(
    slug="moisture",
    title="Moisture that wood settles at",
    question="How dry will wood get in this room?",
    subject="wood",
    asks=(
        Ask("temperature", "Temperature", "temperature", "70 °F", "21 °C", "30 °F", "200 °F"),
        Ask("humidity", "Relative humidity, percent", "percent", "45", least="0", most="95"),
    ),
    compute=compute,
    formula=(
        "moisture = 1800 ÷ W × (K h ÷ (1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²) ÷ (1 + K₁ K h + K₁ K₂ K² h²))",
        "W = 349 + 1.29 T + 0.0135 T², K = 0.805 + 0.000736 T − 0.00000273 T²",
        "K₁ = 6.27 − 0.00938 T − 0.000303 T², K₂ = 1.91 + 0.0407 T − 0.000293 T²; T in °C, h from 0 to 1",
    ),
    source=(
        "FPL-GTR-190, Wood Handbook (2010): Eq. 4-5 and Table 4-2, after W. T. Simpson, FPL-RN-0268 (1998).",
    ),
    exactness="Within a tenth of a percent of the handbook's table, which is for practical guidance: "
    "species differ, "
    "and wood that dries stays a little damper than wood that is getting damp.",
    example=Example(
        "The finishing room at Tern Street stands at {temperature} and {humidity} percent in spring.",
        {"temperature": "68 °F", "humidity": "55"},
        {"temperature": "20 °C"},
    ),
    draw=draw,
    plot=plot,
    words="EMC, equilibrium moisture content, humidity, acclimate, drying, kiln-dried, moisture meter",
    features=("hardwood",),
    checks=("wood-movement",),
)
