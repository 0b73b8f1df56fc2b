"""The materials list: what to put into the cart, grouped as one shops."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from scantling.cutting import CutBoard, CuttingPlan
from scantling.measure import Area, Length, Money, Weight, board_feet, board_feet_nominal
from scantling.plan import FittedHardware, FittedPlan
from scantling.report.weights import stock_density
from scantling.shop import Sale, Shop, Stock, Ware
from scantling.words import mark, say

SHELVES = {
    "lumber": mark("Lumber"),
    "hardwood": mark("Hardwood"),
    "sheets": mark("Sheet goods"),
    "pickets": mark("Fence pickets"),
    "trim": mark("Trim"),
    "hardware": mark("Hardware"),
    "finish": mark("Finish and supplies"),
}
"""The shelves of a shop, in the order in which one walks past them."""
NOTHING = Length.of_inches(0)


@dataclass(frozen=True, slots=True)
class StockLine:
    """So many pieces of one size of one stock."""

    stock: Stock
    sale: Sale
    quantity: int
    unit_price: Money

    @property
    def shelf(self) -> str:
        """Return the shelf that it stands on."""
        return self.stock.kind

    @property
    def is_owned(self) -> bool:
        """True for pieces that are there already."""
        return self.sale.owned is not None

    @property
    def cost(self) -> Money:
        """Return what the line costs."""
        return self.unit_price * self.quantity

    @property
    def length(self) -> Length:
        """Return the length of all pieces end to end."""
        return self.sale.length * self.quantity

    @property
    def area(self) -> Area:
        """Return the area of all faces that are paid for."""
        return self.length * self.sale.width

    @property
    def board_feet(self) -> Fraction:
        """Return the actual volume, in board feet of 144 cubic inches."""
        return board_feet(self.stock.thick, self.sale.width, self.length)

    @property
    def board_feet_nominal(self) -> Fraction | None:
        """Return board feet by nominal size, as a yard counts softwood; None for what has no nominal size."""
        if self.stock.nominal is None:
            return None
        thick, width = (Length.of_inches(side) for side in self.stock.nominal)
        return board_feet_nominal(thick, width, self.length)

    @property
    def weight(self) -> Weight | None:
        """Return the weight at 12 % moisture, or None where the wood is not known."""
        density = stock_density(self.stock)
        return None if density is None else density * (self.area * self.stock.thick)


@dataclass(frozen=True, slots=True)
class WareLine:
    """So many boxes, cans or pieces of one ware."""

    ware: Ware
    quantity: int
    """How many of what is sold: boxes, not screws."""
    needed: Fraction
    """How many single pieces the plan takes; 0 for what is bought by area or length."""
    area: Area | None
    length: Length | None
    unit_price: Money
    why: str
    """What it is for, as far as the plan says."""

    @property
    def shelf(self) -> str:
        """Return the shelf that it stands on."""
        return self.ware.shelf

    @property
    def cost(self) -> Money:
        """Return what the line costs."""
        return self.unit_price * self.quantity


@dataclass(frozen=True, slots=True)
class MaterialsList:
    """Everything to buy."""

    stocks: tuple[StockLine, ...]
    wares: tuple[WareLine, ...]

    @property
    def lines(self) -> tuple[StockLine | WareLine, ...]:
        """Return all lines, wood first."""
        return (*self.stocks, *self.wares)

    @property
    def cost(self) -> Money:
        """Return what everything costs together."""
        return sum((line.cost for line in self.lines), Money(0))

    @property
    def wood_cost(self) -> Money:
        """Return what boards and sheets cost together."""
        return sum((line.cost for line in self.stocks), Money(0))

    def by_shelf(self) -> Iterator[tuple[str, tuple[StockLine | WareLine, ...]]]:
        """Yield each shelf's title with its lines, as one walks through the shop."""
        for shelf, title in SHELVES.items():
            lines = tuple(line for line in self.lines if line.shelf == shelf)
            if lines:
                yield say(title), lines


def list_materials(fitted: FittedPlan, cutting: CuttingPlan, shop: Shop) -> MaterialsList:
    """Return everything to buy for a fitted plan."""
    return MaterialsList(tuple(_stock_lines(cutting.boards)), list_wares(fitted, shop))


def list_wares(fitted: FittedPlan, shop: Shop) -> tuple[WareLine, ...]:
    """Return the wares to buy for a fitted plan."""
    return tuple(_ware_lines(fitted.hardware, shop))


def _stock_lines(boards: Iterable[CutBoard]) -> Iterator[StockLine]:
    first: dict[str, CutBoard] = {}
    count: dict[str, int] = {}
    for board in boards:
        first.setdefault(board.sale.id, board)
        count[board.sale.id] = count.get(board.sale.id, 0) + 1
    for sale, board in first.items():
        yield StockLine(board.stock, board.sale, count[sale], board.sale.price or Money(0))


def _ware_lines(hardware: Iterable[FittedHardware], shop: Shop) -> Iterator[WareLine]:
    together: dict[str, list[FittedHardware]] = {}
    for item in hardware:
        together.setdefault(item.ware, []).append(item)
    for key, items in together.items():
        line = _ware_line(shop.wares[key], items)
        if line.quantity:
            yield line


def _ware_line(ware: Ware, items: list[FittedHardware]) -> WareLine:
    needed = sum((item.count for item in items), Fraction(0))
    areas = [item.area for item in items if item.area is not None]
    lengths = [item.length for item in items if item.length is not None]
    area = sum(areas, Area(0)) if areas else None
    length = sum(lengths, NOTHING) if lengths else None
    quantity = needed / ware.count
    if area is not None and ware.covers:
        quantity += area / ware.covers
    if length is not None and ware.long:
        quantity += length / ware.long
    why = "; ".join(item.why for item in items if item.why)
    return WareLine(ware, -int(-quantity // 1), needed, area, length, ware.price or Money(0), why)
