"""Fitting one part: finished size, blank, and whether any stock holds it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.fault import Fault
from scantling.formula import Value
from scantling.measure import Angle, Length, write_length
from scantling.plan.fitted import NO_PROSE, Blank, FittedEnd, FittedPart
from scantling.plan.model import EndCut, GlueUp, Part
from scantling.plan.values import NOTHING, as_angle, as_count, as_length, as_yes
from scantling.shop import Shop, Stock
from scantling.words import mark, say

MOST_OF_A_PART = 2000


def fit_part(
    part: Part, host: Part | None, values: Mapping[str, Value], shop: Shop, faults: list[Fault]
) -> FittedPart | None:
    """Return the part at this size, or None if it is not there or, after adding to `faults`, faulty.

    Args:
        host: the part whose offcut it is cut from, if it is.
    """
    return _PartAtSize(part, host, values, shop, faults).fit()


def _shown(length: Length) -> str:
    return write_length(length, denominator=64)


@dataclass(frozen=True, slots=True)
class _PartAtSize:
    """One part, what its formulas come to, and where faults go."""

    part: Part
    host: Part | None
    values: Mapping[str, Value]
    shop: Shop
    faults: list[Fault]

    def fit(self) -> FittedPart | None:
        before = len(self.faults)
        count = self._count() if self._is_there() else 0
        if count == 0:
            return None
        length, width, thick = self._side("length"), self._side("width"), self._side("thick", "thickness")
        if count is None or length is None or width is None or thick is None:
            return None
        made = self._blank(length, width, thick)
        ends = self._ends()
        if made is None or len(self.faults) > before:
            return None
        blank, layer = made
        return FittedPart(self.part, count, length, width, thick, layer, blank, ends, (), NO_PROSE)

    def _value(self, name: str) -> Value | None:
        return self.values.get(f"{self.part.id}.{name}")

    def _fault(self, code: str, message: str, key: str, help_line: str) -> None:
        self.faults.append(Fault(code, message, self.part.place.at(key), help_line))

    def _is_there(self) -> bool:
        if self.part.only_if is None:
            return True
        what, place = say("whether '{part}' is there", part=self.part.id), self.part.place.at("only if")
        return as_yes(self._value("only if"), what, place, self.faults) is True

    def _count(self) -> int | None:
        place = self.part.place.at("count")
        count = as_count(
            self._value("count"), say("the count of '{part}'", part=self.part.id), place, self.faults
        )
        if count is not None and count > MOST_OF_A_PART:
            message = say(
                "{count} of '{part}' are more than {most}",
                count=count,
                part=self.part.id,
                most=MOST_OF_A_PART,
            )
            self._fault("too-many", message, "count", "mend the formula")
            return None
        return count

    def _side(self, name: str, called: str = "") -> Length | None:
        value = self._value(name)
        if isinstance(value, Length) and value > NOTHING:
            return value
        what = say("the {side} of '{part}'", side=say(called or name), part=self.part.id)
        return as_length(value, what, self.part.place.at(name), self.faults)

    def _allowance(self, name: str) -> Length:
        value = self._value(name)
        if value is None:
            return NOTHING
        what = say("'{name}' of '{part}'", name=name, part=self.part.id)
        found = as_length(value, what, self.part.place.at(name), self.faults, or_zero=True)
        return NOTHING if found is None else found

    def _blank(self, length: Length, width: Length, thick: Length) -> tuple[Blank, Length] | None:
        """Return what is cut for one part, and the thickness of one piece of it."""
        part = self.part
        stocks = self._stocks()
        long = length + self._allowance("longer") + self._allowance("cut to fit")
        wide = width + self._allowance("wider")
        pieces, across, layer = 1, wide, thick
        if part.glue_up is not None:
            made = self._glued(part.glue_up, width, thick, stocks[0], wide=wide) if stocks else None
            if made is None:
                return None
            pieces, across, layer = made
        along, over = (across, long) if part.grain == "width" else (long, across)
        blank = Blank(along, over, pieces, part.grain == "any", over - self._to_spare(width))
        self._check_stock(blank, thick, stocks)
        return blank, layer

    def _stocks(self) -> list[Stock]:
        """Return the stocks that it may be cut from; of a ripped board's offcut, those of the board."""
        names = self.part.source.stocks
        if not names and self.host is not None and self.host.glue_up is None:
            names = self.host.source.stocks
        return [self.shop.stocks[name] for name in names if name in self.shop.stocks]

    def _to_spare(self, width: Length) -> Length:
        """Return how much narrower the part may turn out."""
        key = "least width"
        if self._value(key) is None:
            return NOTHING
        least = self._side(key)
        if least is None:
            return NOTHING
        if least > width:
            self._fault(
                "least-above",
                say("the {key} of '{part}' is above its width", key=key, part=self.part.id),
                key,
                "make it smaller",
            )
        return width - least

    def _glued(
        self, glue_up: GlueUp, width: Length, thick: Length, stock: Stock, *, wide: Length
    ) -> tuple[int, Length, Length] | None:
        """Return (pieces, width of each, thickness of each), or None after adding a fault."""
        what = say("the {how} of '{part}'", how=say(glue_up.how), part=self.part.id)
        pieces = as_count(self._value("layers"), what, self.part.place.at("glued up"), self.faults)
        if pieces is None:
            return None
        if pieces < 1:
            message = say("'{part}' is glued up from nothing", part=self.part.id)
            self._fault("not-positive", message, "glued up", "write at least '2 layers'")
            return None
        is_oversize = wide > width or stock.width is None
        if glue_up.how == "layers":
            across = wide if is_oversize else stock.widest
            self._check_glued("thick", pieces * stock.thick, thick)
            self._check_glued("wide", across, width)
            return pieces, across, stock.thick
        across = wide / pieces if is_oversize else stock.widest
        self._check_glued("wide", pieces * across, width)
        self._check_glued("thick", stock.thick, thick)
        return pieces, across, thick

    def _check_glued(self, side: str, have: Length, want: Length) -> None:
        if have < want:
            told = (
                mark("'{part}' is glued up {have} thick, thinner than its {want}")
                if side == "thick"
                else mark("'{part}' is glued up {have} wide, narrower than its {want}")
            )
            message = say(
                told,
                part=self.part.id,
                have=_shown(have),
                want=_shown(want),
            )
            self._fault("glue-up-too-small", message, "glued up", "glue up more pieces")

    def _check_stock(self, blank: Blank, thick: Length, stocks: list[Stock]) -> None:
        if not stocks:
            return
        if self.part.glue_up is None and thick > stocks[0].thick:
            message = say(
                "'{part}' is {thick} thick, its stock {thick2}",
                part=self.part.id,
                thick=_shown(thick),
                thick2=_shown(stocks[0].thick),
            )
            key = "thick" if self.part.thick else "from"
            self._fault("thicker-than-stock", message, key, "glue up layers, or name thicker stock")
        ways = [(blank.along, blank.least_across)]
        if blank.may_turn:
            ways.append((blank.least_across, blank.along))
        usable = [size for stock in stocks for size in _usable(stock, blank.least_across)]
        if not any(along <= long and across <= wide for along, across in ways for long, wide in usable):
            self._too_large(blank, usable, stocks[0].key)

    def _too_large(self, blank: Blank, usable: list[tuple[Length, Length]], stock: str) -> None:
        longest, widest = max(long for long, _ in usable), max(wide for _, wide in usable)
        if blank.along > longest or blank.least_across <= widest:
            side, want, have = "longer", blank.along, longest
        else:
            side, want, have = "wider", blank.least_across, widest
        runs_across = (side == "wider") != (self.part.grain == "width")
        key = "width" if runs_across and self.part.width is not None else "length"
        told = (
            mark("'{part}' needs {want}, longer than any {stock} ({have})")
            if side == "longer"
            else mark("'{part}' needs {want}, wider than any {stock} ({have})")
        )
        message = say(
            told,
            part=self.part.id,
            want=_shown(want),
            stock=stock,
            have=_shown(have),
        )
        help_line = "name larger stock, glue the part up, or narrow the range of sizes"
        self._fault(f"{side}-than-stock", message, key, help_line)

    def _ends(self) -> tuple[FittedEnd, FittedEnd] | None:
        if self.part.ends is None:
            return None
        return self._end("left", self.part.ends.left), self._end("right", self.part.ends.right)

    def _end(self, side: str, cut: EndCut) -> FittedEnd:
        square = Angle(Fraction(0))
        if cut.angle is None:
            return FittedEnd("square", square)
        what = say("the {side} end of '{part}'", side=say(side), part=self.part.id)
        angle = as_angle(self._value(f"{side} angle"), what, self.part.place.at("ends"), self.faults)
        return FittedEnd(cut.kind, angle if angle is not None else square)


def _usable(stock: Stock, across: Length) -> list[tuple[Length, Length]]:
    """Return length and width of what `stock` offers at a price, its ends and edges trimmed.

    The edges of a piece of just the right width are left alone.
    """
    return [
        (
            sale.length - 2 * stock.trim_ends,
            sale.width if sale.width == across else sale.width - 2 * stock.trim_edges,
        )
        for sale in stock.sales
        if sale.price is not None
    ]
