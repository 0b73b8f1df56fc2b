"""The cutting plan of a whole fitted plan: boards to buy, and what is cut from each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from scantling.cutting.answer import Answer, Board
from scantling.cutting.memory import Memory, solve_by_family
from scantling.cutting.order import Order, Wanted, write_order
from scantling.cutting.problem import Problem
from scantling.cutting.steps import DEFAULT_STEPS
from scantling.cutting.trimmings import OffcutPiece, cut_trimmings
from scantling.fault import Fault, Faulty
from scantling.measure import Length, Money
from scantling.plan import FittedPart, FittedPlan
from scantling.shop import Sale, Shop, Stock
from scantling.words import say


@dataclass(frozen=True, slots=True)
class CutPiece:
    """One blank as it lies on its board."""

    part: FittedPart
    plan: str
    """Slug of the plan that the part belongs to."""
    number: int
    """Which of the part's blanks, from 1, over all boards."""
    x: Length
    y: Length
    length: Length
    """Along the board, as it lies."""
    width: Length
    short_by: Length
    """How much narrower than asked it ends up, where its part allows that."""


@dataclass(frozen=True, slots=True)
class KeptOffcut:
    """A rectangle worth keeping."""

    x: Length
    y: Length
    length: Length
    width: Length


@dataclass(frozen=True, slots=True)
class CutBoard:
    """One board or sheet with what is cut from it."""

    number: int
    """From 1, among the boards of the same stock."""
    stock: Stock
    sale: Sale
    pieces: tuple[CutPiece, ...]
    offcuts: tuple[KeptOffcut, ...]
    raw: Board
    """The same in units, with the order of cuts."""

    @property
    def name(self) -> str:
        """Return how lists and diagrams call it: "2x4 no. 1"."""
        return say("{stock} no. {number}", stock=self.stock.key, number=self.number)


@dataclass(frozen=True, slots=True)
class CuttingPlan:
    """What to buy and where each part lies on it."""

    boards: tuple[CutBoard, ...]
    from_offcuts: tuple[OffcutPiece, ...]
    cost: Money
    bound: Money
    """No cutting plan for these parts costs less: proven."""
    order: Order

    @property
    def is_proved(self) -> bool:
        """True if the bound is reached."""
        return self.cost == self.bound


@dataclass(frozen=True, slots=True)
class Lot:
    """A fitted plan that is built some times over."""

    fitted: FittedPlan
    copies: int = 1


def cut_plan(
    fitted: FittedPlan, shop: Shop, *, steps: int = DEFAULT_STEPS, memory: Memory | None = None
) -> CuttingPlan:
    """Return the cheapest cutting plan found for a fitted plan.

    Raises:
        Faulty: where a part marked as coming from an offcut does not fit and has no other stock,
            or where parts cannot be cut from what the shop sells.
    """
    return cut_together((Lot(fitted),), shop, steps=steps, memory=memory)


def cut_together(
    lots: Iterable[Lot], shop: Shop, *, steps: int = DEFAULT_STEPS, memory: Memory | None = None
) -> CuttingPlan:
    """Return the cheapest cutting plan found for several fitted plans, bought and cut as one.

    Raises:
        Faulty: as `cut_plan`.
    """
    lots = tuple(lots)
    strips: list[OffcutPiece] = []
    wanted: list[Wanted] = []
    for number, lot in enumerate(lots):
        from_offcuts, from_stock = _cut_lot(lot, number if len(lots) > 1 else None, shop)
        strips += from_offcuts
        wanted += from_stock
    order = write_order(wanted, shop, name=" ".join(lot.fitted.plan.slug for lot in lots))
    answer = solve_by_family(order.problem, steps=steps, memory=memory)
    return CuttingPlan(
        boards=tuple(_boards(answer, order, {want.id: want for want in wanted})),
        from_offcuts=tuple(strips),
        cost=Money(answer.cost),
        bound=Money(answer.bound),
        order=order,
    )


def plan_problem(fitted: FittedPlan, shop: Shop) -> Problem:
    """Return what there is to solve for a fitted plan, for who asks for its cost alone.

    Raises:
        Faulty: where a part marked as coming from an offcut does not fit and has no other stock.
    """
    _, wanted = _cut_lot(Lot(fitted), None, shop)
    return write_order(wanted, shop).problem


def _cut_lot(lot: Lot, number: int | None, shop: Shop) -> tuple[list[OffcutPiece], list[Wanted]]:
    """Return what is cut from offcut strips, and what is to be cut from stock."""
    fitted = lot.fitted
    hosts = {offcut.of for offcut in fitted.offcuts}
    trimmed = [part for part in fitted.parts if part.part.source.offcut_of in hosts]
    pieces, left = cut_trimmings(trimmed, fitted.offcuts, shop.kerf)
    from_trimmings = {part.id for part in trimmed}
    wanted: list[Wanted] = []
    faults: list[Fault] = []
    for part in fitted.parts:
        count = left.get(part.id, 0) if part.id in from_trimmings else part.count
        stocks = part.part.source.stocks or _stocks_of_host(part, fitted, from_trimmings)
        if count and not stocks:
            faults.append(_offcut_too_small(part, count))
        elif count:
            name = part.id if number is None else f"{number}/{part.id}"
            blanks = count * part.blank.pieces * lot.copies
            wanted.append(Wanted(part, stocks, blanks, fitted.plan.slug, name))
    if faults:
        raise Faulty(faults)
    return list(pieces) * lot.copies, wanted


def _stocks_of_host(part: FittedPart, fitted: FittedPlan, from_trimmings: set[str]) -> tuple[str, ...]:
    """Return the stock of the part that leaves the offcut, where that is a rip and not a trimming."""
    if part.id in from_trimmings:
        return ()
    host = fitted.plan.parts[part.part.source.offcut_of]
    return () if host.glue_up is not None else host.source.stocks


def _offcut_too_small(part: FittedPart, count: int) -> Fault:
    host = part.part.source.offcut_of
    message = say(
        "{count} of {all} '{part}' do not fit the offcuts of '{host}'",
        count=count,
        all=part.count,
        part=part.id,
        host=host,
    )
    help_line = "add 'from:' with a stock to buy for those"
    return Fault("offcut-too-small", message, part.part.place.at("from offcut of"), help_line)


def _boards(answer: Answer, order: Order, wanted: dict[str, Wanted]) -> Iterator[CutBoard]:
    boards_of: dict[str, int] = {}
    blanks_of: dict[str, int] = {}
    rank = {sale: index for index, sale in enumerate(order.stocks)}
    for board in sorted(answer.boards, key=lambda board: rank[board.stock]):
        stock = order.stocks[board.stock]
        boards_of[stock.key] = boards_of.get(stock.key, 0) + 1
        pieces = []
        for piece in board.pieces:
            blanks_of[piece.part] = blanks_of.get(piece.part, 0) + 1
            measures = (piece.x, piece.y, piece.length, piece.width, piece.short_by)
            want = wanted[piece.part]
            lengths = [order.length(units) for units in measures]
            pieces.append(CutPiece(want.part, want.plan, blanks_of[piece.part], *lengths))
        offcuts = tuple(
            KeptOffcut(*(order.length(units) for units in (offcut.x, offcut.y, offcut.length, offcut.width)))
            for offcut in board.offcuts
        )
        sale = next(sale for sale in stock.sales if sale.id == board.stock)
        yield CutBoard(boards_of[stock.key], stock, sale, tuple(pieces), offcuts, board)
