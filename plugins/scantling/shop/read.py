"""From the plain data of a shop file to a `Shop`."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from fractions import Fraction
from typing import Any

from scantling.fault import Fault, Faulty, Note, Place
from scantling.measure import Currency, Length, Money, board_feet, read_currency, read_length
from scantling.shop.forms import SHOP, Entry, Price
from scantling.shop.lists import read_price_list
from scantling.shop.model import Rules, Sale, Shop, Stock, Ware
from scantling.shop.nominal import actual_size, nominal_size
from scantling.shop.pricing import one_currency, priced_once

ZERO = Length.of_inches(Fraction(0))
_ECHOES = {"nothing-on-sale", "no-actual-size"}
"""Of a record in which something is faulty already, these say nothing more."""
USUAL_RULES = Rules(
    least_rip_length=Length.of_inches(Fraction(12)),
    least_strip_width=Length.of_inches(Fraction(3, 4)),
    keep_length=Length.of_inches(Fraction(12)),
    keep_width=Length.of_inches(Fraction(2)),
)
"""Where the shop file says nothing. Common practice: a table saw's manual names its own shortest rip."""


def read_shop(data: object) -> Shop:
    """Return the shop that `data` describes.

    Raises:
        Faulty: with every fault in the file.
    """
    faults: list[Fault] = []
    entry = SHOP.read(data, Place(), faults)
    more: list[Fault] = []
    shop = _shop(entry, more) if entry is not None else None
    faulty = {fault.place.path[:2] for fault in faults}
    faults += [fault for fault in more if fault.code not in _ECHOES or fault.place.path[:2] not in faulty]
    if faults or shop is None:
        raise Faulty(faults)
    return shop


def _shop(entry: Entry, faults: list[Fault]) -> Shop:
    stocks: dict[str, Stock] = {}
    for shelf, make in _SHELVES.items():
        for key, record in (entry.get(shelf) or {}).items():
            _once(key, stocks, record.place, faults)
            stock = make(key, shelf, record, faults)
            if stock is not None:
                stocks[key] = stock
    wares: dict[str, Ware] = {}
    for shelf in ("hardware", "finish"):
        for key, record in (entry.get(shelf) or {}).items():
            _once(key, {**stocks, **wares}, record.place, faults)
            wares[key] = _ware(key, shelf, record, faults)
    _positive(entry.get("kerf"), "the kerf", Place(("kerf",)), faults, or_zero=True)
    currency = _currency(entry.get("currency"), entry.get("locale"), faults)
    faults += one_currency(entry, currency)
    return Shop(
        kerf=entry.get("kerf"),
        currency=currency,
        prices_of=entry.get("prices_of"),
        stocks=stocks,
        wares=wares,
        rules=_rules(entry.get("rules"), faults),
        name=entry.get("name"),
        price_lists={
            name: read_price_list(record, stocks, wares, faults)
            for name, record in (entry.get("price_lists") or {}).items()
        },
    )


def _currency(text: str, locale: str, faults: list[Fault]) -> Currency:
    try:
        return read_currency(text, locale)
    except Faulty as faulty:
        faults += faulty.faults
        return Currency(text)


def _once(key: str, taken: Mapping[str, Stock | Ware], place: Place, faults: list[Fault]) -> None:
    if key in taken:
        first = Note("it is first named here", taken[key].place.key())
        faults.append(
            Fault(
                "named-twice",
                f"'{key}' is in the shop file twice",
                place.key(),
                "give one of them another name",
                (first,),
            )
        )


def _lumber(key: str, shelf: str, entry: Entry, faults: list[Fault]) -> Stock | None:
    nominal = nominal_size(key)
    actual = actual_size(nominal) if nominal else None
    thick = entry.get("thick") or (actual[0] if actual else None)
    width = entry.get("width") or (actual[1] if actual else None)
    if thick is None or width is None:
        help_line = "write 'thick:' and 'width:' with what it measures, or name it like 2x4"
        faults.append(
            Fault(
                "no-actual-size", f"the standard has no actual size for '{key}'", entry.place.key(), help_line
            )
        )
        return None
    return _stock(key, shelf, entry, faults, thick=thick, width=width, nominal=nominal)


def _sized(key: str, shelf: str, entry: Entry, faults: list[Fault]) -> Stock | None:
    return _stock(key, shelf, entry, faults, thick=entry.get("thick"), width=entry.get("width"))


def _stock(
    key: str,
    shelf: str,
    entry: Entry,
    faults: list[Fault],
    *,
    thick: Length,
    width: Length,
    nominal: tuple[Fraction, Fraction] | None = None,
) -> Stock | None:
    sales = [
        Sale(f"{key} | {size}", length, width, price.money, price.place, touched=price.touched)
        for size, length, price in _by_length(entry, faults)
    ]
    return _finish_stock(key, shelf, entry, faults, thick=thick, width=width, sales=sales, nominal=nominal)


def _hardwood(key: str, shelf: str, entry: Entry, faults: list[Fault]) -> Stock | None:
    written = entry.get("lengths")
    place = entry.place.at("lengths")
    sales = []
    for index, size in enumerate(written if isinstance(written, list) else [written]):
        length = _read_size(str(size), place.at(index) if isinstance(written, list) else place, faults)
        if length is not None:
            price = _board_price(entry, length)
            sales.append(Sale(f"{key} | {size}", length, entry.get("width"), price, place))
    nominal = None
    return _finish_stock(
        key,
        shelf,
        entry,
        faults,
        thick=entry.get("thick"),
        width=entry.get("width"),
        sales=sales,
        nominal=nominal,
    )


def _board_price(entry: Entry, length: Length) -> Money | None:
    """Return the price of a board by its rough thickness, to the nearest cent (half up)."""
    per_foot: Price = entry.get("per_board_foot")
    if per_foot.money is None:
        return None
    exact = per_foot.money.cents * board_feet(entry.get("rough"), entry.get("width"), length)
    return Money((2 * exact.numerator + exact.denominator) // (2 * exact.denominator))


def _sheet(key: str, shelf: str, entry: Entry, faults: list[Fault]) -> Stock | None:
    sales = []
    for size, price in entry.get("sizes").items():
        sides = _read_sheet_size(size, price.place, faults)
        if sides is not None:
            sales.append(
                Sale(
                    f"{key} | {size}", max(sides), min(sides), price.money, price.place, touched=price.touched
                )
            )
    return _finish_stock(
        key, shelf, entry, faults, thick=entry.get("thick"), width=None, sales=sales, nominal=None
    )


def _finish_stock(
    key: str,
    shelf: str,
    entry: Entry,
    faults: list[Fault],
    *,
    thick: Length,
    width: Length | None,
    sales: list[Sale],
    nominal: tuple[Fraction, Fraction] | None,
) -> Stock | None:
    faults += priced_once(sales)
    _positive(thick, f"'{key}'", entry.place.at("thick"), faults)
    _positive(width, f"'{key}'", entry.place.at("width"), faults)
    sales += _owned(key, entry, width, faults)
    if not sales:
        if not any(fault.place.path[:2] == entry.place.path for fault in faults):
            help_line = f"add one under '{'sizes' if width is None else 'lengths'}:'"
            faults.append(Fault("nothing-on-sale", f"no size of '{key}' is on sale", entry.place, help_line))
        return None
    return Stock(
        key=key,
        kind=shelf,
        thick=thick,
        width=width,
        sales=tuple(sales),
        wood=entry.get("wood"),
        place=entry.place,
        nominal=nominal,
        varies=entry.fields.get("varies") or ZERO,
        has_grain=entry.fields.get("grain", True),
        trim_ends=entry.get("trim_ends") or ZERO,
        trim_edges=entry.fields.get("trim_edges") or ZERO,
        note=entry.get("note"),
    )


def _by_length(entry: Entry, faults: list[Fault]) -> Iterator[tuple[str, Length, Price]]:
    for size, price in entry.get("lengths").items():
        length = _read_size(size, price.place, faults, on_key=True)
        if length is not None:
            yield size, length, price


def _owned(key: str, entry: Entry, width: Length | None, faults: list[Fault]) -> Iterator[Sale]:
    place = entry.place.at("owned")
    for size, count in (entry.get("owned") or {}).items():
        here = place.at(size)
        if count.denominator != 1 or count < 0:
            faults.append(
                Fault("not-whole", f"{count} pieces is no whole number", here, "write how many there are")
            )
            continue
        if width is None:
            sides = _read_sheet_size(size, here, faults)
            length, wide = (max(sides), min(sides)) if sides else (None, None)
        else:
            length, wide = _read_size(size, here, faults, on_key=True), width
        if length is not None and wide is not None:
            yield Sale(f"{key} | {size} owned", length, wide, Money(0), here, owned=int(count))


def _read_size(text: str, place: Place, faults: list[Fault], *, on_key: bool = False) -> Length | None:
    try:
        length = read_length(text)
    except Faulty as faulty:
        faults.extend(
            Fault(f.code, f.message, place.key() if on_key else place, f.help) for f in faulty.faults
        )
        return None
    return length if _positive(length, f"'{text}'", place.key() if on_key else place, faults) else None


def _read_sheet_size(text: str, place: Place, faults: list[Fault]) -> tuple[Length, Length] | None:
    parts = text.lower().replace("×", "x").split("x")
    if len(parts) != 2:
        faults.append(
            Fault(
                "not-a-sheet-size", f"'{text}' is not the size of a sheet", place.key(), "write 4 ft x 8 ft"
            )
        )
        return None
    one, other = (_read_size(part.strip(), place, faults, on_key=True) for part in parts)
    return None if one is None or other is None else (one, other)


def _positive(
    length: Length | None, what: str, place: Place, faults: list[Fault], *, or_zero: bool = False
) -> bool:
    if length is None or length > ZERO or (or_zero and length == ZERO):
        return True
    faults.append(Fault("not-positive", f"{what} measures nothing or less", place, "write a length above 0"))
    return False


def _ware(key: str, shelf: str, entry: Entry, faults: list[Fault]) -> Ware:
    count = entry.get("count")
    if count is not None and count <= 0:
        faults.append(
            Fault(
                "not-positive",
                f"'{key}' holds nothing or less",
                entry.place.at("count"),
                "write how many are in it",
            )
        )
    price: Price = entry.get("price")
    return Ware(
        key=key,
        kind=entry.get("kind") or key,
        shelf=shelf,
        price=price.money,
        place=entry.place,
        sold=entry.get("sold"),
        count=count if count is not None else Fraction(1),
        long=entry.get("long"),
        covers=entry.get("covers"),
        clearances=entry.get("clearances") or {},
        note=entry.get("note"),
        caution=entry.get("caution"),
        touched=price.touched,
    )


def _rules(entry: Entry | None, faults: list[Fault]) -> Rules:
    if entry is None:
        return USUAL_RULES
    written: dict[str, Any] = {key: value for key, value in entry.fields.items() if value is not None}
    count = written.pop("store_cuts", None)
    if count is not None and (count.denominator != 1 or count < 0):
        here = entry.place.at("store cuts")
        faults.append(Fault("not-whole", f"{count} cuts is no whole number", here, "write how many it makes"))
        count = None
    for key, value in written.items():
        _positive(
            value, f"'{key.replace('_', ' ')}'", entry.place.at(key.replace("_", " ")), faults, or_zero=True
        )
    usual = {name: getattr(USUAL_RULES, name) for name in Rules.__slots__}
    return Rules(**{**usual, **written, "store_cuts": None if count is None else int(count)})


_SHELVES: dict[str, Callable[[str, str, Entry, list[Fault]], Stock | None]] = {
    "lumber": _lumber,
    "sheets": _sheet,
    "pickets": _sized,
    "trim": _sized,
    "hardwood": _hardwood,
}
