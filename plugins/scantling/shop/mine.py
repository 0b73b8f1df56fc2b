"""A reader's own shop: the author's, with another kerf, other prices, sizes left out, pieces owned.

What cannot be understood is left out and told of, so that settings kept from an older version, or
damaged ones, never stand in the way.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from scantling.fault import Fault, Faulty, Place, Severity
from scantling.form import LENGTH, MONEY, NUMBER, Field, Form, Named, Words
from scantling.measure import Length, Money, read_length
from scantling.shop.model import Sale, Shop, Stock
from scantling.words import say

NOTHING = Length.of_inches(0)
MOST_OWNED = 200


@dataclass(frozen=True, slots=True)
class MyShop:
    """What a reader says of the shop that they go to."""

    kerf: Length | None = None
    longest: Length | None = None
    """The longest piece that fits the car."""
    left_out: frozenset[str] = frozenset()
    """Sales that their shop does not carry, by id."""
    prices: Mapping[str, Money] = field(default_factory=dict)
    """Their prices, by the id of a sale or the key of a ware."""
    owned: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    """Pieces that they have already: by stock, then by size as they typed it."""


def _my_shop(*, found_at: Place, **fields: Any) -> MyShop:
    del found_at
    return MyShop(
        kerf=fields["kerf"],
        longest=fields["longest_piece"],
        left_out=frozenset(fields["left_out"]),
        prices=fields["prices"],
        owned={
            stock: {
                size: int(count)
                for size, count in sizes.items()
                if 0 < count <= MOST_OWNED and count.denominator == 1
            }
            for stock, sizes in fields["owned"].items()
        },
    )


MY_SHOP: Form[MyShop] = Form(
    "my shop",
    _my_shop,
    (
        Field("kerf", LENGTH, "width of wood that my saw turns to dust"),
        Field("longest piece", LENGTH, "the longest piece that my car takes"),
        Field("left out", Words(), "sizes that my shop does not carry", default=()),
        Field("prices", Named(MONEY, "prices"), "my prices", default={}),
        Field(
            "owned",
            Named(Named(NUMBER, "pieces by size"), "pieces by stock"),
            "pieces that I have already",
            default={},
        ),
    ),
)
"""What a reader may say of their own shop."""


def read_my_shop(data: object) -> tuple[MyShop, tuple[Fault, ...]]:
    """Return what can be understood of a reader's settings, and a warning for all that cannot."""
    if not isinstance(data, dict):
        return MyShop(), () if data is None else (_warning(say("my settings cannot be read"), Place()),)
    faults: list[Fault] = []
    kept = dict(data)
    for key in data:
        trouble: list[Fault] = []
        MY_SHOP.read({key: data[key]}, Place(), trouble)
        if trouble:
            del kept[key]
            faults += [_warning(fault.message, fault.place) for fault in trouble]
    mine = MY_SHOP.read(kept, Place(), [])
    return mine or MyShop(), tuple(faults)


def _warning(message: str, place: Place) -> Fault:
    return Fault(
        "setting-left-out", message, place, say("this setting is left out"), severity=Severity.WARNING
    )


def shop_of(shop: Shop, mine: MyShop) -> tuple[Shop, tuple[Fault, ...]]:
    """Return the author's shop as a reader finds it, and a warning for what does not fit it."""
    faults = list(_odd(shop, mine))
    stocks = {key: _stock(stock, mine, faults) for key, stock in shop.stocks.items()}
    wares = {
        key: replace(ware, price=mine.prices[key]) if key in mine.prices else ware
        for key, ware in shop.wares.items()
    }
    kerf = shop.kerf
    if mine.kerf is not None:
        if NOTHING <= mine.kerf <= Length.of_inches(1):
            kerf = mine.kerf
        else:
            faults.append(_warning(say("no saw takes such a kerf; write one up to 1 in"), Place(("kerf",))))
    rules = shop.rules if mine.longest is None else replace(shop.rules, longest_piece=mine.longest)
    return replace(shop, stocks=stocks, wares=wares, kerf=kerf, rules=rules), tuple(faults)


def _odd(shop: Shop, mine: MyShop) -> Iterator[Fault]:
    """Yield a warning for each setting about something that the shop file does not have."""
    known = {sale.id for stock in shop.stocks.values() for sale in stock.sales}
    for name in sorted({*mine.left_out, *mine.prices} - known - set(shop.wares)):
        yield _warning(
            say("the shop has no '{name}'", name=name.replace(" | ", " ")), Place(("prices", name))
        )
    for name in mine.owned:
        if name not in shop.stocks:
            yield _warning(say("the shop has no '{name}'", name=name), Place(("owned", name)))


def _stock(stock: Stock, mine: MyShop, faults: list[Fault]) -> Stock:
    carried = [
        replace(sale, price=mine.prices.get(sale.id, sale.price))
        for sale in stock.sales
        if sale.id not in mine.left_out
        and (mine.longest is None or sale.length <= mine.longest or stock.is_sheet)
    ]
    owned = [
        sale
        for size, count in mine.owned.get(stock.key, {}).items()
        if (sale := _owned(stock, size, count, faults))
    ]
    return replace(stock, sales=(*carried, *owned))


def _owned(stock: Stock, size: str, count: int, faults: list[Fault]) -> Sale | None:
    place = Place(("owned", stock.key, size))
    try:
        sides = [read_length(part.strip()) for part in size.lower().replace("×", "x").split("x")]
    except Faulty as faulty:
        faults += [_warning(fault.message, place) for fault in faulty.faults]
        return None
    wanted = 2 if stock.width is None else 1
    if len(sides) != wanted or min(sides) <= NOTHING:
        help_line = "48 in x 24 in" if wanted == 2 else "5 ft"
        faults.append(
            _warning(
                say(
                    "'{size}' is no size of {stock}; write it like {example}",
                    size=size,
                    stock=stock.key,
                    example=help_line,
                ),
                place,
            )
        )
        return None
    width = stock.width if stock.width is not None else min(sides)
    return Sale(
        f"{stock.key} | {size} mine",
        max(sides),
        width,
        Money(0),
        place,
        owned=count,
    )
