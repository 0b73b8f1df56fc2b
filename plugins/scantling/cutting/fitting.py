"""Whether each part fits some stock at all."""

from __future__ import annotations

from scantling.cutting.problem import PartItem, Problem, StockItem
from scantling.fault import Fault, Place
from scantling.words import say


def ways_to_lie(part: PartItem) -> list[tuple[int, int]]:
    """Return the (length, width) in which a part may lie on the stock."""
    ways = [(part.length, part.width)]
    if part.may_turn and part.length != part.width:
        ways.append((part.width, part.length))
    return ways


def lies_on(stock: StockItem, length: int, width: int) -> bool:
    """Return whether a piece of this size can be cut from one piece of stock alone."""
    edges = 2 * stock.trim_edges if width < stock.width else 0
    return length <= stock.length - 2 * stock.trim_ends and width <= stock.width - edges


def faults_of_fit(problem: Problem) -> list[Fault]:
    """Return a fault for each part that no stock of its family is large enough for."""
    faults = []
    for index, part in enumerate(problem.parts):
        stock = [item for item in problem.stock if item.family == part.family and item.available != 0]
        if any(lies_on(item, *way) for item in stock for way in ways_to_lie(part)):
            continue
        place = Place(("parts", index))
        if not stock:
            faults.append(
                Fault(
                    "none-to-be-had",
                    say(
                        "none of '{family}' is to be had for part '{part}'", family=part.family, part=part.id
                    ),
                    place,
                )
            )
            continue
        largest = max(stock, key=lambda item: (item.length * item.width, item.length, item.id))
        faults.append(
            Fault(
                "fits-no-stock",
                say(
                    "part '{part}' ({length} x {width}) fits no stock of '{family}'",
                    part=part.id,
                    length=part.length,
                    width=part.width,
                    family=part.family,
                ),
                place,
                f"the largest is '{largest.id}' ({largest.length} x {largest.width}); "
                "add a larger one, or make the part of two",
            )
        )
    return faults
