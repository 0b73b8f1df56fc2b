"""What each inch costs: a chart of the cost along a plan's main size, and where to stop."""

from __future__ import annotations

from scantling.drawing import Axis, Curve, Mark, Plot, plot_scene
from scantling.formula import Value
from scantling.measure import Display, Length, write_money
from scantling.pages.diagrams import figure
from scantling.pages.drawings import Drawing, as_drawing
from scantling.pages.held import held
from scantling.pages.html import escape, items, tag
from scantling.pages.look import Look
from scantling.plan import write_choice
from scantling.report import CostChart, Report, write_value
from scantling.words import say

MOST_SPOTS = 6
"""Sweet spots that are named; the chart shows all."""


def cost_drawing(chart: CostChart, report: Report, display: Display) -> Drawing:
    """Return the chart as a drawing, with the size and cost of `report` picked out."""
    currency = report.shop.currency
    here = report.fitted.values[chart.size]
    costs = [point.cost.cents / 100 for point in chart.points]
    room = max(max(costs) - min(costs), max(costs) / 50)
    points = tuple((_across(point.value, display), point.cost.cents / 100) for point in chart.points)
    cost = report.totals.cost
    plot = Plot(
        across=Axis(f"{chart.size}, {_unit(here, display)}", points[0][0], points[-1][0]),
        up=Axis(say("cost, {currency}", currency=currency), min(costs) - room / 8, max(costs) + room / 5),
        curves=(Curve(points, steps=True),),
        marks=(Mark(_across(here, display), cost.cents / 100, write_money(cost, currency)),),
        title=say("Cost by {size}", size=chart.size),
        told=_told(chart, currency, display),
    )
    return as_drawing("cost by size", plot_scene(plot), "")


def cost_words(chart: CostChart, report: Report, drawing: Drawing, look: Look) -> str:
    """Return the chart with what it says in words."""
    currency = report.shop.currency
    spots = sorted(chart.sweet_spots, key=lambda spot: -(spot.rise.cents))[:MOST_SPOTS]
    told = [
        say(
            "{size} for {cost}; the next costs {more} more",
            size=_link(chart.size, spot.value, look),
            cost=escape(write_money(spot.cost, currency)),
            more=escape(write_money(spot.rise, currency)),
        )
        for spot in sorted(spots, key=lambda spot: spot.cost.cents)
    ]
    first = say(
        "{range} the cost moves in steps, as boards and sheets are added.",
        range=_range(chart, look.display),
    )
    first = held(tag("p", first))
    lists = tag("p", say("Good places to stop:")) + items(map(held, told)) if told else ""
    return first + figure(drawing, look) + lists


def _link(size: str, value: Value, look: Look) -> str:
    query = f"?{size.replace(' ', '+')}={write_choice(value).replace(' ', '')}"
    return tag("a", f"{escape(size)} {escape(write_value(value, look.display))}", href=look.up + query)


def _range(chart: CostChart, display: Display) -> str:
    first, last = (write_value(chart.points[at].value, display) for at in (0, -1))
    tried = ""
    if len(chart.points) > 2:
        step: Value = chart.points[1].value - chart.points[0].value  # type: ignore[operator, assignment]
        tried = say(", tried every {step},", step=write_value(step, display))
    return escape(say("From {size} {first} to {last}", size=chart.size, first=first, last=last) + tried)


def _told(chart: CostChart, currency: str, display: Display) -> str:
    first, last = chart.points[0], chart.points[-1]
    ends = [
        say("{cost} at {size}", cost=write_money(end.cost, currency), size=write_value(end.value, display))
        for end in (first, last)
    ]
    return say("The cost by {size}: {ends}, in steps between.", size=chart.size, ends=", ".join(ends))


def _across(value: Value, display: Display) -> float:
    if isinstance(value, Length):
        return float(value.mm if display.system == "mm" else value.inches)
    return float(value)  # type: ignore[arg-type]


def _unit(value: Value, display: Display) -> str:
    return display.system if isinstance(value, Length) else say("number")
