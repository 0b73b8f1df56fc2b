"""What a shop file may say."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from scantling.fault import Fault, Place
from scantling.form import (
    AREA,
    LENGTH,
    NUMBER,
    Date,
    Field,
    Form,
    Kind,
    Named,
    Raw,
    ReadBy,
    Record,
    Text,
    YesNo,
)
from scantling.measure import Length, Money, read_price

NOTHING = Length.of_inches(Fraction(0))


@dataclass(frozen=True, slots=True)
class Entry:
    """A record of the shop file as it was read, before it becomes stock or a ware."""

    fields: dict[str, Any]
    place: Place

    def get(self, key: str) -> Any:
        """Return what the author wrote for `key`, or the form's default."""
        return self.fields[key]


def _entry(*, found_at: Place, **fields: Any) -> Entry:
    return Entry(fields, found_at)


@dataclass(frozen=True, slots=True)
class Price:
    """What one size costs, and when that was last changed."""

    money: Any
    place: Place
    touched: str = ""
    sign: str = ""
    """What the author wrote beside it of its currency."""


@dataclass(frozen=True, slots=True)
class PriceKind:
    """A price; nothing at all where the price is not known."""

    def read(self, data: object, place: Place, faults: list[Fault]) -> Price | None:
        """Return the price, whose money is None where nothing is written."""
        if isinstance(data, dict):
            return _DATED.read(data, place, faults)
        if data is None or (isinstance(data, str) and not data.strip()):
            return Price(None, place)
        read = _SUM.read(data, place, faults)
        return None if read is None else _priced(read, place)

    def describe(self) -> str:
        """Return what is expected."""
        return "a price, or {price: 4.28, since: 2026-11-02}"

    def schema(self) -> dict[str, Any]:
        """Return the JSON Schema of the value."""
        return {"type": ["string", "number", "object", "null"]}


def _priced(read: tuple[Money, str], place: Place, touched: str = "") -> Price:
    money, sign = read
    return Price(money, place, touched, sign)


def _dated(*, found_at: Place, price: Any, since: str) -> Price:
    return _priced(price, found_at.at("price"), since)


_SUM = ReadBy(read_price, "a price, such as 4.28")


_DATED: Form[Price] = Form(
    "a price",
    _dated,
    (
        Field("price", _SUM, "what it costs", required=True, example="4.28"),
        Field("since", Date(), "the day on which this price was last changed", default=""),
    ),
)
PRICE: Kind = PriceKind()
PRICES = Named(PRICE, "prices by size")

_WOOD = Field(
    "wood", Text(), "species or species group, for weight and movement", default="", example="spruce-pine-fir"
)
_NOTE = Field("note", Text(), "anything a buyer should know", default="")
_VARIES = Field("varies", LENGTH, "how much narrower than stated a piece may turn out", example="1/8 in")
_TRIM_ENDS = Field("trim ends", LENGTH, "cut off each end before use", example="1/2 in")
_TRIM_EDGES = Field("trim edges", LENGTH, "cut off each long edge before use", example="1/4 in")
_OWNED = Field(
    "owned", Named(NUMBER, "pieces by size"), "pieces that are there already, used first, by size: 5 ft: 2"
)
_LENGTHS = Field(
    "lengths", PRICES, "lengths on sale and their prices", required=True, example="{8 ft: 4.28, 10 ft: 5.60}"
)

LUMBER: Form[Entry] = Form(
    "lumber",
    _entry,
    (
        _LENGTHS,
        _WOOD,
        Field("thick", LENGTH, "actual thickness, if it is not the standard's", example="1 1/2 in"),
        Field("width", LENGTH, "actual width, if it is not the standard's", example="3 1/2 in"),
        _VARIES,
        _TRIM_ENDS,
        _OWNED,
        _NOTE,
    ),
    "Boards and construction lumber, by nominal size: `2x4`, `1x6`, `1x4 cedar`. Actual sizes follow PS 20.",
)
"""Boards sold by nominal size."""
SIZED: Form[Entry] = Form(
    "a board sold by its actual size",
    _entry,
    (
        Field("thick", LENGTH, "actual thickness", required=True, example="5/8 in"),
        Field("width", LENGTH, "actual width", required=True, example="5 1/2 in"),
        _LENGTHS,
        _WOOD,
        _VARIES,
        _TRIM_ENDS,
        _OWNED,
        _NOTE,
    ),
    "Pickets and trim, by a name of your own, with actual sizes.",
)
"""Pickets and trim, sold by actual size."""
SHEET: Form[Entry] = Form(
    "a sheet",
    _entry,
    (
        Field("thick", LENGTH, "actual thickness: measure one", required=True, example="23/32 in"),
        Field(
            "sizes",
            PRICES,
            "sizes on sale and their prices; the grain runs along the longer side",
            required=True,
            example="{4 ft x 8 ft: 62.00}",
        ),
        _WOOD,
        Field("grain", YesNo(), "no for sheets that look the same both ways", default=True),
        _TRIM_ENDS,
        _TRIM_EDGES,
        _OWNED,
        _NOTE,
    ),
    "Plywood and other sheet goods, by a name of your own.",
)
"""Plywood and other sheets."""
HARDWOOD: Form[Entry] = Form(
    "hardwood",
    _entry,
    (
        Field("thick", LENGTH, "thickness once planed", required=True, example="13/16 in"),
        Field("rough", LENGTH, "thickness that is paid for", required=True, example="1 in"),
        Field("width", LENGTH, "width of a typical board", required=True, example="6 in"),
        Field("per board foot", PRICE, "price of a board foot", required=True, example="7.50"),
        Field(
            "lengths",
            Raw("lengths: [8 ft, 10 ft]"),
            "lengths on the rack",
            required=True,
            example="[8 ft, 10 ft]",
        ),
        _WOOD,
        _VARIES,
        _TRIM_ENDS,
        _OWNED,
        _NOTE,
    ),
    "Boards sold by the board foot.",
)
"""Boards sold by the board foot."""
WARE: Form[Entry] = Form(
    "an article",
    _entry,
    (
        Field("kind", Text(), "what it is, so that joints find it", default="", example="pocket screw"),
        Field("price", PRICE, "price of what is sold", required=True, example="8.40"),
        Field("sold", Text(), "how it is sold, in words", default="each", example="box of 100"),
        Field("count", NUMBER, "how many are in it", example="100"),
        Field("long", LENGTH, "length of a screw or slide, or of the tape on a roll", example="2 1/2 in"),
        Field("covers", AREA, "area that it covers once", example="75 sq ft"),
        Field(
            "clearances",
            Named(LENGTH, "clearances by name"),
            "room that its maker asks for, by name",
            example="{side clearance: 1/2 in}",
        ),
        Field("caution", Text(), "what can hurt", default=""),
        _NOTE,
    ),
)
"""Hardware, finish and other supplies."""
RULES: Form[Entry] = Form(
    "the rules",
    _entry,
    (
        Field("least rip length", LENGTH, "a piece shorter than this is not ripped", example="12 in"),
        Field(
            "least strip width",
            LENGTH,
            "a strip narrower than this is not ripped without a warning",
            example="3/4 in",
        ),
        Field("keep length", LENGTH, "an offcut at least this long is worth keeping", example="12 in"),
        Field("keep width", LENGTH, "... if it is at least this wide", example="2 in"),
        Field("longest piece", LENGTH, "the longest piece that fits the car", example="10 ft"),
        Field(
            "store cuts",
            NUMBER,
            "how many cuts the store makes on a board or sheet at most, to make it fit the car",
            example="2",
        ),
    ),
)
"""What the saw, the car and the hand allow."""
PRICE_LIST: Form[Entry] = Form(
    "a price list",
    _entry,
    (
        Field(
            "item", Text(), "heading of the column that names the article", required=True, example="Article"
        ),
        Field("price", Text(), "heading of the column with its price", required=True, example="Price"),
        Field(
            "articles",
            Named(Text(), "our names by theirs"),
            "for each article of the list its name here: `2x4, 8 ft` or the name of an article",
            required=True,
        ),
        Field("separator", Text(1), "what stands between two columns", default=",", example=";"),
        Field("decimal", Text(1), "what stands before the cents", default=".", example="','"),
        Field("encoding", Text(40), "how the file's letters are encoded", default="utf-8", example="cp1252"),
    ),
    "How a store's price list (CSV) is read: which columns, and which article is which.",
)
"""How a store's price list is read."""
SHOP: Form[Entry] = Form(
    "a shop file",
    _entry,
    (
        Field("name", Text(), "whose shop it is", default=""),
        Field("currency", Text(8), "sign of the prices, or its code: EUR", default="$"),
        Field(
            "locale",
            Text(12),
            "in whose way prices are written; as the site's language has it if not said",
            default="",
            example="de-DE",
        ),
        Field("prices of", Date(), "the day of the prices", default="", example="2026-11-02"),
        Field(
            "kerf",
            LENGTH,
            "width of wood that the saw blade turns to dust",
            required=True,
            default=NOTHING,
            example="1/8 in",
        ),
        Field("rules", Record(RULES), "what the saw, the car and the hand allow"),
        Field("lumber", Named(Record(LUMBER), "lumber by nominal size"), "boards by nominal size"),
        Field("sheets", Named(Record(SHEET), "sheets by name"), "plywood and other sheet goods"),
        Field("pickets", Named(Record(SIZED), "pickets by name"), "fence pickets, with actual sizes"),
        Field("trim", Named(Record(SIZED), "trim by name"), "trim and mouldings, with actual sizes"),
        Field("hardwood", Named(Record(HARDWOOD), "hardwood by name"), "boards sold by the board foot"),
        Field("hardware", Named(Record(WARE), "articles by name"), "screws, slides, hinges, banding, glue"),
        Field(
            "price lists",
            Named(Record(PRICE_LIST), "price lists by name"),
            "how stores' price lists are read",
        ),
        Field("finish", Named(Record(WARE), "articles by name"), "oil, paint, sandpaper"),
    ),
)
"""A whole shop file."""
