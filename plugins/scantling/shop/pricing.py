"""What the prices of a shop file must have in common: one currency, and one price for one thing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from scantling.fault import Fault, Note
from scantling.measure import Currency, Length, is_sign_of
from scantling.shop.forms import Entry, Price
from scantling.shop.model import Sale


def one_currency(entry: Entry, currency: Currency) -> Iterator[Fault]:
    """Yield a fault for each price that says another currency than the shop's."""
    for price in _prices(entry):
        if price.sign and not is_sign_of(price.sign, currency):
            message = f"this price is in {price.sign}, those of the shop are in {currency}"
            yield Fault("other-currency", message, price.place, "change one of them, or leave the sign out")


def _prices(value: object) -> Iterator[Price]:
    """Yield every price in what was read, however deep."""
    if isinstance(value, Price):
        yield value
    elif isinstance(value, Entry):
        yield from _prices(value.fields)
    elif isinstance(value, Mapping):
        for one in value.values():
            yield from _prices(one)


def priced_once(sales: list[Sale]) -> Iterator[Fault]:
    """Yield a fault for each size that another wording of it has put on sale already: 96 in beside 8 ft."""
    first: dict[tuple[Length, Length], Sale] = {}
    for sale in sales:
        other = first.setdefault((sale.length, sale.width), sale)
        if other is not sale and sale.place != other.place:
            note = Note(f"'{other.label}' stands here", other.place.key())
            message = f"'{sale.label}' is the same size as '{other.label}': one thing with two prices"
            yield Fault(
                "priced-twice", message, sale.place.key(), "delete the one that does not hold", (note,)
            )
