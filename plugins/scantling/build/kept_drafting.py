"""Drawings that are found again wherever nothing changed that they show.

No drawing shows a price, so another price draws nothing anew: what is drawn of the piece follows the plan and
the sizes of the stock, and a cut diagram follows how its boards are cut.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import islice
from typing import ClassVar, TypeVar

from scantling.build.cache import Cache, digest
from scantling.build.stored import Piece, find_result, keep_result, stack
from scantling.cutting import Cost
from scantling.measure import Display, Money
from scantling.pages import Content, Drafting, Drawing, Drawings, raw
from scantling.plan import Choice, Fitter, Size
from scantling.report import CostChart, Report, cost_of_needs, needs_by_size
from scantling.shop import Sale, Shop, Stock, Ware

KIND, CHARTS = "drawings", "charts"
MOST_KNOWN = 300
"""Answers that are kept of one chart; the oldest go first."""
MOST_LATELY = 1000
"""Answers that a process keeps for the charts of the next plans: those of one kind ask much the same."""
_ANEW = Drafting()
Priced = TypeVar("Priced", Sale, Ware)


@dataclass(frozen=True, slots=True)
class Lasting:
    """What is drawn of a plan at one size whatever is paid, and however its boards are cut."""

    head: Drawing | None
    views: tuple[Drawing, ...]
    details: tuple[Drawing, ...]
    steps: Mapping[int, Drawing]
    model: Content | None


@dataclass(frozen=True, slots=True)
class Cuts:
    """The cut diagrams at one size, and the file with all drawings, which has them too."""

    drawings: tuple[Drawing, ...]
    bundle: Content


class KeptDrafting(Drafting):
    """Draws what was not drawn before."""

    def __init__(self, cache: Cache, made_of: str) -> None:
        """Keep the cache.

        Args:
            made_of: a name for all that the drawings are made of: plan, shop without prices, language.
        """
        self._cache = cache
        self._made_of = made_of

    def drawings(self, report: Report, display: Display, size: str) -> Drawings:
        """Return the drawings at one size, each found or drawn when it is first asked for."""
        return KeptDrawings(self._cache, digest(self._made_of, size), report, display)

    def card(self, report: Report, display: Display) -> Drawing | None:
        """Return the drawing for the card."""
        name = digest(self._made_of, "card")
        found = find_result(self._cache, KIND, name)
        if found is None:
            drawn = super().card(report, display)
            found = aside(self._cache, () if drawn is None else (drawn,))
            keep_result(self._cache, KIND, name, found)
        return found[0] if found else None

    def chart(self, fitter: Fitter, size: Size, choice: Choice) -> CostChart:
        """Return what each inch costs, from what the plan takes at each size, which no price changes."""
        name = digest(self._made_of, "chart", size.name)
        needs = find_result(self._cache, KIND, name)
        if needs is None:
            needs = needs_by_size(fitter, size, choice)
            keep_result(self._cache, KIND, name, needs)
        known = Known(find_result(self._cache, CHARTS, name) or {})
        asked = len(known)
        chart = cost_of_needs(size.name, needs, fitter.shop, known=known)
        if len(known) > asked:
            keep_result(self._cache, CHARTS, name, dict(list(known.items())[-MOST_KNOWN:]))
        return chart

    def bundle(self, drawings: Iterable[Drawing]) -> Content:
        """Return where all drawings lie in one file."""
        return drawings.kept_cuts.bundle if isinstance(drawings, KeptDrawings) else super().bundle(drawings)

    def model(self, report: Report, display: Display, drawings: Drawings) -> Content | None:
        """Return where the 3-D model lies."""
        if isinstance(drawings, KeptDrawings):
            return drawings.lasting.model
        return super().model(report, display, drawings)


class Known(dict[str, Cost]):
    """What cutting costs, by question; what another plan's chart asked in this process is known too."""

    _lately: ClassVar[dict[str, Cost]] = {}

    def __contains__(self, question: object) -> bool:
        """Return whether the answer is known, here or lately."""
        if super().__contains__(question):
            return True
        found = self._lately.get(str(question))
        if found is None:
            return False
        self[str(question)] = found
        return True

    def __setitem__(self, question: str, cost: Cost) -> None:
        """Keep an answer, here and for the next plans."""
        super().__setitem__(question, cost)
        self._lately[question] = cost
        if len(self._lately) > MOST_LATELY:
            del self._lately[next(iter(self._lately))]


class KeptDrawings(Drawings):
    """Drawings of a plan at one size that may lie in the cache."""

    def __init__(self, cache: Cache, made_of: str, report: Report, display: Display) -> None:
        """Keep what they are drawn from, should they have to be."""
        super().__init__(report, display)
        self._fresh = Drawings(report, display)
        self._cache = cache
        self._made_of = made_of

    @cached_property
    def lasting(self) -> Lasting:
        """What follows the plan alone."""
        found = find_result(self._cache, KIND, self._made_of)
        if not isinstance(found, Lasting):
            found = self._draw_lasting()
            keep_result(self._cache, KIND, self._made_of, found)
        return found

    def _draw_lasting(self) -> Lasting:
        fresh = self._fresh
        head = () if fresh.head is None else (fresh.head,)
        drawn = aside(self._cache, (*head, *fresh.views, *fresh.details, *fresh.steps.values()))
        rest = iter(drawn)
        model = _ANEW.model(self._report, self._display, fresh)
        return Lasting(
            head=next(rest) if head else None,
            views=tuple(islice(rest, len(fresh.views))),
            details=tuple(islice(rest, len(fresh.details))),
            steps=dict(zip(fresh.steps, rest, strict=True)),
            model=None if model is None else stack(self._cache, [raw(model)])[0],
        )

    @cached_property
    def kept_cuts(self) -> Cuts:
        """What follows how the boards are cut."""
        boards = [(board.number, board.sale.id, board.raw) for board in self._report.cutting.boards]
        name = digest(self._made_of, repr(boards))
        found = find_result(self._cache, KIND, name)
        if not isinstance(found, Cuts):
            cuts = self._fresh.cuts
            head = () if self.head is None else (self.head,)
            # the others are read from where they lie, and not drawn anew for the bundle
            bundle = _ANEW.bundle((*head, *self.views, *cuts, *self.details, *self.steps.values()))
            found = Cuts(aside(self._cache, cuts), stack(self._cache, [raw(bundle)])[0])
            keep_result(self._cache, KIND, name, found)
        return found

    @cached_property
    def head(self) -> Drawing | None:
        """The picture at the head."""
        return self.lasting.head

    @cached_property
    def views(self) -> tuple[Drawing, ...]:
        """The views of the whole piece."""
        return self.lasting.views

    @cached_property
    def details(self) -> tuple[Drawing, ...]:
        """The joinery of single parts."""
        return self.lasting.details

    @cached_property
    def steps(self) -> Mapping[int, Drawing]:
        """The pictures of the steps, by their numbers."""
        return self.lasting.steps

    @cached_property
    def cuts(self) -> tuple[Drawing, ...]:
        """The cut diagrams."""
        return self.kept_cuts.drawings


def aside(cache: Cache, drawings: Sequence[Drawing]) -> tuple[Drawing, ...]:
    """Return drawings whose SVG lies in the cache."""
    kept = stack(cache, [drawing.svg.encode() for drawing in drawings])
    return tuple(
        replace(drawing, source=piece) if isinstance(piece, Piece) else drawing
        for drawing, piece in zip(drawings, kept, strict=True)
    )


def without_prices(shop: Shop) -> str:
    """Return a name for all of a shop but what things cost: whether they have a price is part of it."""
    stocks = {key: _free_stock(stock) for key, stock in shop.stocks.items()}
    wares = {key: _free(ware) for key, ware in shop.wares.items()}
    return digest(repr(replace(shop, prices_of="", price_lists={}, stocks=stocks, wares=wares)))


def _free_stock(stock: Stock) -> Stock:
    return replace(stock, sales=tuple(_free(sale) for sale in stock.sales))


def _free(priced: Priced) -> Priced:
    price = priced.price
    return replace(priced, touched="", price=None if price is None else Money(min(price.cents, 1)))
